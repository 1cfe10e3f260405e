using Watersown.Land;
using Watersown.Schedule.Finish;
using Watersown.Water.Flood;
using static Watersown.PlannedMorning;

namespace Watersown.Schedule;

/// <summary>What a source gives over time. Hours and flows worked by hand from the turns and curtailments told.</summary>
public sealed class SourceSupplyTests
{
    private static readonly SeasonState State = SomeBlock.State();

    private static readonly WaterSource Turnout = State.Farm.Source("NT-1")!;

    [Fact]
    public void A_curtailment_holds_from_its_hour_until_the_hour_it_ends()
    {
        var source = Turnout with { Running = Cfs(20), Curtailments = [new Curtailment(At(9, 7)) { Flow = Cfs(14), Until = At(12, 7) }] };
        Assert.Equal([(0, 20), (26.1667, 14), (98.1667, 20)], Told(SourceSupply.Running(State, source)!.Value));
    }

    [Fact]
    public void Of_two_that_hold_the_least_that_is_left_counts_and_one_above_what_runs_changes_nothing()
    {
        var source = Turnout with
        {
            Running = Cfs(12),
            Curtailments = [new Curtailment(At(8, 0)) { Flow = Cfs(16) }, new Curtailment(At(9, 7)) { Share = Fraction.FromPercent(50) }, new Curtailment(At(9, 19)) { Flow = Cfs(4), Until = At(10, 7) }],
        };
        // Half of the cap of 20 is 10.
        Assert.Equal([(0, 12), (26.1667, 10), (38.1667, 4), (50.1667, 10)], Told(SourceSupply.Running(State, source)!.Value));
        Assert.Equal([(0, 16), (26.1667, 10), (38.1667, 4), (50.1667, 10)], Told(SourceSupply.Most(State, source)));
    }

    // On for 72 h of 240 h, the next turn on Sunday 07:00: the one before began on 30 April 07:00 and is over.
    [Fact]
    public void Turns_go_on_before_and_after_the_one_that_was_told()
    {
        var source = Turnout with { Turns = new SourceTurns(At(10, 7), TimeSpan.FromHours(72), TimeSpan.FromHours(240)) { Flow = Cfs(16) } };
        Assert.Equal([(0, 0), (50.1667, 16), (122.1667, 0), (290.1667, 16)], Told(SourceSupply.Running(State, source)!.Value).Take(4));
        var later = source with { Turns = source.Turns with { From = At(20, 7) } };
        Assert.Equal(Told(SourceSupply.Most(State, source)), Told(SourceSupply.Most(State, later)));
    }

    [Fact]
    public void What_runs_in_a_turn_runs_to_its_end_and_the_next_turn_brings_what_turns_bring()
    {
        var source = Turnout with { Running = Cfs(12), Turns = new SourceTurns(At(7, 7), TimeSpan.FromHours(48), TimeSpan.FromHours(96)) { Flow = Cfs(16) } };
        Assert.Equal([(0, 12), (26.1667, 0), (74.1667, 16)], Told(SourceSupply.Running(State, source)!.Value).Take(3));
    }

    [Fact]
    public void After_sixty_days_the_mean_stands_for_the_turns_and_lasts()
    {
        var source = Turnout with { Turns = new SourceTurns(At(10, 7), TimeSpan.FromHours(72), TimeSpan.FromHours(240)) { Flow = Cfs(16) } };
        var steps = SourceSupply.Most(State, source);
        Assert.Equal(TimeSpan.FromDays(60), steps[^1].From);
        Assert.Equal(16 * 0.3, steps[^1].Flow.CubicFeetPerSecond, 1e-9);
        // The mean of whole turns is the same, taken from the steps themselves.
        var turns = SourceSupply.Most(State with { Now = At(10, 7) }, source);
        Assert.Equal(16 * 0.3, SourceSupply.MeanUntil(turns, TimeSpan.FromDays(50)).CubicFeetPerSecond, 1e-9);
    }

    [Fact]
    public void A_source_that_is_down_gives_nothing_and_one_of_which_nobody_told_is_not_known()
    {
        Assert.Equal([(0, 0)], Told(SourceSupply.Running(State, Turnout with { Down = true, Turns = new SourceTurns(At(8, 0), TimeSpan.FromHours(72), TimeSpan.FromHours(240)) })!.Value));
        Assert.Null(SourceSupply.Running(State, Turnout with { Running = null, Curtailments = [new Curtailment(At(9, 7)) { Flow = Cfs(5) }] }));
    }

    private static (double Hours, double Cfs)[] Told(ImmutableArray<FlowStep> steps) => [.. steps.Select(s => (Math.Round(s.From.TotalHours, 4), Math.Round(s.Flow.CubicFeetPerSecond, 6)))];
}
