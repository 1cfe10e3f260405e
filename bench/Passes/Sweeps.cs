using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using Watersown.Flight;
using Watersown.Flight.Laying;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>Every quarter of a degree of real fields: passes and length on each.</summary>
internal static class Sweeps
{
    // The library is asked for few headings and fields, and its time told for as many as the sweep looks at.
    private const int LibraryHeadings = 8;
    private const int LibraryFields = 20;

    public static void Measure()
    {
        Console.WriteLine();
        Console.WriteLine($"{HeadingSweep.Headings} headings of every field, swath 50 ft; one thread");
        Measured.Row("fields", "what", "best, µs a field", "median", "µs a heading", "times the library", "worst length off, m");
        Measured.Row("---", "---", "---:", "---:", "---:", "---:", "---:");
        foreach (var file in RealFields.Farmed) Table(file);
    }

    private static void Table(string file)
    {
        ImmutableArray<ImmutableArray<PlanePart>> fields = [.. RealFields.Of(file).Select(f => f.Land)];
        var few = fields.Take(LibraryFields).ToImmutableArray();
        var library = Measured.Time(() =>
        {
            foreach (var field in few) Library(field);
        });
        var scale = few.Length * (double)LibraryHeadings / HeadingSweep.Headings;
        var first = library.Median.TotalMicroseconds / scale;
        Say(file, "NetTopologySuite, pass lines cut to the polygon", library.Best.TotalMicroseconds / scale, first, first, null);
        var laid = Measured.Time(() =>
        {
            foreach (var field in few)
            {
                for (var k = 0; k < HeadingSweep.Headings; k += HeadingSweep.Headings / LibraryHeadings) Passes.Lay(field, Common.Pace.Swath, Bearing.FromDegrees(k / 4.0));
            }
        });
        Say(file, "Passes.Lay, crossings sorted and paired", laid.Best.TotalMicroseconds / scale, laid.Median.TotalMicroseconds / scale, first, null);
        var swept = Measured.Time(() =>
        {
            foreach (var field in fields) HeadingSweep.Of(field, Common.Pace);
        });
        Say(file, "HeadingSweep.Of", swept.Best.TotalMicroseconds / fields.Length, swept.Median.TotalMicroseconds / fields.Length, first, few.Max(Off));
        var searched = Measured.Time(() =>
        {
            foreach (var field in fields) HeadingSearch.Quickest(field, Common.Pace);
        });
        Say(file, "HeadingSearch.Quickest, the sweep in it", searched.Best.TotalMicroseconds / fields.Length, searched.Median.TotalMicroseconds / fields.Length, first, null);
    }

    private static void Say(string file, string what, double best, double median, double first, double? off) => Measured.Row(
        file, what, Measured.Figure(best, "N1"), Measured.Figure(median, "N1"), Measured.Figure(median / HeadingSweep.Headings, "0.000"), Measured.Figure(first / median, "N0"), off is { } o ? Measured.Figure(o, "0.0e+0") : "-");

    private static double Off(ImmutableArray<PlanePart> field)
    {
        var sweep = HeadingSweep.Of(field, Common.Pace);
        var lengths = Library(field);
        return Enumerable.Range(0, LibraryHeadings).Max(i => Math.Abs(lengths[i] - sweep[i * HeadingSweep.Headings / LibraryHeadings].Open.Meters));
    }

    private static double[] Library(ImmutableArray<PlanePart> field)
    {
        var factory = new GeometryFactory();
        LinearRing Ring(ImmutableArray<PlanePoint> ring) => factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.East, p.North))]);
        var polygon = factory.CreatePolygon(Ring(field[0].Outer), [.. field[0].Holes.Select(Ring)]);
        var narrowest = Passes.Narrowest(field).Heading.Degrees;
        return [.. Enumerable.Range(0, LibraryHeadings).Select(i => Cut(factory, polygon, field, Bearing.FromDegrees((narrowest + (i * 180.0 / LibraryHeadings)) % 180)))];
    }

    private static double Cut(GeometryFactory factory, Polygon polygon, ImmutableArray<PlanePart> field, Bearing heading)
    {
        var (sin, cos) = Math.SinCos(heading.Radians);
        var rights = field[0].Outer.Select(p => p.RightOf(heading)).ToList();
        var aheads = field[0].Outer.Select(p => p.AheadOf(heading)).ToList();
        var count = Passes.Count(Length.FromMeters(rights.Max() - rights.Min()), Common.Pace.Swath);
        var spacing = (rights.Max() - rights.Min()) / count;
        Coordinate At(double right, double ahead) => new((ahead * sin) + (right * cos), (ahead * cos) - (right * sin));
        var lines = factory.CreateMultiLineString([.. Enumerable.Range(0, count).Select(i => rights.Min() + ((i + 0.5) * spacing)).Select(right =>
            factory.CreateLineString([At(right, aheads.Min() - 1), At(right, aheads.Max() + 1)]))]);
        return OverlayNG.Overlay(lines, polygon, NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection).Length;
    }
}
