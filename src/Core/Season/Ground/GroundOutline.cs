using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Ground;

/// <summary>Where a field lies on the earth, for a map.</summary>
/// <param name="Edge">Its edge.</param>
/// <param name="Drawn">Somebody drew it; otherwise it is a rectangle of its acres about its middle.</param>
public sealed record GroundOutline(Boundary Edge, bool Drawn)
{
    /// <summary>The outline of a field; none where neither an edge nor a middle is known.</summary>
    public static GroundOutline? Of(Field field)
    {
        if (field.Boundary is { } edge) return new GroundOutline(edge, Drawn: true);
        if (FieldPlace.Middle(field) is not { } middle) return null;
        var along = field.PassLength ?? FieldFlight.UsualPass;
        var across = Length.FromMeters((field.Gross ?? field.Net).SquareMeters / along.Meters);
        var rectangle = MapGeometry.Rectangle(along, across, field.LongAxis ?? Bearing.FromDegrees(0));
        var plane = FarmPlane.At(middle);
        return new GroundOutline(new Boundary([new BoundaryPart([.. rectangle.Outer.Select(plane.ToPlace)], [])]), Drawn: false);
    }
}
