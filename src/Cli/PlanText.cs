using System.Globalization;
using System.Text;
using Watersown.Documents.Plan;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>A season plan as a grower reads it: what to decide, field by field, the water, what stands in the way.</summary>
internal static class PlanText
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Whole(SeasonPlan plan)
    {
        var text = new StringBuilder();
        Head(text, plan);
        DecisionsSoon(text, plan);
        Fields(text, plan);
        Orders(text, plan);
        Conflicts(text, plan);
        Assumptions(text, plan);
        text.Append("The pilot decides whether, how and with what load to fly; the district, the label and the office decide what is theirs.\n");
        return text.ToString();
    }

    /// <summary>Everything about one field, every figure with its working.</summary>
    public static string Field(SeasonPlan plan, string code)
    {
        var text = new StringBuilder();
        var field = plan.State.Farm.Field(code);
        text.Append(Plain, $"{field.Name} ({field.Code}), {Say.Figure(field.Net.Acres)} ac sown · plan no. {plan.Number}\n");
        foreach (var task in plan.Tasks.Where(t => t.Field == code))
        {
            text.Append(Plain, $"\n{Name(task),-12} {When.Moment(task.Start)} to {When.Moment(task.End)}  {task.Resource}\n");
            foreach (var reason in task.Reasons) text.Append(Plain, $"             {reason}\n");
            text.Append(Say.Working(task.Working, plan.MadeAt));
        }

        return text.ToString();
    }

    public static string Progress(PlanProgress progress) => string.Create(Plain,
        $"{progress.Elapsed.TotalSeconds,6:0.0} s  plan ${Say.Number((double)progress.Cost.Amount)}  no plan below ${Say.Number((double)progress.Bound.Amount)}  gap {progress.Gap.Percent:0.0} %");

    private static void Head(StringBuilder text, SeasonPlan plan)
    {
        var c = plan.Cost;
        text.Append(Plain, $"{plan.State.Farm.Name} · plan no. {plan.Number} · made {When.Moment(plan.MadeAt)} · looks to {When.Day(plan.State.Horizon)}\n");
        text.Append(Plain, $"Still to come ${Money(c.Total)}: delay {Money(c.Delay)}, heads wet too long {Money(c.HeadAge)}, idle water {Money(c.IdleWater)}, seed lost {Money(c.SeedLost)}, ferry {Money(c.Ferry)}");
        text.Append(Plain, $"{(c.Unsown.Amount > 0 ? ", unsown " + Money(c.Unsown) : string.Empty)}.\n");
        text.Append(plan.Bound.Amount > 0
            ? string.Create(Plain, $"No plan under the same rules can cost less than ${Money(plan.Bound)}: this one is within {plan.Gap.Percent:0.0} % of the best.")
            : "How far it is from the best is not proved yet: search longer (--seconds).");
        text.Append(Plain, $" Found in {plan.SolveTime.TotalSeconds:0.0} s.\n");
    }

    private static void DecisionsSoon(StringBuilder text, SeasonPlan plan)
    {
        var soon = plan.MadeAt.AddHours(48);
        text.Append("\nDECIDE OR SAY, by the last safe moment\n");
        foreach (var d in plan.Decisions.Where(d => d.By <= soon))
            text.Append(Plain, $"  {When.Moment(d.By)}  {d.What}\n{new string(' ', 20)}to: {d.Who}. Waiting: {d.CostOfWaiting}.\n");
        var later = plan.Decisions.Count(d => d.By > soon);
        if (later > 0) text.Append(Plain, $"  and {later} later ones (--all shows them)\n");
    }

    /// <summary>Every decision of the plan.</summary>
    public static string AllDecisions(SeasonPlan plan)
    {
        var text = new StringBuilder("\nALL DECISIONS\n");
        foreach (var d in plan.Decisions) text.Append(Plain, $"  {When.Moment(d.By)}  {d.Kind,-12} {d.What}\n");
        return text.ToString();
    }

    private static void Fields(StringBuilder text, SeasonPlan plan)
    {
        var width = plan.State.Farm.Fields.Max(f => f.Name.Length);
        text.Append(Plain, $"\nFIELDS, in the order they are sown\n  {"",-4} {"name".PadRight(width)} {"ac",5}  {"ground done",-17} {"water on",-17} {"full",-17} {"in soak",-17} {"sown",-17} {"h",4} {"loads",5} {"lb dry",7} {"lb wet",7}  why then\n");
        var unsown = plan.State.Fields.Where(f => f.Stage != FieldStage.Sown).OrderBy(f => plan.Task(f.Code, PlanTaskKind.Sow)?.Start ?? DateTimeOffset.MaxValue);
        foreach (var season in unsown) FieldLine(text, plan, season, width);
        var sown = plan.State.Fields.Where(f => f.Stage == FieldStage.Sown).Select(f => f.Code).ToList();
        if (sown.Count > 0) text.Append(Plain, $"  sown already: {string.Join(", ", sown)}\n");
    }

    private static void FieldLine(StringBuilder text, SeasonPlan plan, FieldSeason season, int width)
    {
        var field = plan.State.Farm.Field(season.Code);
        var fill = plan.Task(season.Code, PlanTaskKind.Fill);
        var sow = plan.Task(season.Code, PlanTaskKind.Sow);
        var ground = plan.Tasks.LastOrDefault(t => t.Field == season.Code && t.Kind == PlanTaskKind.Ground);
        var full = season.Stage == FieldStage.Full ? "is full" : At(fill?.End);
        text.Append(Plain, $"  {season.Code,-4} {field.Name.PadRight(width)} {Say.Number(field.Net.Acres),5}  {(ground is null ? "done" : At(ground.End)),-17} {At(fill?.Start ?? season.FirstWater),-17} {full,-17} {At(plan.Task(season.Code, PlanTaskKind.Soak)?.Start),-17} ");
        if (sow is null)
        {
            text.Append("not in this plan: see below\n");
            return;
        }

        text.Append(Plain, $"{At(sow.Start),-17} {(sow.End - sow.Start).TotalHours,4:0.0} {sow.Loads,5} {Say.Number(sow.Dry!.Value.Pounds),7} {Say.Number(sow.Soaked!.Value.Pounds),7}  {string.Join("; ", sow.Reasons)}\n");
    }

    private static void Orders(StringBuilder text, SeasonPlan plan)
    {
        if (plan.Orders.IsEmpty) return;
        text.Append("\nWATER ORDERED, cfs (change hours and notice kept)\n");
        foreach (var source in plan.Orders.GroupBy(o => o.Source, StringComparer.Ordinal))
        {
            var steps = source.Select((o, i) => (i == 0 ? string.Empty : "from " + When.Moment(o.From) + " ") + Say.Figure(o.Flow.CubicFeetPerSecond));
            text.Append(Plain, $"  {source.Key,-6} {string.Join(", ", steps)}\n");
        }
    }

    private static void Conflicts(StringBuilder text, SeasonPlan plan)
    {
        if (plan.Conflicts.IsEmpty) return;
        text.Append("\nSTANDS IN THE WAY\n");
        foreach (var c in plan.Conflicts) text.Append(Plain, $"  - {c.What}\n    {c.Remedy}\n");
    }

    private static void Assumptions(StringBuilder text, SeasonPlan plan)
    {
        if (plan.Assumptions.IsEmpty) return;
        text.Append("\nNOT KNOWN, taken as usual (say what is true and the plan sharpens)\n");
        foreach (var a in plan.Assumptions) text.Append(Plain, $"  - {a}\n");
        text.Append('\n');
    }

    private static string At(DateTimeOffset? moment) => moment is { } m ? When.Moment(m) : "-";

    private static string Money(Quantities.Money money) => Say.Number((double)money.Amount);

    private static string Name(PlanTask task) => task.Implement is { } work ? PlanDocument.Name(work) : TaskWords.Of(task.Kind);
}
