using CsCheck;
using Watersown.Reckon;

namespace Watersown.Water;

public sealed class RaisingTests
{
    // By hand: 433 ac × 5/12 ft = 180.4 ac-ft; 14 − 12.57 = 1.43 cfs × 1.983471 = 2.836 ac-ft/day; 180.417 / 2.836 = 63.6 days.
    [Fact]
    public void Five_inches_on_433_acres_are_no_matter_of_three_nights()
    {
        var answer = Raise(("days", 3), ("cold_on", "2026-07-25"));
        Assert.Equal(433 * 5.0 / 12, answer.Number("volume_ac_ft"), 1e-6);
        Assert.Equal(2.836, answer.Number("spare_ac_ft_day"), 0.001);
        Assert.Equal(63.6, answer.Number("days_needed"), 0.05);
        Assert.Equal(new Datum.Flag(false), answer.Answer("in_time"));
        // 64 days before 25 July.
        Assert.Equal("2026-05-22", answer.Text("start_by"));
        // 12.57 + 180.417 / (3 × 1.983471) cfs.
        Assert.Equal(42.89, answer.Number("supply_wanted_cfs"), 0.01);
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("Not possible in time", StringComparison.Ordinal));
    }

    // Three days bring 8.509 ac-ft: over 433 ac 0.236 in; alone 0.844 in on 121 ac, 0.762 on 134, 0.574 on 178.
    [Fact]
    public void The_smallest_field_gains_most_from_what_little_there_is()
    {
        var answer = Raise(("days", 3));
        Assert.Equal(0.236, answer.Number("together_in"), 0.001);
        Assert.Equal(["Tulehead", "Pumphouse", "Big Elbow"], answer.Rows("fields").Select(r => ((Datum.Text)r["name"]!).Value));
        Assert.Equal([0.844, 0.762, 0.574], answer.Rows("fields").Select(r => Math.Round(r.Number("rise_in"), 3)));
        Assert.Equal(Datum.None, answer.Answer("start_by"));
    }

    [Fact]
    public void With_time_enough_it_stands_no_deeper_than_wanted()
    {
        var answer = Raise(("days", 100), ("cold_on", "2026-07-25"));
        Assert.Equal(new Datum.Flag(true), answer.Answer("in_time"));
        Assert.Equal(5, answer.Number("together_in"), 1e-9);
        Assert.All(answer.Rows("fields"), r => Assert.Equal(8, r.Number("depth_in"), 1e-9));
    }

    [Theory]
    [InlineData(12.57)]
    [InlineData(9)]
    public void With_nothing_left_over_it_never_rises(double supply)
    {
        var answer = Raise(("days", 3), ("cold_on", "2026-07-25"), ("supply_cfs", supply));
        Assert.Equal(Datum.None, answer.Answer("days_needed"));
        Assert.Equal(Datum.None, answer.Answer("start_by"));
        Assert.Equal(0, answer.Number("together_in"));
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("Nothing is left over", StringComparison.Ordinal));
    }

    [Fact]
    public void What_stands_that_deep_already_needs_nothing()
    {
        var answer = Raise(("days", 3), ("target_in", 3));
        Assert.Equal((0.0, 0.0), (answer.Number("volume_ac_ft"), answer.Number("days_needed")));
        Assert.Contains("All of it stands that deep already.", answer.Value.Cautions, StringComparer.Ordinal);
    }

    [Fact]
    public void No_field_gains_more_than_the_water_that_comes() =>
        Gen.Select(Gen.Double[0.1, 20], Gen.Double[0.1, 60], Gen.Double[10, 400], Gen.Double[10, 400]).Sample((cfs, days, one, other) =>
        {
            var raise = Raising.Of([new("a", Area.FromAcres(one), WaterDepth.FromInches(3)), new("b", Area.FromAcres(other), WaterDepth.FromInches(4))], WaterDepth.FromInches(8), FlowRate.FromCubicFeetPerSecond(cfs), TimeSpan.FromDays(days));
            var comes = cfs * 1.98347107438 * days;
            Assert.All(raise.Parts, p => Assert.True((p.Land.Land * p.Rise).AcreFeet <= comes * (1 + 1e-9)));
            Assert.True((Area.FromAcres(one + other) * raise.Together).AcreFeet <= comes * (1 + 1e-9));
            Assert.Equal(raise.InTime, comes >= raise.Volume.AcreFeet);
        });

    private static Outcome<Reckoned> Raise(params (string Key, Datum Value)[] more)
    {
        ImmutableArray<(string Key, Datum Value)> usual = [("supply_cfs", 14), ("holding_cfs", 12.57), ("target_in", 8)];
        Datum Field(string name, double acres) => Datum.Row(("name", name), ("acres", acres), ("depth_in", 3));
        return Ask.For("raise-water", [("fields", Datum.ListOf([Field("Pumphouse", 134), Field("Big Elbow", 178), Field("Tulehead", 121)])), .. usual.Where(u => more.All(m => m.Key != u.Key)), .. more]);
    }
}
