using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

/// <summary>Two Gates fills and nothing can follow it: what runs must come down, and the cut must be sent days before.</summary>
public sealed class OrderDownTests
{
    private static readonly SeasonState State = SomeBlock.State();

    // N5 and N6 share a gate box that is out until Tuesday.
    private static readonly FillAsk Asked = FillAsk.Running with { Open = [new("N5", PlannedMorning.At(12, 7)), new("N6", PlannedMorning.At(12, 7))], Way = FillingWay.OneAfterAnother };

    [Fact]
    public void The_cut_for_Sunday_must_be_sent_by_Friday()
    {
        var advice = Advice(State, FillAsk.Running);
        var over = Assert.Single(advice.Over);
        Assert.Equal(0, (over.From - PlannedMorning.At(9, 14, 41)).TotalMinutes, 1.0);
        Assert.Equal(5.8, over.Needs.CubicFeetPerSecond, 0.05);
        Assert.Equal(8.2, over.Flow.CubicFeetPerSecond, 0.05);
        var cut = Assert.Single(advice.Changes);
        Assert.Equal((PlannedMorning.At(10, 7), PlannedMorning.At(8, 7)), (cut.At, cut.SendBy));
        // 5.83 in whole cfs, as the plan orders it; Schoolhouse and Split Oak then take all that there is.
        Assert.Equal((14, 6), (Math.Round(cut.Before.CubicFeetPerSecond, 6), Math.Round(cut.After.CubicFeetPerSecond, 6)));
        // 8.17 cfs from Saturday 14:41 to Sunday 07:00.
        Assert.Equal(8.17 * 16.32 / 12.1, advice.OverInAll.AcreFeet, 0.05);
    }

    // The same on Thursday 18:00: 10.8 h earlier, stepped back by the minute: N1, N2 and N3 take 100.98 ac-in a day.
    [Fact]
    public void It_is_told_on_Thursday_evening_with_the_night_to_spare()
    {
        var thursday = State with { Now = PlannedMorning.At(7, 18) };
        var job = FieldWater.Of(State, "N4").Job;
        var wet = 78.6667;
        for (var i = 0; i < 650; i++) wet -= (14 - ((100.98 + (wet * 0.32)) / 23.801653)) * 1.983471 / 0.6 / 1440;
        thursday = thursday with
        {
            Farm = thursday.Farm with { Fields = [.. thursday.Farm.Fields.Select(f => f.Code == "N4" ? f with { Basins = [new(1, Area.FromAcres(wet)), new(2, job.Dry + job.Wet - Area.FromAcres(wet))] } : f)] },
        };
        thursday = thursday.With("N4", f => f with { ChecksWet = 1 });
        var advice = Advice(thursday, FillAsk.Running);
        var cut = Assert.Single(advice.Changes);
        Assert.Equal(0, (Assert.Single(advice.Over).From - PlannedMorning.At(9, 14, 41)).TotalMinutes, 10.0);
        Assert.Equal((PlannedMorning.At(10, 7), PlannedMorning.At(8, 7)), (cut.At, cut.SendBy));
    }

    [Fact]
    public void Once_the_box_is_in_it_is_ordered_up_again()
    {
        var advice = Advice(State, Asked);
        Assert.Equal([PlannedMorning.At(10, 7), PlannedMorning.At(12, 7)], advice.Changes.Take(2).Select(c => c.At));
        Assert.Equal([6.0, 14.0], advice.Changes.Take(2).Select(c => Math.Round(c.After.CubicFeetPerSecond, 6)));
        Assert.Equal(PlannedMorning.At(10, 7), advice.Changes[1].SendBy);
        Assert.True(advice.Changes[^1].After < advice.Changes[^1].Before);
    }

    [Fact]
    public void The_ways_out_are_the_box_sooner_the_other_turnout_or_the_cut()
    {
        var state = State.With("ST-2", s => s with { Running = PlannedMorning.Cfs(10) });
        var options = SurplusOptions.Of(state, Advice(state, Asked), Asked);
        var box = options.First(o => o.Way == SurplusWay.OpenField);
        Assert.Equal(("N5", (DateTimeOffset?)PlannedMorning.At(12, 7)), (box.Field!.Code, box.InsteadOf));
        Assert.Empty(box.Wants);
        Assert.Equal(8.2, box.Flow.CubicFeetPerSecond, 0.05);
        Assert.Equal(Volume.Zero, box.StillOver);
        var move = Assert.Single(options, o => o.Way == SurplusWay.MoveFlow);
        Assert.Equal(("ST-2", PlannedMorning.At(10, 7), (DateTimeOffset?)PlannedMorning.At(8, 7)), (move.To!.Code, move.At, move.SendBy));
        Assert.Equal(6, move.Flow.CubicFeetPerSecond, 1e-9);
        Assert.True(move.Full.With < move.Full.Without);
        var cut = Assert.Single(options, o => o.Way == SurplusWay.Cut);
        Assert.Equal((PlannedMorning.At(10, 7), (DateTimeOffset?)PlannedMorning.At(8, 7)), (cut.At, cut.SendBy));
        Assert.All(options, o => Assert.Equal(o.StillOver.AcreFeet, ((Datum.Number)o.Working().Lines[^1].Value).Value));
        Assert.Equal([GroundWork.Roll], options.Single(o => o.Field?.Code == "N7").Wants);
    }

    [Fact]
    public void A_turnout_that_runs_its_cap_can_take_no_more()
    {
        var move = Assert.Single(SurplusOptions.Of(State, Advice(State, Asked), Asked), o => o.Way == SurplusWay.MoveFlow);
        Assert.Equal(FlowRate.Zero, move.Flow);
    }

    [Fact]
    public void Orders_that_break_the_joint_cap_are_told_with_by_how_much()
    {
        FillAsk more = FillAsk.Running with { Flow = WaterOrders.Reachable(State, State.Farm.Source("NT-1")!, PlannedMorning.Cfs(20)), Open = [new("N5"), new("N6")] };
        var south = Advice(State, FillAsk.Running with { Open = [new("S4"), new("S5")] }, "ST-2");
        var found = JointOrders.Breaks(State.Farm, [Advice(State, more), south]);
        Assert.Equal((PlannedMorning.At(10, 7), 6.0), (found[0].From, Math.Round(found[0].Flow.CubicFeetPerSecond, 6)));
        Assert.Empty(JointOrders.Breaks(State.Farm, [Advice(State, FillAsk.Running), south]));
    }

    private static OrderAdvice Advice(SeasonState state, FillAsk ask, string source = "NT-1") => OrderAdvice.Of(state, source, SourceFinish.Of(state, source, ask));
}
