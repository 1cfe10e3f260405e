using Watersown.Wording;

namespace Watersown.Schedule;

public sealed class SeasonCalendarTests
{
    [Fact]
    public void Every_entry_has_a_name_of_its_own()
    {
        var entries = SeasonCalendar.Of(PlannedMorning.Plan(), Language.English);
        Assert.Equal(entries.Length, entries.Select(e => e.Uid).Distinct(StringComparer.Ordinal).Count());
        Assert.All(entries, e => Assert.EndsWith("@marrowfen-farm-2026.watersown", e.Uid, StringComparison.Ordinal));
    }

    [Fact]
    public void A_step_keeps_its_name_when_the_plan_moves_it_so_that_a_calendar_moves_its_entry()
    {
        var plan = PlannedMorning.Plan();
        var later = plan with { Number = 15, Tasks = [.. plan.Tasks.Select(t => t with { Start = t.Start.AddHours(5), End = t.End.AddHours(5) })] };
        Assert.Equal(
            SeasonCalendar.Of(plan, Language.English).Select(e => e.Uid).Order(StringComparer.Ordinal),
            SeasonCalendar.Of(later, Language.English).Select(e => e.Uid).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_decision_ends_at_its_last_safe_moment_and_rings_an_hour_before()
    {
        var call = SeasonCalendar.Of(PlannedMorning.Plan(), Language.English).Single(e => e.Uid.StartsWith("decide-call-soak-n3-1", StringComparison.Ordinal));
        Assert.Equal(PlannedMorning.At(8, 6, 30), call.End);
        Assert.Equal(TimeSpan.FromHours(1), call.Rings);
        Assert.Equal("Last moment: Call the soak for Lower Sink (R4) and Tin Barn (N3)", call.Title);
    }

    [Fact]
    public void Seed_that_is_lost_either_way_rings_nobody() =>
        Assert.Null(SeasonCalendar.Of(PlannedMorning.Plan(), Language.English).Single(e => e.Uid.StartsWith("decide-dump-seed", StringComparison.Ordinal)).Rings);

    [Fact]
    public void A_field_sown_twice_has_two_entries()
    {
        var sown = SeasonCalendar.Of(PlannedMorning.Plan(), Language.Spanish).Where(e => e.Uid.StartsWith("sow-h6-", StringComparison.Ordinal)).ToList();
        Assert.Equal(["sow-h6-1", "sow-h6-2"], sown.Select(e => e.Uid.Split('@')[0]));
        Assert.All(sown, e => Assert.Equal("Sembrar Widow's Eighty (H6): decide el piloto", e.Title));
    }

    [Fact]
    public void Pounds_in_the_calendar_say_dry_or_wet() =>
        Assert.Contains("12,865 lb dry, 16,081 lb wet.", SeasonCalendar.Of(PlannedMorning.Plan(), Language.English).Single(e => e.Uid.StartsWith("sow-s2-1", StringComparison.Ordinal)).Text, StringComparison.Ordinal);
}
