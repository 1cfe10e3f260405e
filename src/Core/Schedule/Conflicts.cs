using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>What stands in the way and by how much, said as a grower would say it.</summary>
public static partial class Conflicts
{
    /// <summary>The conflicts of a plan: water that cannot be held, seed that is short or lost, dates missed, heads wet too long.</summary>
    [Source(nameof(Sources.Arithmetic))]
    public static ImmutableArray<Conflict> Of(SeasonPlan plan) =>
        [.. Pins(plan), .. Holding(plan.State), .. Surplus(plan), .. LostSeed(plan), .. ShortSeed(plan), .. Late(plan), .. OldHeads(plan), .. WaitingAqua(plan), .. OverSoaked(plan)];

    private static IEnumerable<Conflict> LostSeed(SeasonPlan plan)
    {
        if (plan.LostBatches.IsEmpty) yield break;
        var batches = plan.State.Batches.Where(b => plan.LostBatches.Contains(b.Code, StringComparer.Ordinal)).ToImmutableArray();
        var pounds = batches.Sum(b => b.Dry.Pounds);
        var money = plan.State.Prices.SoakedSeed * pounds;
        yield return new Conflict([.. batches.SelectMany(b => b.MeantFor).Distinct(StringComparer.Ordinal)],
            $"Soaked seed is lost: {string.Join(", ", batches.Select(b => b.Code))}, {Say.Number(pounds)} lb dry, ${Say.Number((double)money.Amount)}. No slot comes inside its window.",
            "Soak anew for these fields; ask the supplier what may still be done with the old seed.")
        { Kind = "seed" };
    }

    private static IEnumerable<Conflict> ShortSeed(SeasonPlan plan)
    {
        foreach (var lots in plan.State.Lots.Where(l => l.InHand is not null).GroupBy(l => l.Variety, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var have = lots.Sum(l => l.InHand!.Value.Pounds);
            var users = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Soak && !t.Fixed && plan.State.Batches.All(b => b.Code != t.Batch) && plan.State.Season(t.Field).Variety == lots.Key).ToImmutableArray();
            var need = users.Sum(t => t.Dry!.Value.Pounds);
            if (need <= have) continue;
            yield return new Conflict([.. users.Select(t => t.Field)],
                $"Seed of {lots.Key} is short: {Say.Number(need)} lb dry still to be soaked, {Say.Number(have)} lb in hand, {Say.Number(need - have)} lb missing.",
                "Ring the supplier today, sow at a lower rate, or change variety on the last field.")
            {
                Kind = "seed",
                Working = Working.Empty.Given("N", "still to be soaked", need, "lb dry", "plan").Given("H", "in hand", have, "lb dry", "lots").Step("M", "missing", need - have, "lb dry", "N - H", Sources.Arithmetic),
            };
        }
    }

    private static IEnumerable<Conflict> Late(SeasonPlan plan)
    {
        if (plan.State.Farm.FinalPlanting is not { } last) yield break;
        foreach (var sow in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && FarmTime.Day(plan.State, t.Start) > last))
        {
            var day = FarmTime.Day(plan.State, sow.Start);
            yield return new Conflict([sow.Field],
                $"{Name(plan, sow.Field)} is sown {When.Day(day)}, {Say.Number(day.DayNumber - last.DayNumber)} d after the final planting date you gave ({When.Day(last)}).",
                "Ring your insurance agent before that date and before you give up the field; keep dates and photographs of what held it up.")
            { Kind = "date" };
        }
    }

    private static IEnumerable<Conflict> OldHeads(SeasonPlan plan)
    {
        foreach (var sow in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow))
        {
            var first = plan.Task(sow.Field, PlanTaskKind.Fill)?.Start ?? plan.State.Season(sow.Field).FirstWater;
            if (first is not { } wet || sow.Start - wet <= plan.State.Prices.HeadAgeFree) continue;
            yield return new Conflict([sow.Field],
                $"{Name(plan, sow.Field)}: the head check has been wet {Say.Number((sow.Start - wet).TotalDays, 1)} d when it is sown, over {Say.Number(plan.State.Prices.HeadAgeFree.TotalDays)}: shrimp and midge are ahead of the rice.",
                "Scout the head check before sowing; a faster fill or a later start of water shortens it.")
            { Kind = "water" };
        }
    }

    private static IEnumerable<Conflict> WaitingAqua(SeasonPlan plan)
    {
        foreach (var fill in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Fill && !t.Fixed))
        {
            var planned = plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Ground && t.Field == fill.Field && t.Implement == GroundWork.Aqua);
            var on = planned?.End ?? (plan.State.Season(fill.Field).AquaOn is { } day ? FarmTime.At(plan.State, day, new TimeOnly(12, 0)) : null);
            if (on is not { } since || fill.Start - since <= TimeSpan.FromDays(10)) continue;
            yield return new Conflict([fill.Field],
                $"{Name(plan, fill.Field)}: aqua waits {Say.Number((fill.Start - since).TotalDays, 0)} d in the ground before water, over 10.",
                planned is null ? "Give it water sooner if its nitrogen is to be kept." : "Put the aqua on later, just ahead of the water.")
            { Kind = "ground" };
        }
    }

    private static IEnumerable<Conflict> OverSoaked(SeasonPlan plan)
    {
        var most = plan.State.SoakRules.SoakMost;
        foreach (var soak in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Soak && t.End - t.Start > most + TimeSpan.FromHours(1)))
        {
            yield return new Conflict([soak.Field],
                FormattableString.Invariant($"Batch {soak.Batch} for {Name(plan, soak.Field)} would be {(soak.End - soak.Start).TotalHours:0.#} h under water, over the usual {most.TotalHours:0}."),
                "Look at the sprout before it is drained.")
            { Kind = "seed" };
        }
    }

    private static string Name(SeasonPlan plan, string code) => $"{plan.State.Farm.Field(code).Name} ({code})";
}
