using Watersown.Land;
using static Watersown.PlannedMorning;

namespace Watersown.Schedule.Finish;

/// <summary>Sources in turns and curtailed, told as facts of the source: the finish, the orders and what is short follow.</summary>
public sealed class HeldBackTests
{
    private static readonly SeasonState State = SomeBlock.State();

    // The same figures as of the flow typed in steps, worked by hand from one change to the next.
    [Fact]
    public void A_curtailment_told_ahead_makes_everything_full_later()
    {
        var finish = SourceFinish.Of(Curtailed(8), "NT-1");
        Assert.Equal(0, (finish.Full!.Value - At(10, 11, 21)).TotalMinutes, 1.0);
        Assert.Contains(finish.Working.Lines, l => l.Meaning.StartsWith("given from Sat 9 May 07:00", StringComparison.Ordinal));
    }

    [Fact]
    public void Below_what_holding_takes_no_date_is_told_but_by_how_much_it_is_short()
    {
        var finish = SourceFinish.Of(Curtailed(5), "NT-1");
        Assert.True(finish.Never);
        Assert.Equal(0.83, finish.Short!.Value.CubicFeetPerSecond, 0.01);
    }

    // Nothing is lost where there is no evaporation and no seepage: a turn of 24 h in 36 h at 3.2 cfs brings 3.2 × 1.983471 ac-ft.
    [Fact]
    public void In_turns_without_losses_whole_turns_and_a_rest_fill_the_block()
    {
        var turns = new SourceTurns(State.Now, TimeSpan.FromHours(24), TimeSpan.FromHours(36));
        var state = Lossless(State.With("W-2", s => s with { Turns = turns }));
        var block = BlockFinish.Of(state, ["W-2"]);
        var (water, each) = ((block.Job.Dry * block.Job.Fill).AcreFeet, 3.2 * 1.983471);
        var whole = Math.Floor(water / each);
        Assert.True(whole > 5, "a test of many turns");
        Assert.Equal((whole * 36) + (24 * ((water / each) - whole)), block.Time!.Value.TotalHours, 0.01);
        // By the mean flow of two thirds it cannot be more than one time between turns off.
        Assert.InRange(block.Time!.Value.TotalHours - (water / (each / 36)), -12, 0);
    }

    // By steps of a second: wet ground drinks all the time, and what it drank between turns is made up before the water goes on.
    [Fact]
    public void In_turns_with_losses_it_agrees_with_the_water_followed_second_by_second()
    {
        var state = State.With("NT-1", s => s with { Running = Cfs(20), Turns = new SourceTurns(State.Now.AddHours(-2), TimeSpan.FromHours(8), TimeSpan.FromHours(24)) { Flow = Cfs(20) } });
        var finish = SourceFinish.Of(state, "NT-1");
        var job = FieldWater.Of(state, "N4").Job;
        double others = finish.Holds.CubicMetersPerSecond - (job.Wet.SquareMeters * job.Loss.MetersPerSecond), wet = job.Wet.SquareMeters, all = wet + job.Dry.SquareMeters, owed = 0;
        var seconds = 0;
        for (; wet < all && seconds < 40 * 86400; seconds++)
        {
            var gives = (seconds + 7200) % 86400 < 8 * 3600 ? Cfs(20).CubicMetersPerSecond : 0;
            var spare = gives - others - (wet * job.Loss.MetersPerSecond);
            if (spare <= 0 || owed > 0) owed = Math.Max(0, owed - spare);
            else wet += spare / job.Fill.Meters;
        }

        Assert.InRange(seconds / 86400.0, 1, 39);
        Assert.Equal(seconds / 3600.0, (finish.Full!.Value - state.Now).TotalHours, 0.05);
    }

    // 20 cfs for 6 h of 24 h is 5 cfs in the mean; holding all of it takes 5.83.
    [Fact]
    public void Turns_that_in_the_mean_bring_less_than_holding_takes_never_end_and_say_by_how_much()
    {
        var state = State.With("NT-1", s => s with { Running = null, Turns = new SourceTurns(State.Now, TimeSpan.FromHours(6), TimeSpan.FromHours(24)) { Flow = Cfs(20) } });
        var finish = SourceFinish.Of(state, "NT-1");
        Assert.True(finish.Never);
        Assert.Equal(0.83, finish.Short!.Value.CubicFeetPerSecond, 0.01);
        Assert.NotNull(finish.Stops);
        var block = BlockFinish.Of(state, ["NT-1"]);
        Assert.Null(block.Time);
        Assert.Equal(block.Holds.CubicFeetPerSecond - 5, block.Short!.Value.CubicFeetPerSecond, 1e-9);
    }

    [Fact]
    public void Nothing_above_a_curtailment_is_ordered_its_cut_is_not_asked_for_and_what_is_short_is_told()
    {
        var state = Curtailed(5);
        var advice = OrderAdvice.Of(state, "NT-1", SourceFinish.Of(state, "NT-1"));
        Assert.All(advice.Orders.Where(o => o.From >= At(9, 7)), o => Assert.True(o.Flow <= Cfs(5)));
        Assert.DoesNotContain(advice.Changes, c => c.At == At(9, 7));
        Assert.Equal(At(9, 7), advice.Missing[0].From);
        // 109.28 ac of Two Gates and the other fields are wet by then and take 5.71 cfs.
        Assert.Equal(0.71, advice.Missing[0].Flow.CubicFeetPerSecond, 0.01);
    }

    [Fact]
    public void Between_turns_wet_land_lives_off_its_own_water_and_nothing_is_called_short()
    {
        var state = State.With("NT-1", s => s with { Running = Cfs(20), Turns = new SourceTurns(At(8, 0), TimeSpan.FromHours(36), TimeSpan.FromHours(72)) { Flow = Cfs(20) } });
        var advice = OrderAdvice.Of(state, "NT-1", SourceFinish.Of(state, "NT-1"));
        Assert.Empty(advice.Missing);
        Assert.All(advice.Over, o => Assert.True(state.Farm.Source("NT-1")!.Turns!.Runs(o.From)));
    }

    [Fact]
    public void Orders_above_what_curtailed_sources_can_give_do_not_break_their_joint_cap()
    {
        FillAsk north = FillAsk.Running with { Flow = WaterOrders.Reachable(State, State.Farm.Source("NT-1")!, Cfs(20)), Open = [new("N5"), new("N6")] };
        FillAsk south = FillAsk.Running with { Open = [new("S4"), new("S5")] };
        ImmutableArray<CapBreak> Breaks(SeasonState state) => JointOrders.Breaks(state.Farm, [OrderAdvice.Of(state, "NT-1", SourceFinish.Of(State, "NT-1", north)), OrderAdvice.Of(state, "ST-2", SourceFinish.Of(State, "ST-2", south))]);
        Assert.NotEmpty(Breaks(State));
        Assert.Empty(Breaks(State.With("ST-2", s => s with { Curtailments = [new Curtailment(At(1, 0)) { Flow = Cfs(10) }] })));
    }

    [Fact]
    public void The_block_of_two_sources_counts_each_as_it_is_held_back_under_their_joint_cap()
    {
        var state = State.With("ST-2", s => s with { Curtailments = [new Curtailment(At(9, 7)) { Flow = Cfs(6) }] });
        var most = BlockFinish.Most(state, ["NT-1", "ST-2"]);
        // 20 + 16 under a cap of 30; then 20 + 6.
        Assert.Equal([(0, 30), (26.1667, 26)], most.Select(s => (Math.Round(s.From.TotalHours, 4), Math.Round(s.Flow.CubicFeetPerSecond, 6))));
        Assert.True(BlockFinish.Of(state, ["NT-1", "ST-2"]).Time > BlockFinish.Of(State, ["NT-1", "ST-2"]).Time);
    }

    private static SeasonState Curtailed(double left) => State.With("NT-1", s => s with { Curtailments = [new Curtailment(At(9, 7)) { Flow = Cfs(left) }] });

    private static SeasonState Lossless(SeasonState state) => state with
    {
        Evaporation = DepthRate.Zero,
        Farm = state.Farm with { Soils = [.. state.Farm.Soils.Select(s => s with { Seepage = DepthRate.Zero })] },
    };
}
