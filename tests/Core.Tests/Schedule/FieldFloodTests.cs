using Watersown.Land;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Schedule;

public sealed class FieldFloodTests
{
    private static readonly DateTimeOffset Now = new(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7));

    // The field of two gates: 118 ac, 4 of 6 checks wet, clay on hardpan. The closed form of the whole field against the sum of its checks.
    [Theory]
    [InlineData(14)]
    [InlineData(20)]
    public void A_field_fills_in_about_the_time_of_the_closed_form(double cfs)
    {
        var state = State(wet: 4);
        var supply = FlowRate.FromCubicFeetPerSecond(cfs);
        var network = FieldFlood.Network(state, "N4", "NT-1", [new FlowStep(TimeSpan.Zero, supply)]);
        var closed = Ponding.FillTime(FieldWater.Of(state, "N4").Job, supply)!.Value;
        var full = Flooding.Run(network, TimeSpan.FromDays(10)).AllFull!.Value;
        Assert.Equal(1, full / closed, 0.01);
        // Boxes at their own width hold back what stands over their boards: later, never sooner.
        var measured = FieldFlood.Network(state, "N4", "NT-1", [new FlowStep(TimeSpan.Zero, supply)], asMeasured: true);
        Assert.True(Flooding.Run(measured, TimeSpan.FromDays(20)).AllFull > full);
    }

    [Fact]
    public void What_the_checks_take_is_what_the_field_takes()
    {
        var state = State(wet: 2);
        var (network, water) = (FieldFlood.Network(state, "N4", "NT-1", []), FieldWater.Of(state, "N4"));
        Assert.Equal(118, network.Checks.Sum(c => c.Area.Acres), 1e-9);
        Assert.Equal(water.Job.Wet.Acres, network.Checks.Sum(c => c.Area.Acres * c.Covered.Share), 1e-9);
        Assert.All(network.Checks, c => Assert.Equal(water.Job.Fill.Inches, (c.TakeUp + c.Front).Inches, 1e-9));
        Assert.All(network.Checks, c => Assert.Equal(water.Job.Loss.InchesPerDay, (c.Percolation + network.Air[0].Evaporation).InchesPerDay, 1e-9));
    }

    [Fact]
    public void Two_inlets_share_the_water_by_their_width()
    {
        var field = Field() with { Boxes = [new Box(1, BoxKind.Inlet) { ToCheck = 1, Width = Length.FromFeet(4) }, new Box(2, BoxKind.Inlet) { ToCheck = 4, Width = Length.FromFeet(2) }] };
        var network = FieldFlood.Network(State(0, field), "N4", "NT-1", [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(12))]);
        Assert.Equal([(0, 8.0), (3, 4.0)], network.Inlets.Select(i => (i.To, Math.Round(i.Flow[0].Flow.CubicFeetPerSecond, 9))));
    }

    [Fact]
    public void Boxes_side_by_side_work_as_one_wide_one_and_boards_nobody_told_of_pass_what_flows_at_the_wished_depth()
    {
        var field = Field() with
        {
            Boxes = [new Box(3, BoxKind.BetweenChecks) { FromCheck = 1, ToCheck = 2, Width = Length.FromFeet(3), Boards = WaterDepth.FromInches(3) }, new Box(4, BoxKind.BetweenChecks) { FromCheck = 1, ToCheck = 2, Width = Length.FromFeet(3) }],
        };
        var boxes = FieldFlood.Network(State(0, field), "N4", "NT-1", []).Boxes;
        Assert.Equal(5, boxes.Length);
        Assert.Equal(6, boxes.Single(b => b.From == 0).Width.Feet, 1e-9);
        Assert.Equal(3, boxes.Single(b => b.From == 0).Boards.Inches, 1e-9);
        var (flow, head) = (FlowRate.FromCubicFeetPerSecond(1), WaterDepth.FromMeters(0.0005));
        Assert.All(boxes.Where(b => b.From > 0), b => Assert.Equal(2, b.Boards.Inches, 1e-9));
        Assert.All(boxes.Where(b => b.From > 0), b => Assert.Equal(1, Hydraulics.Weir.FreeFlow(b.Kind, head, b.Width) / flow, 1e-3));
    }

    [Fact]
    public void A_field_without_checks_is_one_check()
    {
        var network = FieldFlood.Network(State(0, Field() with { Basins = [] }), "N4", "NT-1", [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(14))]);
        Assert.Equal(118, Assert.Single(network.Checks).Area.Acres, 1e-9);
        Assert.Empty(network.Boxes);
    }

    private static Field Field() => new()
    {
        Code = "N4",
        Name = "Two Gates",
        Net = Area.FromAcres(118),
        Soil = "CL",
        Sources = ["NT-1"],
        Basins = [.. Enumerable.Range(1, 6).Select(n => new Basin(n, Area.FromAcres(20)))],
    };

    private static SeasonState State(int wet, Field? field = null)
    {
        var land = field ?? Field();
        return new SeasonState
        {
            Farm = PlannedMorning.Farm() with { Fields = [land] },
            Now = Now,
            Offset = Now.Offset,
            Fields = [new FieldSeason("N4", SeedRate.FromPoundsPerAcre(150), FieldStage.Flooding) { ChecksWet = wet }],
            Horizon = new DateOnly(2026, 6, 7),
        };
    }
}
