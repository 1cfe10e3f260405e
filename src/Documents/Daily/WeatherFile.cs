namespace Watersown.Documents.Daily;

/// <summary>Days of weather out of the lines of a file, whatever its form. Lines are read once, one after another.</summary>
public static class WeatherFile
{
    /// <summary>No farm's series is longer; a century and a half of GHCN-Daily has under 200,000 lines.</summary>
    public const int LinesMost = 5_000_000;

    /// <summary>The days, or everything that keeps them out.</summary>
    /// <param name="lines">The file, line by line.</param>
    /// <param name="file">Its name, for what is said.</param>
    /// <param name="options">What is told beside it.</param>
    public static Outcome<WeatherRead> Read(IEnumerable<string> lines, string file, WeatherOptions options)
    {
        using var reader = lines.Take(LinesMost).Select((text, i) => new FileLine(i == 0 ? text.TrimStart('\uFEFF') : text, i + 1)).Where(l => !string.IsNullOrWhiteSpace(l.Text) && l.Text[0] != '#').GetEnumerator();
        if (!reader.MoveNext()) return Outcome<WeatherRead>.Refuse(WeatherFileProblems.NoDays.At(file));
        var first = reader.Current;
        if (first.Text.StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase)) return EpwDays.Read(first, Rest(reader), file);
        if (GhcnDays.IsFixed(first.Text)) return GhcnDays.ReadFixed(All(first, reader), file, options);
        if (GhcnDays.IsLine(first.Text)) return GhcnDays.ReadLines(All(first, reader), file, options);
        return TableDays.Read(first, Rest(reader), file, options);
    }

    private static IEnumerable<FileLine> All(FileLine first, IEnumerator<FileLine> reader) => Rest(reader).Prepend(first);

    private static IEnumerable<FileLine> Rest(IEnumerator<FileLine> reader)
    {
        while (reader.MoveNext()) yield return reader.Current;
    }
}

/// <summary>A line of a file with its number, 1 first.</summary>
internal readonly record struct FileLine(string Text, int Number);
