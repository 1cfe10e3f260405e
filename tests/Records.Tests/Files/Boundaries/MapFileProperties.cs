using CsCheck;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

public sealed class MapFileProperties
{
    private static readonly byte[][] Good =
    [
        .. new[] { "large_26910.zip", "large.kml", "large.kmz" }.Select(f => File.ReadAllBytes(ReferenceFile.PathOf("fields", f))),
        .. SomeZip.Open(ReferenceFile.PathOf("fields", "large_26910.zip")).Where(e => e.Key.EndsWith(".shp", StringComparison.Ordinal)).Select(e => e.Value),
        """{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"code":"N4"},"geometry":{"type":"Polygon","coordinates":[[[-122,39],[-121.99,39],[-121.99,39.01],[-122,39.01],[-122,39]]]}}]}"""u8.ToArray(),
        """<gpx><trk><name>a</name><trkseg><trkpt lat="39" lon="-122"/><trkpt lat="39" lon="-121.99"/><trkpt lat="39.01" lon="-121.99"/><trkpt lat="39.0001" lon="-122"/></trkseg></trk></gpx>"""u8.ToArray(),
    ];

    private static Gen<string> Choice(params string[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    private static void Read(byte[] bytes)
    {
        var read = MapFile.Read("noise", bytes, extension => extension == ".prj" ? "GEOGCS[\"WGS 84\"]"u8.ToArray() : null);
        Assert.True(read.HasValue || read.Refusals.Any());
        if (read.HasValue) Assert.All(read.Value, b => Assert.True(GeodesicArea.Of(b.Edge) > Area.Zero));
    }

    [Fact]
    public void Noise_never_throws() =>
        Gen.Select(Choice("", "PK\x03\x04", "{", "<kml>", "<gpx>", "\0\0\x27\x0A"), Gen.Byte.Array[0, 600]).Sample((start, noise) => Read([.. System.Text.Encoding.Latin1.GetBytes(start), .. noise]));

    [Fact]
    public void A_good_file_with_noise_in_it_never_throws() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[1, 12]).Sample((which, noise) =>
        {
            var bytes = (byte[])Good[which].Clone();
            foreach (var (share, value) in noise) bytes[(int)(share * (bytes.Length - 1))] = value;
            Read(bytes);
        }, iter: 600);

    [Fact]
    public void A_good_file_cut_short_never_throws() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Double[0, 1]).Sample((which, share) => Read(Good[which][..(int)(share * Good[which].Length)]), iter: 300);

    [Fact]
    public void The_inside_of_a_shapefile_with_noise_in_it_never_throws()
    {
        var files = SomeZip.Open(ReferenceFile.PathOf("fields", "large_26910.zip"));
        Gen.Select(Choice("utm.shp", "utm.dbf", "utm.prj"), Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[1, 12], Gen.Double[0.2, 1]).Sample((which, noise, keep) =>
        {
            var changed = files.ToDictionary(f => f.Key, f => (byte[])f.Value.Clone(), StringComparer.Ordinal);
            var bytes = changed[which];
            foreach (var (share, value) in noise) bytes[(int)(share * share * (bytes.Length - 1))] = value;
            if (keep < 0.5) changed[which] = bytes[..(int)(keep * bytes.Length)];
            Read(SomeZip.Of([.. changed.Select(f => (f.Key, f.Value))]));
        }, iter: 600);
    }

    [Fact]
    public void Every_text_of_a_coordinate_system_gives_a_grid_or_a_problem() =>
        Gen.Select(Gen.Int[0, 400], Choice("\"", "[", "]", ",", "1e999", "PROJCS", "\0", "")).Sample((at, put) =>
        {
            var text = File.ReadAllText(ReferenceFile.PathOf("grids", "2226.esri.prj"));
            var place = Math.Min(at, text.Length);
            var grid = Grid.FromText(text[..place] + put + (put.Length == 0 ? string.Empty : text[place..]), "x");
            return grid.HasValue || grid.Refusals.Any();
        });
}
