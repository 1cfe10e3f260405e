using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>A field with its runs and bare places drawn to scale, north up; right and down from the upper left corner.</summary>
public sealed record FlownPicture
{
    /// <summary>Units across; other figures are in the same.</summary>
    [PlainNumber("units of the drawing")]
    public const double Width = 1000;

    private const double Margin = 40;

    [PlainNumber("units of the drawing")]
    public required double Height { get; init; }

    [PlainNumber("units of the drawing")]
    public required ImmutableArray<ImmutableArray<(double X, double Y)>> Rings { get; init; }

    [PlainNumber("units of the drawing")]
    public required ImmutableArray<ImmutableArray<(double X, double Y)>> Runs { get; init; }

    [PlainNumber("units of the drawing")]
    public required ImmutableArray<(double X, double Y)> Places { get; init; }

    /// <summary>Width of a swath.</summary>
    [PlainNumber("units of the drawing")]
    public required double Swath { get; init; }

    /// <summary>Draws it.</summary>
    /// <param name="field">Its edge.</param>
    /// <param name="swath">Width of a pass.</param>
    /// <param name="runs">Lines flown.</param>
    /// <param name="places">Places to walk to.</param>
    public static FlownPicture Of(Boundary field, Length swath, IEnumerable<IEnumerable<GeoPoint>> runs, IEnumerable<GeoPoint> places)
    {
        var plane = FarmPlane.Over(field);
        var parts = plane.ToPlane(field);
        var corners = parts.SelectMany(p => p.Outer).ToList();
        var (west, north) = (corners.Min(c => c.East), corners.Max(c => c.North));
        var (wide, high) = (Math.Max(1, corners.Max(c => c.East) - west), Math.Max(1, north - corners.Min(c => c.North)));

        // A long field is kept within a page that is not much higher than it is wide.
        var scale = Math.Min((Width - (2 * Margin)) / wide, 1.2 * Width / high);
        var left = (Width - (wide * scale)) / 2;
        (double X, double Y) Put(PlanePoint p) => (left + ((p.East - west) * scale), Margin + ((north - p.North) * scale));
        return new FlownPicture
        {
            Height = (high * scale) + (2 * Margin),
            Rings = [.. parts.SelectMany(p => p.Holes.Prepend(p.Outer)).Select(r => (ImmutableArray<(double, double)>)[.. r.Select(Put)])],
            Runs = [.. runs.Select(r => (ImmutableArray<(double, double)>)[.. r.Select(p => Put(plane.ToPlane(p)))])],
            Places = [.. places.Select(p => Put(plane.ToPlane(p)))],
            Swath = swath.Meters * scale,
        };
    }
}
