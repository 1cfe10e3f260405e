using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Schedule;

namespace Watersown.Documents.Plan;

/// <summary>
/// From a saved plan back to the plan, with everything that sheets, board, texts and decisions need. The farm as it stands now
/// is laid under it: what the farm no longer has is left out and said. A plan is never searched for anew here.
/// </summary>
public static class PlanReading
{
    public static Outcome<SeasonPlan> Read(ReadOnlyMemory<byte> bytes, SeasonState state)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<SeasonPlan>.Refuse(text.Problems);
        using var document = text.Value;
        var root = document.RootElement;
        if (WrongDocument(root) is { } wrong) return Outcome<SeasonPlan>.Refuse(wrong);
        var problems = OutlineCheck.Check(root, PlanOutline.Root);
        if (problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse)) return Outcome<SeasonPlan>.Refuse(problems);
        var farm = root.GetProperty("farm").GetString()!;
        if (!string.Equals(farm, state.Farm.Name, StringComparison.Ordinal))
            return Outcome<SeasonPlan>.Refuse([.. problems, PlanProblems.OtherFarm.At("farm", ("value", farm), ("limit", state.Farm.Name))]);
        var (plan, gone) = StillThere(ReadPlan(root, state));
        return Outcome<SeasonPlan>.Of(plan, [.. problems, .. gone]);
    }

    private static Problem? WrongDocument(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty(PlanOutline.VersionKey, out var version))
            return JsonProblems.NotThisDocument.At(string.Empty, ("value", PlanOutline.VersionKey), ("meaning", "a plan document"), ("limit", "1"));
        return JsonFacts.NumberOf(version) is { } number && number > PlanDocument.Version
            ? JsonProblems.NewerVersion.At(PlanOutline.VersionKey, ("value", version.GetRawText()), ("limit", "1"))
            : null;
    }

    private static SeasonPlan ReadPlan(JsonElement root, SeasonState state)
    {
        var parts = new PlanParts(state.Offset);
        var cost = root.GetProperty("cost");
        return new SeasonPlan
        {
            Number = root.GetProperty("number").GetInt32(),
            MadeAt = parts.Moment(root, "made_at"),
            State = state,
            Tasks = PlanParts.List(root, "tasks", parts.Task),
            Orders = PlanParts.List(root, "orders", parts.Order),
            Cost = new PlanCost(PlanParts.Dollars(cost, "delay"), PlanParts.Dollars(cost, "head_age"), PlanParts.Dollars(cost, "idle_water"), PlanParts.Dollars(cost, "seed_lost"), PlanParts.Dollars(cost, "ferry"), PlanParts.Dollars(cost, "unsown")),
            Bound = PlanParts.Dollars(root, "bound"),
            SolveTime = TimeSpan.FromSeconds(root.GetProperty("solve_s").GetDouble()),
            Decisions = PlanParts.List(root, "decisions", parts.Decision),
            Conflicts = PlanParts.List(root, "conflicts", PlanParts.Conflict),
            LostBatches = PlanParts.Texts(root, "lost_batches"),
            Assumptions = PlanParts.Texts(root, "assumptions"),
        };
    }

    /// <summary>The plan without what the farm no longer has, and what that was.</summary>
    private static (SeasonPlan Plan, ImmutableArray<Problem> Gone) StillThere(SeasonPlan plan)
    {
        var state = plan.State;
        var fields = state.Farm.Fields.Select(f => f.Code).ToHashSet(StringComparer.Ordinal);
        var sources = state.Farm.Sources.Select(s => s.Code).ToHashSet(StringComparer.Ordinal);
        var batches = state.Batches.Select(b => b.Code).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Problem> gone =
        [
            .. Missing(plan.Tasks.Select(t => t.Field), fields).Select(f => PlanProblems.FieldGone.At("tasks", ("value", f))),
            .. Missing(plan.Orders.Select(o => o.Source), sources).Select(s => PlanProblems.SourceGone.At("orders", ("value", s))),
            .. Missing(plan.LostBatches, batches).Select(b => PlanProblems.BatchGone.At("lost_batches", ("value", b))),
        ];
        if (gone.IsEmpty) return (plan, gone);
        return (plan with
        {
            Tasks = [.. plan.Tasks.Where(t => fields.Contains(t.Field))],
            Orders = [.. plan.Orders.Where(o => sources.Contains(o.Source))],
            LostBatches = [.. plan.LostBatches.Where(batches.Contains)],
            Decisions = [.. plan.Decisions.Select(d => d with { Fields = [.. d.Fields.Where(fields.Contains)] })],
            Conflicts = [.. plan.Conflicts.Select(c => c with { Fields = [.. c.Fields.Where(fields.Contains)] })],
        }, gone);
    }

    private static IEnumerable<string> Missing(IEnumerable<string> named, HashSet<string> known) =>
        named.Where(n => !known.Contains(n)).Distinct(StringComparer.Ordinal);
}
