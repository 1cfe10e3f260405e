using Watersown.Reckon;

namespace Watersown.Flight.Laying;

public sealed class PassLayoutReckoningTests
{
    // A mile by half a mile of latitude and longitude, from the reckoning's own example.
    private const string Section = "-122,39.4 -121.9906,39.4 -121.9906,39.4072 -122,39.4072 -122,39.4";

    [Fact]
    public void A_whole_job_is_told_with_its_bound()
    {
        var answer = Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32), ("loads", Loads(2800)));
        Assert.Equal(0, answer.Number("run_costs_min"), 1e-9);
        var alone = Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32));
        Assert.Equal(alone.Number("passes"), alone.Number("bound_passes"));
        Assert.InRange(alone.Number("gap_pct"), 0, 3);

        // Another heading where its ferry saves more: what it takes more in passes and turns is told.
        Assert.Equal(alone.Number("flight_min"), answer.Number("flight_min") - answer.Number("for_ferry_min"), 1e-6);
        Assert.InRange(answer.Number("for_ferry_min"), 0, 2 * 32 / 60.0);
        Assert.True(answer.Number("filled_up_costs_min") >= 0);
        Assert.True(answer.Number("ferry_min") >= answer.Number("least_ferry_min"));
        Assert.True(answer.Number("job_min") > answer.Number("flight_min"));
        Assert.True(answer.Number("one_fewer_load_wet_lb") > 2800);
        Assert.True(answer.Number("one_fewer_saves_min") > 0);
        Assert.Contains(answer.Value.Cautions, c => c.Contains("the pilot decides", StringComparison.Ordinal));
        Assert.Single(answer.Rows("cells"));
    }

    [Fact]
    public void Room_binds_before_weight_where_the_seed_is_light()
    {
        var light = Loads(2800).Cells.Add(("hopper_gal", 400)).Add(("bulk_wet_lb_ft3", 40));
        var answer = Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32), ("loads", new Datum.Table(light)));
        Assert.Equal(400 * 231 / 1728.0 * 40, answer.Number("load_limit_wet_lb"), 1e-6);
    }

    [Fact]
    public void A_pass_that_is_more_than_a_load_leaves_the_loads_untold()
    {
        var answer = Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32), ("loads", Loads(100)));
        Assert.Equal(Datum.None, answer.Answer("loads"));
        Assert.Equal(Datum.None, answer.Answer("job_min"));
    }

    [Fact]
    public void A_racetrack_flies_as_many_passes_and_a_swath_far_too_small_is_refused()
    {
        var (back, race) = (Asked("back-and-forth"), Asked("racetrack"));
        Assert.Equal(back.Number("passes"), race.Number("passes"));
        Assert.True(race.Number("flight_min") < back.Number("flight_min"));
        Assert.True(race.Number("flight_min") >= race.Number("bound_min"));
        Ask.For("pass-layout", ("boundary", Geo.Polygon("-122,39 -121.98,39 -121.98,39.005 -122,39.005 -122,39")), ("swath_ft", 1), ("speed_mph", 120), ("turn_s", 32))
            .Refuses((ReckonProblems.Impossible, "swath_ft"));
        var wide = Ask.For("pass-layout", ("boundary", Geo.Polygon("-122,39 -120.5,39 -120.5,39.5 -122,39.5 -122,39")), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32));
        Assert.Equal([ReckonProblems.Impossible], wide.Refusals.Select(p => p.Kind));
        Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32), ("loads", new Datum.Table(Loads(2800).Cells.SetItem(1, ("strip_lon", 122)))))
            .Refuses((ReckonProblems.Impossible, "loads strip_lat"));
        Outcome<Reckoned> Asked(string order) => Ask.For("pass-layout", ("boundary", Geo.Polygon(Section)), ("swath_ft", 30), ("speed_mph", 120), ("turn_s", 20), ("order", order));
    }

    private static Datum.Table Loads(double limit) => (Datum.Table)Datum.Row(
        ("strip_lat", 39.39), ("strip_lon", -122.01), ("ferry_mph", 130), ("turnaround_s", 190), ("rate_wet_lb_ac", 187.5), ("load_limit_wet_lb", limit));
}
