using Google.OrTools.Sat;
using Google.OrTools.Util;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    private void AddAir()
    {
        var pads = instance.Strips.Select(s => Model.AddCumulative(s.Pad)).ToArray();
        for (var p = 0; p < instance.Planes.Length; p++)
        {
            var flights = new List<IntervalVar>();
            foreach (var field in instance.Fields)
            {
                var vars = Fields[field.Index];
                var flown = instance.Planes.Length == 1 ? vars.Sown : Model.NewBoolVar(field.Code + " by plane");
                vars.OnPlane.Add(flown);
                var steps = field.FlySteps[p];
                flights.Add(Model.NewOptionalFixedSizeIntervalVar(vars.Sow, steps, flown, field.Code + " flown"));
                Model.Add(vars.SowEnd == vars.Sow + steps).OnlyEnforceIf(flown);
                if (instance.Planes.Length > 1) KeepInWindows(field, vars, p, flown);
                cost.Add(LinearExpr.Term(flown, field.FerryCost[p]));
                AddPad(pads[instance.Planes[p].Strip], field, vars, steps, flown);
            }

            Model.AddNoOverlap(flights);
        }

        if (instance.Planes.Length == 1) return;
        foreach (var vars in Fields) Model.Add(LinearExpr.Sum(vars.OnPlane) == vars.Sown);
    }

    private void KeepInWindows(FieldItem field, FieldVars vars, int plane, BoolVar flown)
    {
        var spans = Spans(field, plane).ToArray();
        if (spans.Length == 0) Model.Add(flown == 0);
        else Model.AddLinearExpressionInDomain(vars.Sow, Domain.FromIntervals(spans)).OnlyEnforceIf(flown);
    }

    private void AddPad(CumulativeConstraint pad, FieldItem field, FieldVars vars, int steps, BoolVar flown)
    {
        foreach (var (from, until) in Decoding.Decoder.PadUse(field.Trailers, 0, steps, instance.Soak.Lead))
            pad.AddDemand(Model.NewOptionalFixedSizeIntervalVar(vars.Sow + from, until - from, flown, field.Code + " on the pad"), 1);
    }
}
