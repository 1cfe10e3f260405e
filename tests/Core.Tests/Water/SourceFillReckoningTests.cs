using Watersown.Reckon;

namespace Watersown.Water;

public sealed class SourceFillReckoningTests
{
    // Derived: 23.6 ac-ft to come, 5.30 cfs held, check by check by t = (V / m) ln((S − m A0) / (S − m A1)).
    [Theory]
    [InlineData(14, 1.41, 8.17)]
    [InlineData(20, 0.82, 14.17)]
    public void A_field_is_full_once_what_is_wet_has_been_held(double cfs, double days, double over)
    {
        var answer = Ask.For("source-fill", ("supply_cfs", cfs), ("held_cfs", 4.243), ("fields", Datum.ListOf([Field("N4", 118, 118.0 * 4 / 6, 6, 0.6, 0.32)])));
        Assert.Equal(days, answer.Number("days"), 0.005);
        Assert.Equal(5.30, answer.Number("hold_cfs_now"), 0.005);
        Assert.Equal(over, answer.Number("over_cfs_when_full"), 0.01);
        Assert.Equal((Datum)false, answer.Answer("never"));
        var checks = ((Datum.Sequence)answer.Rows("fields")[0]["check_days"]!).Items.Select(d => ((Datum.Number)d).Value).ToArray();
        Assert.Equal([0, 0, 0, 0], checks[..4]);
        Assert.Equal(answer.Number("days"), checks[5]);
        Assert.InRange(checks[4], checks[5] * 0.48, checks[5] * 0.5);
    }

    // Derived: three fields of a weak well, 3.75 cfs to hold and 3.2 to give.
    [Fact]
    public void A_well_that_can_never_win_says_which_field_is_never_full()
    {
        var answer = Ask.For("source-fill", ("supply_cfs", 3.2), ("fields", Datum.ListOf([Field("H4", 117, 0, 5, 0.55, 0.28), Field("H5", 71, 0, 9, 0.6, 0.32), Field("H6", 121, 0, 4, 0.55, 0.28)])));
        Assert.Equal(Datum.None, answer.Answer("days"));
        Assert.Equal((Datum)true, answer.Answer("never"));
        Assert.Equal(Datum.None, answer.Answer("over_cfs_when_full"));
        Assert.Equal(0.55, answer.Number("short_cfs"), 0.01);
        Assert.Equal([false, false, true], answer.Rows("fields").Select(r => ((Datum.Flag)r["never"]!).Value));
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("H6 is never full", StringComparison.Ordinal));
    }

    [Fact]
    public void Side_by_side_every_field_is_later_than_it_could_be_alone()
    {
        Datum fields = Datum.ListOf([Field("A", 74, 0, 4, 0.5, 0.26), Field("B", 156, 0, 8, 0.6, 0.32)]);
        var (turn, side) = (Ask.For("source-fill", ("supply_cfs", 20), ("fields", fields)), Ask.For("source-fill", ("supply_cfs", 20), ("way", "side-by-side"), ("fields", fields)));
        Assert.True(turn.Rows("fields")[0].Number("days") < side.Rows("fields")[0].Number("days"));
        Assert.Equal(1, side.Number("days") / turn.Number("days"), 0.03);
    }

    [Fact]
    public void What_cannot_be_is_refused() =>
        Ask.For("source-fill", ("supply_cfs", 3), ("fields", Datum.ListOf([Field("A", 74, 80, 40, 0.5, 0.26), Field("B", 156, 0, 40, 0.6, 0.32)])))
            .Refuses((ReckonProblems.Impossible, "fields #1 wet_ac"), (ReckonProblems.Impossible, "fields"));

    private static Datum Field(string name, double net, double wet, int checks, double fill, double loss) =>
        Datum.Row(("field", name), ("net_ac", net), ("wet_ac", wet), ("checks", checks), ("fill_depth_ft", fill), ("hold_loss_in_day", loss));
}
