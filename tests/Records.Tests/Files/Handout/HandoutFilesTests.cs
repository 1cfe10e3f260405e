using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using NetTopologySuite.Geometries;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Records.Files.Handout;

public sealed class HandoutFilesTests : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("watersown-handout-").FullName;

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Theory]
    [InlineData("handout.geojson", null, "field")]
    [InlineData("handout.kml", "Fields", null)]
    [InlineData("shapefiles/fields.shp", null, null)]
    public void Gdal_reads_the_same_land(string file, string? layer, string? kind)
    {
        var read = Gdal.Features(Written(SomeHandout.Whole, file), layer).Where(f => kind is null || f.GetProperty("properties").GetProperty("kind").GetString() == kind).Single();
        var land = SomeHandout.Whole.Fields[0].Land;
        var corners = land.Parts.SelectMany(p => p.Holes.Prepend(p.Outer)).SelectMany(r => r).Select(Rounded).ToHashSet();
        Assert.Equal(corners, [.. Gdal.Places(read.GetProperty("geometry")).Select(Rounded)]);
        var shape = Shape(read.GetProperty("geometry"));
        Assert.True(shape.IsValid);
        // 0.01° × 0.01° less a hole of 0.002° × 0.002°, and a triangle of half 0.01° × 0.004°.
        Assert.Equal(1e-4 - 4e-6 + 2e-5, shape.Area, 1e-10);
    }

    [Theory]
    [InlineData("handout.kml", "Passes wished N4")]
    [InlineData("shapefiles/passes.shp", null)]
    [InlineData("handout.geojson", null)]
    public void Gdal_reads_the_same_passes(string file, string? layer)
    {
        var read = Gdal.Features(Written(SomeHandout.Whole, file), layer).Where(f => !f.GetProperty("properties").TryGetProperty("kind", out var kind) || kind.GetString() == "pass").ToList();
        Assert.Equal(
            [.. SomeHandout.Whole.Fields[0].Passes.Select(p => string.Join(' ', p.Open.SelectMany(s => (GeoPoint[])[s.From, s.To]).Select(Rounded)))],
            read.Select(f => string.Join(' ', Gdal.Places(f.GetProperty("geometry")).Select(Rounded))));
    }

    [Theory]
    [InlineData("handout.kml", "Flown N4")]
    [InlineData("shapefiles/flown.shp", null)]
    public void Gdal_reads_the_same_flight(string file, string? layer) => Assert.Equal(
        [.. SomeHandout.Whole.Fields[0].Flown.Select(r => string.Join(' ', r.Fixes.Select(f => Rounded(f.At))))],
        Gdal.Features(Written(SomeHandout.Whole, file), layer).Select(f => string.Join(' ', Gdal.Places(f.GetProperty("geometry")).Select(Rounded))));

    [Fact]
    public void Gdal_reads_a_gpx_as_places_routes_and_tracks()
    {
        var file = Written(SomeHandout.Whole, "handout.gpx");
        Assert.Equal(["mast", "Heron's Elbow"], Gdal.Features(file, "waypoints").Select(Name));
        Assert.Equal(["line", "N4 pass 1", "N4 pass 2", "N4 pass 2"], Gdal.Features(file, "routes").Select(Name));
        Assert.Equal(3, Gdal.Features(file, "tracks").Length);
        var points = Gdal.Features(file, "track_points");
        var times = points.Select(p => p.GetProperty("properties").TryGetProperty("time", out var time) ? time.GetString() : null).OfType<string>().ToList();
        Assert.Equal(8, times.Count);
        Assert.StartsWith("2026-05-09 21:00:00", times[0].Replace("/", "-", StringComparison.Ordinal).Replace("T", " ", StringComparison.Ordinal), StringComparison.Ordinal); // 14:00 at seven hours behind

        static string? Name(JsonElement feature) => feature.GetProperty("properties").GetProperty("name").GetString();
    }

    [Fact]
    public void Gdal_reads_hazards_with_what_is_known_of_them()
    {
        var mast = Gdal.Features(Written(SomeHandout.Whole, "shapefiles/hazards.shp")).Single().GetProperty("properties");
        Assert.Equal(("tower", "mast", 110.0, "2026-05-02"), (mast.GetProperty("KIND").GetString(), mast.GetProperty("NAME").GetString(), mast.GetProperty("HEIGHT_FT").GetDouble(), mast.GetProperty("SEEN").GetString()));
        var line = Gdal.Features(Written(SomeHandout.Whole, "shapefiles/hazard-lines.shp")).Single();
        Assert.Equal(3, Gdal.Places(line.GetProperty("geometry")).Count());
        Assert.Equal(JsonValueKind.Null, line.GetProperty("properties").GetProperty("HEIGHT_FT").ValueKind); // not known, and not nothing
    }

    [Fact]
    public void Names_in_any_letters_come_through_and_what_a_format_cannot_hold_does_not_break_it()
    {
        var read = Gdal.Features(Written(SomeHandout.Whole, "shapefiles/fields.shp")).Single().GetProperty("properties").GetProperty("NAME").GetString();
        Assert.Equal(SomeHandout.Whole.Fields[0].Field.Name, read);
        foreach (var file in (string[])["handout.kml", "handout.gpx"]) Assert.Contains("Two Gates & <\"Sons\">  ñandú", XElement.Load(Written(SomeHandout.Whole, file)).Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Rings_turn_as_rfc_7946_wants_them()
    {
        using var json = JsonDocument.Parse(File.ReadAllBytes(Written(SomeHandout.Whole, "handout.geojson")));
        var parts = json.RootElement.GetProperty("features")[0].GetProperty("geometry").GetProperty("coordinates");
        foreach (var part in parts.EnumerateArray())
        {
            var rings = part.EnumerateArray().Select(ring => Gdal.Places(JsonDocument.Parse($"{{\"coordinates\":{ring.GetRawText()}}}").RootElement).Select(p => new Coordinate(p.Longitude, p.Latitude)).ToArray()).ToList();
            Assert.True(NetTopologySuite.Algorithm.Orientation.IsCCW(rings[0]));
            Assert.All(rings.Skip(1), ring => Assert.False(NetTopologySuite.Algorithm.Orientation.IsCCW(ring)));
            Assert.All(rings, ring => Assert.Equal(ring[0], ring[^1]));
        }
    }

    [Fact]
    public void The_same_handout_gives_the_same_bytes_and_every_file_carries_the_cautions()
    {
        var first = HandoutFiles.Of(SomeHandout.Whole, Language.Spanish);
        Assert.Equal(first.Select(f => Convert.ToHexString(f.Bytes.Span)), HandoutFiles.Of(SomeHandout.Whole, Language.Spanish).Select(f => Convert.ToHexString(f.Bytes.Span)));
        foreach (var (name, bytes) in first.Where(f => !f.Name.EndsWith(".zip", StringComparison.Ordinal)))
            Assert.All(Words.Spanish.Handout.Cautions, c => Assert.Contains(c, Encoding.UTF8.GetString(bytes.Span), StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_written_is_read_again_as_the_same_edges()
    {
        var open = Boundaries.MapFile.Open(Written(SomeHandout.Whole, "handout.kml"));
        Assert.Contains(open.Value, b => b.Edge.Parts.Length == 2 && b.Edge.Parts[0].Holes.Length == 1);
    }

    private static (double Longitude, double Latitude) Rounded(GeoPoint at) => Rounded((at.Longitude, at.Latitude));

    private static (double Longitude, double Latitude) Rounded((double Longitude, double Latitude) at) => (Math.Round(at.Longitude, 8), Math.Round(at.Latitude, 8));

    private static Geometry Shape(JsonElement geometry)
    {
        var coordinates = geometry.GetProperty("coordinates");
        var factory = new GeometryFactory();
        return geometry.GetProperty("type").GetString() == "Polygon" ? Part(coordinates) : factory.CreateMultiPolygon([.. coordinates.EnumerateArray().Select(Part)]);

        Polygon Part(JsonElement rings) => factory.CreatePolygon(Ring(rings[0]), [.. rings.EnumerateArray().Skip(1).Select(Ring)]);

        LinearRing Ring(JsonElement ring) => factory.CreateLinearRing([.. ring.EnumerateArray().Select(p => new Coordinate(p[0].GetDouble(), p[1].GetDouble()))]);
    }

    private string Written(FarmHandout handout, string file)
    {
        foreach (var (name, bytes) in HandoutFiles.Of(handout, Language.English)) File.WriteAllBytes(Path.Combine(place, name), bytes.ToArray());
        var shapes = Path.Combine(place, "shapefiles");
        if (!Directory.Exists(shapes)) ZipFile.ExtractToDirectory(Path.Combine(place, "shapefiles.zip"), shapes);
        return Path.Combine(place, file);
    }
}
