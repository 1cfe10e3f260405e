using CsCheck;
using Watersown.Schedule.Board.Paper;

namespace Watersown.Schedule.Board;

/// <summary>The board on paper: moments in their order, nothing outside the paper, nothing too small for a finger.</summary>
public sealed class BoardPaperTests
{
    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    [Fact]
    public void Six_in_the_morning_stands_a_quarter_along_a_day() // 6 h of 24
    {
        var paper = Lay(BoardZoom.Day);
        Assert.Equal(paper.Width / 4, paper.Scale.At(PlannedMorning.At(8, 6)), 6);
        Assert.Equal(paper.Width, paper.Scale.At(PlannedMorning.At(9, 0)), 6);
        Assert.Equal(paper.Width, paper.Scale.At(PlannedMorning.At(20, 0)), 6); // what lies outside stands at the edge
    }

    [Theory]
    [InlineData(BoardZoom.Day, 44, 60)] // an hour along the day
    [InlineData(BoardZoom.Day, -9, -15)]
    [InlineData(BoardZoom.Week, 150, 1440)] // a day along the week
    [InlineData(BoardZoom.Week, 2, 0)] // less than half an hour there is a hand that trembled
    [InlineData(BoardZoom.Season, 40, 1440)] // on the season, whole days: the hour stays
    public void A_shift_along_the_board_is_whole_steps_of_time(BoardZoom zoom, double points, int minutes) =>
        Assert.Equal(TimeSpan.FromMinutes(minutes), Lay(zoom).Scale.Shift(points));

    [Fact]
    public void A_shift_never_differs_from_the_hand_by_more_than_half_a_step() => Gen.Select(Gen.Enum<BoardZoom>(), Gen.Double[-2000, 2000]).Sample((zoom, points) =>
    {
        var scale = Lay(zoom).Scale;
        var meant = TimeSpan.FromHours(points / scale.Hour);
        return (scale.Shift(points) - meant).Duration() <= (scale.Step / 2) + TimeSpan.FromSeconds(1);
    });

    [Theory]
    [InlineData(BoardZoom.Day)]
    [InlineData(BoardZoom.ThreeDays)]
    [InlineData(BoardZoom.Week)]
    [InlineData(BoardZoom.Season)]
    public void Nothing_stands_outside_the_paper_and_order_in_time_is_order_to_the_right(BoardZoom zoom)
    {
        var paper = Lay(zoom);
        foreach (var row in paper.Rows)
        {
            Assert.All(row.Bars, b => Assert.True(b.Box is { X: >= 0, Y: >= 0 } && b.Box.X <= paper.Width && b.Box.Right <= paper.Width + 1 && b.Box.Bottom <= row.Height, $"{row.Row.Field.Code} {b.Box}"));
            Assert.All(row.Bars.Where(b => b.Bar.CanBePinned), b => Assert.True(b.Hold is { Width: >= 24, Height: >= 24 }, b.Hold.ToString()));
            Assert.All(row.Bars.SelectMany(a => row.Bars.Select(b => (a, b))).Where(p => p.a.Bar.From < p.b.Bar.From), p => Assert.True(p.a.Box.X <= p.b.Box.X));
        }

        Assert.All(paper.Flows.SelectMany(f => f.Waters), w => Assert.True(w.Box.Y >= 0 && w.Box.Bottom <= PaperFlow.Ground + 0.1, w.ToString()));
        Assert.All(paper.Lanes, l => Assert.All(l.Uses, u => Assert.True(u.Box.Bottom <= l.Height)));
        Assert.All(paper.Wind.Steady.Concat(paper.Wind.Gusts).SelectMany(l => l), p => Assert.InRange(p.Y, 0, PaperWind.Height));
    }

    [Fact]
    public void Water_is_as_high_as_it_is_much()
    {
        // NT-1 holds N1 to N3 and fills N4; its boxes of one step stand on one another, in proportion to their flows.
        var flow = Lay(BoardZoom.Week).Flows.Single(f => f.Lane.Source.Code == "NT-1");
        var step = flow.Lane.Steps[0];
        var waters = flow.Waters.Where(w => w.Step == step).ToDictionary(w => w.Use, w => w.Box);
        Assert.Equal(step.Holding / step.Filling, waters[FlowUse.Holding].Height / waters[FlowUse.Filling].Height, 2);
        Assert.Equal(waters[FlowUse.Holding].Y, waters[FlowUse.Filling].Bottom, 1);
    }

    [Fact]
    public void The_days_tell_every_step_that_the_board_shows_once_each_on_its_own_day()
    {
        var board = Board(BoardZoom.Season);
        var days = BoardDays.Of(board, Plan.State);
        var steps = days.SelectMany(d => d.Steps.Select(s => (d.Day, Step: s))).ToList();
        Assert.Equal(board.Rows.Sum(r => r.Bars.Count(b => b.Task is not null) + r.Moments.Length), steps.Count);
        Assert.Equal(steps.Count, steps.Select(s => s.Step.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.All(steps, s => Assert.True(s.Day == FarmTime.Day(Plan.State, s.Step.At) || (s.Day == days[0].Day && s.Step.At < board.Span.From)));
        Assert.All(days, d => Assert.Equal(d.Steps.Select(s => s.At), d.Steps.Select(s => s.At).Order()));
    }

    [Fact]
    public void Friday_is_over_the_limit_and_Sunday_is_not() // as the morning is told: 15 mph on Friday, within 10 and 15 on Sunday
    {
        var days = BoardDays.Of(Board(BoardZoom.Week), Plan.State);
        Assert.True(days[0].OverLimit);
        Assert.False(days[2].OverLimit);
        Assert.NotNull(days[2].Strongest);
    }

    [Fact]
    public void What_holds_the_season_counts_every_field_not_sown_once()
    {
        var board = Board(BoardZoom.Week);
        var held = BoardHolds.Of(board).SelectMany(h => h.Fields).ToList();
        Assert.Equal(22, held.Count); // 28 fields, six of them sown
        Assert.Equal(22, held.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_pin_that_the_plan_does_not_have_yet_stands_as_a_waiting_peg()
    {
        var state = Plan.State with { Pins = [new Pin("N4", "sow", PlannedMorning.At(11, 6))] };
        var paper = BoardPaper.Of(BoardLayout.Of(Plan, state, BoardSpan.Of(Plan, BoardZoom.Week, new DateOnly(2026, 5, 8)), []));
        var peg = Assert.Single(paper.Rows.Single(r => r.Row.Field.Code == "N4").Pegs);
        Assert.True(peg.Waits);
        Assert.Equal(paper.Scale.At(PlannedMorning.At(11, 6)), peg.X);
    }

    [Fact]
    public void The_working_of_the_proof_adds_up()
    {
        var working = PlanProof.Of(Plan);
        Assert.Equal((double)Plan.Cost.Total.Amount, ((Datum.Number)working.Lines.Single(l => l.Symbol == "C").Value).Value, 6);
    }

    private static ScheduleBoard Board(BoardZoom zoom) => BoardLayout.Of(Plan, Plan.State, BoardSpan.Of(Plan, zoom, new DateOnly(2026, 5, 8)), []);

    private static BoardPaper Lay(BoardZoom zoom) => BoardPaper.Of(Board(zoom));
}
