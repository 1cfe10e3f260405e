using System.Text.Json;
using Watersown.Land;

namespace Watersown.Documents.Json;

/// <summary>Reads a boundary out of JSON that came over a line.</summary>
public static class GeometryReading
{
    /// <summary>The boundary, or what is wrong with it.</summary>
    /// <param name="geometry">A GeoJSON Polygon or MultiPolygon.</param>
    /// <param name="where">What is being read, for its problems.</param>
    public static Outcome<Boundary> Read(JsonElement geometry, string where) => BoundaryReading.Read(JsonFacts.DatumOf(geometry), where);
}
