using System.Globalization;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>One drawn area as it stands in a file, on the file's own grid.</summary>
/// <param name="Where">File and place in it.</param>
/// <param name="Name">What the file calls it; empty where it has no name.</param>
/// <param name="Columns">Everything else the file says about it.</param>
/// <param name="Parts">Rings as drawn: x as longitude, y as latitude.</param>
internal sealed record DrawnFeature(string Where, string Name, ImmutableArray<(string Column, string Text)> Columns, ImmutableArray<BoundaryPart> Parts)
{
    public int Points => Parts.Sum(p => p.Outer.Length + p.Holes.Sum(h => h.Length));

    /// <summary>The boundary on the earth, or what is wrong with it.</summary>
    public Outcome<MapBoundary> Place(Grid grid)
    {
        Problem? outside = null;
        ImmutableArray<BoundaryPart> placed = [.. Parts.Select(p => new BoundaryPart(Ring(p.Outer), [.. p.Holes.Select(Ring)]))];
        return outside is not null
            ? Outcome<MapBoundary>.Refuse(outside)
            : BoundaryDrawing.Create(placed, Where).Map(edge => new MapBoundary(Where, Name, Columns, edge));

        ImmutableArray<GeoPoint> Ring(ImmutableArray<GeoPoint> ring)
        {
            var places = ImmutableArray.CreateBuilder<GeoPoint>(ring.Length);
            foreach (var corner in ring)
            {
                if (grid.ToEarth(corner.Longitude, corner.Latitude) is { } place) places.Add(place);
                else outside ??= MapFileProblems.OutsideGrid.At(Where, ("value", string.Create(CultureInfo.InvariantCulture, $"{corner.Longitude:R}, {corner.Latitude:R}")), ("grid", grid.Name));
            }

            return places.ToImmutable();
        }
    }
}

/// <summary>Everything drawn in a file, the grid it is drawn on, and what was wrong on the way.</summary>
internal sealed record DrawnLayer(Grid Grid, ImmutableArray<DrawnFeature> Features, ImmutableArray<Problem> Problems)
{
    /// <summary>All that could be read, and the problems of the rest; refused where nothing could.</summary>
    public Outcome<ImmutableArray<MapBoundary>> Place()
    {
        var problems = Problems.ToBuilder();
        var good = ImmutableArray.CreateBuilder<MapBoundary>(Features.Length);
        foreach (var placed in Features.Select(f => f.Place(Grid)))
        {
            problems.AddRange(placed.Problems);
            if (placed.HasValue) good.Add(placed.Value);
        }

        return good.Count > 0
            ? Outcome<ImmutableArray<MapBoundary>>.Of(good.ToImmutable(), problems)
            : Outcome<ImmutableArray<MapBoundary>>.Refuse(problems);
    }
}

/// <summary>Gathers drawn areas while a file is read, and keeps its limits.</summary>
internal sealed class Drawing(string file)
{
    private readonly ImmutableArray<DrawnFeature>.Builder features = ImmutableArray.CreateBuilder<DrawnFeature>();
    private readonly ImmutableArray<Problem>.Builder problems = ImmutableArray.CreateBuilder<Problem>();
    private long points;
    private int skipped;

    public string File { get; } = file;

    /// <summary>One of the limits was passed: nothing more need be read.</summary>
    public bool IsFull { get; private set; }

    public void Add(DrawnFeature feature)
    {
        if (IsFull) return;
        if (features.Count >= MapFileLimits.MaxFeatures) Fill(MapFileProblems.TooManyFeatures, MapFileLimits.MaxFeatures);
        if (CountPoints(feature.Points)) features.Add(feature);
    }

    /// <summary>Adds one whose corners were counted while they were read.</summary>
    public void AddCounted(DrawnFeature feature)
    {
        points -= feature.Points;
        Add(feature);
    }

    /// <summary>Counts corners before they are kept; false where there are too many.</summary>
    public bool CountPoints(int more)
    {
        points += more;
        if (points > MapFileLimits.MaxPoints) Fill(MapFileProblems.TooManyPoints, MapFileLimits.MaxPoints);
        return !IsFull;
    }

    public void Skip() => skipped++;

    public void Add(Problem problem) => problems.Add(problem);

    public void Add(IEnumerable<Problem> more) => problems.AddRange(more);

    /// <summary>All that was gathered, or why there is nothing to use.</summary>
    /// <param name="grid">Grid of the file.</param>
    /// <param name="wanted">What the file should have held, for the problem of an empty one.</param>
    public Outcome<DrawnLayer> Finish(Grid grid, string wanted)
    {
        if (skipped > 0) problems.Add(MapFileProblems.SkippedShapes.At(File, ("value", Wording.Say.Number(skipped))));
        if (IsFull) return Outcome<DrawnLayer>.Refuse(problems);
        if (features.Count == 0 && !problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse))
            problems.Add(MapFileProblems.NothingDrawn.At(File, ("wanted", wanted)));
        return features.Count == 0
            ? Outcome<DrawnLayer>.Refuse(problems)
            : Outcome<DrawnLayer>.Of(new DrawnLayer(grid, features.ToImmutable(), problems.ToImmutable()));
    }

    private void Fill(ProblemKind kind, int limit)
    {
        if (IsFull) return;
        IsFull = true;
        problems.Add(kind.At(File, ("limit", Wording.Say.Number(limit))));
    }
}
