using Watersown.Planner.Instances;
using Watersown.Schedule;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Planner;

internal sealed partial class PlanWriter
{
    private ImmutableArray<string> FillReasons(FieldItem field, FieldSolution planned)
    {
        if (field.Class < 0) return ["no source was named: four days are taken"];
        var flow = FormattableString.Invariant($"{planned.Flow / 100.0:0.0} cfs: what its sources give beside the fields they hold and fill");
        if (field.Need == WaterNeed.Running) return ["running now", flow];
        var ground = field.Works.IsEmpty ? 0 : instance.Work.End(planned.Works[^1] + field.Works[^1].Steps);
        if (field.PinnedFill is not null) return ["pinned by a person", flow];
        if (ground > 0 && planned.FillStart <= ground + SeasonClock.PerHour) return [$"ground is done {When.Moment(instance.Clock.Moment(ground))}", flow];
        if (Change(field, planned.FillStart) is { } change) return [change, flow];
        var before = Neighbours(field).Where(f => Math.Abs(solution.Fields[f.Index].FillEnd - planned.FillStart) <= SeasonClock.PerHour).Select(f => f.Code).FirstOrDefault();
        return [before is null ? "waits, so that the head check is not wet too long before sowing" : $"follows {before} on the same water", flow];
    }

    /// <summary>The hour at which one of its sources can first be changed, where the fill starts just then.</summary>
    private string? Change(FieldItem field, int start)
    {
        foreach (var s in instance.Classes[field.Class].Sources)
        {
            var source = instance.Sources[s];
            var first = source.Periods.FirstOrDefault(p => p.FixedFlow is null);
            if (first is not null && first.From == start)
                return FormattableString.Invariant($"{source.Code} can be changed at the soonest {When.Moment(instance.Clock.Moment(start))}, after its {state.Farm.Sources[s].Notice.TotalHours:0} h notice");
        }

        return null;
    }

    private IEnumerable<FieldItem> Neighbours(FieldItem field) =>
        instance.Fields.Where(f => f.Index != field.Index && f.Class >= 0 && solution.Fields[f.Index].Flooded && f.Need != WaterNeed.None
            && instance.Classes[f.Class].Sources.Intersect(instance.Classes[field.Class].Sources).Any());

    private Working FillWorking(FieldItem field, FieldSolution planned)
    {
        if (field.Fill is null) return Working.Empty;
        var water = FieldWater.Of(state, field.Code);
        var supply = FlowRate.FromCubicFeetPerSecond(planned.Flow / 100.0);
        var time = Ponding.FillTime(water.Job, supply)!.Value;
        var soil = water.Known ? "soil of " + field.Code : "usual clay";
        var asOf = state.Season(field.Code).AsOf ?? state.Now;
        return Working.Empty
            .Given("A1", "all its acres", water.All.Acres, "ac", "field " + field.Code)
            .Given("A0", "wet already", water.Job.Wet.Acres, "ac", "checks wet", asOf)
            .Given("V", "water to wet the soil and stand over it", water.Job.Fill.Feet, "ft", soil)
            .Given("m", "lost from wet ground", water.Job.Loss.FeetPerDay, "ft/day", "evaporation and " + soil)
            .Given("S", "water given to it", supply.AcreFeetPerDay, "ac-ft/day", "plan")
            .Step("t", "time to fill", time.TotalDays, "d", "(V / m) ln((S - m A0) / (S - m A1))", Sources.WaterBalance)
            .Step("h", "held with, once full", water.Holding.CubicFeetPerSecond, "cfs", "m A1 / 1.983471", Sources.WaterBalance);
    }

    private Working SeedWorking(FieldItem field)
    {
        var season = state.Season(field.Code);
        return Working.Empty
            .Given("A", "net acres", field.Acres, "ac", "field " + field.Code)
            .Given("R", "dry rate", season.Rate.PoundsPerAcre, "lb/ac dry", "field " + field.Code)
            .Given("F", "soaked weight over dry weight", state.WetFactor, string.Empty, "farm")
            .Step("D", "dry seed", field.DryPounds, "lb dry", "A × R", Sources.Arithmetic)
            .Step("W", "soaked seed", field.DryPounds * state.WetFactor, "lb soaked", "D × F", Sources.MassBalance)
            .Step("n", "trailers", field.Trailers, string.Empty, "ceil(W / haul limit)", Sources.Arithmetic);
    }

    private ImmutableArray<string> SowReasons(FieldItem field, FieldSolution planned)
    {
        if (field.PinnedSow is not null) return ["pinned by a person"];
        var steps = field.FlySteps[planned.Plane];
        var windows = instance.Planes[planned.Plane].Windows;
        var free = windows.Where(w => w.Until - Math.Max(w.From, planned.FillEnd) >= steps).Select(w => Math.Max(w.From, planned.FillEnd)).FirstOrDefault(planned.Sow);
        if (planned.Sow <= free + 1)
        {
            var waited = windows.Any(w => w.From <= planned.FillEnd && planned.FillEnd < w.Until);
            return [waited && planned.Sow == planned.FillEnd ? "as soon as it is full" : $"first slot after it is full ({When.Moment(instance.Clock.Moment(Math.Max(0, planned.FillEnd)))})"];
        }

        var reasons = ImmutableArray.CreateBuilder<string>();
        if (planned.Batch < 0)
        {
            var ready = instance.Clock.DayStart(planned.SoakDay) + instance.Soak.Hour + instance.Soak.Least;
            if (planned.Sow - ready < SeasonClock.PerHour || planned.SoakDay == instance.Soak.FirstDay) reasons.Add($"its seed is ready {When.Moment(instance.Clock.Moment(ready))}");
        }
        else if (planned.Sow - instance.Batches[planned.Batch].ReadyFrom < 4 * SeasonClock.PerHour)
        {
            reasons.Add($"batch {instance.Batches[planned.Batch].Code} is drained enough {When.Moment(instance.Clock.Moment(instance.Batches[planned.Batch].ReadyFrom))}");
        }

        var other = instance.Fields.FirstOrDefault(f => f.Index != field.Index && solution.Fields[f.Index] is { Sown: true } o
            && o.Plane == planned.Plane && Math.Abs(o.Sow + f.FlySteps[o.Plane] - planned.Sow) <= 3);
        if (other is not null) reasons.Add($"follows {other.Code} on the same aeroplane");
        var day = instance.Clock.DayOf(planned.Sow);
        if (reasons.Count == 0) reasons.Add(day > instance.Clock.DayOf(free) ? "earlier mornings are taken by fields that lose more by waiting, or trailers are out" : "fits this slot");
        return reasons.ToImmutable();
    }

    /// <summary>How much of a fill comes from each source: the first choice as far as it reaches at the start, then the next.</summary>
    private ImmutableArray<(string Source, FlowRate Flow)> Shares(FieldItem field, FieldSolution planned)
    {
        if (field.Class < 0) return [];
        var step = Math.Max(0, planned.FillStart);
        var left = planned.Flow;
        var shares = ImmutableArray.CreateBuilder<(string, FlowRate)>();
        foreach (var s in instance.Classes[field.Class].Sources)
        {
            var gives = Math.Min(left, Math.Max(0, Gives(s, step) - HeldBy(s, step, field)));
            if (s == instance.Classes[field.Class].Sources[^1]) gives = left;
            if (gives <= 0) continue;
            shares.Add((instance.Sources[s].Code, FlowRate.FromCubicFeetPerSecond(gives / 100.0)));
            left -= gives;
        }

        return shares.ToImmutable();
    }

    private int Gives(int source, int step)
    {
        var item = instance.Sources[source];
        for (var k = 0; k < item.Periods.Length; k++)
        {
            if (item.Periods[k].From <= step && step < item.Periods[k].Until) return Math.Min(solution.Orders[source][k], item.MostAt(step));
        }

        return item.MostAt(step);
    }

    /// <summary>Taken from a source at a step by the other fields whose first choice it is.</summary>
    private int HeldBy(int source, int step, FieldItem but)
    {
        var taken = instance.Classes.Where(c => c.Sources[0] == source).Sum(c => c.BaseHold);
        foreach (var field in instance.Fields.Where(f => f.Index != but.Index && f.Class >= 0 && f.Need != WaterNeed.None && instance.Classes[f.Class].Sources[0] == source))
        {
            var planned = solution.Fields[field.Index];
            if (!planned.Flooded || step < planned.FillStart) continue;
            taken += (step < planned.FillEnd ? planned.Flow : field.Hold) - field.HoldNow;
        }

        return taken;
    }
}
