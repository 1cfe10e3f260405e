using Watersown.Land;

namespace Watersown;

/// <summary>GeoJSON values for tests, written as <c>"-122,39 -121.99,39 …"</c>: longitude first, corners apart by spaces.</summary>
public static class Geo
{
    public static Datum.Table Polygon(params string[] rings) =>
        (Datum.Table)Datum.Row(("type", "Polygon"), ("coordinates", Rings(rings)));

    public static Datum.Table MultiPolygon(params string[][] polygons) =>
        (Datum.Table)Datum.Row(("type", "MultiPolygon"), ("coordinates", Datum.ListOf(polygons.Select(Rings))));

    public static Datum.Table Feature(Datum geometry) =>
        (Datum.Table)Datum.Row(("type", "Feature"), ("properties", Datum.None), ("geometry", geometry));

    public static Datum.Table Collection(params Datum[] features) =>
        (Datum.Table)Datum.Row(("type", "FeatureCollection"), ("features", Datum.ListOf(features)));

    /// <summary>Corners of a ring, longitude first in the text.</summary>
    public static ImmutableArray<GeoPoint> Ring(string corners) =>
        [.. corners.Split(' ').Select(c => c.Split(',')).Select(c => new GeoPoint(Number(c[1]), Number(c[0])))];

    private static Datum Rings(string[] rings) => Datum.ListOf(rings.Select(r => Datum.ListOf(r.Split(' ').Select(c => Datum.ListOf(c.Split(',').Select(Number))))));

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
