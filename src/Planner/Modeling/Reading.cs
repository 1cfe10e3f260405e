using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

/// <summary>Reads a plan out of the solver's values.</summary>
internal static class Reading
{
    public static Solution Of(Instance instance, SeasonModel model, Func<LinearExpr, long> value)
    {
        var fields = instance.Fields.Select(f => FieldOf(f, model.Fields[f.Index], value)).ToImmutableArray();
        var orders = instance.Sources.Select((s, i) => s.Periods.Select((p, k) => p.FixedFlow ?? (int)value(model.Orders[i][k]!) * s.Step).ToImmutableArray());
        return new Solution(fields, [.. orders]);
    }

    private static FieldSolution FieldOf(FieldItem field, FieldVars vars, Func<LinearExpr, long> value)
    {
        var sown = value(vars.Sown) == 1;
        var flooded = sown || field.Need == WaterNeed.None;
        var batch = -1;
        for (var b = 0; b < vars.Batches.Count; b++)
        {
            if (vars.Batches[b] is { } used && value(used) == 1) batch = b;
        }

        return new FieldSolution
        {
            Sown = sown,
            Flooded = flooded,
            Works = flooded ? [.. vars.Works.Select(w => (int)value(w))] : [],
            FillStart = flooded ? (int)value(vars.FillStart) : 0,
            FillEnd = flooded ? (int)value(vars.FillEnd) : 0,
            Flow = flooded && vars.Flow is { } flow ? (int)value(flow) : 0,
            Sow = sown ? (int)value(vars.Sow) : 0,
            Plane = sown && vars.OnPlane.Count > 1 ? Math.Max(0, vars.OnPlane.FindIndex(p => value(p) == 1)) : 0,
            Batch = batch,
            SoakDay = sown && batch < 0 ? (int)value(vars.SoakDay) : -1,
        };
    }
}
