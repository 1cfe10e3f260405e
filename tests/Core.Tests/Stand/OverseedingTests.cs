using CsCheck;
using Watersown.Reckon;

namespace Watersown.Stand;

public sealed class OverseedingTests
{
    private static readonly Datum Response = Pairs((3, 0.55), (5, 0.72), (8, 0.86), (10, 0.91), (12.5, 0.95), (15, 0.97), (20, 0.99), (25, 1));

    // By hand: at 7 plants f = 0.72 + 2/3 × 0.14 = 0.813333; at 18, f = 0.97 + 3/5 × 0.02 = 0.982.
    // 30 ac × 85 cwt × 0.168667 × $18 = $7,741.80; less 30 × 95 = $2,850 and 30 × 12 × 3.6 = $1,296: $3,595.80, $119.86 an acre.
    [Fact]
    public void A_thin_upwind_side_pays_for_its_second_flight()
    {
        var outcome = Asked(7, 18, 95, 12, Response);
        Assert.Equal(3595.80, outcome.Number("gain"), 0.01);
        Assert.Equal(119.86, outcome.Number("gain_per_ac"), 0.001);
        Assert.Equal(true, outcome.Answer("worth_it"));
    }

    // By hand: from 17 plants (0.978) to 30 (1, level beyond 25): 30 × 85 × 0.022 × 18 = $1,009.80 against $2,850 + $1,296.
    [Fact]
    public void A_good_stand_does_not_pay_for_another()
    {
        var outcome = Asked(17, 30, 95, 12, Response);
        Assert.Equal(1009.80 - 4146, outcome.Number("gain"), 0.01);
        Assert.Equal(false, outcome.Answer("worth_it"));
    }

    [Theory]
    [InlineData(0, 0.55)]
    [InlineData(3, 0.55)]
    [InlineData(4, 0.635)]
    [InlineData(25, 1)]
    [InlineData(60, 1)]
    public void The_response_is_straight_between_its_points_and_level_beyond(double stand, double share) =>
        Assert.Equal(share, Overseeding.ShareAt(
            [new(PlantDensity.FromPerSquareFoot(3), Fraction.FromShare(0.55)), new(PlantDensity.FromPerSquareFoot(5), Fraction.FromShare(0.72)), new(PlantDensity.FromPerSquareFoot(25), Fraction.One)],
            PlantDensity.FromPerSquareFoot(stand)).Share, 1e-9);

    // Common practice, no source: the usual response of a farm without one of its own.
    [Fact]
    public void Without_a_response_the_usual_one_is_taken_and_said()
    {
        var outcome = Ask.For("overseed", ("acres", 30), ("stand_now_ft2", 7), ("stand_after_ft2", 18), ("yield_cwt_ac", 85), ("price_cwt", 18), ("cost_ac", 95), ("days_late", 12), ("delay_cost_ac_day", 3.6));
        Assert.Equal(3595.80, outcome.Number("gain"), 0.01);
        Assert.Contains(outcome.Value.Cautions, c => c.Contains("usual response", StringComparison.Ordinal));
        Assert.Equal(0, Overseeding.ShareAt(Overseeding.UsualResponse, PlantDensity.Zero).Share);
    }

    [Fact]
    public void Every_fault_of_the_response_is_told_at_once() =>
        Asked(20, 10, 95, 12, Datum.ListOf([Ask.List(3, 0.55), Ask.List(5, 1.72), Ask.List(4, 0.8), Ask.List(8), Ask.List(-9, 0.9), "x"])).Refuses(
            (StandProblems.ResponseRange, "response #2"),
            (StandProblems.ResponseOrder, "response #3"),
            (StandProblems.ResponseShape, "response #4"),
            (StandProblems.ResponseRange, "response #5"),
            (StandProblems.ResponseOrder, "response #5"),
            (StandProblems.ResponseShape, "response #6"),
            (StandProblems.ThinnerAfter, "stand_after_ft2"));

    [Fact]
    public void The_same_stand_twice_is_no_rising_order() =>
        Asked(7, 18, 95, 12, Pairs((3, 0.5), (8, 0.8), (8, 0.9))).Refuses((StandProblems.ResponseOrder, "response #3"));

    [Fact]
    public void One_pair_is_no_response() => Asked(7, 18, 95, 12, Pairs((3, 0.5))).Refuses((StandProblems.ResponseEmpty, "response"));

    [Fact]
    public void Numbers_that_are_not_finite_stay_out()
    {
        Asked(7, 18, 95, 12, Datum.ListOf([Ask.List(3, 0.5), Ask.List(double.PositiveInfinity, 0.6)])).Refuses((StandProblems.ResponseRange, "response #2"));
        Asked(7, 18, double.NaN, 12, Response).Refuses((ReckonProblems.WrongSort, "cost_ac"));
    }

    [Fact]
    public void Costs_and_days_only_ever_lessen_the_gain() => Gen.Select(Gen.Double[0, 20], Gen.Double[0, 20], Gen.Double[0, 200], Gen.Double[0, 40]).Sample((now, more, cost, days) =>
    {
        var gain = Asked(now, now + more, cost, days, Response).Number("gain");
        Assert.True(gain >= Asked(now, now + more, cost + 1, days, Response).Number("gain"));
        Assert.True(gain >= Asked(now, now + more, cost, days + 1, Response).Number("gain"));
        Assert.True(gain <= Asked(now, now + more + 1, cost, days, Response).Number("gain") + 1e-9);
    });

    private static Outcome<Reckoned> Asked(double now, double after, double cost, double days, Datum response) => Ask.For("overseed",
        ("acres", 30), ("stand_now_ft2", now), ("stand_after_ft2", after), ("yield_cwt_ac", 85), ("price_cwt", 18), ("cost_ac", cost), ("days_late", days), ("delay_cost_ac_day", 3.6), ("response", response));

    private static Datum Pairs(params (double Stand, double Share)[] pairs) => Datum.ListOf(pairs.Select(p => Ask.List(p.Stand, p.Share)));
}
