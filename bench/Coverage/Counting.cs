using System.Diagnostics;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;
using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>How often each cell was flown over, beside others that can tell it.</summary>
internal static class Counting
{
    public static void Measure(Flight flight)
    {
        var grid = new CoverGrid(new PlanePoint(0, 0), Flight.Cell.Meters, 2000, 1214, flight.Name != "along x");
        var lines = FieldLines.Of(grid, flight.Field);
        var (cells, plain) = (new byte[grid.Size], new byte[grid.Size]);
        CoverCount Count(byte[] into, bool wide)
        {
            Array.Clear(into);
            return CoverCount.Run(into, grid, lines, flight.Runs, Reach.About(flight.Swath, Length.Zero), wide);
        }

        var quads = flight.Quads(grid);
        Console.WriteLine();
        Console.WriteLine($"{flight.Name}: {grid.Columns} x {grid.Rows} cells, {flight.Runs.Length} runs, {flight.Runs.Sum(r => r.Length)} fixes, {quads.Count} quadrilaterals, swath {flight.Swath.Meters:0.00} m");
        Console.WriteLine("| what | best, ms | median, ms | times as long |");
        Console.WriteLine("| --- | ---: | ---: | ---: |");
        var ours = Say("Core: from fixes to counts and areas", 200, () => Count(cells, wide: true), null);
        Say("  of it: laying the edges of the swath", 200, () => Lay(grid, flight), ours);
        Say("Core, the field's own lines, once a field", 100, () => FieldLines.Of(grid, flight.Field), ours);
        Say("Core, plain numbers", 20, () => Count(plain, wide: false), ours);
        Say("filling as many bytes", 200, () => plain.AsSpan().Fill(1), ours);
        byte[] theirs = [];
        if (Gdal.IsThere)
        {
            var gdal = new Gdal(grid, quads);
            Say("GDAL in process, the same quadrilaterals, sums in memory", 15, gdal.Burn, ours);
            theirs = gdal.Cells();
        }

        Area skip = default, overlap = default;
        Say("NetTopologySuite buffer, cascaded union, both areas", 5, () => (skip, overlap) = Union(flight, cascaded: true, areas: true), ours);
        Say("NetTopologySuite buffer, OverlayNG union, no areas", 5, () => Union(flight, cascaded: false, areas: false), ours);
        Tell(grid, flight, Count(cells, wide: true), (cells, plain, theirs), (skip, overlap), Count(plain, wide: false));
    }

    private static void Lay(CoverGrid grid, Flight flight)
    {
        var lines = new FlownLines(flight.Runs, new SwathEdges(grid, Reach.About(flight.Swath, Length.Zero), wide: true));
        while (lines.Next())
        {
        }
    }

    private static void Tell(CoverGrid grid, Flight flight, CoverCount count, (byte[] Wide, byte[] Plain, byte[] Gdal) cells, (Area Skip, Area Overlap) union, CoverCount plain)
    {
        var lines = grid.Along * grid.Stride;
        var apart = 0L;
        if (cells.Gdal.Length > 0)
        {
            for (var row = 0; row < grid.Rows; row++)
            {
                for (var column = 0; column < grid.Columns; column++) apart += cells.Gdal[((grid.Rows - 1 - row) * grid.Columns) + column] == cells.Wide[grid.Index(column, row)] ? 0 : 1;
            }
        }

        var area = grid.CellArea;
        Console.WriteLine($"cells that differ: vectors and plain numbers {cells.Wide.AsSpan(0, lines).CommonPrefixLength(cells.Plain.AsSpan(0, lines)) - lines}, GDAL {(cells.Gdal.Length > 0 ? apart : "not there")}; tallies alike: {count.Tally == plain.Tally}");
        Console.WriteLine($"skipped {(count.Tally.None * area).SquareMeters:0} m² (buffer and union {union.Skip.SquareMeters:0}), overlapped {(count.Tally.More * area).SquareMeters:0} m² ({union.Overlap.SquareMeters:0}), field {(count.Tally.Inside * area).SquareMeters:0} m²; memory held {grid.Size / 1e6:0.0} MB");
        Console.WriteLine($"fixes left out: {count.LeftOut} of {flight.Runs.Sum(r => r.Length)}");
    }

    // Flat ends and mitred corners, as the quadrilaterals have.
    private static (Area Skip, Area Overlap) Union(Flight flight, bool cascaded, bool areas)
    {
        var factory = GeometryFactory.Default;
        var manner = new NetTopologySuite.Operation.Buffer.BufferParameters(8, NetTopologySuite.Operation.Buffer.EndCapStyle.Flat, NetTopologySuite.Operation.Buffer.JoinStyle.Mitre, 5);
        Geometry[] swaths = [.. flight.Runs.Select(r => factory.CreateLineString([.. r.Select(p => new Coordinate(p.East, p.North))]).Buffer(flight.Swath.Meters / 2, manner))];
        var union = cascaded ? CascadedPolygonUnion.Union(swaths) : UnaryUnionNG.Union(swaths, new PrecisionModel(PrecisionModels.Floating));
        if (!areas) return default;
        var field = factory.CreatePolygon([.. flight.Field[0].Outer.Append(flight.Field[0].Outer[0]).Select(p => new Coordinate(p.East, p.North))]);
        var covered = OverlayNGRobust.Overlay(union, field, SpatialFunction.Intersection).Area;
        Geometry[] twice = [.. swaths.Zip(swaths.Skip(1), (a, b) => OverlayNGRobust.Overlay(a, b, SpatialFunction.Intersection))];
        var overlap = OverlayNGRobust.Overlay(CascadedPolygonUnion.Union(twice), field, SpatialFunction.Intersection).Area;
        return (Area.FromSquareMeters(field.Area - covered), Area.FromSquareMeters(overlap));
    }

    public static double Say(string what, int times, Action action, double? ours)
    {
        for (var i = 0; i < times; i++) action();
        Thread.Sleep(200); // the compiler's second thoughts
        for (var i = 0; i < times; i++) action();
        var taken = new double[times];
        for (var i = 0; i < times; i++)
        {
            var from = Stopwatch.GetTimestamp();
            action();
            taken[i] = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        }

        Array.Sort(taken);
        Console.WriteLine($"| {what} | {taken[0]:0.000} | {taken[times / 2]:0.000} | {taken[0] / (ours ?? taken[0]):0.00} |");
        return ours ?? taken[0];
    }
}
