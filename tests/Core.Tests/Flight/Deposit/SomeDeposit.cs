using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

/// <summary>Flights over fields, and what a pattern lays on a cell by the plainest sum there is.</summary>
internal static class SomeDeposit
{
    public static readonly double[] P1 = [0.0, 0.3, 0.8, 1.6, 2.7, 3.9, 4.8, 5.3, 5.6, 5.7, 5.8, 5.7, 5.6, 5.3, 4.8, 3.9, 2.7, 1.6, 0.8, 0.3, 0.0];
    public static readonly double[] P2 = [0.0, 0.2, 0.6, 1.3, 2.4, 3.8, 5.2, 6.3, 6.9, 6.6, 5.9, 5.3, 4.9, 4.6, 4.2, 3.6, 2.8, 1.9, 1.1, 0.5, 0.1];

    public static LateralShape Trays(double[] grams, double offset = 0) => LateralShape.Of([.. grams.Select(g => SoakedSeed.FromKilograms(g / 1000))], Length.FromMeters(1), Length.FromMeters(offset));

    /// <summary>Straight north over a field 400 m long, a swath apart, wide enough that all of the field lies well within the flight.</summary>
    public static ImmutableArray<DepositRun> Straight(double swath, FlyingMode mode, double width)
    {
        var runs = ImmutableArray.CreateBuilder<DepositRun>();
        for (var k = -4; k * swath < width + (4 * swath); k++)
        {
            ImmutableArray<PlanePoint> line = [new PlanePoint(k * swath, -50), new PlanePoint(k * swath, 200), new PlanePoint(k * swath, 450)];
            runs.Add(new DepositRun(mode == FlyingMode.BackAndForth && k % 2 != 0 ? [.. line.Reverse()] : line, Length.FromMeters(swath)));
        }

        return runs.ToImmutable();
    }

    public static ImmutableArray<DepositRun> Runs(ImmutableArray<ImmutableArray<PlanePoint>> lines, double sown) => [.. lines.Select(l => new DepositRun(l, Length.FromMeters(sown)))];

    public static LiveDeposit Live(ImmutableArray<PlanePart> field, LateralShape shape, double heading, double cell, bool wide = true)
    {
        var turned = new TurnedPlane(Bearing.FromDegrees(heading));
        return new LiveDeposit(field, Bearing.FromDegrees(heading), shape, DepositMap.GridOver(turned.To(field), Length.FromMeters(cell)), wide);
    }

    public static LiveDeposit Whole(ImmutableArray<PlanePart> field, ImmutableArray<DepositRun> runs, LateralShape shape, double heading, double cell, bool wide = true)
    {
        var live = Live(field, shape, heading, cell, wide);
        live.Whole(runs);
        return live;
    }

    public static LiveDeposit Singly(ImmutableArray<PlanePart> field, ImmutableArray<DepositRun> runs, LateralShape shape, double heading, double cell)
    {
        var live = Live(field, shape, heading, cell);
        foreach (var run in runs)
        {
            live.Begin(run.Sown);
            foreach (var at in run.Line) live.Add(at);
            live.End();
        }

        return live;
    }

    /// <summary>The largest difference between two maps, cell by cell, over the rate asked for.</summary>
    public static double Apart(LiveDeposit a, Func<int, int, double> cell)
    {
        var most = 0.0;
        for (var line = 0; line < a.Grid.Along; line++)
        {
            for (var across = 0; across < a.Grid.Across; across++) most = Math.Max(most, Math.Abs(Cell(a, line, across) - cell(line, across)));
        }

        return most;
    }

    public static double Cell(LiveDeposit map, int line, int across) => map.Cells[line, across];

    /// <summary>Every piece of every run against every cell near it, in plain numbers: within the quadrilateral, the pattern at the distance from the line.</summary>
    public static double[,] Plainly(LiveDeposit map, ImmutableArray<DepositRun> runs, LateralShape shape, double heading)
    {
        var grid = map.Grid;
        var laid = new double[grid.Along, grid.Across];
        var turned = new TurnedPlane(Bearing.FromDegrees(heading));
        var edges = new SwathEdges(grid, new Reach(-shape.From.Meters, shape.Until.Meters), wide: false);
        foreach (var run in runs)
        {
            if (!edges.TryLay(turned.To(run.Line).AsSpan())) throw new ArgumentException("A run bends back.", nameof(runs));
            for (var i = 0; i + 1 < edges.Places; i++) Piece(laid, grid, edges, i, (shape, run.Sown.Meters));
        }

        return laid;
    }

    private static void Piece(double[,] laid, CoverGrid grid, SwathEdges edges, int i, (LateralShape Shape, double Sown) pattern)
    {
        (double Along, double Across)[] ring =
        [
            (edges.LeftAlong[i], edges.LeftAcross[i]), (edges.RightAlong[i], edges.RightAcross[i]),
            (edges.RightAlong[i + 1], edges.RightAcross[i + 1]), (edges.LeftAlong[i + 1], edges.LeftAcross[i + 1]),
        ];
        var way = edges.Way(i);
        var (top, bottom) = ((int)Math.Max(0, ring.Min(c => c.Along) - 1), (int)Math.Min(grid.Along - 1.0, ring.Max(c => c.Along) + 1));
        var (first, last) = ((int)Math.Max(0, ring.Min(c => c.Across) - 1), (int)Math.Min(grid.Across - 1.0, ring.Max(c => c.Across) + 1));
        for (var line = top; line <= bottom; line++)
        {
            for (var cell = first; cell <= last; cell++)
            {
                var (along, across) = (line + 0.5, cell + 0.5);
                if (!Holds(ring, along, across)) continue;
                var right = ((across - edges.Across[i]) * way.Along) - ((along - edges.Along[i]) * way.Across);
                laid[line, cell] += pattern.Sown * pattern.Shape.At(Length.FromMeters(right * grid.CellMeters));
            }
        }
    }

    // Even-odd, by a ray across.
    private static bool Holds((double Along, double Across)[] ring, double along, double across)
    {
        var inside = false;
        for (var k = 0; k < ring.Length; k++)
        {
            var (a, b) = (ring[k], ring[(k + 1) % ring.Length]);
            if (a.Along > along != b.Along > along && across < a.Across + ((along - a.Along) * (b.Across - a.Across) / (b.Along - a.Along))) inside = !inside;
        }

        return inside;
    }
}
