using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>
/// What was really flown over a field: how often each cell, what was skipped, and where to walk. Works on the places of the middle
/// of the swath on the ground, however they were found; knows nothing of seed, wind or throw.
/// </summary>
public static class Coverage
{
    /// <summary>More cells than this are not held: 40 MB, and 2,400 acres at half a meter.</summary>
    [PlainNumber("cells")]
    public const int MostCells = 40_000_000;

    /// <summary>A count takes one byte.</summary>
    [PlainNumber("passes over one cell")]
    public const int MostTimes = byte.MaxValue;

    private const double FinestCell = 0.5;
    private const double CellsInSwath = 20;
    private const double FewestCellsInSwath = 4;

    /// <summary>Side of the cells where none is asked for: a twentieth of the swath, half a meter at most.</summary>
    [Source(nameof(Sources.CellCounting), "cell ≤ swath / 20")]
    public static Length CellFor(Length swath) => Length.FromMeters(Math.Min(FinestCell, swath.Meters / CellsInSwath));

    /// <summary>Coverage of a field by runs flown with the gate open.</summary>
    /// <param name="field">The field on a plane in meters: pieces and holes.</param>
    /// <param name="runs">For each run the places of the middle of its swath on the ground, in flown order.</param>
    /// <param name="swath">Width of the swath, half of it to either side unless the options say that it leans.</param>
    /// <param name="options">How finely to look; none for the usual.</param>
    [Source(nameof(Sources.CellCounting))]
    public static Outcome<FieldCover> Of(ImmutableArray<PlanePart> field, ImmutableArray<ImmutableArray<PlanePoint>> runs, Length swath, CoverOptions? options = null) =>
        Of(field, runs, swath, options ?? new CoverOptions(), wide: true);

    internal static Outcome<FieldCover> Of(ImmutableArray<PlanePart> field, ImmutableArray<ImmutableArray<PlanePoint>> runs, Length swath, CoverOptions options, bool wide)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        return GridOver(field, runs, swath, options).Then(grid => Count(grid, field, runs, swath, options, wide));
    }

    private static Outcome<CoverGrid> GridOver(ImmutableArray<PlanePart> field, ImmutableArray<ImmutableArray<PlanePoint>> runs, Length swath, CoverOptions options)
    {
        if (!runs.Any(r => r.Length > 1)) return Outcome<CoverGrid>.Refuse(CoverProblems.NothingFlown.At("runs"));
        var cell = options.Cell ?? CellFor(swath);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(cell.Meters, 0, nameof(options));
        if (cell * FewestCellsInSwath > swath)
            return Outcome<CoverGrid>.Refuse(CoverProblems.CellTooLarge.At("cell", ("value", Said(cell)), ("swath", Said(swath)), ("limit", Said(swath / FewestCellsInSwath))));
        var (west, south, east, north) = Box(field);
        var (columns, rows) = (Math.Max(1, Math.Ceiling((east - west) / cell.Meters)), Math.Max(1, Math.Ceiling((north - south) / cell.Meters)));
        if (!(columns * rows <= MostCells))
            return Outcome<CoverGrid>.Refuse(CoverProblems.TooManyCells.At("cell", ("cell", Said(cell)), ("value", Wording.Say.Figure(columns * rows)), ("limit", Wording.Say.Figure(MostCells))));
        return Outcome<CoverGrid>.Of(new CoverGrid(new PlanePoint(west, south), cell.Meters, (int)columns, (int)rows, MostlyNorth(runs)));
    }

    private static Outcome<FieldCover> Count(CoverGrid grid, ImmutableArray<PlanePart> field, ImmutableArray<ImmutableArray<PlanePoint>> runs, Length swath, CoverOptions options, bool wide)
    {
        var lines = FieldLines.Of(grid, field);
        var cells = new byte[grid.Size];
        var counted = CoverCount.Run(cells, grid, lines, runs, Reach.About(swath, options.Right), wide);
        if (counted.Tally.Inside == 0) return Outcome<FieldCover>.Refuse(CoverProblems.NoLand.At("field", ("cell", Said(grid.Cell))));
        if (counted.TooOften) return Outcome<FieldCover>.Refuse(CoverProblems.FlownTooOften.At("runs", ("limit", Wording.Say.Number(MostTimes))));
        var places = ThinPlaces.Find(CellStrips.Bare(cells, grid, lines), grid, runs, options);
        return Outcome<FieldCover>.Of(new FieldCover(grid, cells, lines, Shares(grid, counted, CoverSides.Count(cells, grid, lines)), places, counted.LeftOut));
    }

    private static CoverShares Shares(CoverGrid grid, CoverCount counted, CoverSides sides)
    {
        var tally = counted.Tally;
        Area Land(long cells) => cells * grid.CellArea;
        CountedArea Counted(long cells, long along) => new(Land(cells), along * 0.5 * grid.CellArea);
        var swept = counted.SweptCells * grid.CellArea;
        var inside = Land(tally.Once + tally.More + tally.Excess);
        var outside = new CountedArea(swept > inside ? swept - inside : Area.Zero, Land(sides.Once + sides.More) * 0.5);
        return new CoverShares(Land(tally.Inside), Counted(tally.None, sides.None), Counted(tally.Once, sides.Once), Counted(tally.More, sides.More), Land(tally.Excess), swept, outside);
    }

    private static (double West, double South, double East, double North) Box(ImmutableArray<PlanePart> field)
    {
        var corners = field.SelectMany(p => p.Outer).ToList();
        return corners.Count == 0 ? default : (corners.Min(c => c.East), corners.Min(c => c.North), corners.Max(c => c.East), corners.Max(c => c.North));
    }

    private static bool MostlyNorth(ImmutableArray<ImmutableArray<PlanePoint>> runs)
    {
        double east = 0, north = 0;
        foreach (var run in runs.Where(r => r.Length > 1))
        {
            east += Math.Abs(run[^1].East - run[0].East);
            north += Math.Abs(run[^1].North - run[0].North);
        }

        return north >= east;
    }

    private static string Said(Length length) => Wording.Say.Figure(length.Meters) + " m";
}
