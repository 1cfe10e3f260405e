using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class DaySheetTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void A_day_sheet_reads_as_approved(Language language) =>
        Golden.Matches($"Sheets/day-{Words.In(language).Common.Tag}.golden.txt", Text(PlannedMorning.Plan(), language));

    [Fact]
    public void The_soonest_last_safe_moment_is_on_top_with_what_waiting_costs()
    {
        var sheet = DaySheets.Of(PlannedMorning.Plan(), Friday);
        Assert.Equal(sheet.Decisions.Select(d => d.By).Order(), sheet.Decisions.Select(d => d.By));
        Assert.Equal(7, sheet.Decisions.Length);
        Assert.Contains("Fri 06:30 | Call the soak for Lower Sink (R4) and Tin Barn (N3) | warehouse | Sunday flies one field only: a day of 199 ac, about $716 | [ ]", Text(PlannedMorning.Plan(), Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Wind_says_whether_it_was_seen_and_how_old_a_forecast_is()
    {
        var text = Text(PlannedMorning.Plan(), Language.English);
        Assert.Contains("Fri 04:45 | 15 mph | 22 mph | 000° | over | seen, 5 min old", text, StringComparison.Ordinal);
        Assert.Contains("Sat 05:00 | 5 mph | 8 mph | 000° | within | forecast of Thu 20:00, 9 h old", text, StringComparison.Ordinal);
        Assert.Contains("Dawn wind at a field is not town wind.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Seed_shows_its_age_and_what_no_field_can_use()
    {
        // Wednesday 06:00 to Friday 04:50 is 46 h 50 min (derived).
        var text = Text(PlannedMorning.Plan(), Language.English);
        Assert.Contains("B-07a | E-1 lot 2 | 15,450 | drained 46.8 h |", text, StringComparison.Ordinal);
        Assert.Contains("| no field in time", text, StringComparison.Ordinal);
        Assert.Contains("B-08 | E-1 lot 2 | 14,880 | 46.8 h under water, not drained | – | S2", text, StringComparison.Ordinal);
        Assert.Contains("B-09 | E-2 lot 1 | 17,700 | due in soak Fri 06:00 |", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_person_is_one_call_with_boxes_for_told_heard_agreed_and_not_reached()
    {
        var text = Text(PlannedMorning.Plan(), Language.English);
        Assert.Contains("Who | Say | told | heard | agreed | not reached", text, StringComparison.Ordinal);
        Assert.Contains("Fenna Okwold 555-555-0151 | • Ready Sat 5/9:", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_the_plan_that_are_english_say_so_on_a_spanish_sheet()
    {
        var page = DayPage.Of(PlannedMorning.Plan(), DaySheets.Of(PlannedMorning.Plan(), Friday), Language.Spanish);
        var decisions = page.Arrangements[0].OfType<Block.Grid>().First();
        var what = decisions.Rows[1][1].Runs;
        Assert.Equal("Pedir el remojo R4, N3. ", what[0].Text);
        Assert.Null(what[0].Speech);
        Assert.Equal(Language.English, what[1].Speech);
    }

    [Fact]
    public void A_day_about_which_nothing_is_known_says_so_line_by_line()
    {
        var plan = PlannedMorning.Plan();
        var bare = plan with { Tasks = [], Decisions = [], Conflicts = [], Orders = [], Assumptions = [], LostBatches = [], State = plan.State with { Wind = [], Batches = [], People = [], Fields = [.. plan.State.Fields.Select(f => f with { Stage = FieldStage.Unworked, SownAt = null, FullSince = null, NoSpill = false })] } };
        var text = Text(bare, Language.English);
        Assert.Contains("Nothing has to be decided in these hours by the plan.", text, StringComparison.Ordinal);
        Assert.Contains("Nobody has said anything about wind.", text, StringComparison.Ordinal);
        Assert.Contains("No seed is in soak or drained.", text, StringComparison.Ordinal);
        Assert.Contains("Nobody has to be called by the plan.", text, StringComparison.Ordinal);
    }

    private static string Text(SeasonPlan plan, Language language) => PageText.Of(DayPage.Of(plan, DaySheets.Of(plan, Friday), language));
}
