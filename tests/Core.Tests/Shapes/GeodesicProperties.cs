using CsCheck;

namespace Watersown.Shapes;

public sealed class GeodesicProperties
{
    private static readonly Gen<(double Lat, double Lon)> Place = Gen.Select(Gen.Double[-89.9, 89.9], Gen.Double[-180, 180]);

    [Fact]
    public void The_way_there_is_as_long_as_the_way_back() =>
        Gen.Select(Place, Place).Sample((a, b) =>
        {
            var (there, back) = (Geodesic.Between(a.Lat, a.Lon, b.Lat, b.Lon), Geodesic.Between(b.Lat, b.Lon, a.Lat, a.Lon));
            return Math.Abs(there.Distance.Meters - back.Distance.Meters) < 1e-6
                // Exactly half way round, east and west are the same way.
                && (Math.Abs(Math.IEEERemainder(b.Lon - a.Lon, 360)) == 180 || Math.Abs((there.Under + back.Under).SquareMeters) < 1);
        });

    [Fact]
    public void No_way_round_by_a_third_place_is_shorter() =>
        Gen.Select(Place, Place, Place).Sample((a, b, c) =>
            Geodesic.Between(a.Lat, a.Lon, b.Lat, b.Lon).Distance.Meters
            <= Geodesic.Between(a.Lat, a.Lon, c.Lat, c.Lon).Distance.Meters + Geodesic.Between(c.Lat, c.Lon, b.Lat, b.Lon).Distance.Meters + 1e-6);

    [Fact]
    public void Turning_the_earth_changes_no_area() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-180, 180], Gen.Double[0.001, 1]).Sample((lat, turn, size) =>
        {
            double[] lats = [lat, lat, lat + size], lons = [0, size, size / 3];
            double[] turned = [.. lons.Select(l => l + turn)];
            var (a, b) = (GeodesicRing.Measure(lats, lons).SignedArea, GeodesicRing.Measure(lats, turned).SignedArea);
            // Adding a longitude rounds it to about 3e-14 degrees.
            return Math.Abs(a / b - 1) < 1e-10;
        });

    [Fact]
    public void Reversing_a_ring_turns_the_sign_and_cutting_it_keeps_the_sum() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-179, 179], Gen.Double[0.001, 0.5]).Sample((lat, lon, size) =>
        {
            double[] lats = [lat, lat, lat + size, lat + size], lons = [lon, lon + size, lon + size, lon];
            var whole = GeodesicRing.Measure(lats, lons).SignedArea.SquareMeters;
            var back = GeodesicRing.Measure([.. lats.Reverse()], [.. lons.Reverse()]).SignedArea.SquareMeters;
            var half = GeodesicRing.Measure([lats[0], lats[1], lats[2]], [lons[0], lons[1], lons[2]]).SignedArea.SquareMeters;
            var rest = GeodesicRing.Measure([lats[0], lats[2], lats[3]], [lons[0], lons[2], lons[3]]).SignedArea.SquareMeters;
            return Math.Abs(whole + back) <= 1e-9 * whole && Math.Abs(whole - half - rest) <= (1e-9 * whole) + 1e-4;
        });

    [Fact]
    public void A_place_has_no_distance_from_itself() =>
        Place.Sample(p => Geodesic.Between(p.Lat, p.Lon, p.Lat, p.Lon).Distance.Meters == 0);

    [Theory]
    [InlineData(91, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.PositiveInfinity)]
    public void A_place_off_the_earth_is_a_bug(double latitude, double longitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Geodesic.Between(latitude, longitude, 0, 0));

    [Fact]
    public void Two_corners_enclose_nothing() =>
        Assert.Equal(0, GeodesicRing.Measure([39, 39.1], [-122, -122]).SignedArea.SquareMeters);
}
