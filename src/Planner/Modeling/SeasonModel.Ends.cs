using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    private const int MostInAllSubsets = 8;
    private const double Scale = 1000;

    /// <summary>
    /// Rows over the ends of fills. Energy rows alone let half a field count as half full; but a field is of no use until all
    /// of it is, so on one source Σ E C ≥ ((Σ E)² + Σ E²) / 2S over any set of fields (the parallel inequalities of one
    /// machine, Queyranne 1993, with water for work and the free flow for speed).
    /// </summary>
    private void AddEndRows()
    {
        foreach (var limit in instance.Limits)
        {
            var speed = limit.Most(instance) - limit.Classes.Sum(c => instance.Classes[c].BaseHold);
            if (speed <= 0) continue;
            ImmutableArray<FieldItem> fields = [.. instance.Fields
                .Where(f => limit.Classes.Contains(f.Class) && f.Need != WaterNeed.None && f.Fill is not null && f.Impossible is null)
                .OrderBy(f => f.LeastWater / f.Acres)
                .ThenBy(f => f.Index)];
            foreach (var set in Sets(fields)) AddEndRow(set, speed);
        }
    }

    /// <summary>Every set of a few fields; of many, the sets that the cheapest-first order would fill first and last.</summary>
    private static IEnumerable<ImmutableArray<FieldItem>> Sets(ImmutableArray<FieldItem> fields)
    {
        if (fields.Length <= MostInAllSubsets)
        {
            for (var mask = 1; mask < 1 << fields.Length; mask++) yield return [.. fields.Where((_, i) => (mask & (1 << i)) != 0)];
            yield break;
        }

        for (var from = 0; from < fields.Length; from++)
        {
            for (var until = from + 2; until <= fields.Length; until++) yield return [.. fields.Skip(from).Take(until - from)];
        }
    }

    private void AddEndRow(ImmutableArray<FieldItem> set, int speed)
    {
        var works = set.Select(f => Math.Floor(f.LeastWater / Scale)).ToImmutableArray();
        var all = works.Sum();
        // A field left out ends just past the horizon; beyond that the row would forbid leaving it out.
        if (all * Scale / speed > horizon) return;
        var least = ((all * all) + works.Sum(w => w * w)) * Scale / (2 * speed);
        var ends = set.Select((f, i) => LinearExpr.Term(Fields[f.Index].FillEndVar!, (long)works[i]));
        Model.Add(LinearExpr.Sum(ends) >= (long)Math.Floor(least));
    }

    /// <summary>The same links between hours and days as the enforced ones, in a form that the relaxation sees.</summary>
    private void AddPlainLinks(FieldVars vars, List<(int Day, int First, int Last)> days)
    {
        var unsown = (horizon + 2) * (1 - vars.Sown);
        Model.Add(vars.Sow <= LinearExpr.Sum(days.Select(d => LinearExpr.Term(vars.SownOn[d.Day], d.Last))) + unsown);
        Model.Add(vars.Sow + unsown >= LinearExpr.Sum(days.Select(d => LinearExpr.Term(vars.SownOn[d.Day], d.First))));
        Model.Add(vars.FillEnd <= vars.Sow + unsown);
    }
}
