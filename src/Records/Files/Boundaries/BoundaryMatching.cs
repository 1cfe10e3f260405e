using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Records.Files.Boundaries;

/// <summary>By what a boundary is known.</summary>
public enum MatchBy
{
    CodeThenName,
    Code,
    Name,
}

/// <summary>How boundaries find their fields.</summary>
public sealed record MatchOptions
{
    public MatchBy By { get; init; }

    /// <summary>The one column to look in, where the usual ones are not meant.</summary>
    public string? Column { get; init; }
}

/// <summary>Boundaries with their fields, those without one, and the fields that got none.</summary>
/// <param name="Pairs">In the farm's order.</param>
/// <param name="Unmatched">In the file's order.</param>
/// <param name="Without">Fields that no boundary of the file belongs to.</param>
public sealed record MatchedBoundaries(
    ImmutableArray<(Field Field, MapBoundary Boundary)> Pairs,
    ImmutableArray<MapBoundary> Unmatched,
    ImmutableArray<Field> Without);

/// <summary>Gives each boundary of a file to the field it is named after: capitals, blanks and marks do not count.</summary>
public static class BoundaryMatching
{
    // A drawn edge follows the levee's middle or its foot: common practice, no source.
    private const double UsualDifference = 0.03;

    /// <summary>Matches, and warns where a drawn edge and the farm's gross acres are far apart.</summary>
    public static Outcome<MatchedBoundaries> Match(Farm farm, ImmutableArray<MapBoundary> boundaries, MatchOptions options, string file)
    {
        if (options.Column is { } column && NoColumn(boundaries, column, file) is { } missing) return Outcome<MatchedBoundaries>.Refuse(missing);
        var claims = boundaries.Select(b => (Boundary: b, Field: Find(farm, b, options))).ToList();
        var problems = new List<Problem>();
        var pairs = ImmutableArray.CreateBuilder<(Field Field, MapBoundary Boundary)>();
        foreach (var field in farm.Fields)
        {
            var own = claims.Where(c => c.Field == field).Select(c => c.Boundary).ToList();
            foreach (var other in own.Skip(1)) problems.Add(MapFileProblems.MatchedTwice.At(other.Where, ("value", field.Code), ("other", own[0].Where)));
            if (own.Count != 1) continue;
            pairs.Add((field, own[0]));
            if (Difference(field, own[0]) is { } differs) problems.Add(differs);
        }

        if (claims.All(c => c.Field is null))
            return Outcome<MatchedBoundaries>.Refuse(MapFileProblems.NoMatch.At(file, ("value", Say.Number(boundaries.Length))));
        return Outcome<MatchedBoundaries>.Of(new MatchedBoundaries(
            pairs.ToImmutable(),
            [.. claims.Where(c => c.Field is null).Select(c => c.Boundary)],
            [.. farm.Fields.Where(f => claims.All(c => c.Field != f))]), problems);
    }

    internal static Problem? NoColumn(ImmutableArray<MapBoundary> boundaries, string column, string file)
    {
        var known = boundaries.SelectMany(b => b.Columns).Select(c => c.Column).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return known.Contains(column, StringComparer.OrdinalIgnoreCase)
            ? null
            : MapFileProblems.NoSuchColumn.At(file, ("value", column), ("known", known.Count == 0 ? "none" : string.Join(", ", known.Take(20))));
    }

    private static Field? Find(Farm farm, MapBoundary boundary, MatchOptions options)
    {
        var (codes, names) = options.Column is { } column ? ([boundary[column]], [boundary[column]]) : (boundary.Codes, boundary.Names);
        var byCode = options.By == MatchBy.Name ? null : codes.Select(c => Called(farm, f => f.Code, c)).FirstOrDefault(f => f is not null);
        return byCode is not null || options.By == MatchBy.Code ? byCode : names.Select(n => Called(farm, f => f.Name, n)).FirstOrDefault(f => f is not null);
    }

    private static Field? Called(Farm farm, Func<Field, string> word, string text)
    {
        var plain = MapBoundary.Plain(text);
        return plain.Length == 0 ? null : farm.Fields.FirstOrDefault(f => MapBoundary.Plain(word(f)) == plain);
    }

    private static Problem? Difference(Field field, MapBoundary boundary)
    {
        if (field.Gross is not { } gross || gross <= Area.Zero) return null;
        var drawn = GeodesicArea.Of(boundary.Edge);
        var share = (drawn / gross) - 1;
        return Math.Abs(share) <= UsualDifference
            ? null
            : MapFileProblems.AcresDiffer.At(boundary.Where, ("value", Say.Figure(drawn.Acres) + " ac"), ("limit", Say.Figure(gross.Acres) + " ac"), ("field", field.Code),
                ("share", (share > 0 ? "+" : "−") + Say.Number(Math.Abs(share) * 100, 1) + " %"));
    }
}
