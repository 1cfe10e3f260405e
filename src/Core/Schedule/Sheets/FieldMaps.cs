using Watersown.Flight;
using Watersown.Land;

namespace Watersown.Schedule.Sheets;

/// <summary>Gathers what a flight map shows from the farm's records.</summary>
public static class FieldMaps
{
    /// <summary>The map of a field; none where neither its edge nor its middle is known.</summary>
    [Source(nameof(Sources.WidthTheorem), "extent along and across the run wished")]
    public static FieldMap? Of(Field field, Aeroplane aeroplane, FieldPlace place)
    {
        if (place.Plane is not { } plane) return null;
        var wished = field.LongAxis ?? (place.Outline == MapOutline.Boundary ? Passes.Narrowest(place.Parts).Heading : null as Bearing?);
        var (along, across) = MapGeometry.Extent(place.Parts, wished ?? Bearing.FromDegrees(0));
        return new FieldMap(place.Parts, place.Outline)
        {
            Run = wished,
            Along = along,
            Across = across,
            Passes = Passes.Count(across, aeroplane.Swath),
            Checks = [.. field.Basins.Where(b => b.Boundary is not null).Select(b => new MapCheck(b.Number, plane.Place(b.Boundary!)))],
            Boxes = [.. field.Boxes.Where(b => b.At is not null).Select(b => new MapBox(b.Number, plane.Place(b.At!.Value), b.Leaks))],
            Hazards = [.. place.Hazards.Where(h => !h.Hazard.Points.IsEmpty).Select(h => new MapHazard(h.Mark, h.Hazard.Kind, plane.Place(h.Hazard.Points)) { Within = h.Hazard.Listing?.Within })],
            Neighbors = [.. place.Neighbors.Select(n => Drawn(n, plane))],
            Strip = place.StripAt,
        };
    }

    private static MapNeighbor Drawn(Neighbor neighbor, MapPlane plane)
    {
        var (parts, outline) = FieldPlace.Outlined(neighbor.Field, plane, FieldPlace.Middle(neighbor.Field)!.Value);
        return new MapNeighbor(neighbor.Field.Code, neighbor.Cover, parts, outline);
    }
}
