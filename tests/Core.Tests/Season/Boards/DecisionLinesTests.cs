using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season.Boards;

public sealed class DecisionLinesTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void The_next_is_the_first_whose_moment_is_still_ahead()
    {
        var lines = Of(Now, Decide("call-soak", 90), Decide("order-water", 40), Decide("list-flight", 60 * 60));
        Assert.Equal(("order-water", TimeSpan.FromMinutes(40), DecisionStanding.Close), (lines.Next!.Decision.Kind, lines.Next.Left, lines.Next.Standing));
        Assert.Equal(["call-soak"], lines.Close.Select(l => l.Decision.Kind));
        Assert.Equal(1, lines.Later);
    }

    [Fact]
    public void What_has_gone_by_is_said_and_never_dropped()
    {
        var lines = Of(Now.AddHours(1), Decide("order-water", 40), Decide("call-soak", 90));
        var passed = Assert.Single(lines.Passed);
        Assert.Equal((TimeSpan.FromMinutes(-20), DecisionStanding.Passed), (passed.Left, passed.Standing));
        Assert.Equal("call-soak", lines.Next!.Decision.Kind);
    }

    [Fact]
    public void What_was_due_when_the_plan_was_made_is_due_now()
    {
        var lines = Of(Now.AddMinutes(10), Decide("dump-seed", 0), Decide("call-soak", 300));
        Assert.Equal("dump-seed", Assert.Single(lines.Due).Decision.Kind);
        Assert.Equal(DecisionStanding.Ahead, lines.Next!.Standing);
    }

    [Fact]
    public void Every_decision_is_on_the_page_or_counted()
    {
        var plan = PlannedMorning.Plan();
        plan = plan with { Decisions = [.. Decisions.Of(plan).Where(d => d.Kind is "order-water" or "cut-water" or "dump-seed" or "list-flight")] };
        Assert.True(plan.Decisions.Length > 5);
        for (var hours = 0; hours < 120; hours += 7)
        {
            var lines = DecisionLines.Of(Book(Now.AddHours(hours)), plan);
            Assert.Equal(plan.Decisions.Length, (lines.Next is null ? 0 : 1) + lines.Close.Length + lines.After.Length + lines.Later + lines.Due.Length + lines.Passed.Length);
        }
    }

    [Fact]
    public void Seed_that_was_marked_off_the_water_needs_no_more_deciding()
    {
        var plan = PlannedMorning.Plan();
        plan = plan with { Decisions = Decisions.Of(plan) };
        var drain = plan.Decisions.First(d => d.Kind == "drain");
        var batch = plan.Task(drain.Fields[0], PlanTaskKind.Sow)!.Batch!;
        Assert.Contains(All(DecisionLines.Of(Book(Now), plan)), d => d == drain);
        Assert.DoesNotContain(All(DecisionLines.Of(Book(Now.AddMinutes(5), Marks.At(1, Now, new BatchDrained(batch))), plan)), d => d == drain);
    }

    [Fact]
    public void What_the_one_concerned_was_told_needs_no_more_deciding_unless_he_was_not_reached()
    {
        var plan = PlannedMorning.Plan();
        plan = plan with { Decisions = Decisions.Of(plan) };
        var call = MorningCalls.Of(Book(Now), plan).Single(c => c.Role == CrewRole.Dispatcher);
        var listed = plan.Decisions.Where(d => d.Kind == "list-flight" && d.Fields.Contains("S2", StringComparer.Ordinal)).ToList();
        Assert.NotEmpty(listed);
        foreach (var (state, open) in new[] { (ToldState.Told, false), (ToldState.NotReached, true) })
        {
            var book = Book(Now.AddMinutes(5), Marks.At(1, Now, call.Mark(state, byVoice: true)));
            Assert.All(listed, d => Assert.Equal(open, All(DecisionLines.Of(book, plan)).Contains(d)));
        }
    }

    private static IEnumerable<Decision> All(DecisionLines lines) =>
        lines.Close.Concat(lines.After).Concat(lines.Due).Concat(lines.Passed).Select(l => l.Decision).Append(lines.Next?.Decision!).Where(d => d is not null);

    private static Decision Decide(string kind, int minutes) => new(Now.AddMinutes(minutes), "say it", "Warehouse A", ["R4"]) { Kind = kind, CostOfWaiting = "a day" };

    private static DecisionLines Of(DateTimeOffset now, params ImmutableArray<Decision> decisions) =>
        DecisionLines.Of(Book(now), PlannedMorning.Plan() with { Decisions = decisions, Tasks = [], MadeAt = Now });

    private static SeasonBook Book(DateTimeOffset now, params ImmutableArray<Mark> marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), now);
}
