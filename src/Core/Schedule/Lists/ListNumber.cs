using System.Globalization;
using System.Text;

namespace Watersown.Schedule.Lists;

/// <summary>A number as people write it in a cell: thousands marks, a unit behind it, spaces anywhere.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Unit">What stands behind it, small letters and digits only; empty where nothing does.</param>
public sealed record ListNumber([property: PlainNumber("in the unit beside it")] double Value, string Unit)
{
    /// <summary>Reads a cell; none where it does not start with a number.</summary>
    public static ListNumber? Read(string cell)
    {
        var text = Plain(cell);
        var length = 0;
        while (length < text.Length && (char.IsAsciiDigit(text[length]) || text[length] is '.' or ',' || (length == 0 && text[0] is '-' or '+'))) length++;
        var digits = text[..length].TrimEnd('.', ',');
        return Figure(digits) is { } value && Math.Abs(value) <= 1e9 ? new ListNumber(value, Unify(text[length..])) : null;
    }

    /// <summary>A comma is a thousands mark where three digits follow it, else a decimal mark.</summary>
    private static double? Figure(string digits)
    {
        if (!digits.Any(char.IsAsciiDigit)) return null;
        var groups = digits.Split(',');
        var whole = groups.Length > 1 && groups[0].TrimStart('-', '+').Length is >= 1 and <= 3
            && groups.Skip(1).Select((g, i) => i == groups.Length - 2 ? g.Split('.')[0] : g).All(g => g.Length == 3 && g.All(char.IsAsciiDigit));
        var plain = whole ? digits.Replace(",", string.Empty, StringComparison.Ordinal)
            : groups.Length == 2 && !digits.Contains('.', StringComparison.Ordinal) ? digits.Replace(',', '.')
            : digits;
        return double.TryParse(plain, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    /// <summary>All blanks out, whatever their width; wide digits and minus signs as plain ones.</summary>
    private static string Plain(string cell)
    {
        var text = new StringBuilder();
        foreach (var letter in cell)
        {
            if (char.IsWhiteSpace(letter) || letter is '\u200B' or '\uFEFF') continue;
            text.Append(letter is '−' or '–' ? '-' : letter);
        }

        return text.ToString();
    }

    private static string Unify(string unit) => string.Concat(unit.ToLowerInvariant().Where(char.IsLetterOrDigit)) + (unit.Contains('#', StringComparison.Ordinal) ? "#" : string.Empty);
}
