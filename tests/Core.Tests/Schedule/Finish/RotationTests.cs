using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>A source that gives less for a while. Figures by the closed form from one change of flow to the next, worked by hand.</summary>
public sealed class RotationTests
{
    private static readonly SeasonState State = SomeBlock.State();

    // 109.28 ac are wet on Saturday 07:00; from then on 8 cfs come, of which the other fields take 4.24.
    [Fact]
    public void A_curtailment_makes_it_later_from_its_hour_on()
    {
        var finish = SourceFinish.Of(State, "NT-1", Steps((8, 4, 50, 14), (9, 7, 0, 8)));
        Assert.Equal(0, (finish.Full!.Value - PlannedMorning.At(10, 11, 21)).TotalMinutes, 1.0);
        Assert.Equal([14.0, 8.0], finish.Spans.Take(2).Select(s => Math.Round(s.Gives.CubicFeetPerSecond, 6)));
    }

    // What is wet loses 5.71 cfs for a day; 14 − 5.71 make that up in 16.5 h, and then 7.7 h of filling are left.
    [Fact]
    public void A_day_off_in_a_rotation_costs_more_than_a_day_because_what_is_lost_must_be_made_up()
    {
        var finish = SourceFinish.Of(State, "NT-1", Steps((8, 4, 50, 14), (9, 7, 0, 0), (10, 7, 0, 14)));
        Assert.Equal(0, (finish.Full!.Value - PlannedMorning.At(11, 7, 13)).TotalMinutes, 1.0);
        Assert.Equal(-5.71, finish.Spans[1].Over.CubicFeetPerSecond, 0.01);
    }

    [Fact]
    public void A_curtailment_below_what_holding_takes_leaves_no_date_and_says_by_how_much()
    {
        var finish = SourceFinish.Of(State, "NT-1", Steps((8, 4, 50, 14), (9, 7, 0, 5)));
        Assert.True(finish.Never);
        Assert.Equal(0.83, finish.Short!.Value.CubicFeetPerSecond, 0.01);
    }

    private static FillAsk Steps(params (int Day, int Hour, int Minute, double Cfs)[] steps) =>
        FillAsk.Running with { Flow = [.. steps.Select(s => new FlowStep(PlannedMorning.At(s.Day, s.Hour, s.Minute) - State.Now, PlannedMorning.Cfs(s.Cfs)))] };
}
