using Watersown.Schedule;

namespace Watersown.Season.Boards;

public sealed class BoardTests
{
    private static readonly SeasonBook Book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, PlannedMorning.Now);

    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    [Fact]
    public void Each_batch_stands_where_its_hours_put_it()
    {
        var board = SeedBoards.Of(Book, Plan);
        Assert.Equal(
            [("B-07a", BatchStage.Usable), ("B-07b", BatchStage.Usable), ("B-08", BatchStage.InSoak), ("B-09", BatchStage.Due)],
            board.Batches.Select(l => (l.Batch.Code, l.Stage)).OrderBy(l => l.Code, StringComparer.Ordinal));
    }

    [Fact]
    public void Age_counts_from_the_water_and_the_last_moment_from_the_rules_of_the_house()
    {
        var board = SeedBoards.Of(Book, Plan);
        var under = board.Batches.Single(l => l.Batch.Code == "B-08");
        Assert.Equal(new TimeSpan(46, 50, 0), under.Age);
        Assert.Equal((BatchLimit.Drain, PlannedMorning.At(8, 6)), under.Last);
        var off = board.Batches.Single(l => l.Batch.Code == "B-07a");
        Assert.Equal(new TimeSpan(46, 50, 0), off.Age);
        Assert.Equal((BatchLimit.Use, PlannedMorning.At(8, 6)), off.Last); // ready Thursday 06:00, 76/55 °F: 24 h
        Assert.True(off.Lost);
        var later = SeedBoards.Of(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, PlannedMorning.At(8, 6, 1)), Plan);
        Assert.Equal(BatchStage.PastUse, later.Batches.Single(l => l.Batch.Code == "B-07a").Stage);
        Assert.Equal(BatchStage.SoakLong, later.Batches.Single(l => l.Batch.Code == "B-08").Stage);
        Assert.Equal((BatchLimit.Soak, PlannedMorning.At(8, 6)), board.Batches.Single(l => l.Batch.Code == "B-09").Last);
    }

    [Fact]
    public void The_parts_of_a_batch_follow_one_another_without_a_gap()
    {
        foreach (var line in SeedBoards.Of(Book, Plan).Batches)
        {
            Assert.Equal(line.Batch.InSoak, line.Spans[0].From);
            for (var i = 1; i < line.Spans.Length; i++) Assert.Equal(line.Spans[i - 1].Until, line.Spans[i].From);
            Assert.Equal(ClockPart.PastUse, line.Spans[^1].Part);
        }
    }

    [Fact]
    public void Nothing_drawn_lies_outside_the_scale()
    {
        var board = SeedBoards.Of(Book, Plan);
        Assert.All(board.Batches.SelectMany(b => b.Spans), s => Assert.True(board.Scale.Holds(s.From) && board.Scale.Holds(s.Until)));
        Assert.True(board.Scale.Holds(PlannedMorning.Now));
        Assert.Equal((0, 1), (board.Scale.At(board.Scale.From).Share, board.Scale.At(board.Scale.Until).Share));
    }

    [Fact]
    public void A_morning_over_the_pilots_limits_says_so_and_a_calm_one_too()
    {
        var mornings = FlightMorning.Of(Book, Plan, 4);
        Assert.Equal([SlotAir.Over, SlotAir.Within, SlotAir.Within, SlotAir.PartOver], mornings.Select(m => m.Air));
        Assert.Equal(["S2"], mornings[1].Flights.Select(f => f.Field.Code));
        Assert.Equal(["R4", "N3", "N4"], mornings[2].Flights.Select(f => f.Field.Code));
        Assert.Equal(3.15, mornings[2].Needed.TotalHours, 0.02);
        Assert.Equal(4.75, mornings[2].Offered.TotalHours, 0.001);
    }

    [Fact]
    public void A_morning_nobody_spoke_of_is_unknown()
    {
        var silent = SeasonFold.Fold(PlannedMorning.State() with { Wind = [] }, Logbook.Empty, PlannedMorning.Now);
        Assert.All(FlightMorning.Of(silent, null, 7), m => Assert.Equal((SlotAir.NoWord, 0), (m.Air, m.Flights.Length)));
    }

    [Fact]
    public void Checks_that_the_farm_counted_wet_from_the_head_are_wet()
    {
        var row = CheckRow.Of(Book).Single(r => r.Field.Code == "N4");
        Assert.Equal([CheckWord.Wet, CheckWord.Wet, CheckWord.Wet, CheckWord.Wet, CheckWord.Dry, CheckWord.Dry], row.Cells.Select(c => c.Word));
        Assert.Equal((4, 5), (row.Wet, row.Next));
    }

    [Fact]
    public void A_field_that_fills_without_a_count_is_unknown_check_by_check()
    {
        var state = PlannedMorning.State();
        state = state with { Fields = [.. state.Fields.Select(f => f.Code == "N4" ? f with { ChecksWet = null } : f)] };
        var row = CheckRow.Of(SeasonFold.Fold(state, Logbook.Empty, PlannedMorning.Now), state.Farm.Field("N4"));
        Assert.All(row.Cells, c => Assert.Equal(CheckWord.Unknown, c.Word));
    }

    [Fact]
    public void The_order_book_lists_the_plans_changes_by_the_moment_they_must_be_sent()
    {
        var lines = OrderBook.Of(Book, Plan);
        Assert.Equal(PlannedMorning.At(8, 7), lines[0].SendBy);
        Assert.Equal(("NT-1", true, true), (lines[0].Source.Code, lines[0].Down, lines[0].Planned));
        Assert.True(lines.Zip(lines.Skip(1)).All(p => p.First.SendBy <= p.Second.SendBy));
    }
}
