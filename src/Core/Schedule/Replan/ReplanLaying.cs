using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>
/// Lays a way through the coming mornings on the plan in force: what the plan will say once its steps are pinned. It is for
/// showing and for telling people; the plan itself follows from the pins.
/// </summary>
public static class ReplanLaying
{
    /// <summary>The plan with the seed and sowing of the weighed fields as chosen, all else left as it is.</summary>
    [Source(nameof(Sources.FarmRecord), "the plan in force, with the steps of the choice")]
    public static SeasonPlan On(SeasonPlan plan, MorningReplan replan, ReplanPlan choice)
    {
        var weighed = Codes(replan);
        var kept = plan.Tasks.Where(t => !weighed.Contains(t.Field) || t.Kind is PlanTaskKind.Ground or PlanTaskKind.OrderWater or PlanTaskKind.Fill);
        return plan with
        {
            State = replan.Case.State,
            Tasks = [.. kept.Concat(Steps(replan, choice)).OrderBy(t => t.Start).ThenBy(t => t.Field, StringComparer.Ordinal).ThenBy(t => t.Kind)],
            LostBatches = Lost(replan),
            Decisions = [.. plan.Decisions.Where(d => !d.Fields.Any(weighed.Contains))],
        };
    }

    /// <summary>The same with nothing in it but the weighed fields: what is to be told of this choice alone.</summary>
    [Source(nameof(Sources.FarmRecord), "the steps of the choice alone")]
    public static SeasonPlan Alone(SeasonPlan plan, MorningReplan replan, ReplanPlan choice) =>
        plan with { State = replan.Case.State, Tasks = Steps(replan, choice), LostBatches = Lost(replan), Decisions = [], Orders = [] };

    /// <summary>What a person pins by choosing: when each field is sown, and from which soak.</summary>
    public static ImmutableArray<(string Field, PlanTaskKind Task, DateTimeOffset Start)> Pins(ReplanPlan choice)
    {
        var pins = ImmutableArray.CreateBuilder<(string, PlanTaskKind, DateTimeOffset)>();
        foreach (var sowing in choice.Sowings)
        {
            if (sowing.Start is not { } start) continue;
            pins.Add((sowing.Field.Code, PlanTaskKind.Soak, sowing.Batch?.InSoak ?? sowing.Soak!.Value));
            pins.Add((sowing.Field.Code, PlanTaskKind.Sow, start));
        }

        return pins.ToImmutable();
    }

    /// <summary>Every step of a choice is pinned as it stands.</summary>
    public static bool IsChosen(SeasonState state, ReplanPlan choice)
    {
        var pins = Pins(choice);
        return !pins.IsEmpty && pins.All(p => state.Pins.Any(s => s.Field == p.Field && s.Task == TaskWords.Of(p.Task) && s.Start == p.Start));
    }

    private static ImmutableArray<string> Lost(MorningReplan replan) => [.. replan.Case.Batches.Where(b => b.Use == BatchUse.Past).Select(b => b.Batch.Code)];

    private static HashSet<string> Codes(MorningReplan replan) => replan.Case.Fields.Select(f => f.Code).ToHashSet(StringComparer.Ordinal);

    private static ImmutableArray<PlanTask> Steps(MorningReplan replan, ReplanPlan choice) =>
        [.. choice.Sowings.Where(s => !s.IsLater).SelectMany(s => Chain(replan.Case.State, s)).OrderBy(t => t.Start).ThenBy(t => t.Field, StringComparer.Ordinal).ThenBy(t => t.Kind)];

    private static IEnumerable<PlanTask> Chain(SeasonState state, PlannedSowing sowing)
    {
        var rules = state.SoakRules;
        var (into, start) = (sowing.Batch?.InSoak ?? sowing.Soak!.Value, sowing.Start!.Value);
        var drain = sowing.Drain ?? into + rules.SoakLeast;
        var trailers = SeedClock.Trailers(sowing.Dry, state.WetFactor, rules.HaulLimit);
        PlanTask Step(PlanTaskKind kind, DateTimeOffset from, DateTimeOffset until, string resource) => new(sowing.Field.Code, kind, from, until, resource)
        {
            Batch = sowing.Batch?.Code ?? "new " + sowing.Field.Code,
            Dry = sowing.Dry,
            Soaked = Soaking.Weigh(sowing.Dry, state.WetFactor),
            Trailers = trailers,
            Fixed = from <= state.Now,
        };

        if (into > state.Now)
        {
            var by = FarmTime.At(state, FarmTime.Day(state, into), rules.CallsUntil);
            yield return Step(PlanTaskKind.CallSeed, by < into ? by : into, by, rules.Name);
        }

        yield return Step(PlanTaskKind.Soak, into, drain, rules.Name);
        yield return Step(PlanTaskKind.Drain, drain, drain + rules.Drain, rules.Name);
        var atStrip = start - SoakPlace.AtStripBefore;
        yield return Step(PlanTaskKind.Haul, atStrip - rules.Haul, atStrip, "trailer");
        var plane = state.Aeroplanes.FirstOrDefault(a => a.Name == sowing.Aeroplane) ?? new Flight.Aeroplane(sowing.Aeroplane);
        var loads = Flight.Loads.Equal(sowing.Dry, state.WetFactor, plane.WorkingLoad).Count;
        yield return Step(PlanTaskKind.Sow, start, sowing.End!.Value, sowing.Aeroplane) with
        {
            Fixed = false,
            Loads = loads,
            Working = Flight.FlyingTime.Working(FieldFlight.Job(state, sowing.Field.Land, loads, plane) with { Net = sowing.Land }, plane),
        };
    }
}
