using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

/// <summary>Gives the solver a known plan to start from: every unknown, helper ones too, so that it is feasible at once.</summary>
internal static class Hints
{
    public static void Give(Instance instance, SeasonModel model, Solution known)
    {
        foreach (var field in instance.Fields) GiveField(instance, model, field, known.Fields[field.Index]);
        for (var s = 0; s < instance.Sources.Length; s++)
        {
            for (var k = 0; k < model.Orders[s].Count; k++)
            {
                if (model.Orders[s][k] is { } order) model.Model.AddHint(order, known.Orders[s][k] / instance.Sources[s].Step);
            }

            GiveTailwater(instance, model, s, known);
        }
    }

    private static void GiveField(Instance instance, SeasonModel model, FieldItem field, FieldSolution planned)
    {
        var vars = model.Fields[field.Index];
        var cp = model.Model;
        cp.AddHint(vars.Sown, planned.Sown);
        for (var i = 0; i < vars.Works.Count && i < planned.Works.Length; i++) cp.AddHint(vars.Works[i], planned.Works[i]);
        foreach (var (day, within) in vars.WorkEnds.Where(_ => !planned.Works.IsEmpty))
        {
            var end = planned.Works[^1] + field.Works[^1].Steps;
            cp.AddHint(day, (end - 1) / instance.Work.PerDay);
            cp.AddHint(within, ((end - 1) % instance.Work.PerDay) + 1);
        }

        var fillEnd = planned.Flooded ? planned.FillEnd : instance.Clock.Horizon + 1;
        if (vars.FillStartVar is { } start) cp.AddHint(start, Math.Max(0, planned.FillStart));
        if (vars.FillSteps is { } steps) cp.AddHint(steps, planned.Flooded ? planned.FillEnd - Math.Max(0, planned.FillStart) : field.Fill?.MostSteps ?? field.UsualFill);
        if (vars.FillEndVar is { } end2) cp.AddHint(end2, fillEnd);
        if (vars.Flow is { } flow) cp.AddHint(flow, planned.Flooded ? planned.Flow : field.Fill!.MostFlow);
        foreach (var (day, full) in vars.FullBy) cp.AddHint(full, fillEnd <= instance.Clock.DayEnd(day));
        GiveSowing(instance, cp, field, vars, planned);
    }

    private static void GiveSowing(Instance instance, CpModel cp, FieldItem field, FieldVars vars, FieldSolution planned)
    {
        if (!planned.Sown)
        {
            cp.AddHint(vars.OwnBatch, value: false);
            cp.AddHint(vars.AgeCost, 0);
            foreach (var batch in vars.Batches.Where(b => b is not null)) cp.AddHint(batch!, value: false);
            foreach (var on in vars.SownOn.Values) cp.AddHint(on, value: false);
            return;
        }

        var until = planned.Sow + field.FlySteps[planned.Plane];
        cp.AddHint(vars.Sow, planned.Sow);
        cp.AddHint(vars.SowEnd, until);
        cp.AddHint(vars.OwnBatch, planned.Batch < 0);
        cp.AddHint(vars.SoakDay, planned.Batch < 0 ? planned.SoakDay : instance.Soak.FirstDay);
        if (vars.TrailerUntil is { } back)
        {
            var into = planned.Batch < 0 ? instance.Clock.DayStart(planned.SoakDay) + instance.Soak.Hour : until;
            cp.AddHint(back, until + instance.Soak.Return);
            cp.AddHint(vars.TrailerSteps!, until + instance.Soak.Return - into);
        }

        for (var b = 0; b < vars.Batches.Count; b++)
        {
            if (vars.Batches[b] is { } used) cp.AddHint(used, planned.Batch == b);
        }

        if (instance.Planes.Length > 1)
        {
            for (var p = 0; p < vars.OnPlane.Count; p++) cp.AddHint(vars.OnPlane[p], planned.Plane == p);
        }

        foreach (var (day, on) in vars.SownOn) cp.AddHint(on, instance.Clock.DayOf(planned.Sow) == day);
        cp.AddHint(vars.AgeCost, SeasonModel.AgeCostOf(instance, field, planned));
    }

    private static void GiveTailwater(Instance instance, SeasonModel model, int source, Solution known)
    {
        if (model.TailwaterFrom[source] is not { } from || instance.Sources[source].Needs is not { } need) return;
        var (comes, bringing) = TailwaterTime.Of(instance, need, known.Fields);
        model.Model.AddHint(from, comes);
        model.Model.AddHint(model.NeverTailwater[source]!, comes >= instance.Clock.Horizon);
        foreach (var (f, full) in model.BringsTailwater[source]) model.Model.AddHint(full, bringing.Contains(f));
    }
}
