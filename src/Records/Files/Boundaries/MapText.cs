using System.Globalization;
using Watersown.Wording;

namespace Watersown.Records.Files.Boundaries;

/// <summary>Words out of strangers' files, kept short and on one line.</summary>
internal static class MapText
{
    public static string Short(string text)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (line.Any(char.IsControl)) line = string.Concat(line.Where(c => !char.IsControl(c)));
        return Say.Short(line, MapFileLimits.MaxText);
    }

    /// <summary>Where one thing of a file stands: <c>fields.zip, record 12 'Two Gates'</c>.</summary>
    public static string Where(string file, string what, int number, string name) =>
        string.Create(CultureInfo.InvariantCulture, $"{file}, {what} {number}") + (name.Length == 0 ? string.Empty : " '" + name + "'");
}
