using System.Text;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Records.Files.Boundaries;

public sealed class MapFileTests
{
    private const string Ring = "[[-122,39],[-121.99,39],[-121.99,39.01],[-122,39.01],[-122,39]]";

    private static readonly Dictionary<string, byte[]> Shapefile = SomeZip.Open(ReferenceFile.PathOf("fields", "large_26910.zip"));

    private static Outcome<ImmutableArray<MapBoundary>> Read(string text) => MapFile.Read("fields.x", Encoding.UTF8.GetBytes(text));

    private static Outcome<ImmutableArray<MapBoundary>> Read(byte[] bytes) => MapFile.Read("fields.x", bytes);

    private static string[] Codes(Outcome<ImmutableArray<MapBoundary>> read)
    {
        foreach (var problem in read.Problems)
        {
            Assert.DoesNotContain('{', Say.Problem(problem, Language.English));
            Assert.DoesNotContain('{', Say.Problem(problem, Language.Spanish));
        }

        return [.. read.Problems.Select(p => p.Kind.Code)];
    }

    private static string Feature(string properties, string coordinates, string type = "Polygon") =>
        "{\"type\":\"Feature\",\"properties\":" + properties + ",\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}}";

    private static string Collection(params string[] features) => $$"""{"type":"FeatureCollection","features":[{{string.Join(',', features)}}]}""";

    private static byte[] Zip(params string[] leaveOut) =>
        SomeZip.Of([.. Shapefile.Where(e => !leaveOut.Contains(Path.GetExtension(e.Key), StringComparer.Ordinal)).Select(e => (e.Key, e.Value))]);

    [Fact]
    public void Thirty_eight_of_forty_are_read_and_two_problems_name_the_field_and_the_place()
    {
        var features = Enumerable.Range(0, 40).Select(i => Feature($$"""{"name":"Field {{i}}"}""", "[" + Ring + "]")).ToArray();
        features[16] = Feature("""{"name":"Bow Tie"}""", "[[[-122,39],[-121.99,39.01],[-121.99,39],[-122,39.01],[-122,39]]]");
        features[30] = Feature("""{"name":"Turned"}""", "[[[39,-122],[39,-121.99],[39.01,-121.99],[39,-122]]]");
        var read = Read(Collection(features));
        Assert.Equal(38, read.Value.Length);
        Assert.Equal(
            [
                "LAND-108 · fields.x, feature 17 'Bow Tie': the edge crosses itself at 39.00500 N, 121.99500 W. Move the corner there so that the edge runs once around.",
                "LAND-105 · fields.x, feature 31 'Turned', corner 1: a latitude of -122° is beyond the pole, and the other way round it would be a place: latitude and longitude look swapped. Longitude comes first in this format: turn them round.",
            ],
            read.Problems.Select(p => Say.Problem(p, Language.English)));
    }

    [Fact]
    public void The_old_member_crs_is_honored_where_its_grid_is_known()
    {
        // 39 N, 122 W is 586592.6780 E, 4317252.1646 N on UTM 10 (PROJ 9.1.1 cs2cs EPSG:4326 EPSG:32610).
        const string Square = "[[[586592.6780,4317252.1646],[586692.6780,4317252.1646],[586692.6780,4317352.1646],[586592.6780,4317352.1646],[586592.6780,4317252.1646]]]";
        var utm = Read("{\"type\":\"FeatureCollection\",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"urn:ogc:def:crs:EPSG::32610\"}}," + Collection(Feature("{}", Square))[1..]);
        var corner = utm.Value.Single().Edge.Parts[0].Outer[0];
        Assert.Equal(39, corner.Latitude, 1e-7);
        Assert.Equal(-122, corner.Longitude, 1e-7);

        Assert.Equal(["MAP-019"], Codes(Read("{\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"EPSG:4267\"}}," + Collection(Feature("{}", Square))[1..])));
        Assert.Equal(["MAP-017"], Codes(Read("{\"crs\":{\"type\":\"link\"}," + Collection(Feature("{}", Square))[1..])));
        Assert.Equal(["LAND-106"], Codes(Read(Collection(Feature("{}", Square)))));
    }

    [Fact]
    public void Points_and_lines_among_the_fields_are_counted_and_left_out()
    {
        var read = Read(Collection(Feature("{}", "[-122,39]", "Point"), Feature("{}", "[" + Ring + "]"), Feature("{}", Ring, "LineString"), """{"type":"Feature","properties":null,"geometry":null}"""));
        Assert.Single(read.Value);
        Assert.Equal(["MAP-005"], Codes(read));
    }

    [Theory]
    [InlineData("MAP-001", "name,acres\nTwo Gates,118")]
    [InlineData("MAP-001", "")]
    [InlineData("MAP-001", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>")]
    [InlineData("DOC-004", "{\"type\":\"FeatureCollection\",\"features\":[")]
    [InlineData("DOC-004", "{")]
    [InlineData("DOC-004", "[")]
    [InlineData("DOC-003", "{\"type\":\"Polygon\",\"coordinates\":[[[NaN,1]]]}")]
    [InlineData("MAP-003", "<kml><Document></kml>")]
    [InlineData("MAP-003", "<!DOCTYPE kml [<!ENTITY a \"b\">]><kml/>")]
    [InlineData("MAP-003", "<?xml version=\"1.0\" encoding=\"no-such-letters\"?><kml/>")]
    [InlineData("MAP-004", "[1,2,3]")]
    [InlineData("MAP-004", "{\"type\":\"FeatureCollection\",\"features\":[]}")]
    [InlineData("MAP-004", "<kml><Document><Placemark><name>x</name></Placemark></Document></kml>")]
    [InlineData("LAND-100", "{\"type\":\"Feature\",\"properties\":{},\"geometry\":7}")]
    [InlineData("LAND-103", "{\"type\":\"Polygon\",\"coordinates\":[[[1e999,1],[2,2],[3,1],[1,1]]]}")]
    [InlineData("LAND-106", "{\"type\":\"Polygon\",\"coordinates\":[[[1e300,1],[2,2],[3,1],[1,1]]]}")]
    public void What_is_no_boundary_file_is_refused_with_its_reason(string code, string text)
    {
        var read = Read(text);
        Assert.True(read.IsRefused);
        Assert.Contains(code, Codes(read));
    }

    [Fact]
    public void Letters_that_are_not_UTF_8_are_a_problem_and_no_accident()
    {
        Assert.Equal(["DOC-002"], Codes(Read([.. Encoding.Latin1.GetBytes(Collection(Feature("{\"name\":\"ñ\"}", "[" + Ring + "]")))])));
        Assert.Equal(["MAP-003"], Codes(Read([.. Encoding.Latin1.GetBytes("<kml><name>ñ</name></kml>")])));
    }

    [Fact]
    public void A_nest_without_end_is_refused()
    {
        Assert.Equal(["DOC-005"], Codes(Read(new string('[', 100_000))));
        Assert.Equal(["MAP-024"], Codes(Read(string.Concat(Enumerable.Repeat("<kml>", 100)))));
    }

    [Fact]
    public void More_boundaries_or_corners_than_any_farm_has_are_refused()
    {
        var many = Collection([.. Enumerable.Repeat(Feature("{}", "[" + Ring + "]"), 5001)]);
        Assert.Contains("MAP-006", Codes(Read(many)));
        var ring = "[[" + string.Join(',', Enumerable.Repeat("[1,1]", 50_000)) + "]]";
        Assert.Contains("MAP-007", Codes(Read(Collection([.. Enumerable.Repeat(Feature("{}", ring), 21)]))));
    }

    [Fact]
    public void A_shapefile_without_its_grid_is_refused_unless_its_numbers_are_degrees()
    {
        Assert.Equal(["MAP-020"], Codes(Read(Zip(".prj"))));
        Assert.Equal(["MAP-021"], Codes(Read(Degrees(withGrid: false))));
        Assert.Empty(Codes(Read(Degrees(withGrid: true))));
    }

    // The same records with the corners set to degrees: 16 bytes a corner from where the rings' starts end.
    private static byte[] Degrees(bool withGrid)
    {
        var shp = (byte[])Shapefile["utm.shp"].Clone();
        for (var at = 100; at < shp.Length;)
        {
            var length = 2 * System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(shp.AsSpan(at + 4));
            var (rings, corners) = (BitConverter.ToInt32(shp, at + 8 + 36), BitConverter.ToInt32(shp, at + 8 + 40));
            for (var i = 0; i < 2 * corners; i++)
            {
                var place = at + 8 + 44 + (4 * rings) + (8 * i);
                var meters = BitConverter.ToDouble(shp, place);
                BitConverter.GetBytes(i % 2 == 0 ? -120 + ((meters - 722_000) / 88_000) : 38 + ((meters - 4_187_000) / 111_000)).CopyTo(shp, place);
            }

            at += 8 + length;
        }

        var prj = """GEOGCS["GCS_WGS_1984",DATUM["D_WGS_1984",SPHEROID["WGS_1984",6378137.0,298.257223563]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]]"""u8.ToArray();
        return withGrid
            ? SomeZip.Of(("a/Fields.SHP", shp), ("a/fields.prj", prj), ("a/fields.dbf", Shapefile["utm.dbf"]), ("__MACOSX/a/._Fields.SHP", [1]))
            : SomeZip.Of(("fields.shp", shp), ("fields.dbf", Shapefile["utm.dbf"]));
    }

    [Fact]
    public void A_shapefile_without_its_table_comes_without_names()
    {
        var read = Read(Zip(".dbf"));
        Assert.Equal(["MAP-013"], Codes(read));
        Assert.All(read.Value, b => Assert.Empty(b.Name));
    }

    [Fact]
    public void A_broken_table_of_names_loses_the_names_and_not_the_fields()
    {
        var read = Read(SomeZip.Of(("f.shp", Shapefile["utm.shp"]), ("f.prj", Shapefile["utm.prj"]), ("f.dbf", Shapefile["utm.dbf"][..200])));
        Assert.Contains("MAP-025", Codes(read));
        Assert.Equal(8, read.Value.Length);
    }

    [Fact]
    public void A_grid_that_belongs_to_another_file_is_noticed()
    {
        var feet = SomeZip.Open(ReferenceFile.PathOf("fields", "crops_2226.zip"));
        var read = Read(SomeZip.Of(("f.shp", feet["crops.shp"]), ("f.dbf", feet["crops.dbf"]), ("f.prj", Encoding.ASCII.GetBytes("""GEOGCS["x",DATUM["D_WGS_1984",SPHEROID["WGS_1984",6378137.0,298.257223563]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]]"""))));
        Assert.True(read.IsRefused);
        Assert.All(read.Problems, p => Assert.Equal("LAND-106", p.Kind.Code));
        var utm = """PROJCS["UTM",GEOGCS["x",DATUM["D_WGS_1984",SPHEROID["WGS_1984",6378137.0,298.257223563]],UNIT["Degree",0.0174532925199433]],PROJECTION["Transverse_Mercator"],PARAMETER["False_Easting",500000],PARAMETER["False_Northing",-90000000],PARAMETER["Central_Meridian",-123],PARAMETER["Scale_Factor",0.9996],PARAMETER["Latitude_Of_Origin",0],UNIT["Meter",1]]""";
        Assert.All(Read(SomeZip.Of(("f.shp", feet["crops.shp"]), ("f.dbf", feet["crops.dbf"]), ("f.prj", Encoding.ASCII.GetBytes(utm)))).Problems, p => Assert.Equal("MAP-022", p.Kind.Code));
    }

    [Fact]
    public void Lines_and_damaged_shapefiles_are_refused()
    {
        var shp = Shapefile["utm.shp"];
        byte[] With(int at, params byte[] bytes)
        {
            var copy = (byte[])shp.Clone();
            bytes.CopyTo(copy, at);
            return SomeZip.Of(("f.shp", copy), ("f.prj", Shapefile["utm.prj"]));
        }

        Assert.Equal(["MAP-016"], Codes(Read(With(32, 3))));
        Assert.Equal(["MAP-016"], Codes(Read(With(32, 1))));
        Assert.Equal(["MAP-015"], Codes(Read(With(28, 9))));
        Assert.Equal(["MAP-015"], Codes(Read(With(100 + 8 + 40, 255, 255, 255, 127)))); // two thousand million corners
        Assert.Equal(["MAP-015"], Codes(Read(With(104, 127, 255, 255, 255))));
        Assert.Equal(["MAP-015"], Codes(Read(SomeZip.Of(("f.shp", shp[..^10]), ("f.prj", Shapefile["utm.prj"])))));
    }

    [Fact]
    public void Zips_that_trick_are_refused()
    {
        Assert.Equal(["MAP-008"], Codes(Read([.. "PK\x03\x04 and then nothing"u8])));
        Assert.Equal(["MAP-009"], Codes(Read(SomeZip.Of([.. Enumerable.Range(0, 201).Select(i => ($"{i}.txt", Array.Empty<byte>()))]))));
        Assert.Equal(["MAP-010"], Codes(Read(SomeZip.Of(("doc.kml", new byte[100_000_000])))));
        Assert.Equal(["MAP-011"], Codes(Read(SomeZip.Of(("../../fields.kml", [1])))));
        Assert.Equal(["MAP-011"], Codes(Read(SomeZip.Of(("D:" + "/fields.kml", [1])))));
        Assert.Equal(["MAP-014"], Codes(Read(SomeZip.Of(("a.shp", Shapefile["utm.shp"]), ("b.shp", Shapefile["utm.shp"])))));
        Assert.Equal(["MAP-001"], Codes(Read(SomeZip.Of(("readme.txt", [1])))));
        var locked = Zip();
        locked[6] |= 1; // the mark of a password, in the first entry and in the list at the end
        for (var i = 0; i < locked.Length - 4; i++)
        {
            if (locked.AsSpan(i, 4).SequenceEqual("PK\x01\x02"u8)) locked[i + 8] |= 1;
        }

        Assert.Equal(["MAP-012"], Codes(Read(locked)));
    }

    [Fact]
    public void Kml_placemarks_come_with_names_holes_and_columns()
    {
        const string Kml = """
            <?xml version="1.0" encoding="UTF-8"?>
            <kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>My farm</name><Folder><name>North</name>
              <Placemark><name>Two Gates</name><ExtendedData><Data name="code"><value>N4</value></Data></ExtendedData>
                <Polygon><outerBoundaryIs><LinearRing><coordinates>-122,39,0 -121.99,39,0
                  -121.99,39.01,0 -122,39.01,0 -122,39,0</coordinates></LinearRing></outerBoundaryIs>
                <innerBoundaryIs><LinearRing><coordinates>-121.997,39.002 -121.994,39.002 -121.994,39.004 -121.997,39.002</coordinates></LinearRing></innerBoundaryIs></Polygon></Placemark>
              <Placemark><name>Two Pieces</name><MultiGeometry>
                <Polygon><outerBoundaryIs><LinearRing><coordinates>-121.98,39 -121.97,39 -121.97,39.01 -121.98,39</coordinates></LinearRing></outerBoundaryIs></Polygon>
                <MultiGeometry><Polygon><outerBoundaryIs><LinearRing><coordinates>-121.96,39 -121.95,39 -121.95,39.01 -121.96,39</coordinates></LinearRing></outerBoundaryIs></Polygon></MultiGeometry>
              </MultiGeometry></Placemark>
              <Placemark><name>Gate</name><Point><coordinates>-122,39</coordinates></Point></Placemark>
              <Placemark><name>Typo</name><Polygon><outerBoundaryIs><LinearRing><coordinates>-122,39 -121.99,thirty-nine -121.99,39.01 -122,39</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>
            </Folder></Document></kml>
            """;
        var read = Read(Kml);
        Assert.Equal(["Two Gates", "Two Pieces"], read.Value.Select(b => b.Name));
        Assert.Equal("N4", read.Value[0]["code"]);
        Assert.Single(read.Value[0].Edge.Parts[0].Holes);
        Assert.Equal(2, read.Value[1].Edge.Parts.Length);
        Assert.Equal(["LAND-103", "MAP-005"], Codes(read));
        Assert.StartsWith("fields.x, placemark 4 'Typo'", read.Problems[0].Where, StringComparison.Ordinal);
    }

    [Fact]
    public void A_track_driven_around_a_field_is_its_boundary()
    {
        const string Around = """<trkpt lat="39" lon="-122"/><trkpt lat="39" lon="-121.99"><ele>20</ele></trkpt><trkpt lat="39.01" lon="-121.99"/><trkpt lat="39.01" lon="-122"/><trkpt lat="39.0002" lon="-122"/>""";
        const string Open = """<trkpt lat="39" lon="-122"/><trkpt lat="39" lon="-121.99"/><trkpt lat="39.01" lon="-121.99"/>""";
        var read = Read($"""<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><wpt lat="39" lon="-122"/><trk><name>Two Gates</name><trkseg>{Around}</trkseg></trk><trk><name>Half Way</name><trkseg>{Open}</trkseg></trk><rte><name>Tin Barn</name>{Around.Replace("trkpt", "rtept", StringComparison.Ordinal)}</rte></gpx>""");
        Assert.Equal(["Two Gates", "Tin Barn"], read.Value.Select(b => b.Name));
        Assert.Equal(["MAP-023", "MAP-005"], Codes(read));
        Assert.StartsWith("MAP-023 · fields.x, track 2 'Half Way': the track ends 4,", Say.Problem(read.Problems[0], Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Geometry_of_a_track_is_closed_without_a_word_since_the_gap_was_measured() =>
        Assert.True(GeodesicArea.Of(Read("""<gpx><trk><trkseg><trkpt lat="39" lon="-122"/><trkpt lat="39" lon="-121.99"/><trkpt lat="39.01" lon="-121.99"/><trkpt lat="39.0001" lon="-122"/></trkseg></trk></gpx>""").Value[0].Edge) > Area.FromAcres(100));

    [Fact]
    public void A_file_that_is_not_there_is_said() =>
        Assert.Equal(["FILE-001"], Codes(MapFile.Open(Path.Combine(Path.GetTempPath(), "no-such-fields.geojson"))));
}
