using CsCheck;
using Watersown.Land;
using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;
using Watersown.Schedule;
using Watersown.Schedule.Board;

namespace Watersown.Planner;

/// <summary>What the planner makes, laid on the board: every step once, nothing over anything else, no lane above what there is.</summary>
public sealed class PlansOnTheBoardTests
{
    // Holds are rounded to hundredths of a cfs in the plan.
    private const double Rounding = 0.01;

    [Fact]
    public void Every_step_stands_once_and_no_two_bars_of_a_field_lie_over_one_another() => SomeSeason.Any.Sample(state =>
    {
        var board = Board(state, out var plan);
        var shown = board.Rows.SelectMany(r => r.Bars.Select(b => b.Task).Concat(r.Moments.Select(m => m.Task))).OfType<PlanTask>().ToList();
        Assert.Equal(plan.Tasks.Length, shown.Count);
        Assert.Equal(plan.Tasks.Length, shown.Distinct(ReferenceEqualityComparer.Instance).Count());
        foreach (var track in board.Rows.SelectMany(r => r.Bars.GroupBy(b => (r.Field.Code, b.Track, b.Layer))))
            Assert.All(track.Zip(track.Skip(1)), b => Assert.True(b.First.Until <= b.Second.From, $"{b.First} over {b.Second}"));
    }, iter: 100, threads: 1);

    [Fact]
    public void No_lane_is_above_what_there_is() => SomeSeason.Any.Sample(state =>
    {
        var board = Board(state, out _);
        foreach (var step in board.Flows.SelectMany(f => f.Steps)) Assert.True(step.Over.CubicFeetPerSecond > -1e-6, step.ToString());
        foreach (var lane in board.Lanes.Where(l => l.Most is not null && !l.Bars.IsEmpty))
            Assert.True(lane.Bars.Max(b => b.Layer) < lane.Most, $"{lane.Kind} {lane.Name}: {lane.Layers} of {lane.Most}");
    }, iter: 100, threads: 1);

    [Fact]
    public void Water_that_the_plan_gives_is_found_in_its_sources() => SomeSeason.Any.Sample(state =>
    {
        var board = Board(state, out var plan);
        var lacking = Wet(state, s => s.Running ?? s.Cap).Sum(f => f.Steps[0].Short.CubicFeetPerSecond);
        var curtailed = Wet(state, s => s.Cap);
        foreach (var at in board.Flows.SelectMany(f => f.Steps.Select(s => s.From)).Distinct())
        {
            var missing = board.Flows.Sum(f => f.At(at)!.Short.CubicFeetPerSecond);
            // Ground that is wet already may outrun its sources whatever is planned: now as they run, later by what is left of them.
            var there = Math.Max(lacking, curtailed.Sum(f => f.At(at)?.Short.CubicFeetPerSecond ?? 0));
            Assert.True(missing <= there + (Rounding * (plan.State.Fields.Length + 1)), $"{missing} cfs missing {at}");
        }
    }, iter: 100, threads: 1);

    [Fact]
    public void A_sowing_left_where_the_plan_has_it_breaks_nothing_that_the_plan_keeps() => SomeSeason.Any.Sample(state =>
    {
        // What the planner keeps for every sowing that it moves itself: light, hours, wind, one field at a time, full, and seed in its time.
        PinBreakKind[] kept = [PinBreakKind.Past, PinBreakKind.NoSlot, PinBreakKind.Slot, PinBreakKind.Dark, PinBreakKind.Plane, PinBreakKind.Water, PinBreakKind.SeedYoung, PinBreakKind.SeedOld];
        _ = Board(state, out var plan);
        foreach (var sow in plan.Tasks.Where(t => t is { Kind: PlanTaskKind.Sow, Fixed: false, Pinned: false }))
            Assert.DoesNotContain(PinBreaks.Of(plan, state, sow, sow.Start, null), b => kept.Contains(b.Kind));
    }, iter: 100, threads: 1);

    private static ImmutableArray<FlowLane> Wet(SeasonState state, Func<WaterSource, FlowRate> ordered)
    {
        var wet = new SeasonPlan
        {
            Number = 1,
            MadeAt = state.Now,
            State = state,
            Tasks = [],
            Orders = [.. state.Farm.Sources.Select(s => new OrderedFlow(s.Code, state.Now, state.Now.AddDays(90), ordered(s)))],
            Cost = new PlanCost(Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero),
            Bound = Money.Zero,
            SolveTime = TimeSpan.Zero,
        };
        return BoardLayout.Of(wet, state, new BoardSpan(BoardZoom.Season, state.Now, state.Now.AddDays(60)), []).Flows;
    }

    private static ScheduleBoard Board(SeasonState state, out SeasonPlan plan)
    {
        var instance = InstanceBuilder.Build(state);
        var genes = new Genes([.. instance.Fields.Select(f => f.Index)], [.. instance.JointCaps.Select(j => j.Sources.Select(_ => 1.0 / j.Sources.Length).ToImmutableArray())], 0.5);
        plan = new PlanWriter(instance, new Decoder(instance).Decode(genes), 0, TimeSpan.Zero).Write();
        var first = FarmTime.Midnight(state, FarmTime.Day(state, state.Now).AddDays(-40));
        return BoardLayout.Of(plan, state, new BoardSpan(BoardZoom.Season, first, first.AddDays(200)), []);
    }
}
