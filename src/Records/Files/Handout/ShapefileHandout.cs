using System.Globalization;
using System.Text;
using NetTopologySuite.Features;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.Esri;
using NetTopologySuite.IO.Esri.Dbf.Fields;
using NetTopologySuite.IO.Esri.Shapefiles.Writers;
using Watersown.Flight.Handout;
using Watersown.Land;

namespace Watersown.Records.Files.Handout;

/// <summary>A handout as shapefiles on WGS 84: one for each kind of thing, for a shapefile holds only one kind of shape.</summary>
internal static class ShapefileHandout
{
    // The grid in the words that readers of shapefiles look for (WKT 1).
    private const string Wgs84 =
        "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137.0,298.257223563]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";

    private static readonly GeometryFactory Factory = new(new PrecisionModel(), 4326);

    /// <summary>The files of every shapefile that has anything in it.</summary>
    public static ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Write(FarmHandout handout) =>
    [
        .. Layer("fields", ShapeType.Polygon, FieldColumns, handout.Fields.Select(f => ((Geometry)Land(f.Land), Row(f)))),
        .. Layer("passes", ShapeType.PolyLine, PassColumns, handout.Fields.SelectMany(f => f.Passes.Where(p => !p.Open.IsEmpty).Select(p => ((Geometry)Lines(p.Open.Select(s => (ImmutableArray<GeoPoint>)[s.From, s.To])), Row(f, p))))),
        .. Layer("flown", ShapeType.PolyLine, FlownColumns, handout.Fields.SelectMany(f => f.Flown.Where(r => r.Fixes.Length > 1).Select(r => ((Geometry)Lines([[.. r.Fixes.Select(x => x.At)]]), Row(f, r))))),
        .. Layer("hazards", ShapeType.Point, HazardColumns, handout.Hazards.Where(h => h.Points.Length == 1).Select(h => ((Geometry)Factory.CreatePoint(At(h.Points[0])), Row(h)))),
        .. Layer("hazard-lines", ShapeType.PolyLine, HazardColumns, handout.Hazards.Where(h => h.Points.Length > 1).Select(h => ((Geometry)Lines([h.Points]), Row(h)))),
    ];

    private static DbfField[] FieldColumns() =>
        [new DbfCharacterField("CODE", 16), new DbfCharacterField("NAME", 120), new DbfFloatField("NET_AC"), new DbfFloatField("DRAWN_AC"), new DbfFloatField("DRY_LB_AC"), new DbfFloatField("WET_LB_AC"), new DbfFloatField("SWATH_FT")];

    private static object?[] Row(FieldHandout field) =>
        [field.Field.Code, field.Field.Name, field.Field.Net.Acres, field.Drawn.Acres, field.Dry?.PoundsPerAcre, field.Soaked?.PoundsPerAcre, field.Swath.Feet];

    private static DbfField[] PassColumns() => [new DbfCharacterField("CODE", 16), new DbfNumericInt32Field("PASS"), new DbfFloatField("HEADING")];

    private static object?[] Row(FieldHandout field, HandoutPass pass) => [field.Field.Code, pass.Number, pass.Heading.Degrees];

    private static DbfField[] FlownColumns() => [new DbfCharacterField("CODE", 16), new DbfNumericInt32Field("PASS"), new DbfCharacterField("FROM", 24), new DbfCharacterField("UNTIL", 24), new DbfCharacterField("GATE", 8)];

    private static object?[] Row(FieldHandout field, HandoutRun run) =>
        [field.Field.Code, run.Pass, Moment(run.Fixes[0].Time), Moment(run.Fixes[^1].Time), run.GateInferred ? "inferred" : "logged"];

    private static DbfField[] HazardColumns() => [new DbfCharacterField("KIND", 16), new DbfCharacterField("NAME", 120), new DbfFloatField("HEIGHT_FT"), new DbfCharacterField("SEEN", 10)];

    private static object?[] Row(Hazard hazard) =>
        [Documents.Farms.Words.Hazards.Of(hazard.Kind), hazard.Name, hazard.Height?.Feet, hazard.Confirmed?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)];

    private static ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Layer(string name, ShapeType type, Func<DbfField[]> columns, IEnumerable<(Geometry Shape, object?[] Row)> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0) return [];
        var fields = columns();
        using MemoryStream shp = new(), shx = new(), dbf = new(), prj = new();
        using (var writer = Shapefile.OpenWrite(shp, shx, dbf, prj, new ShapefileWriterOptions(type, fields) { Encoding = Encoding.UTF8, Projection = Wgs84 }))
        {
            foreach (var (shape, row) in all)
            {
                var table = new AttributesTable();
                for (var i = 0; i < fields.Length; i++) table.Add(fields[i].Name, row[i]);
                writer.Write(new Feature(shape, table));
            }
        }

        return [(name + ".shp", shp.ToArray()), (name + ".shx", shx.ToArray()), (name + ".dbf", dbf.ToArray()), (name + ".prj", prj.ToArray()), (name + ".cpg", "UTF-8"u8.ToArray())];
    }

    private static MultiPolygon Land(Boundary land)
    {
        Polygon[] parts = [.. land.Parts.Select(p => Factory.CreatePolygon(Ring(p.Outer), [.. p.Holes.Select(Ring)]))];
        return Factory.CreateMultiPolygon(parts);
    }

    private static LinearRing Ring(ImmutableArray<GeoPoint> ring) => Factory.CreateLinearRing([.. ring.Add(ring[0]).Select(At)]);

    private static MultiLineString Lines(IEnumerable<ImmutableArray<GeoPoint>> lines) =>
        Factory.CreateMultiLineString([.. lines.Select(line => Factory.CreateLineString([.. line.Select(At)]))]);

    private static Coordinate At(GeoPoint point) => new(point.Longitude, point.Latitude);

    private static string Moment(DateTimeOffset? time) => time?.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture) ?? string.Empty;
}
