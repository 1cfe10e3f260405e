using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    /// <summary>
    /// The rows that make the bound: which day a field is sown, by which day it is full, and what water, aeroplane and
    /// trailers can give by then. Without them the relaxation knows nothing of shared things.
    /// </summary>
    private void AddDayRows()
    {
        foreach (var field in instance.Fields) AddDays(field, Fields[field.Index]);
        foreach (var limit in instance.Limits) AddWaterRows(limit);
        AddEndRows();
        AddPlaneRows();
        AddTrailerRows();
    }

    private void AddDays(FieldItem field, FieldVars vars)
    {
        var days = SowDays(field);
        foreach (var (day, first, last) in days)
        {
            var on = Model.NewBoolVar(field.Code + " on day");
            vars.SownOn[day] = on;
            Model.Add(vars.Sow >= first).OnlyEnforceIf(on);
            Model.Add(vars.Sow <= last).OnlyEnforceIf(on);
            if (instance.Usable[day] < instance.Usable.Max())
                AddUsable(vars, on, day);
            cost.Add(LinearExpr.Term(on, field.DelayCost[day]));
        }

        Model.Add(LinearExpr.Sum(vars.SownOn.Values) == vars.Sown);
        AddPlainLinks(vars, days);
        AddFullBy(field, vars);
    }

    private void AddUsable(FieldVars vars, BoolVar on, int day)
    {
        var into = (vars.SoakDay * SeasonClock.PerDay) + (instance.Soak.Hour - instance.Clock.Origin);
        Model.Add(vars.SowEnd <= into + instance.Soak.Most + instance.Usable[day]).OnlyEnforceIf([on, vars.OwnBatch]);
    }

    private List<(int Day, int First, int Last)> SowDays(FieldItem field)
    {
        var days = new SortedDictionary<int, (int First, int Last)>();
        for (var p = 0; p < instance.Planes.Length; p++)
        {
            foreach (var span in Spans(field, p))
            {
                var day = instance.Clock.DayOf((int)span[0]);
                var known = days.TryGetValue(day, out var d) ? d : (First: int.MaxValue, Last: int.MinValue);
                days[day] = (Math.Min(known.First, (int)span[0]), Math.Max(known.Last, (int)span[1]));
            }
        }

        return [.. days.Select(d => (d.Key, d.Value.First, d.Value.Last))];
    }

    private void AddFullBy(FieldItem field, FieldVars vars)
    {
        if (field.Need == WaterNeed.None) return;
        BoolVar? before = null;
        var sownBy = new List<BoolVar>();
        for (var day = 0; day < instance.Clock.Days; day++)
        {
            var full = Model.NewBoolVar(field.Code + " full by");
            vars.FullBy[day] = full;
            Model.Add(vars.FillEndVar! <= instance.Clock.DayEnd(day)).OnlyEnforceIf(full);
            // One step earlier than the end of the day counts as full by it, so the two rows leave no gap.
            Model.Add(vars.FillEndVar! >= instance.Clock.DayEnd(day) + 1).OnlyEnforceIf(full.Not());
            if (before is not null) Model.AddImplication(before, full);
            before = full;
            if (vars.SownOn.TryGetValue(day, out var on)) sownBy.Add(on);
            if (sownBy.Count > 0) Model.Add(LinearExpr.Sum(sownBy) <= full);
        }
    }

    /// <summary>By the end of each day, what filled fields took in and held is at most what the sources could have given.</summary>
    private void AddWaterRows(WaterLimit limit)
    {
        var fields = instance.Fields.Where(f => limit.Classes.Contains(f.Class) && f.Need != WaterNeed.None && f.Fill is not null).ToImmutableArray();
        if (fields.IsEmpty) return;
        var held = limit.Classes.Sum(c => (long)instance.Classes[c].BaseHold);
        for (var day = 0; day < instance.Clock.Days; day++)
        {
            var until = instance.Clock.DayEnd(day);
            var terms = new List<LinearExpr>();
            foreach (var field in fields)
            {
                var full = Fields[field.Index].FullBy;
                terms.Add(LinearExpr.Term(full[day], field.LeastWater));
                for (var d = 0; d < day; d++) terms.Add(LinearExpr.Term(full[d], (long)Math.Max(0, field.Hold - field.HoldNow) * (instance.Clock.DayEnd(d + 1) - instance.Clock.DayEnd(d))));
            }

            Model.Add(LinearExpr.Sum(terms) <= Given(limit, until) - (held * until) + Short(limit, held, until));
        }
    }

    /// <summary>Flow × steps by which ground that is wet already outruns its sources until then: counted to nobody's plan.</summary>
    private long Short(WaterLimit limit, long held, int until)
    {
        var edges = limit.Sources.SelectMany(s => instance.Sources[s].Stretches.Select(p => p.From)).Append(0).Append(until).Where(t => t <= until).Distinct().Order().ToImmutableArray();
        long missing = 0;
        foreach (var (from, to) in edges.Zip(edges.Skip(1)))
        {
            long gives = limit.Sources.Sum(s => instance.Sources[s].Stretches.Where(p => p.From <= from && from < p.Until).Sum(instance.Sources[s].FixedMost)) + limit.Caps.Sum(j => instance.JointCaps[j].Cap);
            missing += Math.Max(0, held - gives) * (to - from);
        }

        return missing;
    }

    private LinearExpr Given(WaterLimit limit, int until)
    {
        LinearExpr given = LinearExpr.Constant(limit.Caps.Sum(j => instance.JointCaps[j].Cap * (long)until));
        foreach (var s in limit.Sources)
        {
            var source = instance.Sources[s];
            foreach (var stretch in source.Stretches.Where(x => x.From < until))
            {
                long steps = Math.Min(until, stretch.Until) - stretch.From;
                if (stretch.Period >= 0 && Orders[s][stretch.Period] is { } order && stretch.Most == source.MostIn(stretch.Period)) given += order * (source.Step * steps);
                else given += source.FixedMost(stretch) * steps;
            }
        }

        return given;
    }

    private void AddPlaneRows()
    {
        for (var day = 0; day < instance.Clock.Days; day++)
        {
            var terms = new List<LinearExpr>();
            foreach (var field in instance.Fields)
            {
                if (Fields[field.Index].SownOn.TryGetValue(day, out var on)) terms.Add(LinearExpr.Term(on, field.FlySteps.Min()));
            }

            long can = instance.Planes.Sum(p => p.Windows.Where(w => instance.Clock.DayOf(w.From) == day).Sum(w => w.Until - w.From));
            if (terms.Count > 0) Model.Add(LinearExpr.Sum(terms) <= can);
        }
    }

    /// <summary>Seed sown tomorrow and the day after is in trailers tonight, since soak and drain take two days.</summary>
    private void AddTrailerRows()
    {
        if (instance.Trailers is not { } most || instance.Soak.Least < 2 * SeasonClock.PerDay) return;
        for (var night = instance.Soak.FirstDay; night + 2 < instance.Clock.Days; night++)
        {
            var terms = new List<LinearExpr>();
            foreach (var field in instance.Fields.Where(f => Fields[f.Index].Batches.All(b => b is null)))
            {
                for (var day = night + 1; day <= night + 2; day++)
                {
                    if (Fields[field.Index].SownOn.TryGetValue(day, out var on)) terms.Add(LinearExpr.Term(on, field.Trailers));
                }
            }

            if (terms.Count > 0) Model.Add(LinearExpr.Sum(terms) <= most);
        }
    }
}
