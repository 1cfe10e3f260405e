using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

/// <summary>A stretch flown with the gate open, where the line of flight came down.</summary>
/// <param name="Line">Its places in the order flown.</param>
/// <param name="Sown">What it laid for each meter, as the width of land that it sows at the rate asked for.</param>
public sealed record DepositRun(ImmutableArray<PlanePoint> Line, Length Sown);

/// <summary>
/// What passes laid on a field: the pattern of one pass along every pass, added up. Knows nothing of seed; all is told over the
/// rate asked for.
/// </summary>
public static class DepositMap
{
    /// <summary>More cells than this are not held: 40 MB.</summary>
    [PlainNumber("cells")]
    public const int MostCells = 10_000_000;

    /// <summary>The deposit of a flight.</summary>
    /// <param name="field">The field on a plane in meters: pieces and holes.</param>
    /// <param name="runs">What was flown.</param>
    /// <param name="shape">How a pass lays.</param>
    /// <param name="options">How finely to look.</param>
    [Source(nameof(Sources.OverlapGeometry), "pattern along each pass, by distance from its line, summed at the middles of cells")]
    public static Outcome<FieldDeposit> Of(ImmutableArray<PlanePart> field, ImmutableArray<DepositRun> runs, LateralShape shape, DepositOptions options)
    {
        if (!runs.Any(r => r.Line.Length > 1)) return Outcome<FieldDeposit>.Refuse(CoverProblems.NothingFlown.At("runs"));
        var live = LiveDeposit.Over(field, Heading(runs), shape, options.Cell ?? Coverage.CellFor(shape.Width));
        live.Whole(runs);
        var looked = live.Look(options);
        return looked.Land > Area.Zero ? Outcome<FieldDeposit>.Of(looked) : Outcome<FieldDeposit>.Refuse(CoverProblems.NoLand.At("field", ("cell", Wording.Say.Figure(live.Grid.CellMeters) + " m")));
    }

    /// <summary>Cells over a field on a plane turned with the flying.</summary>
    internal static CoverGrid GridOver(ImmutableArray<PlanePart> turned, Length cell)
    {
        var corners = turned.SelectMany(p => p.Outer).ToList();
        var (west, south) = (corners.Min(c => c.East), corners.Min(c => c.North));
        var (wide, high) = (Math.Max(corners.Max(c => c.East) - west, 1e-3), Math.Max(corners.Max(c => c.North) - south, 1e-3));
        var side = Math.Max(cell.Meters, Math.Sqrt(wide * high / MostCells) * 1.001);
        return new CoverGrid(new PlanePoint(west, south), side, (int)Math.Ceiling(wide / side), (int)Math.Ceiling(high / side), northward: true);
    }

    // Of the whole flying, there and back alike.
    private static Bearing Heading(ImmutableArray<DepositRun> runs)
    {
        double cos = 0, sin = 0;
        foreach (var line in runs.Select(r => r.Line).Where(l => l.Length > 1))
        {
            var (east, north) = (line[^1].East - line[0].East, line[^1].North - line[0].North);
            var length = Math.Sqrt((east * east) + (north * north));
            if (!(length > 0) || !double.IsFinite(length)) continue;
            (cos, sin) = (cos + (((north * north) - (east * east)) / length), sin + (2 * east * north / length));
        }

        var degrees = Math.Atan2(sin, cos) * 90 / Math.PI;
        return Bearing.FromDegrees(degrees < 0 ? degrees + 180 : degrees);
    }
}
