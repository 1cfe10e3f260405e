namespace Watersown.Schedule.Replan;

/// <summary>Writes a found plan out in the grower's terms.</summary>
internal static class ReplanWriter
{
    public static ReplanPlan Write(Weighing weighing, Weights weights, ImmutableArray<SowingWay> ways)
    {
        var sowings = ImmutableArray.CreateBuilder<PlannedSowing>();
        for (var m = 0; m < weighing.Case.Mornings.Length; m++)
        {
            var morning = weighing.Case.Mornings[m];
            var places = AirOrder.Fit(weighing, morning, weighing.Jobs(ways, m)) ?? throw new System.Diagnostics.UnreachableException();
            sowings.AddRange(places.Select(p => Sowing(weighing, ways, p, morning)));
        }

        sowings.AddRange(Enumerable.Range(0, ways.Length).Where(i => ways[i].Morning < 0).Select(i => new PlannedSowing(weighing.Case.Fields[i], weighing.Case.Later)));
        return new ReplanPlan
        {
            Sowings = sowings.ToImmutable(),
            Batches = [.. Enumerable.Range(0, weighing.Live.Length).Select(b => Fate(weighing, ways, b))],
            Calls = Calls(weighing.Case, sowings),
            SeedCost = StandingBatches.Cost(weighing.Case.State, Weighing.Dry(weights.Lost)),
            AcreDays = Weighing.Acres(weights.AcreDays),
            WaterAge = Weighing.Acres(weights.WaterAge),
        };
    }

    /// <summary>The calls for seed that some sowings ask for, one for each day of soak.</summary>
    internal static ImmutableArray<SoakCall> Calls(ReplanCase from, IEnumerable<PlannedSowing> sowings) =>
    [
        .. sowings.Where(s => s.Soak is not null).GroupBy(s => s.Soak!.Value).OrderBy(g => g.Key)
            .Select(g => new SoakCall(FarmTime.At(from.State, FarmTime.Day(from.State, g.Key), from.State.SoakRules.CallsUntil), g.Key, [.. g.Select(s => (s.Field, s.Dry))])),
    ];

    private static PlannedSowing Sowing(Weighing weighing, ImmutableArray<SowingWay> ways, AirPlace place, OpenMorning morning)
    {
        var way = ways[place.Field];
        var batch = way.Batch < 0 ? null : weighing.Live[way.Batch].Batch;
        var rules = weighing.Case.State.SoakRules;
        var field = weighing.Case.Fields[place.Field];
        var plane = morning.Spans.First(s => s.Aeroplane.Name == place.Aeroplane).Aeroplane;
        return new PlannedSowing(field, morning.Day)
        {
            InAir = Weighing.Air(weighing.Case.State, field, field.Needed, field.Land.Net, plane),
            Start = place.Start,
            End = place.End,
            Aeroplane = place.Aeroplane,
            Batch = batch,
            Soak = way.Soak,
            Drain = batch is null ? way.Soak + rules.SoakLeast : DrainOf(weighing, ways, way.Batch),
        };
    }

    private static DateTimeOffset? DrainOf(Weighing weighing, ImmutableArray<SowingWay> ways, int batch) =>
        StandingBatches.DrainFor(weighing.Case.State, weighing.Live[batch].Batch, weighing.Case.Mornings[Weighing.FirstMorning(ways, batch)]);

    private static BatchFate Fate(Weighing weighing, ImmutableArray<SowingWay> ways, int index)
    {
        var (standing, rules) = (weighing.Live[index], weighing.Case.State.SoakRules);
        var used = Enumerable.Range(0, ways.Length).Where(i => ways[i].Batch == index).Sum(i => weighing.Needs[i]);
        var left = Math.Max(0, weighing.Pounds[index] - used);
        if (used == 0) return new BatchFate(standing.Batch, DrySeed.Zero, standing.Due ? DrySeed.Zero : Weighing.Dry(left)) { CalledOff = standing.Due };
        var drain = standing.Batch.Drained is null ? DrainOf(weighing, ways, index) : null;
        return new BatchFate(standing.Batch, Weighing.Dry(used), standing.Due ? DrySeed.Zero : Weighing.Dry(left))
        {
            Drain = drain,
            UnderWater = drain - standing.Batch.InSoak,
            OverUsual = drain - standing.Batch.InSoak > rules.SoakMost,
        };
    }
}
