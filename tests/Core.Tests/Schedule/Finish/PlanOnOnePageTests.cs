using Watersown.Season.Troubles;
using static Watersown.PlannedMorning;

namespace Watersown.Schedule.Finish;

/// <summary>A plan that leads water to a field from its second source: all of a source's page counts the field where the plan fills it from.</summary>
public sealed class PlanOnOnePageTests
{
    private static readonly SeasonState State = Both(SomeBlock.State(), "N5", "N3");

    private static readonly SeasonPlan Plan = Led(PlannedTasks.Plan(State), "N5", "N3");

    [Fact]
    public void The_next_gate_is_one_that_the_plan_fills_from_it()
    {
        Assert.Contains(NextGate.Of(State, "NT-1", SomeBlock.At(14)), c => c.Fields.Contains("N5"));
        Assert.DoesNotContain(NextGate.Of(State, "NT-1", SomeBlock.At(14), Plan), c => c.Fields.Contains("N5"));
        Assert.Contains(NextGate.Of(State, "ST-2", SomeBlock.At(16), Plan), c => c.Fields.Contains("N5"));
    }

    // Schoolhouse has 74 ac, Tin Barn 96.
    [Fact]
    public void The_block_has_the_acres_of_the_fields_that_the_plan_fills_from_it()
    {
        double Acres(string source, SeasonPlan? plan)
        {
            var job = BlockFinish.Of(State, [source], plan: plan).Job;
            return (job.Dry + job.Wet).Acres;
        }

        Assert.Equal(-170, Acres("NT-1", Plan) - Acres("NT-1", null), 1e-6);
        Assert.Equal(170, Acres("ST-2", Plan) - Acres("ST-2", null), 1e-6);
    }

    [Fact]
    public void The_source_holds_what_the_plan_gives_it_to_hold_and_raises_it()
    {
        var wish = new RaiseWish("ST-2", State.Now.AddDays(7));
        var (without, with) = (ColdNightRaises.Of(State, wish), ColdNightRaises.Of(State, wish, Plan));
        Assert.DoesNotContain(without.Raise.Parts, p => p.Land.Name == "Tin Barn");
        Assert.Contains(with.Raise.Parts, p => p.Land.Name == "Tin Barn");
        Assert.Equal((with.Holds - without.Holds).CubicFeetPerSecond, (SourceFinish.Of(State, "ST-2", null, Plan).Holds - SourceFinish.Of(State, "ST-2").Holds).CubicFeetPerSecond, 1e-9);
    }

    // With the plan ST-2 holds Tin Barn too: moved water fills what it fills by an hour that takes that into account.
    [Fact]
    public void Water_moved_to_the_other_turnout_counts_what_the_plan_has_it_hold()
    {
        var state = State.With("ST-2", s => s with { Running = Cfs(10) });
        SurplusOption Move(SeasonPlan? plan) =>
            Assert.Single(SurplusOptions.Of(state, OrderAdvice.Of(state, "NT-1", SourceFinish.Of(state, "NT-1", null, plan)), FillAsk.Running, plan), o => o.Way == SurplusWay.MoveFlow);
        Assert.True(Move(Plan).Full.Without > Move(null).Full.Without);
    }

    private static SeasonState Both(SeasonState state, params string[] codes) =>
        state with { Farm = state.Farm with { Fields = [.. state.Farm.Fields.Select(f => codes.Contains(f.Code) ? f with { Sources = ["NT-1", "ST-2"] } : f)] } };

    private static SeasonPlan Led(SeasonPlan plan, params string[] codes) => plan with
    {
        State = State,
        Tasks =
        [
            .. plan.Tasks.Where(t => t.Kind != PlanTaskKind.Fill || !codes.Contains(t.Field)),
            .. codes.Select(c => new PlanTask(c, PlanTaskKind.Fill, At(10, 7), At(13, 7), "ST-2") { Flow = Cfs(6), From = [("ST-2", Cfs(6))] }),
        ],
    };
}
