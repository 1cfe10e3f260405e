using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>The figures are those of the trade's own sums for Marrowfen, worked out by hand.</summary>
public sealed class SourceBalanceTests
{
    private static readonly SeasonState State = PlannedMorning.State();

    [Theory]
    [InlineData("NT-1", 14, 5.30)]
    [InlineData("ST-2", 16, 3.43)]
    [InlineData("SP-1", 14, 6.88)]
    public void A_source_holds_what_is_wet_before_it_fills_anything(string source, double gives, double holds)
    {
        var balance = Balance(State, source);
        Assert.Equal(gives, balance.Gives!.Value.CubicFeetPerSecond, 3);
        Assert.Equal(holds, balance.Holds.CubicFeetPerSecond, 2);
        Assert.Equal(gives - holds, balance.Over!.Value.CubicFeetPerSecond, 2);
    }

    [Theory]
    [InlineData("NT-1", 9, 14, 41)]
    [InlineData("ST-2", 9, 18, 18)]
    [InlineData("SP-1", 10, 4, 3)]
    public void The_flood_ends_when_the_truthful_sum_says(string source, int day, int hour, int minute) =>
        Assert.Equal(0, (Balance(State, source).FullAt!.Value - PlannedMorning.At(day, hour, minute)).TotalMinutes, 1.0);

    [Fact]
    public void More_flow_ends_it_sooner_as_the_closed_form_has_it()
    {
        var more = Balance(With("NT-1", s => s with { Running = PlannedMorning.Cfs(20) }), "NT-1");
        Assert.Equal(0, (more.FullAt!.Value - PlannedMorning.At(9, 0, 37)).TotalMinutes, 1.0);
        var less = Balance(With("ST-2", s => s with { Running = PlannedMorning.Cfs(10) }), "ST-2");
        Assert.Equal(0, (less.FullAt!.Value - PlannedMorning.At(11, 6, 50)).TotalMinutes, 1.0);
    }

    [Fact]
    public void A_source_that_stopped_gives_nothing_and_never_fills()
    {
        var balance = Balance(With("SP-1", s => s with { Down = true }), "SP-1");
        Assert.Equal(FlowRate.Zero, balance.Gives);
        Assert.Null(balance.FullAt);
        Assert.True(balance.Never);
        Assert.Null(balance.Stall);
    }

    [Fact]
    public void A_source_nobody_has_read_is_unknown_and_not_zero()
    {
        var balance = Balance(With("SP-1", s => s with { Running = null }), "SP-1");
        Assert.Null(balance.Gives);
        Assert.Null(balance.Over);
        Assert.Null(balance.FullAt);
        Assert.False(balance.Never);
    }

    [Fact]
    public void A_well_that_can_never_win_says_where_the_flood_stops()
    {
        // Crane, Bootlace and Widow's Eighty on the small well alone: 3.2 cfs against 3.75 to hold.
        string[] block = ["H4", "H5", "H6"];
        var state = With("W-2", s => s with { Running = PlannedMorning.Cfs(3.2) });
        state = state with
        {
            Farm = state.Farm with { Fields = [.. state.Farm.Fields.Select(f => f.Code == "H6" ? f with { Sources = ["W-2"] } : f)] },
            Fields = [.. state.Fields.Select(f => block.Contains(f.Code) ? f with { Stage = FieldStage.Flooding, ChecksWet = 0 } : f)],
        };
        var balance = Balance(state, "W-2");
        Assert.True(balance.Never);
        Assert.Null(balance.FullAt);
        Assert.Equal(3.75, balance.HoldsAll.CubicFeetPerSecond, 2);
        Assert.Equal(263, balance.Stall!.Value.Acres, 1.0);
    }

    [Fact]
    public void Two_wells_joined_are_still_short_and_tailwater_is_what_lifts_them()
    {
        var state = State with
        {
            Farm = State.Farm with
            {
                Sources = [.. State.Farm.Sources, new WaterSource("TR-1", WaterSourceKind.Tailwater, PlannedMorning.Cfs(4)) { Needs = new TailwaterNeed(["N1", "N2", "N3", "N4"], Area.FromAcres(400)) }],
                Fields = [.. State.Farm.Fields.Select(f => f.Code[0] == 'H' ? f with { Sources = [f.Code[1] < '4' ? "W-1" : "W-2", "TR-1"] } : f)],
            },
        };
        var group = Assert.Single(SourceBalances.Groups(state, null), g => g.Name is null);
        Assert.Equal(["TR-1", "W-1", "W-2"], group.Sources.Order(StringComparer.Ordinal));
        Assert.Equal(7.44, group.HoldsAll.CubicFeetPerSecond, 2);
        Assert.Equal(7.4, group.CapWithoutTailwater!.Value.CubicFeetPerSecond, 2);
        Assert.Equal(11.4, group.Cap.CubicFeetPerSecond, 2);
        var (needed, full) = Balance(state, "TR-1").Waits!.Value;
        Assert.Equal((400, 366), (Math.Round(needed.Acres), Math.Round(full.Acres)));
    }

    [Fact]
    public void Turnouts_under_one_cap_are_weighed_together()
    {
        var state = State with { Farm = State.Farm with { SharedCaps = [new SharedCap("both turnouts", ["NT-1", "ST-2"], PlannedMorning.Cfs(30))] } };
        var group = Assert.Single(SourceBalances.Groups(state, null));
        Assert.Equal((30, 30), (Math.Round(group.Cap.CubicFeetPerSecond, 6), Math.Round(group.Gives.CubicFeetPerSecond, 6)));
        Assert.Equal(11.2 + 9.2, group.HoldsAll.CubicFeetPerSecond, 0.1);
    }

    private static SourceBalance Balance(SeasonState state, string source) => SourceBalances.Of(state, null).Single(b => b.Source.Code == source);

    private static SeasonState With(string source, Func<WaterSource, WaterSource> change) =>
        State with { Farm = State.Farm with { Sources = [.. State.Farm.Sources.Select(s => s.Code == source ? change(s) : s)] } };
}
