using Watersown.Reckon;

namespace Watersown.Land;

public sealed class AreaReckoningTests
{
    private static Reckoned Reckon(Datum.Table boundary) =>
        Reckonings.Find("area")!.Run((Datum.Table)Datum.Row(("boundary", boundary))).Value;

    private static double Number(Reckoned reckoned, string key) => ((Datum.Number)reckoned[key]).Value;

    // Invented field C: computed with GeographicLib 2.1.2 Planimeter; outer less hole, perimeters added.
    [Fact]
    public void A_hole_is_taken_off_and_its_edge_counted()
    {
        var found = Reckon(Geo.Polygon(
            "-121.7602,38.9501 -121.7451,38.9503 -121.7448,38.9575 -121.7599,38.9572 -121.7602,38.9501",
            "-121.7540,38.9530 -121.7520,38.9530 -121.7520,38.9542 -121.7540,38.9542 -121.7540,38.9530"));
        Assert.Equal(1015135.46, Number(found, "area_m2"), 0.05);
        Assert.Equal(250.8454, Number(found, "area_ac"), 0.0001);
        Assert.Equal(4819.958, Number(found, "perimeter_m"), 0.001);
        Assert.Empty(found.Cautions);
    }

    // GeographicLib documentation of Planimeter; longitude 270 as printed there.
    [Fact]
    public void A_ring_around_the_pole_is_reckoned_with_a_caution()
    {
        var found = Reckon(Geo.Polygon("0,89 90,89 180,89 270,89 0,89"));
        Assert.Equal(24952305678.0, Number(found, "area_m2"), 1.0);
        Assert.Equal(631819.8745, Number(found, "perimeter_m"), 1e-4);
        Assert.NotEmpty(found.Cautions);
    }

    // GeographicLib published tests (Planimeter0), from memory.
    [Fact]
    public void An_eighth_of_the_earth_is_reckoned()
    {
        var found = Reckon(Geo.Polygon("0,90 0,0 90,0 0,90"));
        Assert.Equal(63758202715511.0, Number(found, "area_m2"), 1.0);
        Assert.Equal(30022685, Number(found, "perimeter_m"), 1.0);
    }

    [Fact]
    public void A_bad_boundary_is_refused_by_its_key()
    {
        var outcome = Reckonings.Find("area")!.Run((Datum.Table)Datum.Row(("boundary", Geo.Polygon("39,-122 39,-121.99 39.01,-121.99 39,-122"))));
        Assert.True(outcome.IsRefused);
        Assert.StartsWith("boundary", Assert.Single(outcome.Problems).Where, StringComparison.Ordinal);
    }
}
