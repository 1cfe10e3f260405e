using Watersown.Reckon;

namespace Watersown.Water;

public sealed class FillReckoningTests
{
    // Derived: t = (V / m) ln((S − m A0) / (S − m A1)) worked by hand, S = 1.983471 × cfs, for one invented farm of 2,900 ac
    // (mean fill 0.584 ft, mean loss 0.0258 ft a day, 51.4 cfs).
    [Fact]
    public void A_whole_farm_takes_thirty_days_where_the_plain_sum_says_seventeen()
    {
        var answer = Fill(2900, 0.584, 0.0258 * 12, 0, 51.4);
        Assert.Equal(29.9, answer.Number("days"), 0.1);
        Assert.Equal(16.6, answer.Number("naive_days"), 0.05);
        Assert.Equal(1693.6, answer.Number("volume_ac_ft"), 0.1);
        Assert.Equal(37.7, answer.Number("hold_cfs_when_full"), 0.05);
        Assert.Contains(answer.Value.Cautions, c => c.Contains("longer than the plain sum", StringComparison.Ordinal));
    }

    // Derived, the same farm's weak well: 117 and 121 ac losing 0.28 in a day, 71 ac losing 0.32.
    [Fact]
    public void A_well_that_can_never_win_gets_no_date_and_a_place_where_the_flood_stops()
    {
        var answer = Fill(309, 0.57, ((238 * 0.28) + (71 * 0.32)) / 309, 0, 3.2);
        Assert.Equal(Datum.None, answer.Answer("days"));
        Assert.Equal((Datum)true, answer.Answer("never"));
        Assert.Equal(263, answer.Number("stall_ac"), 0.5);
        Assert.Equal(3.75, answer.Number("hold_cfs_when_full"), 0.01);
        Assert.Equal("The flood stops when 263.4 ac are covered, 263.4 ac of this job. It needs more than 3.754 cfs to finish.", Assert.Single(answer.Value.Cautions));
    }

    // Derived: 23.6 ac-ft to come at 14 or 20 cfs less what 394.2 ac of the same loss already drink (5.30 cfs).
    [Theory]
    [InlineData(14, 1.41)]
    [InlineData(20, 0.82)]
    public void Land_already_wet_is_held_first(double gate, double days) =>
        Assert.Equal(days, Fill(118.0 / 3, 0.60, 0.32, 5.30 * 1.983471 / (0.32 / 12), gate).Number("days"), 0.006);

    // Common practice, no source: 118 ac at 0.60 ft and 10 cfs, nothing lost.
    [Fact]
    public void With_nothing_lost_it_is_the_plain_sum()
    {
        var answer = Fill(118, 0.60, 0, 0, 10);
        Assert.Equal(70.8, answer.Number("volume_ac_ft"), 1e-9);
        Assert.Equal(3.57, answer.Number("days"), 0.005);
        Assert.Equal(answer.Number("naive_days"), answer.Number("days"), 1e-9);
        Assert.Equal(Datum.None, answer.Answer("stall_ac"));
    }

    // Derived: 0.30 in a day to the air and 0.06 to the ground over 100 ac.
    [Fact]
    public void Holding_a_hundred_acres_takes_a_foot_and_a_half_a_second() =>
        Assert.Equal(1.5125, Fill(100, 0.5, 0.36, 0, 10).Number("hold_cfs_when_full"), 0.00005);

    [Fact]
    public void A_supply_that_only_just_holds_never_fills()
    {
        var hold = Fill(100, 0.5, 0.36, 0, 10).Number("hold_cfs_when_full");
        Assert.Equal((Datum)true, Fill(100, 0.5, 0.36, 0, hold).Answer("never"));
        Assert.Equal((Datum)false, Fill(100, 0.5, 0.36, 0, hold * 1.0001).Answer("never"));
        Assert.Contains(Fill(100, 0.5, 0.36, 0, hold * 1.05).Value.Cautions, c => c.StartsWith("Hardly more comes than holding takes", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_water_it_never_fills()
    {
        foreach (var loss in new[] { 0, 0.3 })
        {
            var answer = Fill(100, 0.5, loss, 0, 0);
            Assert.Equal((Datum)true, answer.Answer("never"));
            Assert.Equal(Datum.None, answer.Answer("naive_days"));
            Assert.Equal("No water comes.", Assert.Single(answer.Value.Cautions));
        }
    }

    [Fact]
    public void Land_already_wet_can_drink_all_that_comes() =>
        Assert.StartsWith("Land already covered drinks all that comes: it can hold 66.12 ac", Assert.Single(Fill(50, 0.5, 0.36, 100, 1).Value.Cautions), StringComparison.Ordinal);

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("fill", ("net_ac", 0), ("fill_depth_ft", -1), ("hold_loss_in_day", 9), ("wet_ac", "some"), ("days", 3)).Refuses(
            (ReckonProblems.NotAbove, "net_ac"),
            (ReckonProblems.NotAbove, "fill_depth_ft"),
            (ReckonProblems.TooLarge, "hold_loss_in_day"),
            (ReckonProblems.WrongSort, "wet_ac"),
            (ReckonProblems.UnknownKey, "days"),
            (ReckonProblems.MissingKey, "supply_cfs"));

    private static Outcome<Reckoned> Fill(double net, double depth, double loss, double wet, double supply) =>
        Ask.For("fill", ("net_ac", net), ("fill_depth_ft", depth), ("hold_loss_in_day", loss), ("wet_ac", wet), ("supply_cfs", supply));
}
