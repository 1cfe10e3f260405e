using Watersown.Flight;

namespace Watersown.Schedule;

/// <summary>The board of the hand-laid plan of 8 May, cell by cell (derived by hand from its table, wind list and slots).</summary>
public sealed class SowingBoardTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Theory]
    [InlineData("N3", 0, "Seed, Wind")] // 15 gust 22 at the field; B-08 not drained
    [InlineData("N3", 1, "")] // B-08 could be drained today and used on Saturday
    [InlineData("R4", 1, "Seed")] // 15,450 lb asked, 14,880 in B-08
    [InlineData("N4", 1, "Water, Seed")] // full Saturday 14:41, slot ends 10:00; B-09 is not in soak yet
    [InlineData("S2", 2, "")] // 4.75 h on Sunday, 3.14 h planned, 0.89 h more
    [InlineData("R4", 3, "Plane")] // Monday 07:30 to 09:00 before the wind, 1.45 h of it planned
    [InlineData("R4", 5, "Wind")] // Wednesday 17 gust 26
    [InlineData("N8", 0, "Ground, Seed, Wind")]
    [InlineData("H1", 2, "Water")]
    public void Each_cell_says_what_stands_against_it(string field, int day, string blocks) =>
        Assert.Equal(blocks, string.Join(", ", Cell(PlannedMorning.Plan(), field, day).Blocks));

    [Fact]
    public void A_planned_flight_shows_its_hour() => Assert.Equal(PlannedMorning.At(9, 6, 30), Cell(PlannedMorning.Plan(), "S2", 1).Planned);

    [Fact]
    public void Sown_fields_are_not_on_the_board() =>
        Assert.Equal(22, SowingBoard.Of(PlannedMorning.Plan(), Friday, 7).Length);

    [Fact]
    public void A_day_on_which_the_flying_service_does_not_come_is_blocked_by_the_plane()
    {
        var plan = PlannedMorning.Plan();
        var away = plan with { State = plan.State with { Slots = [new FlyingSlot(new(2026, 5, 10), new(6, 0), new(6, 0))] } };
        Assert.Equal([SowingBlock.Plane], Cell(away, "S2", 2).Blocks);
    }

    [Fact]
    public void Seed_for_the_day_after_tomorrow_cannot_be_called_after_the_hour_of_calls()
    {
        var plan = PlannedMorning.Plan();
        var late = plan with { State = plan.State with { Now = PlannedMorning.At(8, 7), Batches = [] } };
        Assert.Equal([SowingBlock.Seed], Cell(late, "S2", 2).Blocks);
        Assert.DoesNotContain(SowingBlock.Seed, Cell(late, "S2", 3).Blocks);
    }

    [Fact]
    public void A_farm_that_knows_nothing_of_seed_or_aeroplane_still_gets_a_board()
    {
        var plan = PlannedMorning.Plan();
        var bare = plan with { Tasks = [], State = plan.State with { Batches = [], SoakPlace = null, Aeroplanes = [], Wind = [], Slots = [], Lots = [] } };
        Assert.Equal(22 * 7, SowingBoard.Of(bare, Friday, 7).Sum(r => r.Cells.Length));
        Assert.Empty(Cell(bare, "S2", 4).Blocks);
    }

    private static SowingCell Cell(SeasonPlan plan, string field, int day) =>
        SowingBoard.Of(plan, Friday, 7).Single(r => r.Field.Code == field).Cells[day];
}
