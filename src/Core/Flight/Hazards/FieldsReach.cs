using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Hazards;

/// <summary>The land within a distance of a farm's fields, asked of many places one after another.</summary>
public sealed class FieldsReach
{
    /// <summary>How far from a field obstacles of the public file are kept unless the farm asks otherwise.</summary>
    [Source(nameof(Sources.FarmDefault), "five miles from the nearest field")]
    public static Length Usual { get; } = Length.FromMiles(5);

    private readonly LocalPlane plane;
    private readonly ImmutableArray<(ImmutableArray<PlanePart> Parts, PlaneBox Box)> fields;
    private readonly Length reach;
    private readonly (double South, double North, double Halfway) rough;

    private FieldsReach(LocalPlane plane, ImmutableArray<(ImmutableArray<PlanePart> Parts, PlaneBox Box)> fields, Length reach, (double South, double North, double Halfway) rough) =>
        (this.plane, this.fields, this.reach, this.rough) = (plane, fields, reach, rough);

    /// <summary>The reach of a farm's fields; none where not one of them has an edge or a middle.</summary>
    public static FieldsReach? Of(Farm farm, Length reach)
    {
        ImmutableArray<Boundary> edges = [.. farm.Fields.Select(Outline).OfType<Boundary>()];
        if (edges.IsEmpty) return null;
        var ground = FarmPlane.Over(edges);
        var corners = edges.SelectMany(e => e.Parts).SelectMany(p => p.Outer).ToArray();
        // A degree of latitude is never shorter than 110.5 km.
        var margin = (reach.Meters / 110_500) + 0.01;
        return new FieldsReach(ground, [.. edges.Select(e => ground.ToPlane(e)).Select(p => (p, PlaneBox.Of(p)))], reach, (corners.Min(c => c.Latitude) - margin, corners.Max(c => c.Latitude) + margin, LocalPlane.Reach / 2));
    }

    /// <summary>
    /// The nearest field is not farther than the reach from where a thing may stand: its point, or anywhere as far from it as its
    /// place is unsure.
    /// </summary>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public bool Holds(GeoPoint place, Length? within)
    {
        // Nearly every line of the whole country's file ends here.
        if (place.Latitude < rough.South - Slack(within) || place.Latitude > rough.North + Slack(within)) return false;
        if (Math.Abs(Math.IEEERemainder(place.Longitude - plane.Longitude, 360)) > rough.Halfway) return false;
        var at = plane.ToPlane(place);
        var most = reach.Meters + (within?.Meters ?? 0);
        return fields.Any(f => f.Box.Distance(at) <= most && MapGeometry.ToEdge(f.Parts, [at]).Meters <= most);
    }

    private static double Slack(Length? within) => (within?.Meters ?? 0) / 110_500;

    // A middle alone stands for its field as a single corner: nothing is known of its edge.
    private static Boundary? Outline(Field field) => field.Boundary ?? (field.Center is { } middle ? new Boundary([new BoundaryPart([middle], [])]) : null);

    private readonly record struct PlaneBox(double West, double East, double South, double North)
    {
        public static PlaneBox Of(ImmutableArray<PlanePart> parts)
        {
            var points = parts.SelectMany(p => p.Outer).ToArray();
            return new PlaneBox(points.Min(p => p.East), points.Max(p => p.East), points.Min(p => p.North), points.Max(p => p.North));
        }

        public double Distance(PlanePoint p) =>
            double.Hypot(Math.Max(0, Math.Max(West - p.East, p.East - East)), Math.Max(0, Math.Max(South - p.North, p.North - North)));
    }
}
