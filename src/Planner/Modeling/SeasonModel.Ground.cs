using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    private void AddGround()
    {
        var groups = instance.Groups.Select(g => Model.AddCumulative(g.Count)).ToArray();
        var drivers = instance.Drivers is { } most ? Model.AddCumulative(most) : null;
        foreach (var field in instance.Fields.Where(f => f.Need == WaterNeed.ToStart && !f.Works.IsEmpty))
        {
            var vars = Fields[field.Index];
            LinearExpr? before = null;
            foreach (var item in field.Works)
            {
                var last = instance.Work.Length - item.Steps;
                if (last < field.FitAxis)
                {
                    Model.Add(vars.Sown == 0);
                    return;
                }

                var start = Model.NewIntVar(field.FitAxis, last, field.Code + " " + item.Work);
                var interval = Model.NewOptionalFixedSizeIntervalVar(start, item.Steps, vars.Sown, field.Code + " " + item.Work);
                if (item.Group >= 0) groups[item.Group].AddDemand(interval, 1);
                drivers?.AddDemand(interval, 1);
                if (before is not null) Model.Add(start >= before).OnlyEnforceIf(vars.Sown);
                vars.Works.Add(start);
                before = start + item.Steps;
            }

            LinkToFill(field, vars, before!);
        }
    }

    /// <summary>Water may come when the last tractor is out: end on the working axis = days × day length + hours within the day.</summary>
    private void LinkToFill(FieldItem field, FieldVars vars, LinearExpr axisEnd)
    {
        var day = Model.NewIntVar(0, instance.Clock.Days, field.Code + " ground day");
        var within = Model.NewIntVar(1, instance.Work.PerDay, field.Code + " ground hour");
        Model.Add(axisEnd == (instance.Work.PerDay * day) + within).OnlyEnforceIf(vars.Sown);
        Model.Add(vars.FillStartVar! >= (SeasonClock.PerDay * day) + instance.Work.Offset + within).OnlyEnforceIf(vars.Sown);
        vars.WorkEnds.Add((day, within));
    }
}
