using System.Globalization;
using Watersown.Reckon;

namespace Watersown.Water;

public sealed class FillChecksReckoningTests
{
    // Derived: four 20-acre checks, 1.4 in of soil and 2 in of flood, 10 cfs, nothing lost: 20 × 3.4 / 9.91736 = 6.86 h each. Wide boxes
    // at a fall hold back next to nothing.
    [Fact]
    public void Checks_are_full_one_after_the_other()
    {
        var answer = Run("checks=4 check_ac=20 take_up_ft=0.1166667 depth_in=2 hold_loss_in_day=0 supply_cfs=10 box_ft=20 drop_ft=1 supply_off_pct=0 loss_off_pct=0 take_up_off_pct=0");
        var full = ((Datum.Sequence)answer.Answer("full_h")).Items.Select(i => ((Datum.Number)i).Value).ToList();
        Assert.Equal(6.857, full[0], 0.01);
        Assert.True(full.Zip(full.Skip(1)).All(p => p.Second - p.First > 6), string.Join(", ", full));
        // Nothing is in doubt: all futures are one.
        Assert.Equal(full[3], answer.Number("early_h"), 1e-3);
        Assert.Equal(answer.Number("early_h"), answer.Number("late_h"), 1e-9);
    }

    // Derived: one check, t = A (S + d) / Q where nothing is lost. The supply off by up to 20 %: at the middles of four equal parts 0.85, 0.95,
    // 1.05, 1.15 of it, so that the tenth is the fastest quarter and nine tenths the slowest.
    [Fact]
    public void Doubt_about_the_supply_is_doubt_about_the_hour()
    {
        var answer = Run("checks=1 check_ac=100 take_up_ft=0.4 depth_in=2.4 hold_loss_in_day=0 supply_cfs=10 box_ft=4 drop_ft=0 supply_off_pct=20 loss_off_pct=0 take_up_off_pct=0");
        var told = 100 * 0.6 / (10 * 1.983471) * 24;
        Assert.Equal(told / 1.15, answer.Number("early_h"), 0.02);
        Assert.Equal(told / 0.95, answer.Number("middle_h"), 0.02);
        Assert.Equal(told / 0.85, answer.Number("late_h"), 0.02);
        Assert.Equal(0, answer.Number("never_pct"));
    }

    // Derived: 200 ac × 0.29 in a day take 2.44 cfs (÷ 23.8): at 2.6 cfs a loss 7.5 % higher can never be held, and never is later than all.
    [Fact]
    public void Where_hardly_more_comes_than_holding_takes_some_futures_never_fill()
    {
        var answer = Run("checks=1 check_ac=200 take_up_ft=0.3 depth_in=2 hold_loss_in_day=0.29 supply_cfs=2.6 box_ft=8 drop_ft=0.2 supply_off_pct=0 loss_off_pct=30 take_up_off_pct=0");
        Assert.Equal(50, answer.Number("never_pct"), 1e-9);
        Assert.Equal(Datum.None, answer.Answer("late_h"));
        Assert.True(answer.Number("early_h") > 24);
    }

    private static Outcome<Reckoned> Run(string words) =>
        Ask.For("fill-checks", [.. words.Split(' ').Select(w => w.Split('=')).Select(w => (w[0], (Datum)double.Parse(w[1], CultureInfo.InvariantCulture)))]);
}
