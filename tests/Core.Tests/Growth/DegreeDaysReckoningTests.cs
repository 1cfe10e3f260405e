using Watersown.Reckon;

namespace Watersown.Growth;

public sealed class DegreeDaysReckoningTests
{
    [Fact]
    public void All_faults_of_a_day_are_told_at_once() =>
        Ask.For("degree-days", ("method", "double-sine"), ("low", 60), ("high", 50), ("tmin", 70), ("tmax", 65)).Refuses(
            (GrowthProblems.HighBelowLow, "tmax"),
            (GrowthProblems.ThresholdsCross, "high"),
            (GrowthProblems.NextMorningMissing, "next_tmin"));

    [Fact]
    public void A_method_that_is_not_known_is_refused_with_the_choices() =>
        Ask.For("degree-days", ("method", "guess"), ("low", 50), ("tmin", 50), ("tmax", 65)).Refuses((ReckonProblems.NotAChoice, "method"));

    [Fact]
    public void The_upper_threshold_may_be_left_out_or_null()
    {
        var left = Ask.For("degree-days", ("method", "simple"), ("low", 50), ("tmin", 50), ("tmax", 80));
        var none = Ask.For("degree-days", ("method", "simple"), ("low", 50), ("high", Datum.None), ("tmin", 50), ("tmax", 80));
        Assert.Equal(15, left.Number("degree_days"), 1e-12);
        Assert.Equal(15, none.Number("degree_days"), 1e-12);
    }

    [Fact]
    public void A_next_morning_warmer_than_the_day_is_said_and_not_refused()
    {
        var outcome = Ask.For("degree-days", ("method", "double-triangle"), ("low", 50), ("tmin", 50), ("tmax", 60), ("next_tmin", 62));
        Assert.Equal((5 + 11) / 2.0, outcome.Number("degree_days"), 1e-12);
        Assert.Contains(outcome.Value.Cautions, c => c.Contains("check both readings", StringComparison.Ordinal));
    }

    [Fact]
    public void The_working_names_the_method_and_both_thresholds()
    {
        var lines = Ask.For("degree-days", ("method", "single-sine"), ("low", 55), ("high", 90), ("tmin", 50), ("tmax", 101)).Value.Working.Lines;
        Assert.Contains(lines, l => l.Symbol == "method" && l.Value == "single-sine");
        Assert.Contains(lines, l => l.Symbol == "U" && l.Value == 90);
        Assert.Contains(lines, l => l.Formula is { } formula && formula.StartsWith("F(L) - F(U); F(T) = ", StringComparison.Ordinal) && l.Source is not null);
    }

    [Fact]
    public void A_high_below_a_low_never_reaches_the_formula() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Warmth.OfDay(Temperature.FromCelsius(20), Temperature.FromCelsius(10), nextLow: null, new WarmthRule(WarmthMethod.Simple, Temperature.FromCelsius(10))));
}

public sealed class StageReckoningTests
{
    private static readonly Datum Normals = Datum.ListOf(new[] { (5, 16.5), (6, 23.5), (7, 27.0), (8, 25.5), (9, 22.0) }.Select(n => Datum.Row(("month", n.Item1), ("dd_f", n.Item2))));

    // By hand: 22 May days are 363, 28.4 June days 667; 1,905 at the end of July, 1,910 within the first of August.
    [Fact]
    public void Dates_worked_by_hand_come_out()
    {
        var asked = Ask.For("stage-dates", ("sown", "2026-05-10"), ("pi_dd_f", 1030), ("heading_dd_f", 1910), ("mature_dd_f", 2550), ("normals", Normals));
        Assert.Equal(("2026-06-30", "2026-08-02", "2026-07-17", "2026-07-23"), (asked.Text("pi"), asked.Text("heading"), asked.Text("tender_from"), asked.Text("tender_until")));
        Assert.InRange(asked.Number("heading_error_days"), 6.5, 8);
        Assert.Equal("2026-08-08", Ask.For("stage-dates", ("sown", "2026-05-10"), ("pi_dd_f", 1030), ("heading_dd_f", 1910), ("mature_dd_f", 2550), ("normals", Normals), ("pi_seen", "2026-07-06")).Text("heading"));
    }

    [Fact]
    public void Targets_that_do_not_rise_are_refused() =>
        Ask.For("stage-dates", ("sown", "2026-05-10"), ("pi_dd_f", 2000), ("heading_dd_f", 1910), ("mature_dd_f", 2550), ("normals", Normals)).Refuses((GrowthProblems.TargetsNotRising, "heading_dd_f"));
}
