using CsCheck;

namespace Watersown.Shapes;

public sealed class LocalPlaneTests
{
    // PROJ 9.1.1: cs2cs -f '%.7f' +proj=longlat +datum=WGS84 +to +proj=tmerc +lat_0=39 +lon_0=-122 +k=1 +datum=WGS84
    [Theory]
    [InlineData(39.4, -122, 0.0000000, 44407.7205265)]
    [InlineData(38.95, -121.75, 21671.8493093, -5521.0275056)]
    [InlineData(38, -120.005, 175234.4127431, -109127.2942148)]
    [InlineData(39.1, -122.3, -25951.3251293, 11144.4921333)]
    [InlineData(39.00000001, -121, 86627.3289467, 475.7728385)]
    [InlineData(-38.5, -120.5, 130852.5482651, -8582569.0256060)]
    public void A_place_lands_where_PROJ_puts_it(double latitude, double longitude, double east, double north)
    {
        var found = LocalPlane.At(39, -122).ToPlane(latitude, longitude);
        Assert.Equal(east, found.East, 1e-6);
        Assert.Equal(north, found.North, 1e-6);
    }

    // GeographicLib 2.1.2 GeoConvert: scale of UTM (0.9996 on the middle meridian) at three places.
    [Theory]
    [InlineData(-123, 39.4, -122.0, 0.9996912788)]
    [InlineData(-123, 38.95, -121.75, 0.9997444710)]
    [InlineData(-117, 38.0, -120.0, 1.0004547272)]
    public void Its_scale_is_that_of_UTM_but_for_the_factor_there(double middle, double latitude, double longitude, double utm) =>
        Assert.Equal(utm / 0.9996, LocalPlane.At(39, middle).ScaleAt(latitude, longitude), 1e-9);

    [Fact]
    public void A_place_comes_back_to_itself_within_a_micrometer()
    {
        var plane = LocalPlane.At(39, -122);
        Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((up, across) =>
        {
            var (latitude, longitude) = plane.ToEarth(plane.ToPlane(39 + up, -122 + across));
            return Math.Abs(latitude - 39 - up) < 1e-11 && Math.Abs(longitude + 122 - across) < 1e-11;
        });
    }

    [Fact]
    public void Within_ten_kilometers_a_length_is_true_to_two_in_a_million()
    {
        var plane = LocalPlane.At(39, -122);
        Gen.Select(Gen.Double[-0.08, 0.08], Gen.Double[-0.11, 0.11], Gen.Double[-0.01, 0.01], Gen.Double[-0.01, 0.01]).Sample((lat, lon, up, across) =>
        {
            var (a, b) = (plane.ToPlane(39 + lat, -122 + lon), plane.ToPlane(39 + lat + up, -122 + lon + across));
            var flat = Math.Sqrt(((a.East - b.East) * (a.East - b.East)) + ((a.North - b.North) * (a.North - b.North)));
            var true12 = Geodesic.Between(39 + lat, -122 + lon, 39 + lat + up, -122 + lon + across).Distance.Meters;
            return Math.Abs(flat - true12) <= (2e-6 * true12) + 1e-7;
        });
    }

    [Fact]
    public void A_plane_spans_the_antimeridian()
    {
        var found = LocalPlane.At(-17, 179.99).ToPlane(-17, -179.99);
        Assert.Equal(Geodesic.Between(-17, 179.99, -17, -179.99).Distance.Meters, found.East, 0.001);
    }

    [Fact]
    public void A_place_on_the_far_side_of_the_earth_is_a_bug() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LocalPlane.At(39, -122).ToPlane(39, 30));

    [Fact]
    public void A_plane_at_a_pole_is_a_bug() => Assert.Throws<ArgumentOutOfRangeException>(() => LocalPlane.At(90, 0));
}
