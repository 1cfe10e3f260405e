using Watersown.Schedule;

namespace Watersown.Planner.Checking;

/// <summary>
/// Looks at a plan as a suspicious neighbor would: only the farm's facts and the plan's own times, nothing of how it was
/// found. Every broken rule is one line.
/// </summary>
internal sealed partial class PlanChecker
{
    private static readonly TimeSpan Step = TimeSpan.FromMinutes(5);
    private readonly SeasonPlan plan;
    private readonly SeasonState state;
    private readonly List<string> faults = [];

    private PlanChecker(SeasonPlan plan) => (this.plan, state) = (plan, plan.State);

    public static IReadOnlyList<string> Faults(SeasonPlan plan)
    {
        var checker = new PlanChecker(plan);
        checker.CheckTimes();
        foreach (var season in plan.State.Fields) checker.CheckChain(season);
        checker.CheckTractors();
        checker.CheckWater();
        checker.CheckOrders();
        checker.CheckSeed();
        checker.CheckAir();
        checker.CheckPins();
        return checker.faults;
    }

    private void Fault(string text) => faults.Add(text);

    private IEnumerable<PlanTask> Of(PlanTaskKind kind) => plan.Tasks.Where(t => t.Kind == kind);

    private void CheckTimes()
    {
        foreach (var task in plan.Tasks)
        {
            if (task.End < task.Start) Fault($"{task.Field} {task.Kind} ends before it starts");
            if (task.Start < state.Now && !task.Fixed && task.Kind != PlanTaskKind.CallSeed) Fault($"{task.Field} {task.Kind} starts in the past");
            if (state.Farm.Fields.All(f => f.Code != task.Field)) Fault($"{task.Field} is no field of the farm");
        }

        foreach (var twice in plan.Tasks.Where(t => t.Kind is PlanTaskKind.Sow or PlanTaskKind.Fill or PlanTaskKind.Soak).GroupBy(t => (t.Field, t.Kind)).Where(g => g.Count() > 1))
            Fault($"{twice.Key.Field} has {twice.Count()} of {twice.Key.Kind}");
    }

    private void CheckChain(FieldSeason season)
    {
        var sow = plan.Task(season.Code, PlanTaskKind.Sow);
        if (season.Stage == FieldStage.Sown)
        {
            if (plan.Tasks.Any(t => t.Field == season.Code)) Fault($"{season.Code} is sown already and still planned");
            return;
        }

        var fill = plan.Task(season.Code, PlanTaskKind.Fill);
        var ground = plan.Tasks.Where(t => t.Field == season.Code && t.Kind == PlanTaskKind.Ground).OrderBy(t => t.Start).ToList();
        if (sow is null && fill is null) return;
        var left = GroundChain.Left(season);
        if (!ground.Select(g => g.Implement!.Value).SequenceEqual(left)) Fault($"{season.Code} lacks ground work: {string.Join(" ", left)} wanted");
        for (var i = 1; i < ground.Count; i++)
        {
            if (ground[i].Start < ground[i - 1].End) Fault($"{season.Code} {ground[i].Implement} begins before {ground[i - 1].Implement} is done");
        }

        if (season.FitFrom is { } fit && ground.Count > 0 && ground[0].Start < fit) Fault($"{season.Code} is worked before it is fit");
        if (fill is not null && ground.Count > 0 && fill.Start < ground[^1].End) Fault($"{season.Code} gets water before the tractors are out");
        if (season.Stage != FieldStage.Full && sow is not null && fill is null) Fault($"{season.Code} is sown without water");
        if (sow is not null && fill is not null && sow.Start < fill.End) Fault($"{season.Code} is sown before it is full");
    }

    private void CheckTractors()
    {
        foreach (var task in Of(PlanTaskKind.Ground))
        {
            var group = state.Tractors.FirstOrDefault(t => t.Work.Contains(task.Implement!.Value));
            var rate = group?.Rate.AcresPerHour ?? 9;
            var need = TimeSpan.FromHours(state.Farm.Field(task.Field).Net.Acres / rate);
            if (Worked(task) < need - TimeSpan.FromMinutes(1)) Fault($"{task.Field} {task.Implement} has {Worked(task).TotalHours:0.00} h and needs {need.TotalHours:0.00}");
            if (group is not null && task.Resource != group.Name) Fault($"{task.Field} {task.Implement} is given to {task.Resource}");
        }

        foreach (var group in state.Tractors)
            CheckCount(Of(PlanTaskKind.Ground).Where(t => group.Work.Contains(t.Implement!.Value)).Select(t => (t.Start, t.End, 1)), group.Count, group.Name);
        if (state.Crew.Drivers is { } drivers) CheckCount(Of(PlanTaskKind.Ground).Select(t => (t.Start, t.End, 1)), drivers, "drivers");
        if (state.Crew.Irrigators is { } people)
            CheckCount(Of(PlanTaskKind.Fill).Select(t => (t.Start, t.End - Step, 1)), Math.Max(people * state.Crew.FieldsPerIrrigator, state.Fields.Count(f => f.Stage == FieldStage.Flooding)), "irrigators");
    }

    private TimeSpan Worked(PlanTask task)
    {
        var worked = TimeSpan.Zero;
        for (var day = FarmTime.Day(state, task.Start); day <= FarmTime.Day(state, task.End); day = day.AddDays(1))
        {
            var from = Later(task.Start, FarmTime.At(state, day, state.Crew.WorkFrom));
            var until = Earlier(task.End, FarmTime.At(state, day, state.Crew.WorkUntil));
            if (until > from) worked += until - from;
        }

        return worked;
    }

    /// <summary>No more than so many at once. Ground work counts over the nights it spans as well, which only makes this stricter for others.</summary>
    private void CheckCount(IEnumerable<(DateTimeOffset From, DateTimeOffset Until, int Amount)> spans, int most, string what)
    {
        var list = spans.Where(s => s.Until > s.From).ToList();
        foreach (var at in list.Select(s => s.From).Distinct().Order())
        {
            var now = list.Where(s => s.From <= at && at < s.Until).Sum(s => s.Amount);
            if (now > most) Fault($"{what}: {now} at {at:ddd HH:mm}, {most} are there");
        }
    }

    private void CheckPins()
    {
        foreach (var pin in state.Pins)
        {
            var task = plan.Tasks.FirstOrDefault(t => t.Field == pin.Field && string.Equals(t.Kind.ToString(), pin.Task, StringComparison.OrdinalIgnoreCase));
            if (task is null || (task.Start - pin.Start).Duration() > Step) Fault($"{pin.Field} {pin.Task} was pinned to {pin.Start:ddd HH:mm}");
        }
    }

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;
}
