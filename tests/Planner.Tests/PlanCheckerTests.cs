using Watersown.Planner.Checking;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>The checker itself: each kind of broken plan is seen.</summary>
public sealed class PlanCheckerTests
{
    private static readonly Lazy<SeasonPlan> Good = new(() => SeasonPlanner.Plan(
        OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value,
        new PlanOptions { Budget = TimeSpan.FromSeconds(1) }));

    public static TheoryData<string> Breaks => new(Broken.Keys.Order(StringComparer.Ordinal));

    private static readonly Dictionary<string, (Func<SeasonPlan, SeasonPlan> Break, string Says)> Broken = new(StringComparer.Ordinal)
    {
        ["sown before it is full"] = (p => Move(p, "N6", PlanTaskKind.Sow, -48), "before it is full"),
        ["flown in the night"] = (p => Move(p, "N6", PlanTaskKind.Sow, 12), "outside the service's hours"),
        ["too little time to fill"] = (p => Change(p, "N6", PlanTaskKind.Fill, t => t with { Flow = t.Flow!.Value * 0.7 }), "ac wet when the plan calls it full"),
        ["more water than there is"] = (p => Change(p, "R6", PlanTaskKind.Fill, t => t with { Flow = t.Flow!.Value * 2 }), "cfs wanted"),
        ["two on one aeroplane"] = (p => Change(p, "R4", PlanTaskKind.Sow, t => t with { Start = Sow(p, "N4").Start, End = Sow(p, "N4").End }), "hired aeroplane"),
        ["water before the tractors are out"] = (p => Move(p, "S4", PlanTaskKind.Ground, 600), "before the tractors are out"),
        ["seed drained too short"] = (p => Move(p, "N6", PlanTaskKind.Drain, 10), "drained"),
        ["order inside its notice"] = (p => p with { Orders = [.. p.Orders.Select(o => o.From == p.MadeAt ? o with { Until = o.From.AddHours(3) } : o with { From = o.From.AddHours(-24) })] }, "notice"),
        ["over the joint cap"] = (p => p with { Orders = [.. p.Orders.Select(o => o.From > p.MadeAt ? o with { Flow = FlowRate.FromCubicFeetPerSecond(16) } : o)] }, "ordered at"),
        ["a batch of another variety"] = (p => Change(p, "N4", PlanTaskKind.Sow, t => t with { Batch = "B-08" }), "for E-2"),
        ["too fast a tractor"] = (p => Change(p, "S7", PlanTaskKind.Ground, t => t with { End = t.Start.AddMinutes(30) }), "and needs"),
        ["ground work left out"] = (p => p with { Tasks = [.. p.Tasks.Where(t => t.Field != "S7" || t.Implement != GroundWork.Aqua)] }, "lacks ground work"),
    };

    [Theory]
    [MemberData(nameof(Breaks))]
    public void A_broken_plan_is_seen(string name)
    {
        Assert.Empty(PlanChecker.Faults(Good.Value));
        var (breaking, says) = Broken[name];
        Assert.Contains(PlanChecker.Faults(breaking(Good.Value)), f => f.Contains(says, StringComparison.Ordinal));
    }

    private static PlanTask Sow(SeasonPlan plan, string field) => plan.Task(field, PlanTaskKind.Sow)!;

    private static SeasonPlan Move(SeasonPlan plan, string field, PlanTaskKind kind, double hours) =>
        Change(plan, field, kind, t => t with { Start = t.Start.AddHours(hours), End = t.End.AddHours(hours) });

    private static SeasonPlan Change(SeasonPlan plan, string field, PlanTaskKind kind, Func<PlanTask, PlanTask> change) =>
        plan with { Tasks = [.. plan.Tasks.Select(t => t.Field == field && t.Kind == kind ? change(t) : t)] };
}
