using System.Globalization;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>Corners as somebody types or pastes them: degrees, latitude first, one corner a line.</summary>
public static class TypedCorners
{
    // More than a person types; a file is read elsewhere.
    private const int LinesMost = 2000;

    /// <summary>
    /// The corners in order, or every line that is none. North or south and east or west may be said by letter in place of the
    /// sign; degree signs are passed over. Whether the place is on the earth is looked at with the whole edge.
    /// </summary>
    /// <param name="text">As typed.</param>
    [Source(nameof(Sources.Definition), "degrees, north and east positive")]
    public static Outcome<ImmutableArray<GeoPoint>> Read(string text)
    {
        var corners = ImmutableArray.CreateBuilder<GeoPoint>();
        var problems = new List<Problem>();
        var lines = text.Split(['\n', '\r', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        for (var i = 0; i < lines.Length; i++)
        {
            if (i < LinesMost && One(lines[i]) is { } corner) corners.Add(corner);
            else problems.Add(BoundaryProblems.NotAPlace.At("line " + (i + 1).ToString(CultureInfo.InvariantCulture), ("value", Say.Short(lines[i]))));
            if (problems.Count >= 5) break;
        }

        return problems.Count > 0 ? Outcome<ImmutableArray<GeoPoint>>.Refuse(problems) : Outcome<ImmutableArray<GeoPoint>>.Of(corners.ToImmutable());
    }

    /// <summary>A corner as it is shown and typed again: to a hand's breadth.</summary>
    public static string Write(GeoPoint corner) => string.Create(CultureInfo.InvariantCulture, $"{corner.Latitude:0.######}, {corner.Longitude:0.######}");

    private static GeoPoint? One(string line)
    {
        var parts = line.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries).Where(p => p != "°").ToList();
        // A letter may stand apart from its number: 39.0152 N 122.005 W.
        for (var i = parts.Count - 1; i > 0; i--)
        {
            if (parts[i].Length != 1 || !char.IsLetter(parts[i][0])) continue;
            parts[i - 1] += parts[i];
            parts.RemoveAt(i);
        }

        if (parts is not [var first, var second]) return null;
        return Degrees(first, 'N', "S") is { } latitude && Degrees(second, 'E', "WO") is { } longitude ? new GeoPoint(latitude, longitude) : null;
    }

    private static double? Degrees(string word, char plus, string minus)
    {
        var sign = 1;
        var last = char.ToUpperInvariant(word[^1]);
        if (char.IsLetter(last))
        {
            if (last != plus && !minus.Contains(last, StringComparison.Ordinal)) return null;
            if (last != plus) sign = -1;
            word = word[..^1];
        }

        word = word.Replace("°", string.Empty, StringComparison.Ordinal).Replace('−', '-');
        return double.TryParse(word, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) ? sign * degrees : null;
    }
}
