using System.Globalization;

namespace Watersown.Shapes;

public sealed class GeodesicReference
{
    private static RingMeasure Measure(params ReadOnlySpan<(double Lat, double Lon)> ring)
    {
        var (lats, lons) = (new double[ring.Length], new double[ring.Length]);
        for (var i = 0; i < ring.Length; i++) (lats[i], lons[i]) = ring[i];
        return GeodesicRing.Measure(lats, lons);
    }

    [Fact]
    public void Rings_agree_with_the_command_Planimeter_of_GeographicLib_2_1_2()
    {
        var rows = ReferenceFile.Rows("geodesic").ToList();
        Assert.Equal(200, rows.Count);
        foreach (var row in rows)
        {
            var ring = row["corners_lat_lon"].Split(' ').Select(c => c.Split(';')).Select(c => (Number(c[0]), Number(c[1]))).ToArray();
            var (area, perimeter) = (Number(row["area_m2"]), Number(row["perimeter_m"]));
            var found = Measure(ring);
            Assert.True(Math.Abs(found.SignedArea.SquareMeters - area) <= Math.Max(1e-9 * Math.Abs(area), 1e-4), $"{row["name"]}: {found.SignedArea.SquareMeters:R} against {area:R}");
            Assert.True(Math.Abs(found.Perimeter.Meters - perimeter) <= Math.Max(1e-6, 1e-12 * perimeter), $"{row["name"]}: {found.Perimeter.Meters:R} against {perimeter:R}");
        }
    }

    [Fact]
    public void Ways_agree_with_the_command_GeodSolve_of_GeographicLib_2_1_2()
    {
        var rows = ReferenceFile.Rows("geodesic", "ways.csv").ToList();
        Assert.Equal(280, rows.Count);
        foreach (var row in rows)
        {
            var found = Geodesic.Between(Number(row["lat1"]), Number(row["lon1"]), Number(row["lat2"]), Number(row["lon2"]));
            var (distance, under) = (Number(row["distance_m"]), Number(row["under_m2"]));
            var where = string.Join(' ', row.Values);
            Assert.True(Math.Abs(found.Distance.Meters - distance) <= 2e-8 + (1e-14 * distance), where + " " + found.Distance.Meters.ToString("R", CultureInfo.InvariantCulture));
            // A direction is as sharp as its way is long: 2e-8 m across.
            var turn = Math.Min(0.01, 1e-8 + (2e-6 / Math.Max(distance, 1e-3)));
            Assert.True(Apart(found.Start.Degrees, Number(row["azimuth1"])) <= turn, where + " " + found.Start.Degrees.ToString("R", CultureInfo.InvariantCulture));
            Assert.True(Apart(found.End.Degrees, Number(row["azimuth2"])) <= turn, where + " " + found.End.Degrees.ToString("R", CultureInfo.InvariantCulture));
            Assert.True(Math.Abs(found.Under.SquareMeters - under) <= 0.1 + (1e-9 * Math.Abs(under)), where + " " + found.Under.SquareMeters.ToString("R", CultureInfo.InvariantCulture));
        }

        static double Apart(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 360));
    }

    // GeographicLib documentation of Planimeter and its published tests (Planimeter0): perimeter, area, and the digits printed there.
    [Fact]
    public void A_ring_around_the_pole_has_its_published_area()
    {
        var found = Measure((89, 0), (89, 90), (89, 180), (89, 270));
        Assert.Equal(631819.8745, found.Perimeter.Meters, 1e-4);
        Assert.Equal(24952305678.0, found.SignedArea.SquareMeters, 1.0);
    }

    // The same around the south pole, by symmetry; derived.
    [Fact]
    public void A_ring_around_the_south_pole_has_the_same_area_the_other_way_round()
    {
        var found = Measure((-89, 0), (-89, 90), (-89, 180), (-89, 270));
        Assert.Equal(631819.8745, found.Perimeter.Meters, 1e-4);
        Assert.Equal(-24952305678.0, found.SignedArea.SquareMeters, 1.0);
    }

    // GeographicLib published tests (Planimeter0), from memory.
    [Fact]
    public void A_ring_over_the_equator_has_its_published_area()
    {
        var found = Measure((0, -1), (-1, 0), (0, 1), (1, 0));
        Assert.Equal(627598.2731, found.Perimeter.Meters, 2e-4);
        Assert.Equal(24619419146.0, found.SignedArea.SquareMeters, 1.5);
    }

    // GeographicLib published tests (Planimeter0), from memory.
    [Fact]
    public void An_eighth_of_the_earth_has_its_published_area()
    {
        var found = Measure((90, 0), (0, 0), (0, 90));
        Assert.Equal(30022685, found.Perimeter.Meters, 1.0);
        Assert.Equal(63758202715511.0, found.SignedArea.SquareMeters, 1.0);
    }

    // GeographicLib published test (Planimeter5), from memory.
    [Fact]
    public void A_triangle_near_the_pole_has_its_published_area()
    {
        var found = Measure((89, 0.1), (89, 90.1), (89, -179.9));
        Assert.Equal(539297, found.Perimeter.Meters, 1.0);
        Assert.Equal(12476152838.5, found.SignedArea.SquareMeters, 1.0);
    }

    // GeographicLib published test (Planimeter13): twice around the pole, from memory.
    [Fact]
    public void A_ring_twice_around_the_pole_counts_the_cap_twice()
    {
        var found = Measure((89, -360), (89, -240), (89, -120), (89, 0), (89, 120), (89, 240));
        Assert.Equal(1160741, found.Perimeter.Meters, 1.0);
        Assert.Equal(32415230256.0, found.SignedArea.SquareMeters, 1.0);
    }

    // Invented fields, worked with GeographicLib 2.1.2 Planimeter and checked there (A, B) with its independent JavaScript port.
    public static TheoryData<string, double, double, double> Fields => new()
    {
        { "39.4,-122 39.4,-121.9906 39.4072,-121.9906 39.4072,-122", 3218.018, 647201.01, 159.9269 },
        { "39.41235,-121.88712 39.41198,-121.87655 39.4161,-121.87402 39.41922,-121.8794 39.41874,-121.8869", 3354.101, 733094.90, 181.1517 },
        { "38.9501,-121.7602 38.9503,-121.7451 38.9575,-121.7448 38.9572,-121.7599", 4206.791, 1038230.84, 256.5524 },
        { "38.953,-121.754 38.953,-121.752 38.9542,-121.752 38.9542,-121.754", 613.167, 23095.38, 5.7070 },
        { "39.1,-121.65 39.10003,-121.635 39.10009,-121.635 39.10006,-121.65", 2608.459, 8643.13, 2.1358 },
        { "38,-120.005 38,-119.995 38.007,-119.995 38.007,-120.005", 3310.517, 682404.53, 168.6258 },
    };

    [Theory]
    [MemberData(nameof(Fields))]
    public void Invented_fields_have_the_acres_that_GeographicLib_gives(string ring, double perimeter, double area, double acres)
    {
        var corners = ring.Split(' ').Select(c => c.Split(',')).Select(c => (Number(c[0]), Number(c[1]))).ToArray();
        var found = Measure(corners);
        Assert.Equal(perimeter, found.Perimeter.Meters, 0.001);
        Assert.Equal(area, found.SignedArea.SquareMeters, 0.01);
        Assert.Equal(acres, found.SignedArea.Acres, 0.0001);
    }

    // GeographicLib documentation, Geodesic: New York JFK to London LHR.
    [Fact]
    public void From_New_York_to_London_is_the_published_distance()
    {
        var way = Geodesic.Between(40.6, -73.8, 51.6, -0.5);
        Assert.Equal(5551759.400, way.Distance.Meters, 0.001);
    }

    // Karney 2013, table 3: nearly opposite places 30 degrees south and 29.9 north, 179.8 degrees apart. α1 161.890524736, s12 19989832.827610 m.
    [Fact]
    public void Nearly_opposite_places_have_the_published_direction_and_distance()
    {
        var way = Geodesic.Between(-30, 0, 29.9, 179.8);
        Assert.Equal(161.890524736, way.Start.Degrees, 1e-8);
        Assert.Equal(18.090737245, way.End.Degrees, 1e-8);
        Assert.Equal(19989832.827610, way.Distance.Meters, 1e-5);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
