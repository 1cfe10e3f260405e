using Watersown.Flight.Cover;
using Watersown.Flight.Deposit;

namespace Watersown.Bench;

/// <summary>What passes lay on each cell, beside plain numbers that go through the same quadrilaterals line by line.</summary>
internal static class Laying
{
    public static void Measure(Flight flight)
    {
        var heading = Bearing.FromDegrees(flight.Name switch { "along x" => 90, "33 degrees" => 33, _ => 0 });
        var shape = LateralShape.Supposed(flight.Swath);
        var turned = new TurnedPlane(heading);
        var grid = DepositMap.GridOver(turned.To(flight.Field), Flight.Cell);
        var live = new LiveDeposit(flight.Field, heading, shape, grid, wide: true);
        var plain = new LiveDeposit(flight.Field, heading, shape, grid, wide: false);
        Console.WriteLine();
        Console.WriteLine($"rate map, {flight.Name}: {grid.Columns} x {grid.Rows} cells turned with the flying, pattern {shape.Width.Meters:0.0} m wide, a trapezoid");
        Console.WriteLine("| what | best, ms | median, ms | times as long |");
        Console.WriteLine("| --- | ---: | ---: | ---: |");
        var ours = Counting.Say("Core: from fixes to the rate of every cell, with clearing them", 200, () => Whole(live, flight), null);
        Counting.Say("  of it: clearing the cells", 200, () => Clear(live), ours);
        Counting.Say("Core: looking: mean, CV, share near the rate, thin places", 50, () => live.Look(new DepositOptions()), ours);
        var fixes = flight.Runs.Sum(r => r.Length);
        var one = Counting.Say("Core: one fix after the other, as they come in", 100, () => Singly(live, flight), ours);
        Console.WriteLine($"| a fix as it comes in: {one * 1000 / fixes:0.000} microseconds with its share of clearing |  |  |  |");
        Counting.Say("Core, plain numbers", 10, () => Whole(plain, flight), ours);
        var reference = new double[grid.Size];
        Counting.Say("scalar reference, the same quadrilaterals", 5, () => Reference(reference, grid, turned, flight, shape), ours);
        Whole(live, flight);
        Tell(live, (grid, reference), "whole");
        Singly(live, flight);
        Tell(live, (grid, reference), "fix by fix");
    }

    private static void Clear(LiveDeposit live)
    {
        for (var band = 0; band < live.Cells.Bands; band++) live.Cells.Clear(band);
    }

    private static void Whole(LiveDeposit live, Flight flight) => live.Whole([.. flight.Runs.Select(r => new DepositRun(r, flight.Swath))]);

    private static void Singly(LiveDeposit live, Flight flight)
    {
        Clear(live);
        foreach (var run in flight.Runs)
        {
            live.Begin(flight.Swath);
            foreach (var at in run) live.Add(at);
            live.End();
        }
    }

    private static void Tell(LiveDeposit live, (CoverGrid Grid, double[] Cells) reference, string how)
    {
        var (most, sum, theirs) = (0.0, 0.0, 0.0);
        for (var line = 0; line < reference.Grid.Along; line++)
        {
            for (var i = 0; i < reference.Grid.Across; i++)
            {
                double a = live.Cells[line, i], b = reference.Cells[(line * reference.Grid.Stride) + i];
                most = Math.Max(most, Math.Abs(a - b));
                (sum, theirs) = (sum + a, theirs + b);
            }
        }

        Console.WriteLine($"{how}: the cell farthest from the reference is {most:0.0e+0} of the rate off, the sum of all {Math.Abs(sum - theirs) / theirs:0.0e+0}");
    }

    // Each quadrilateral line by line between its two edges there; what the pattern lays at the distance of a cell's middle from the line.
    private static void Reference(double[] cells, CoverGrid grid, TurnedPlane turned, Flight flight, LateralShape shape)
    {
        Array.Clear(cells);
        var edges = new SwathEdges(grid, new Reach(-shape.From.Meters, shape.Until.Meters), wide: false);
        foreach (var run in flight.Runs)
        {
            if (!edges.TryLay(turned.To(run).AsSpan())) throw new InvalidOperationException("A run of the bench bends back.");
            for (var i = 0; i + 1 < edges.Places; i++)
            {
                (double Along, double Across)[] ring =
                [
                    (edges.LeftAlong[i], edges.LeftAcross[i]), (edges.RightAlong[i], edges.RightAcross[i]),
                    (edges.RightAlong[i + 1], edges.RightAcross[i + 1]), (edges.LeftAlong[i + 1], edges.LeftAcross[i + 1]),
                ];
                var (from, end) = (Line(ring.Min(c => c.Along), grid.Along), Line(ring.Max(c => c.Along), grid.Along));
                for (var line = from; line < end; line++) Lay(cells, grid, (edges, i), ring, line, (flight.Swath.Meters, shape));
            }
        }
    }

    private static void Lay(double[] cells, CoverGrid grid, (SwathEdges Edges, int Piece) piece, (double Along, double Across)[] ring, int line, (double Sown, LateralShape Shape) laid)
    {
        var along = line + 0.5;
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var k = 0; k < 4; k++)
        {
            var (a, b) = (ring[k], ring[(k + 1) % 4]);
            if (a.Along > b.Along) (a, b) = (b, a);
            if (!(a.Along <= along && along < b.Along)) continue;
            var at = a.Across + ((along - a.Along) * (b.Across - a.Across) / (b.Along - a.Along));
            (low, high) = (Math.Min(low, at), Math.Max(high, at));
        }

        if (!(high >= low)) return;
        var way = piece.Edges.Way(piece.Piece);
        var (first, last) = ((int)Math.Clamp(Math.Ceiling(low - 0.5), 0, grid.Across), (int)Math.Clamp(Math.Ceiling(high - 0.5), 0, grid.Across));
        for (var cell = first; cell < last; cell++)
        {
            var right = ((cell + 0.5 - piece.Edges.Across[piece.Piece]) * way.Along) - ((along - piece.Edges.Along[piece.Piece]) * way.Across);
            cells[(line * grid.Stride) + cell] += laid.Sown * laid.Shape.At(Length.FromMeters(right * grid.CellMeters));
        }
    }

    private static int Line(double along, int lines) => (int)Math.Clamp(Math.Ceiling(along - 0.5), 0, lines);
}
