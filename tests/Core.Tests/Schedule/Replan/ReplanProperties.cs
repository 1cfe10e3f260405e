using CsCheck;

namespace Watersown.Schedule.Replan;

public sealed class ReplanProperties
{
    private static readonly Gen<(decimal HeadAge, decimal Delay)> Prices = Gen.Select(Gen.Int[0, 800], Gen.Int[0, 2500]).Select(p => (p.Item1 / 100m, p.Item2 / 100m));

    [Fact]
    public void No_assignment_of_whole_fields_is_cheaper_at_Marrowfen() => Prices.Sample(p =>
    {
        var replan = MorningReplan.Of(ReplanCase.WithoutToday(PlannedMorning.State()), PlannedMorning.Plan());
        Assert.Equal(EveryAssignment.Cheapest(replan.Case, p.HeadAge, p.Delay), Best(replan, p).Cost.Amount);
    }, iter: 2);

    [Fact]
    public void No_assignment_of_whole_fields_is_cheaper_on_any_small_farm() => Gen.Select(AnyBlownMorning.States, Prices).Sample((state, p) =>
    {
        var replan = MorningReplan.Of(state, null);
        if (replan.Case.Fields.IsEmpty) return;
        Assert.Equal(EveryAssignment.Cheapest(replan.Case, p.HeadAge, p.Delay), Best(replan, p).Cost.Amount);
    }, iter: 100);

    [Fact]
    public void Seed_only_goes_where_its_variety_is_wanted_and_every_pound_is_accounted_for() => AnyBlownMorning.States.Sample(state =>
    {
        var replan = MorningReplan.Of(state, null);
        foreach (var plan in replan.Plans.Concat(replan.Others))
        {
            Assert.Equal(replan.Case.Fields.Select(f => f.Code).Order(StringComparer.Ordinal), plan.Sowings.Select(s => s.Field.Code).Order(StringComparer.Ordinal));
            Assert.All(plan.Sowings.Where(s => s.Batch is not null), s => Assert.True(s.Field.Season.Variety is null || s.Field.Season.Variety == s.Batch!.Variety));
            foreach (var fate in plan.Batches)
            {
                var sown = plan.Sowings.Where(s => s.Batch?.Code == fate.Batch.Code).Sum(s => s.Dry.Pounds);
                Assert.Equal(sown, fate.Used.Pounds, 3);
                if (fate.Batch.InSoak <= state.Now) Assert.Equal(Math.Max(0, fate.Batch.Dry.Pounds - sown), fate.Lost.Pounds, 3);
            }

            Assert.Equal(plan.Sowings.Where(s => s is { Batch: null, IsLater: false }).Sum(s => s.Dry.Pounds), plan.Calls.Sum(c => c.Dry.Pounds), 3);
        }
    });

    [Fact]
    public void At_a_break_even_both_plans_cost_the_same_and_beyond_it_the_other_is_first() => Gen.Select(AnyBlownMorning.States, Prices).Sample((state, p) =>
    {
        var replan = MorningReplan.Of(state, null);
        var best = replan.Ranked(At(p));
        foreach (var flip in Flips.Of(replan, At(p)))
        {
            var (there, beyond) = (Moved(p, flip, 0), Moved(p, flip, flip.Above ? 0.0001m : -0.0001m));
            Assert.Equal((double)best[0].Plan.Cost(there).Amount, (double)flip.To.Cost(there).Amount, 3);
            Assert.True(replan.Ranked(there)[0].Cost.Amount >= best[0].Plan.Cost(there).Amount - 0.001m);
            if (beyond.HeadAge >= Money.Zero && beyond.Delay >= Money.Zero) Assert.True(flip.To.Cost(beyond) < best[0].Plan.Cost(beyond));
        }
    });

    [Fact]
    public void The_same_season_gives_the_same_plans() => AnyBlownMorning.States.Sample(state =>
        Assert.Equal(Told(MorningReplan.Of(state, null)), Told(MorningReplan.Of(state, null))));

    private static string Told(MorningReplan replan) => string.Join('\n', replan.Plans.Select(p => string.Join(' ', p.Sowings.Select(s => s.Field.Code + s.Start + s.Batch?.Code))));

    private static RankedPlan Best(MorningReplan replan, (decimal, decimal) prices) => replan.Ranked(At(prices))[0];

    private static ReplanPrices At((decimal HeadAge, decimal Delay) p) => new(Money.FromDollars(p.HeadAge), Money.FromDollars(p.Delay));

    private static ReplanPrices Moved((decimal HeadAge, decimal Delay) p, Flip flip, decimal by) =>
        At(flip.Price == FlipPrice.HeadAge ? (flip.Exact + by, p.Delay) : (p.HeadAge, flip.Exact + by));
}
