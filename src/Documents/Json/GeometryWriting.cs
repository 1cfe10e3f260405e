using Watersown.Land;

namespace Watersown.Documents.Json;

/// <summary>A boundary as a GeoJSON Polygon or MultiPolygon (RFC 7946): rings closed, outer rings counterclockwise as they come.</summary>
public static class GeometryWriting
{
    public static void Write(JsonPen pen, string key, Boundary? boundary)
    {
        if (boundary is null || boundary.Parts.IsEmpty) return;
        pen.Thing(key, () =>
        {
            var single = boundary.Parts.Length == 1;
            pen.Text("type", single ? "Polygon" : "MultiPolygon");
            if (single) Part("coordinates", boundary.Parts[0]);
            else pen.List("coordinates", boundary.Parts, part => Part(null, part));
        });

        void Part(string? partKey, BoundaryPart part) => pen.List(partKey, part.Holes.Insert(0, part.Outer), Ring);

        void Ring(ImmutableArray<GeoPoint> ring) => pen.List(null, ring.Add(ring[0]), Position);

        void Position(GeoPoint point) => pen.List(null, [point.Longitude, point.Latitude], pen.Bare);
    }
}
