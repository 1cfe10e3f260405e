using CsCheck;
using Watersown.Reckon;

namespace Watersown.Flight;

public sealed class GateTests
{
    [Fact]
    public void An_aeroplane_that_does_not_move_lays_nothing_and_is_refused() =>
        Ask.For("gate-flow", ("rate_wet_lb_ac", 188), ("speed_mph", 0), ("swath_ft", 50)).Refuses((ReckonProblems.NotAbove, "speed_mph"));

    [Fact]
    public void Weighing_out_gives_back_the_rate_the_gate_was_set_for() =>
        Gen.Select(Gen.Double[20, 300], Gen.Double[60, 160], Gen.Double[20, 90], Gen.Double[300, 6000], Gen.Int[1, 40]).Sample((rate, mph, swathFeet, passFeet, passes) =>
        {
            var (speed, swath, pass) = (Speed.FromMilesPerHour(mph), Length.FromFeet(swathFeet), Length.FromFeet(passFeet));
            var flow = GateFlow.Of(SoakedRate.FromPoundsPerAcre(rate), speed, swath);
            var used = SoakedSeed.FromKilograms(flow.KilogramsPerSecond * passes * pass.Meters / speed.MetersPerSecond);
            Assert.Equal(rate, GateFlow.FromWeighOut(used, passes, pass, swath).PoundsPerAcre, rate * 1e-9);
        });

    [Fact]
    public void A_rate_at_which_the_spread_falls_off_says_so()
    {
        static int Cautions(double rate) => Ask.For("gate-flow", ("rate_wet_lb_ac", rate), ("speed_mph", 120), ("swath_ft", 50)).Value.Cautions.Length;
        Assert.Equal(Cautions(250) + 1, Cautions(251));
    }

    [Fact]
    public void The_hopper_takes_the_smaller_of_room_and_weight()
    {
        var weight = Ask.For("hopper", ("hopper_gal", 500), ("bulk_wet_lb_ft3", 42), ("fill_pct", 100), ("load_limit_wet_lb", 2700));
        Assert.Equal(2700, weight.Number("load_wet_lb"), 1e-9);
        Assert.Equal("weight", weight.Text("binds"));
        var room = Ask.For("hopper", ("hopper_gal", 400), ("bulk_wet_lb_ft3", 42), ("fill_pct", 100), ("load_limit_wet_lb", 2700));
        Assert.Equal("volume", room.Text("binds"));
        Assert.Equal(room.Number("by_volume_wet_lb"), room.Number("load_wet_lb"));
    }
}
