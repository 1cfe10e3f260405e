using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

/// <summary>
/// Makes a whole plan from a list of choices in one go: ground, water, seed and aeroplane each take the first place that
/// fits. Always keeps every rule, so its plan is a valid one; how good it is depends on the choices.
/// </summary>
internal sealed partial class Decoder
{
    private readonly Instance instance;
    private readonly StepProfile[] groups;
    private readonly StepProfile drivers = new();
    private readonly StepProfile fillings = new();
    private readonly StepProfile[] flows;
    private readonly StepProfile[] planes;
    private readonly StepProfile trailers = new();
    private readonly StepProfile[] pads;
    private readonly FieldSolution?[] made;
    private readonly int[][] limitsOf;
    private readonly int[] limitMost;
    private readonly int[][] given;
    private int tailwaterFrom;

    public Decoder(Instance instance)
    {
        this.instance = instance;
        groups = [.. instance.Groups.Select(_ => new StepProfile())];
        flows = [.. instance.Limits.Select(_ => new StepProfile())];
        planes = [.. instance.Planes.Select(_ => new StepProfile())];
        pads = [.. instance.Strips.Select(_ => new StepProfile())];
        made = new FieldSolution?[instance.Fields.Length];
        limitsOf = [.. instance.Fields.Select(f => Enumerable.Range(0, instance.Limits.Length).Where(l => instance.Limits[l].Classes.Contains(f.Class)).ToArray())];
        limitMost = [.. instance.Limits.Select(l => l.Most(instance))];
        given = [.. instance.Sources.Select(s => new int[s.Stretches.Length])];
    }

    public Solution Decode(Genes genes)
    {
        Clear();
        TakeWhatIsThere(genes);
        foreach (var index in genes.Order.Where(i => instance.Fields[i].Need != WaterNeed.ToStart)) PlanWater(instance.Fields[index], genes, groundDone: 0, []);
        foreach (var index in genes.Order.Where(i => instance.Fields[i].Need == WaterNeed.ToStart)) PlanGroundAndWater(instance.Fields[index], genes);
        PlanSeedAndAir();
        return new Solution([.. made.Select(m => m!)], OrderBook.Of(instance, [.. made.Select(m => m!)]));
    }

    private void Clear()
    {
        foreach (var profile in (IEnumerable<StepProfile>)[.. groups, .. flows, .. planes, .. pads, drivers, fillings, trailers]) profile.Clear();
        Array.Clear(made);
        tailwaterFrom = instance.Sources.Any(s => s.Needs is { AcresMissing: > 0 }) ? instance.Clock.Horizon : 0;
    }

    private void TakeWhatIsThere(Genes genes)
    {
        for (var s = 0; s < given.Length; s++) Give(s, genes);
        for (var l = 0; l < instance.Limits.Length; l++)
        {
            foreach (var c in instance.Limits[l].Classes) flows[l].Take(0, instance.Clock.Horizon, instance.Classes[c].BaseHold);
            foreach (var s in instance.Limits[l].Sources) TakeUnordered(flows[l], s);
        }

        foreach (var batch in instance.Batches.Where(b => !b.CanBeCalledOff)) trailers.Take(0, instance.Soak.Return, batch.Trailers);
    }

    /// <summary>What a source is counted on for: its running order until it can be changed, then its part of a joint cap, and never more than it can give.</summary>
    private void Give(int source, Genes genes)
    {
        var item = instance.Sources[source];
        var share = item.Cap;
        for (var j = 0; j < instance.JointCaps.Length; j++)
        {
            var place = instance.JointCaps[j].Sources.IndexOf(source);
            if (place >= 0) share = Math.Min(share, (int)(instance.JointCaps[j].Cap * genes.Splits[j][place]) / item.Step * item.Step);
        }

        for (var k = 0; k < item.Stretches.Length; k++)
        {
            var stretch = item.Stretches[k];
            given[source][k] = stretch.Period >= 0 && item.Periods[stretch.Period].FixedFlow is not null ? item.FixedMost(stretch) : Math.Min(stretch.Most, share);
        }
    }

    /// <summary>What a source cannot or will not give; of tailwater that is not there yet, nothing comes at all.</summary>
    private void TakeUnordered(StepProfile flow, int source)
    {
        var item = instance.Sources[source];
        for (var k = 0; k < item.Stretches.Length; k++) flow.Take(item.Stretches[k].From, item.Stretches[k].Until, item.Cap - given[source][k]);
        if (item.Needs is { AcresMissing: > 0 }) TakeTailwater(flow, source, 0, tailwaterFrom, comes: false);
    }

    private void TakeTailwater(StepProfile flow, int source, int from, int until, bool comes)
    {
        var stretches = instance.Sources[source].Stretches;
        for (var k = 0; k < stretches.Length; k++)
            flow.Take(Math.Max(from, stretches[k].From), Math.Min(until, stretches[k].Until), comes ? -given[source][k] : given[source][k]);
    }

    private void PlanGroundAndWater(FieldItem field, Genes genes)
    {
        var workStarts = ImmutableArray.CreateBuilder<int>(field.Works.Length);
        var ready = field.FitAxis;
        foreach (var item in field.Works)
        {
            var start = FirstWork(item, ready);
            if (start + item.Steps > instance.Work.Length)
            {
                Unplanned(field);
                return;
            }

            workStarts.Add(start);
            ready = start + item.Steps;
        }

        PlanWater(field, genes, field.Works.IsEmpty ? 0 : instance.Work.End(ready), workStarts.ToImmutable());
    }

    private int FirstWork(WorkItem item, int ready)
    {
        var start = ready;
        for (var tries = 0; tries < 1000; tries++)
        {
            var group = item.Group < 0 ? start : groups[item.Group].FirstFit(start, item.Steps, 1, instance.Groups[item.Group].Count);
            if (group == int.MaxValue) return int.MaxValue / 2;
            var driver = instance.Drivers is { } most ? drivers.FirstFit(group, item.Steps, 1, most) : group;
            if (driver == group) return group;
            if (driver == int.MaxValue) return int.MaxValue / 2;
            start = driver;
        }

        return int.MaxValue / 2;
    }

    private void PlanWater(FieldItem field, Genes genes, int groundDone, ImmutableArray<int> works)
    {
        if (field.Impossible is not null && field.Need != WaterNeed.None)
        {
            Unplanned(field);
            return;
        }

        if (field.Need == WaterNeed.None)
        {
            Flooded(field, works, field.FirstWater, 0, 0);
            return;
        }

        var fill = BestFill(field, genes, Math.Max(groundDone, field.PinnedFill ?? 0));
        if (fill is not { } best)
        {
            Unplanned(field);
            return;
        }

        for (var i = 0; i < field.Works.Length; i++)
        {
            if (field.Works[i].Group >= 0) groups[field.Works[i].Group].Take(works[i], works[i] + field.Works[i].Steps, 1);
            drivers.Take(works[i], works[i] + field.Works[i].Steps, 1);
        }

        fillings.Take(best.Start, best.End, 1);
        foreach (var l in limitsOf[field.Index])
        {
            flows[l].Take(best.Start, best.End, best.Flow - field.HoldNow);
            flows[l].Take(best.End, instance.Clock.Horizon, field.Hold - field.HoldNow);
        }

        Flooded(field, works, field.Need == WaterNeed.Running ? field.FirstWater : best.Start, best.End, best.Flow);
        BringTailwater();
    }

    private void Flooded(FieldItem field, ImmutableArray<int> works, int firstWater, int full, int flow) =>
        made[field.Index] = new FieldSolution { Sown = false, Flooded = true, Works = works, FillStart = firstWater, FillEnd = full, Flow = flow };

    private void Unplanned(FieldItem field) => made[field.Index] = new FieldSolution { Sown = false, Flooded = false };

    /// <summary>Tailwater comes once enough acres are full; the fields planned after that may count on it.</summary>
    private void BringTailwater()
    {
        for (var s = 0; s < instance.Sources.Length; s++)
        {
            if (instance.Sources[s].Needs is not { AcresMissing: > 0 } need) continue;
            var (from, _) = TailwaterTime.Of(instance, need, made);
            if (from >= tailwaterFrom) continue;
            for (var l = 0; l < instance.Limits.Length; l++)
            {
                if (instance.Limits[l].Sources.Contains(s)) TakeTailwater(flows[l], s, from, tailwaterFrom, comes: true);
            }

            tailwaterFrom = from;
        }
    }
}
