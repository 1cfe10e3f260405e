using Watersown.Schedule;
using Watersown.Schedule.Board;
using Watersown.Schedule.Sheets;
using Watersown.Season.Boards;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>The board said in words, so that nobody needs the drawing.</summary>
public sealed class BoardSpeechTests
{
    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    private static readonly ScheduleBoard Board = BoardLayout.Of(Plan, Plan.State, BoardSpan.Of(Plan, BoardZoom.Week, new DateOnly(2026, 5, 8)), []);

    [Fact]
    public void Two_Gates_is_told_from_filling_to_sown_with_what_holds_it()
    {
        var said = new BoardSpeech(Tell(Language.English)).Of(Row("N4"), Board.Span);
        Assert.StartsWith("Two Gates (N4), 118 ac: filling until Sat 14:41; full until Sun 07:55; sown Sun 07:55; sown to the end of the board; in soak until", said, StringComparison.Ordinal);
        Assert.Contains("What holds it: ", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void Every_row_and_lane_of_the_morning_has_words(Language language)
    {
        var speech = new BoardSpeech(Tell(language));
        Assert.All(Board.Rows, r => Assert.DoesNotContain("{", speech.Of(r, Board.Span) + speech.Of(r.Reason, r), StringComparison.Ordinal));
        Assert.All(Board.Flows, f => Assert.NotEmpty(speech.Order(f).What));
        Assert.All(Board.Lanes, l => Assert.NotEmpty(speech.Of(l)));
        Assert.Equal(Enum.GetValues<BarState>().Length, Enum.GetValues<BarState>().Select(s => speech.Of(s)).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Enum.GetValues<BoardHold>().Length, Enum.GetValues<BoardHold>().Select(h => speech.Of(h)).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void The_north_turnout_is_cut_on_Sunday_and_asked_for_two_days_before() // 48 h before Sunday 07:00
    {
        var (what, when) = new BoardSpeech(Tell(Language.English)).Order(Board.Flows.Single(f => f.Source.Code == "NT-1"));
        Assert.Equal("order down 14 cfs to 5.8 cfs", what);
        Assert.Equal("Sun 07:00, ask by Fri 07:00", when);
    }

    [Fact]
    public void Saturday_to_Thursday_the_aeroplane_flies_the_sum_of_its_fields() // 53 + 67 + 58 + 65 + 87 + 58 + 90 min in the week
    {
        var lane = Board.Lanes.Single(l => l.Kind == LaneKind.Aeroplane);
        Assert.StartsWith(Say.Number((53 + 67 + 58 + 65 + 87 + 58 + 90) / 60.0, 1) + " of ", new BoardSpeech(Tell(Language.English)).Of(lane), StringComparison.Ordinal);
    }

    private static BoardRow Row(string code) => Board.Rows.Single(r => r.Field.Code == code);

    private static Telling Tell(Language language) => new(Plan.State, language);
}
