using Watersown.Planner.Checking;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Schedule.Replan;
using Watersown.Water;

namespace Watersown.Planner;

/// <summary>The invented farm planned for real, against numbers worked by hand from its table.</summary>
public sealed class MarrowfenPlanTests
{
    private static readonly Lazy<SeasonState> Farm = new(() => OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value);
    private static readonly Lazy<SeasonPlan> Planned = new(() => SeasonPlanner.Plan(Farm.Value, new PlanOptions { Budget = TimeSpan.FromSeconds(6) }));

    private static SeasonPlan Plan => Planned.Value;

    [Fact]
    public void The_plan_breaks_no_rule() => Assert.Empty(PlanChecker.Faults(Plan));

    [Fact]
    public void Every_unsown_field_is_sown() =>
        Assert.Equal(Farm.Value.Fields.Count(f => f.Stage != FieldStage.Sown), Plan.Tasks.Count(t => t.Kind == PlanTaskKind.Sow));

    // Closed form with the block's mean fill and loss, worked by hand (derived): days from now, everything prepared.
    [Theory]
    [InlineData("NT-1", 20, 10.7)]
    [InlineData("ST-2", 16, 13.2)]
    [InlineData("NT-1 ST-2", 30, 16.9)]
    [InlineData("SP-1", 14, 12.6)]
    [InlineData("W-1", 4.2, 45.0)]
    public void No_plan_fills_a_block_sooner_than_its_water_allows(string sources, double cfs, double days)
    {
        var fields = Farm.Value.Farm.Fields.Where(f => sources.Split(' ').Contains(f.Sources[0])).ToList();
        var bound = Bound(fields.Select(f => f.Code), FlowRate.FromCubicFeetPerSecond(cfs));
        Assert.Equal(days, bound!.Value.TotalDays, 0.1);
        var filled = Plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill && fields.Any(f => f.Code == t.Field)).Max(t => t.End);
        // W-1's own bound is for the well alone; with tailwater its fields may be sooner.
        if (sources != "W-1") Assert.True(filled - Farm.Value.Now >= bound.Value, $"{sources} full {filled}, bound {Farm.Value.Now + bound.Value}");
    }

    [Fact]
    public void The_weak_well_alone_never_fills_its_block() =>
        Assert.Null(Bound(Farm.Value.Farm.Fields.Where(f => f.Sources[0] == "W-2").Select(f => f.Code), FlowRate.FromCubicFeetPerSecond(3.2)));

    private static TimeSpan? Bound(IEnumerable<string> codes, FlowRate supply)
    {
        var waters = codes.Select(c => FieldWater.Of(Farm.Value, c)).ToList();
        double acres = waters.Sum(w => w.All.Acres), wet = waters.Sum(w => w.Job.Wet.Acres);
        var job = new FloodJob(
            Area.FromAcres(acres - wet),
            Area.FromAcres(wet),
            WaterDepth.FromFeet(waters.Sum(w => w.Job.Fill.Feet * w.All.Acres) / acres),
            DepthRate.FromInchesPerDay(waters.Sum(w => w.Job.Loss.InchesPerDay * w.All.Acres) / acres));
        return Ponding.FillTime(job, supply);
    }

    // By hand at the orders that run now (derived): Sat 14:41, Sat 18:18, Sun 04:03; the plan rounds to five minutes and slows a little for rounding.
    [Theory]
    [InlineData("N4", 9, 14, 41)]
    [InlineData("S3", 9, 18, 18)]
    [InlineData("R5", 10, 4, 3)]
    public void Fields_filling_now_are_full_when_the_closed_form_says(string field, int day, int hour, int minute)
    {
        var full = Plan.Task(field, PlanTaskKind.Fill)!.End;
        var byHand = new DateTimeOffset(2026, 5, day, hour, minute, 0, TimeSpan.FromHours(-7));
        Assert.InRange((full - byHand).TotalMinutes, -1, 30);
    }

    [Fact]
    public void Saturday_has_seed_for_one_field_only_and_Sunday_for_three()
    {
        var saturday = Plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && FarmTime.Day(Farm.Value, t.Start) == new DateOnly(2026, 5, 9)).ToList();
        Assert.Equal("B-08", Assert.Single(saturday).Batch);
        var sunday = Plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && FarmTime.Day(Farm.Value, t.Start) == new DateOnly(2026, 5, 10)).Select(t => t.Field).Order(StringComparer.Ordinal);
        Assert.Contains("R4", sunday);
        Assert.Contains("N4", sunday);
    }

    [Fact]
    public void The_drained_seed_of_the_blown_out_morning_is_let_go_and_priced()
    {
        Assert.Equal(["B-07a", "B-07b"], Plan.LostBatches);
        Assert.Contains(Plan.Conflicts, c => c.What.Contains("28,315 lb dry, $11,043", StringComparison.Ordinal));
    }

    [Fact]
    public void The_block_that_its_wells_cannot_hold_is_told_with_by_how_much()
    {
        Assert.Contains(Plan.Conflicts, c => c.What.StartsWith("H block on W-1 and W-2 can never be held: once full it takes 7.44 cfs, they give 7.40, short by 0.04", StringComparison.Ordinal));
        Assert.Contains(Plan.Conflicts, c => c.What.Contains("stop near 263 of 309 ac", StringComparison.Ordinal));
    }

    [Fact]
    public void The_re_soak_call_of_this_morning_is_among_the_first_decisions()
    {
        var call = Plan.Decisions.First(d => d.Kind == "call-soak");
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 6, 30, 0, TimeSpan.FromHours(-7)), call.By);
        Assert.Contains("R4 15,450 lb dry", call.What, StringComparison.Ordinal);
        var order = Plan.Decisions.First(d => d.Kind == "order-water");
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 7, 0, 0, TimeSpan.FromHours(-7)), order.By);
    }

    [Fact]
    public void The_same_seed_and_work_give_the_same_plan()
    {
        var options = new PlanOptions { Budget = TimeSpan.FromSeconds(1), Repeatable = true, Seed = 3 };
        var first = SeasonPlanner.Plan(Farm.Value, options);
        var second = SeasonPlanner.Plan(Farm.Value, options);
        Assert.Equal(first.Tasks.Select(Line), second.Tasks.Select(Line));
        Assert.Equal(first.Bound, second.Bound);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(2)]
    public void A_bound_of_a_short_search_is_never_above_the_plan_of_a_longer_one(double work)
    {
        var plan = SeasonPlanner.Plan(Farm.Value, new PlanOptions { Budget = TimeSpan.FromSeconds(work), Repeatable = true });
        Assert.True(plan.Bound <= Plan.Cost.Total, $"bound {plan.Bound.Amount}, a plan costs {Plan.Cost.Total.Amount}");
    }

    [Fact]
    public void What_a_person_pinned_stays()
    {
        var pinned = Farm.Value with { Pins = [new Pin("N5", "fill", new DateTimeOffset(2026, 5, 12, 7, 0, 0, TimeSpan.FromHours(-7)))] };
        var plan = SeasonPlanner.Plan(pinned, new PlanOptions { Budget = TimeSpan.FromSeconds(2) });
        Assert.Equal(pinned.Pins[0].Start, plan.Task("N5", PlanTaskKind.Fill)!.Start);
        Assert.Empty(PlanChecker.Faults(plan));
    }

    [Theory]
    [InlineData(0, "S2")]
    [InlineData(1, "N3")]
    public void What_was_chosen_on_a_blown_out_morning_is_what_is_planned(int rank, string served)
    {
        var blown = ReplanCase.WithoutToday(Farm.Value);
        var replan = MorningReplan.Of(blown, Plan);
        var choice = replan.Ranked(ReplanPrices.Of(blown.Prices))[rank].Plan;
        Assert.Equal([served, "N4"], choice.Sowings.Where(s => s.Batch is not null).Select(s => s.Field.Code));
        var pinned = blown with { Pins = [.. ReplanLaying.Pins(choice).Select(p => new Pin(p.Field, TaskWords.Of(p.Task), p.Start))] };
        var plan = SeasonPlanner.Plan(pinned, new PlanOptions { Budget = TimeSpan.FromSeconds(3) });
        Assert.Empty(PlanChecker.Faults(plan));
        Assert.All(choice.Sowings, s => Assert.Equal(s.Start, plan.Task(s.Field.Code, PlanTaskKind.Sow)!.Start));
        Assert.Equal("B-08", plan.Task(served, PlanTaskKind.Sow)!.Batch);
        Assert.Equal("B-09", plan.Task("N4", PlanTaskKind.Sow)!.Batch);
    }

    [Fact]
    public void The_saying_makes_delay_dearer_than_the_trials()
    {
        var saying = Farm.Value with { Prices = Farm.Value.Prices with { Delay = DelayRule.Saying } };
        Assert.True(SeasonPlanner.Plan(saying, new PlanOptions { Budget = TimeSpan.FromSeconds(1) }).Cost.Delay > Plan.Cost.Delay);
    }

    [Fact]
    public void A_search_that_is_stopped_gives_the_best_plan_so_far()
    {
        using var stop = new CancellationTokenSource();
        var plan = SeasonPlanner.Plan(Farm.Value, new PlanOptions { Budget = TimeSpan.FromMinutes(5) }, p =>
        {
            if (p.Elapsed > TimeSpan.FromSeconds(1)) stop.Cancel();
        }, stop.Token);
        Assert.Empty(PlanChecker.Faults(plan));
        Assert.True(plan.SolveTime < TimeSpan.FromMinutes(2));
    }

    private static string Line(PlanTask task) => $"{task.Field} {task.Kind} {task.Start:O} {task.End:O} {task.Flow}";
}
