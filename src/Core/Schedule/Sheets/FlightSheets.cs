using Watersown.Flight;
using Watersown.Land;
using Watersown.Seed;

namespace Watersown.Schedule.Sheets;

/// <summary>The flights of a plan, each with everything its pilot and loader must know.</summary>
public static class FlightSheets
{
    /// <summary>One sheet for each flight still to come, in the plan's order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wanted">Flights that are asked for; all where not told. A sheet is long to make.</param>
    [Source(nameof(Sources.Arithmetic), "loads and flying time of the flight's own seed and land")]
    public static ImmutableArray<FlightSheet> Of(SeasonPlan plan, Func<PlanTask, bool>? wanted = null)
    {
        var flights = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && !t.Fixed).ToImmutableArray();
        return [.. flights.Where(wanted ?? (_ => true)).Select(t => Of(plan, t, PartOf(flights, t)))];
    }

    private static (int Number, int Of) PartOf(ImmutableArray<PlanTask> flights, PlanTask task)
    {
        var same = flights.Where(t => t.Field == task.Field).ToImmutableArray();
        return (same.IndexOf(task) + 1, same.Length);
    }

    private static FlightSheet Of(SeasonPlan plan, PlanTask task, (int Number, int Of) part)
    {
        var state = plan.State;
        var field = state.Farm.Field(task.Field);
        var season = state.Season(task.Field);
        var aeroplane = state.Aeroplanes.FirstOrDefault(a => a.Name == task.Resource) ?? state.Aeroplanes.FirstOrDefault();
        var plane = aeroplane ?? new Aeroplane(task.Resource);
        var batch = SeedTimes.BatchOf(plan, task);
        var lot = LotOf(state, season, batch);
        var dry = task.Dry ?? season.Rate * field.Net;
        var (factor, basis) = Factor(state, batch, lot);
        var loads = Loads.Equal(dry, factor, plane.WorkingLoad);
        var land = LandOf(field, season, dry, part);
        var job = FieldFlight.Job(state, field, loads.Count, plane) with { Net = land };
        var place = FieldPlace.Of(state, field, plane);
        return new FlightSheet
        {
            Field = field,
            From = task.Start,
            Until = task.End,
            Part = part,
            Land = land,
            DryRate = season.Rate,
            WetRate = Soaking.Rate(season.Rate, factor),
            WetFactor = factor,
            FactorBasis = basis,
            Seed = new FlightSeed(batch?.Variety ?? season.Variety, lot?.Code ?? batch?.Lot, batch?.Code)
            {
                Trailers = batch?.Trailers ?? [],
                TrailerCount = HaulOf(plan, task)?.Trailers ?? task.Trailers,
                UseBy = SeedTimes.UseBy(plan, task.Field, task.Batch, batch),
            },
            Dry = dry,
            Soaked = Soaking.Weigh(dry, factor),
            Loads = loads,
            FlyingTime = FlyingTime.Of(job, plane),
            Aeroplane = plane,
            AeroplaneKnown = aeroplane is not null,
            Strip = place.Strip?.Name,
            Distance = field.Ferry ?? place.Distance,
            Direction = place.Direction,
            Depth = season.Depth,
            FullSince = season.FullSince,
            FullBy = season.FullSince is null ? plan.Task(task.Field, PlanTaskKind.Fill)?.End : null,
            WaterAsOf = season.AsOf,
            Map = FieldMaps.Of(field, plane, place),
            Hazards = place.Hazards,
            HazardsElsewhere = place.HazardsElsewhere,
            Neighbors = place.Neighbors,
            Working = Weights(season, field, dry, factor, loads, plane).Then(FlyingTime.Working(job, plane)),
        };
    }

    private static PlanTask? HaulOf(SeasonPlan plan, PlanTask flight) =>
        plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Haul && t.Field == flight.Field && t.Batch == flight.Batch);

    private static SeedLot? LotOf(SeasonState state, FieldSeason season, SoakBatch? batch)
    {
        if (batch is not null) return state.Lots.FirstOrDefault(l => l.Code == batch.Lot);
        var fitting = state.Lots.Where(l => l.Variety == season.Variety).ToImmutableArray();
        return fitting.Length == 1 ? fitting[0] : null;
    }

    /// <summary>The best factor at hand: this batch on the scale, then this lot, then the farm's usual.</summary>
    internal static (double Factor, WetFactorBasis Basis) Factor(SeasonState state, SoakBatch? batch, SeedLot? lot)
    {
        if (batch is { Weighed: { } weighed, Dry.Kilograms: > 0 }) return (weighed.Kilograms / batch.Dry.Kilograms, WetFactorBasis.ScaleTicket);
        return lot?.WetFactor is { } own ? (own, WetFactorBasis.Lot) : (state.WetFactor, WetFactorBasis.Farm);
    }

    // A field sown in one flight is sown whole, whatever its seed weighs; parts share it by their seed.
    private static Area LandOf(Field field, FieldSeason season, DrySeed dry, (int Number, int Of) part) =>
        part.Of == 1 ? field.Net : field.Net * Math.Min(1, dry / (season.Rate * field.Net));

    private static Working Weights(FieldSeason season, Field field, DrySeed dry, double factor, LoadPlan loads, Aeroplane plane) =>
        Working.Empty
            .Given("A", "net acres", field.Net.Acres, "ac", "field " + field.Code)
            .Given("r", "dry rate", season.Rate.PoundsPerAcre, "lb/ac dry", "field " + field.Code)
            .Given("D", "dry seed of the flight", dry.Pounds, "lb dry", "plan")
            .Given("F", "soaked weight over dry weight", factor, string.Empty, "seed")
            .Given("H", "working load", plane.WorkingLoad.Pounds, "lb wet", "flying service")
            .Step("W", "soaked seed", Soaking.Weigh(dry, factor).Pounds, "lb wet", "D × F", Sources.MassBalance)
            .Step("n", "loads", loads.Count, string.Empty, "ceil(W / H)", Sources.Arithmetic)
            .Step("w", "each load", loads.Each.Pounds, "lb wet", "W / n", Sources.Arithmetic);
}
