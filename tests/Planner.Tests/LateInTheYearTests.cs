using Watersown.Schedule;
using Watersown.Season;

namespace Watersown.Planner;

public sealed class LateInTheYearTests
{
    // The plan of the spring ends on 7 July; fields are drained and cut long after, and some were never sown.
    [Fact]
    public void A_season_past_its_last_planned_day_still_has_a_plan()
    {
        var book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, new DateTimeOffset(2026, 9, 25, 9, 0, 0, TimeSpan.FromHours(-7)));
        Assert.Equal(new DateOnly(2026, 9, 25), book.State.Horizon);
        var plan = SeasonPlanner.Plan(book.State, new PlanOptions { Repeatable = true, Budget = TimeSpan.FromSeconds(1) });
        Assert.DoesNotContain(plan.Tasks, t => t.Kind == PlanTaskKind.Sow && t.Start < book.State.Now);
        Assert.True(plan.Cost.Unsown > Money.Zero);
    }
}
