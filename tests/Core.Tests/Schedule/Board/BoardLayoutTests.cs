using Watersown.Seed;

namespace Watersown.Schedule.Board;

/// <summary>The hand-laid plan of 8 May on the board: every step once, nothing over anything else, nothing above what there is.</summary>
public sealed class BoardLayoutTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    [Fact]
    public void The_morning_at_Marrowfen_reads_as_a_person_kept_it() => Golden.Matches("Board/marrowfen-three-days.txt", BoardText.Of(Lay(BoardZoom.ThreeDays)));

    [Fact]
    public void Every_step_of_the_plan_stands_on_the_season_board_once()
    {
        var early = new BoardSpan(BoardZoom.Season, PlannedMorning.At(1, 0), PlannedMorning.At(31, 0));
        var board = BoardLayout.Of(Plan, Plan.State, early, []);
        var shown = board.Rows.SelectMany(r => r.Bars.Select(b => b.Task).Concat(r.Moments.Select(m => m.Task))).OfType<PlanTask>().ToList();
        Assert.Equal(Plan.Tasks.Length, shown.Count);
        Assert.Equal(Plan.Tasks.Length, shown.Distinct(ReferenceEqualityComparer.Instance).Count());
    }

    [Theory]
    [InlineData(BoardZoom.Day)]
    [InlineData(BoardZoom.ThreeDays)]
    [InlineData(BoardZoom.Week)]
    [InlineData(BoardZoom.Season)]
    public void No_two_bars_of_a_field_lie_over_one_another_and_its_ground_has_no_gap(BoardZoom zoom)
    {
        var board = Lay(zoom);
        foreach (var row in board.Rows)
        {
            foreach (var track in row.Bars.GroupBy(b => (b.Track, b.Layer)))
            {
                var bars = track.ToList();
                Assert.All(bars.Zip(bars.Skip(1)), b => Assert.True(b.First.Until <= b.Second.From, $"{row.Field.Code}: {b.First} over {b.Second}"));
                if (track.Key.Track == BarTrack.Ground) Assert.All(bars.Zip(bars.Skip(1)), b => Assert.Equal(b.First.Until, b.Second.From));
            }

            Assert.True(row.Bars[0].From <= board.Span.From && row.Bars.Last(b => b.Track == BarTrack.Ground).Until >= board.Span.Until, row.Field.Code);
        }

        var keys = board.Rows.SelectMany(r => r.Bars.Select(b => b.Key).Concat(r.Moments.Select(m => m.Key))).ToList();
        Assert.Equal(keys.Count, keys.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void All_fields_have_a_row_the_ones_to_sow_first_and_in_the_order_of_sowing()
    {
        var rows = Lay(BoardZoom.Season).Rows;
        Assert.Equal(28, rows.Length);
        Assert.Equal(["S2", "R4", "N3", "N4", "S3", "R5"], rows.Take(6).Select(r => r.Field.Code));
        Assert.Equal(6, rows.Reverse().TakeWhile(r => r.Group == BoardGroup.Sown).Count());
    }

    [Fact]
    public void A_source_never_gives_more_than_was_ordered_or_it_can_and_no_water_is_lost_in_sharing()
    {
        var flows = Lay(BoardZoom.Season).Flows;
        foreach (var flow in flows)
        {
            Assert.All(flow.Steps, s => Assert.True(s.Holding + s.Filling <= s.Given + FlowRate.FromCubicFeetPerSecond(1e-6) && s.Given <= flow.Source.Cap, $"{flow.Source.Code} {s}"));
            Assert.All(flow.Steps.Zip(flow.Steps.Skip(1)), s => Assert.Equal(s.First.Until, s.Second.From));
        }

        // Sunday noon by hand: N4 is full, N5 fills with 8 cfs; N1 to N3 and N4 hold.
        var at = PlannedMorning.At(10, 12);
        var holding = new[] { "N1", "N2", "N3", "N4" }.Sum(f => FieldWater.Of(Plan.State, f).Holding.CubicFeetPerSecond);
        var north = flows.Single(f => f.Source.Code == "NT-1").At(at)!;
        Assert.Equal(5.8, north.Given.CubicFeetPerSecond, 9);
        Assert.Equal(holding + 8, north.Holding.CubicFeetPerSecond + north.Filling.CubicFeetPerSecond + north.Short.CubicFeetPerSecond, 6);
        Assert.True(north.Short > FlowRate.Zero); // this plan was laid by hand, and Sunday's cut leaves N5 short
    }

    [Fact]
    public void Changes_of_water_carry_the_last_moment_to_ask()
    {
        var change = Lay(BoardZoom.Week).Flows.Single(f => f.Source.Code == "NT-1").Changes[0];
        Assert.Equal((PlannedMorning.At(10, 7), PlannedMorning.At(8, 7)), (change.At, change.AskBy));
    }

    [Fact]
    public void Trailers_with_a_number_keep_their_line_and_no_trailer_has_two_batches_at_once()
    {
        var lane = Lay(BoardZoom.Season).Lanes.Single(l => l.Kind == LaneKind.Trailers);
        foreach (var trailer in lane.Bars.GroupBy(b => b.Layer))
        {
            var bars = trailer.OrderBy(b => b.From).ToList();
            Assert.All(bars.Zip(bars.Skip(1)), b => Assert.True(b.First.Until <= b.Second.From, $"{trailer.Key}: {b}"));
        }

        Assert.Equal("3", lane.Names[lane.Bars.First(b => b.Batch == "B-08").Layer]);
        Assert.Equal(LaneUse.PastUse, lane.Bars.First(b => b.Batch == "B-07a").Use);
    }

    [Fact]
    public void Many_trailers_are_counted_instead_of_drawn_one_by_one()
    {
        var many = Plan with { State = Plan.State with { SoakPlace = Plan.State.SoakPlace! with { HaulLimit = SoakedSeed.FromPounds(2000) } }, Tasks = [.. Plan.Tasks.Select(t => t.Trailers is null ? t : t with { Trailers = 9 })] };
        var lane = BoardLayout.Of(many, many.State, BoardSpan.Of(many, BoardZoom.Season, Friday), []).Lanes.Single(l => l.Kind == LaneKind.Trailers);
        Assert.True(lane.IsCounted);
        Assert.Equal(lane.Bars.Where(b => b.From <= PlannedMorning.At(9, 12) && b.Until > PlannedMorning.At(9, 12)).Select(b => b.Layer).Distinct().Count(), lane.Counts().Last(c => c.From <= PlannedMorning.At(9, 12)).Taken);
    }

    [Fact]
    public void Wind_over_the_limit_and_nights_are_shaded_and_the_forecast_says_where_it_ends()
    {
        var bands = Lay(BoardZoom.Week).Bands;
        // Friday 04:45 to 19:00 and 13:00 Saturday until Sunday 05:00; from Monday 09:00; Wednesday 05:00 for a day; then nobody has said.
        Assert.Equal([(8, 4.75, 8, 19), (9, 13, 10, 5), (11, 9, 12, 5), (13, 5, 14, 5)], bands.Where(b => b.Kind == BandKind.Wind).Select(b => (b.From.Day, b.From.TimeOfDay.TotalHours, b.Until.Day, b.Until.TimeOfDay.TotalHours)));
        Assert.Equal([PlannedMorning.At(14, 5)], bands.Where(b => b.Kind == BandKind.NoForecast).Select(b => b.From));
        Assert.Equal(8, bands.Count(b => b.Kind == BandKind.Night));
        Assert.Equal(5, bands.First(b => b.Kind == BandKind.Night).Until.Hour); // civil dawn at Marrowfen in May
    }

    [Theory]
    [InlineData("S2", BoardHold.Seed)] // B-08 is drained enough on Saturday 04:50 at the soonest
    [InlineData("R5", BoardHold.Plane)] // S3 has Monday's hour and a half of calm
    [InlineData("R6", BoardHold.Water)] // full on Wednesday at 16:00, sown the next morning
    [InlineData("N1", BoardHold.Sown)]
    public void A_row_says_what_holds_it(string field, BoardHold hold) => Assert.Equal(hold, Lay(BoardZoom.Week).Rows.Single(r => r.Field.Code == field).Reason.Hold);

    [Fact]
    public void A_morning_lost_to_wind_is_held_by_wind()
    {
        // Friday is blown; alone on the farm and with seed drained, S2 goes on Saturday.
        var alone = Plan with
        {
            Tasks = [.. Plan.Tasks.Where(t => t is { Field: "S2", Kind: PlanTaskKind.Sow }).Select(t => t with { Batch = "B-00" })],
            State = Plan.State with { Batches = [new SoakBatch("B-00", "E-1 lot 2", "E-1", DrySeed.FromPounds(12865), PlannedMorning.At(5, 6)) { Drained = PlannedMorning.At(6, 18) }] },
        };
        var row = BoardLayout.Of(alone, alone.State, BoardSpan.Of(alone, BoardZoom.Week, Friday), []).Rows.Single(r => r.Field.Code == "S2");
        Assert.Equal(BoardHold.Wind, row.Reason.Hold);
        Assert.Equal(PlannedMorning.At(8, 5, 45), row.Reason.At);
    }

    [Fact]
    public void A_pinned_step_says_so_and_a_step_that_is_running_cannot_be_pinned()
    {
        var pinned = Plan with { Tasks = [.. Plan.Tasks.Select(t => t is { Field: "R4", Kind: PlanTaskKind.Sow } ? t with { Pinned = true } : t)] };
        var rows = BoardLayout.Of(pinned, pinned.State, BoardSpan.Of(pinned, BoardZoom.Week, Friday), [new ToldTo("R4", PlanTaskKind.Sow, PlannedMorning.At(10, 5, 45), "dispatcher")]).Rows;
        var sow = rows.Single(r => r.Field.Code == "R4").Bars.Single(b => b.State == BarState.Sowing);
        Assert.True(sow is { Pinned: true, CanBePinned: true, Told.Who: "dispatcher" });
        Assert.Equal(BoardHold.Pinned, rows.Single(r => r.Field.Code == "R4").Reason.Hold);
        Assert.False(rows.Single(r => r.Field.Code == "N4").Bars.Single(b => b.State == BarState.Filling && b.Task is not null).CanBePinned);
    }

    [Fact]
    public void A_field_that_the_plan_leaves_out_ends_in_no_word()
    {
        var without = Plan with { Tasks = [.. Plan.Tasks.Where(t => t.Field is not ("S7" or "N8"))] };
        var rows = BoardLayout.Of(without, without.State, BoardSpan.Of(without, BoardZoom.Week, Friday), []).Rows;
        Assert.Equal([(BarState.TooWet, false), (BarState.NoWord, true)], rows.Single(r => r.Field.Code == "S7").Bars.Select(b => (b.State, b.GoesOn)));
        Assert.Equal((BoardHold.TooWet, BoardGroup.NotInPlan), (rows.Single(r => r.Field.Code == "S7").Reason.Hold, rows.Single(r => r.Field.Code == "S7").Group));
        Assert.Equal(BoardHold.NotInPlan, rows.Single(r => r.Field.Code == "N8").Reason.Hold);
    }

    [Fact]
    public void Two_sowings_of_one_field_have_their_seed_in_two_layers_where_it_overlaps()
    {
        var bars = Lay(BoardZoom.Season).Rows.Single(r => r.Field.Code == "H6").Bars;
        Assert.Equal([0, 1], bars.Where(b => b.Track == BarTrack.Seed).Select(b => b.Layer).Distinct());
        Assert.Equal(2, bars.Count(b => b.State == BarState.Sowing));
    }

    [Fact]
    public void A_farm_with_nothing_told_still_has_a_board()
    {
        var bare = Plan with { Tasks = [], Orders = [], State = Plan.State with { Batches = [], SoakPlace = null, Aeroplanes = [], Wind = [], Slots = [], Tractors = [], Farm = Plan.State.Farm with { Sources = [] } } };
        var board = BoardLayout.Of(bare, bare.State, BoardSpan.Of(bare, BoardZoom.Week, Friday), []);
        Assert.Equal(28, board.Rows.Length);
        Assert.Empty(board.Flows);
        Assert.Empty(board.Lanes);
        Assert.Contains(board.Bands, b => b.Kind == BandKind.NoForecast && b.From == bare.State.Now);
    }

    [Theory]
    [InlineData(BoardZoom.Day, 25)]
    [InlineData(BoardZoom.ThreeDays, 25)]
    [InlineData(BoardZoom.Week, 15)]
    public void Each_zoom_has_its_strokes(BoardZoom zoom, int strokes)
    {
        var ticks = BoardSpan.Of(Plan, zoom, Friday).Ticks();
        Assert.Equal(strokes, ticks.Length);
        Assert.True(ticks[0].Heavy);
    }

    private static ScheduleBoard Lay(BoardZoom zoom) => BoardLayout.Of(Plan, Plan.State, BoardSpan.Of(Plan, zoom, Friday), []);
}
