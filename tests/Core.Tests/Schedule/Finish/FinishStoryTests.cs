using Watersown.Water.Filling;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>When fields are really full. The figures are those of the trade's own sums for Marrowfen, worked out by hand.</summary>
public sealed class FinishStoryTests
{
    private static readonly SeasonState State = SomeBlock.State();

    [Theory]
    [InlineData("NT-1", "N4", 14, 1.41, 9, 14, 41)]
    [InlineData("NT-1", "N4", 20, 0.82, 9, 0, 37)]
    [InlineData("ST-2", "S3", 16, 1.56, 9, 18, 18)]
    [InlineData("ST-2", "S3", 10, 3.08, 11, 6, 50)]
    [InlineData("SP-1", "R5", 14, 1.97, 10, 4, 3)]
    public void A_field_is_full_when_all_other_wet_land_has_been_held(string source, string field, double cfs, double days, int day, int hour, int minute)
    {
        var finish = SourceFinish.Of(State, source, SomeBlock.At(cfs));
        var full = finish.Field(field)!.Full!.Value;
        Assert.Equal(days, (full - State.Now).TotalDays, 0.006);
        Assert.Equal(0, (full - PlannedMorning.At(day, hour, minute)).TotalMinutes, 1.0);
        Assert.Equal(full, finish.Full);
        Assert.Null(finish.Short);
    }

    // 118/3 ac × 0.60 ft; 14 cfs give 27.8 ac-ft a day, of which all wet land takes 10.5: 17.3 left, 16.2 at the end.
    [Fact]
    public void The_sum_behind_it_can_be_followed()
    {
        var field = SourceFinish.Of(State, "NT-1").Field("N4")!;
        Assert.Equal(23.6, field.ToCome.AcreFeet, 0.01);
        double Line(string symbol) => ((Datum.Number)field.Working.Lines.Single(l => l.Symbol == symbol).Value).Value;
        Assert.Equal(17.3, Line("n0"), 0.05);
        Assert.Equal(16.2, Line("n1"), 0.05);
        Assert.Equal(1.41, Line("t"), 0.005);
    }

    [Fact]
    public void Checks_get_wet_from_the_head_each_as_the_one_above_is_full()
    {
        var field = SourceFinish.Of(State, "ST-2").Field("S3")!;
        Assert.Equal([true, true, true, false, false, false], field.Checks.Select(c => c.FullNow));
        Assert.Equal(State.Now, field.Checks[3].FirstWet);
        for (var i = 4; i < 6; i++) Assert.Equal(field.Checks[i - 1].Full, field.Checks[i].FirstWet);
        Assert.Equal(field.Full, field.Checks[5].Full);
        Assert.Equal((4, 5), (field.NextFull(State.Now)!.Number, field.NextWet(State.Now)!.Number));
        // Each check takes a little longer than the one before, because that one drinks now too.
        var spans = field.Checks.Skip(3).Select(c => c.Full!.Value - c.FirstWet!.Value).ToList();
        Assert.True(spans[0] < spans[1] && spans[1] < spans[2]);
    }

    // The flood integrated step by step, boxes wide enough to pass all that comes, once with an hour and once with half an hour.
    [Theory]
    [InlineData("NT-1", "N4", 14)]
    [InlineData("ST-2", "S3", 10)]
    [InlineData("SP-1", "R5", 14)]
    public void The_flood_stepped_through_agrees_and_so_does_half_the_step(string source, string code, double cfs)
    {
        var field = SourceFinish.Of(State, source, SomeBlock.At(cfs)).Field(code)!;
        var network = FieldFlood.Network(State, code, source, field.Given);
        network = network with { Inlets = [network.Inlets[0] with { To = 0, Flow = field.Given }], Boxes = [.. network.Boxes.Select(b => b with { Width = Length.FromFeet(100_000) })] };
        var hour = Flooding.Run(network, TimeSpan.FromDays(6), new FloodOptions { StepMost = TimeSpan.FromHours(1) });
        var half = Flooding.Run(network, TimeSpan.FromDays(6), new FloodOptions { StepMost = TimeSpan.FromMinutes(30) });
        Assert.Equal(1, hour.AllFull!.Value / (field.Full!.Value - State.Now), 0.01);
        Assert.Equal(1, half.AllFull!.Value / hour.AllFull.Value, 0.01);
        Assert.Equal(0, hour.Balance.Residual.AcreFeet, 1e-6);
        Assert.Equal(1, (hour.Balance.Stored + hour.Balance.Evaporated + hour.Balance.Percolated).AcreFeet / hour.Balance.In.AcreFeet, 1e-6);
        for (var i = 0; i < field.Checks.Length; i++)
        {
            if (field.Checks[i].Full is { } full) Assert.Equal(1, hour.Checks[i].Full!.Value / (full - State.Now), 0.02);
        }
    }

    [Fact]
    public void The_whole_farm_takes_thirty_days_where_the_plain_sum_says_seventeen()
    {
        var farm = BlockFinish.OfFarm(State, BlockStart.Empty);
        Assert.Equal(51.4, farm.Flow.CubicFeetPerSecond, 0.001);
        Assert.Equal(29.9, farm.Time!.Value.TotalDays, 0.05);
        Assert.Equal(16.6, farm.Naive!.Value.TotalDays, 0.05);
        Assert.Equal(37.7, farm.Holds.CubicFeetPerSecond, 0.05);
    }

    [Theory]
    [InlineData("NT-1", 20, 10.7)]
    [InlineData("ST-2", 16, 13.2)]
    [InlineData("NT-1+ST-2", 30, 16.9)]
    [InlineData("SP-1", 14, 12.6)]
    [InlineData("W-1", 4.2, 45)]
    public void A_block_cannot_be_full_before_its_water_has_come(string sources, double cfs, double days)
    {
        var block = BlockFinish.Of(State, [.. sources.Split('+')]);
        Assert.Equal(cfs, block.Flow.CubicFeetPerSecond, 0.01);
        Assert.Equal(days, block.Time!.Value.TotalDays, days > 40 ? 0.5 : 0.05);
    }

    [Fact]
    public void A_well_that_can_never_win_gets_no_date_and_says_by_how_much_it_is_short()
    {
        var block = BlockFinish.Of(State, ["W-2"]);
        Assert.Equal(3.75, block.Holds.CubicFeetPerSecond, 0.005);
        Assert.Null(block.Time);
        Assert.Equal(263, block.Stops!.Value.Acres, 0.5);
        var finish = SourceFinish.Of(State, "W-2", SomeBlock.At(3.2) with { Open = [new("H4"), new("H5"), new("H6")], Way = FillingWay.OneAfterAnother });
        Assert.True(finish.Never);
        Assert.Null(finish.Full);
        Assert.NotNull(finish.Field("H4")!.Full);
        Assert.NotNull(finish.Field("H5")!.Full);
        Assert.Null(finish.Field("H6")!.Full);
        Assert.Null(finish.Field("H6")!.Checks[^1].Full);
        Assert.Equal(0.55, finish.Short!.Value.CubicFeetPerSecond, 0.01);
        Assert.Equal(0.55, finish.Field("H6")!.Short!.Value.CubicFeetPerSecond, 0.01);
        Assert.Equal(263, finish.Stops!.Value.Acres, 0.5);
    }

    [Fact]
    public void Joined_the_two_wells_are_still_short_and_tailwater_makes_it_twenty_four_days()
    {
        var both = BlockFinish.Of(State, ["W-1", "W-2"]);
        Assert.Equal(7.4, both.Flow.CubicFeetPerSecond, 0.001);
        Assert.Equal(7.44, both.Holds.CubicFeetPerSecond, 0.005);
        Assert.Null(both.Time);
        Assert.Equal(0.04, both.Short!.Value.CubicFeetPerSecond, 0.005);
        var tailwater = BlockFinish.Of(State, ["W-1", "W-2"], PlannedMorning.Cfs(11.4));
        Assert.Equal(23.7, tailwater.Time!.Value.TotalDays, 0.05);
    }

    [Fact]
    public void One_after_another_ends_about_when_side_by_side_does_and_its_heads_are_younger()
    {
        FillAsk ask = SomeBlock.At(20) with { Open = [new("N5"), new("N6")] };
        var (side, turn) = (SourceFinish.Of(State, "NT-1", ask), SourceFinish.Of(State, "NT-1", ask with { Way = FillingWay.OneAfterAnother }));
        Assert.Equal(1, (turn.Full!.Value - State.Now) / (side.Full!.Value - State.Now), 0.02);
        Assert.True(turn.Field("N5")!.HeadAge < side.Field("N5")!.HeadAge);
        Assert.True(turn.Field("N6")!.HeadAge < side.Field("N6")!.HeadAge);
        Assert.Equal(turn.Field("N4")!.Full, turn.Field("N5")!.HeadWet);
    }

    [Fact]
    public void A_source_nobody_has_read_gives_no_time_and_one_that_is_down_never_fills()
    {
        var unknown = SourceFinish.Of(State.With("SP-1", s => s with { Running = null }), "SP-1");
        Assert.Null(unknown.Gives);
        Assert.Null(unknown.Full);
        Assert.False(unknown.Never);
        var down = SourceFinish.Of(State.With("SP-1", s => s with { Down = true }), "SP-1");
        Assert.True(down.Never);
        Assert.Null(down.Stops);
        Assert.Equal(down.HoldsFull, down.Short);
    }
}
