using Watersown.Seed;

namespace Watersown.Schedule.Sheets;

/// <summary>What the seed warehouse must know, gathered from a plan.</summary>
public static class SeedSheets
{
    /// <summary>How many days ahead a seed sheet looks: a day of soak, a day of drain, and the day of sowing.</summary>
    [Source(nameof(Sources.FarmDefault), "three days")]
    public const int DaysAhead = 3;

    /// <summary>The seed sheet of a day.</summary>
    public static SeedSheet Of(SeasonPlan plan, DateOnly day)
    {
        var state = plan.State;
        var from = FarmTime.Midnight(state, day);
        var jobs = All(plan).Where(j => !IsOver(j, from) && j.InSoak < from.AddDays(DaysAhead)).ToImmutableArray();
        return new SeedSheet
        {
            Day = day,
            Place = state.SoakPlace?.Name ?? string.Empty,
            Strip = state.Farm.Strips.FirstOrDefault()?.Name,
            WetFactor = state.WetFactor,
            Jobs = jobs,
            Lost = [.. state.Batches.Where(b => plan.LostBatches.Contains(b.Code, StringComparer.Ordinal))],
        };
    }

    /// <summary>Every batch of the plan still to be handled, in order of going under water.</summary>
    [Source(nameof(Sources.MassBalance), "wet weight from the best factor at hand")]
    public static ImmutableArray<SeedJob> All(SeasonPlan plan)
    {
        // Seed of one batch for several fields is one soak; seed with no batch yet is a job of its own for each flight.
        var flights = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && !t.Fixed).ToList();
        var called = flights.Where(t => SeedTimes.BatchOf(plan, t) is not null).GroupBy(t => t.Batch!, StringComparer.Ordinal).Select(g => Job(plan, [.. g]));
        var open = flights.Where(t => SeedTimes.BatchOf(plan, t) is null).Select(t => Job(plan, [t]));
        return [.. called.Concat(open).OfType<SeedJob>().OrderBy(j => j.InSoak).ThenBy(j => j.Batch ?? j.Fields[0], StringComparer.Ordinal)];
    }

    private static bool IsOver(SeedJob job, DateTimeOffset moment) => (job.AtStrip ?? job.Drain) < moment;

    private static SeedJob? Job(SeasonPlan plan, ImmutableArray<PlanTask> flights)
    {
        var (state, first) = (plan.State, flights[0]);
        var batch = SeedTimes.BatchOf(plan, first);
        PlanTask? soak = Step(plan, first, PlanTaskKind.Soak), drain = Step(plan, first, PlanTaskKind.Drain), haul = Step(plan, first, PlanTaskKind.Haul);
        if ((batch?.InSoak ?? soak?.Start) is not { } inSoak || (batch?.Drained ?? drain?.Start ?? soak?.End) is not { } drained) return null;
        var season = state.Season(first.Field);
        var lots = state.Lots.Where(l => l.Variety == season.Variety).ToImmutableArray();
        var lot = batch is not null ? state.Lots.FirstOrDefault(l => l.Code == batch.Lot) : lots.Length == 1 ? lots[0] : null;
        var dry = batch?.Dry ?? flights.Aggregate(DrySeed.Zero, (sum, t) => sum + (t.Dry ?? DrySeed.Zero));
        var under = batch is not null && batch.InSoak <= state.Now;
        return new SeedJob(batch?.Code, batch?.Variety ?? season.Variety, batch?.Lot ?? lot?.Code, dry, batch?.Weighed ?? Soaking.Weigh(dry, FlightSheets.Factor(state, batch, lot).Factor))
        {
            Weighed = batch?.Weighed is not null,
            Fields = [.. flights.Select(t => t.Field).Distinct(StringComparer.Ordinal)],
            Trailers = batch?.Trailers ?? [],
            TrailerCount = flights.Select(t => Step(plan, t, PlanTaskKind.Haul)?.Trailers ?? t.Trailers).Where(n => n is not null).Sum() is { } n and > 0 ? n : null,
            InSoak = inSoak,
            Soaking = under,
            CallBy = under ? null : CallBy(plan, first, inSoak),
            Drain = drained,
            Drained = batch?.Drained is { } off && off <= state.Now,
            Leaves = haul?.Start,
            AtStrip = haul?.End ?? first.Start,
            UseBy = SeedTimes.UseBy(plan, first.Field, first.Batch, batch),
        };
    }

    private static PlanTask? Step(SeasonPlan plan, PlanTask flight, PlanTaskKind kind) => plan.Tasks
        .Where(t => t.Kind == kind && t.Field == flight.Field && t.Batch == flight.Batch && t.Start <= flight.Start)
        .MaxBy(t => t.Start);

    // As decided in the plan; otherwise the warehouse's own hour on the day of the soak, or the soak itself.
    private static DateTimeOffset CallBy(SeasonPlan plan, PlanTask flight, DateTimeOffset inSoak)
    {
        var decided = plan.Decisions.Where(d => d.Kind is "call-soak" or "put-in-soak" && d.Fields.Contains(flight.Field, StringComparer.Ordinal) && d.By <= inSoak).Select(d => (DateTimeOffset?)d.By).Max();
        if (decided is { } by) return by;
        if (plan.State.SoakPlace is not { } place) return inSoak;
        var hour = FarmTime.At(plan.State, FarmTime.Day(plan.State, inSoak), place.CallsUntil);
        return hour < inSoak ? hour : inSoak;
    }
}
