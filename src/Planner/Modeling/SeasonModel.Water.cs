using Google.OrTools.Sat;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    private void AddWater()
    {
        AddOrders();
        foreach (var source in instance.Sources) AddTailwater(source);
        foreach (var limit in instance.Limits) AddLimit(limit);
        AddFillings();
        AddIdle();
    }

    private void AddOrders()
    {
        foreach (var source in instance.Sources)
        {
            var most = source.Cap / source.Step;
            Orders.Add([.. source.Periods.Select(p => p.FixedFlow is null ? Model.NewIntVar(0, most, source.Code + " order") : null)]);
        }

        foreach (var joint in instance.JointCaps) AddJointCap(joint);
    }

    /// <summary>Ordered sources under one cap: period by period, or at every change of either where their periods differ.</summary>
    private void AddJointCap(JointCap joint)
    {
        var ordered = joint.Sources.Where(s => !instance.Sources[s].Periods.IsEmpty).ToImmutableArray();
        foreach (var at in ordered.SelectMany(s => instance.Sources[s].Periods.Select(p => p.From)).Distinct().Order())
        {
            var running = ordered.Select(s => OrderAt(s, at)).ToArray();
            if (running.All(r => r.Var is null)) continue;
            Model.Add(LinearExpr.Sum(running.Select(r => r.Var is null ? LinearExpr.Constant(r.Fixed) : LinearExpr.Term(r.Var, r.Step))) <= joint.Cap);
        }
    }

    private (IntVar? Var, int Step, int Fixed) OrderAt(int source, int step)
    {
        var item = instance.Sources[source];
        var k = item.Periods.Select((p, i) => (p, i)).First(x => x.p.From <= step && step < x.p.Until).i;
        return (Orders[source][k], item.Step, item.Periods[k].FixedFlow ?? 0);
    }

    /// <summary>Tailwater comes from a moment on: enough acres of its fields are full by then.</summary>
    private void AddTailwater(SourceItem source)
    {
        var brings = new Dictionary<int, BoolVar>();
        IntVar? from = null;
        if (source.Needs is { AcresMissing: > 0 } need)
        {
            from = Model.NewIntVar(0, horizon, source.Code + " from");
            foreach (var f in need.Fields)
            {
                var full = Model.NewBoolVar(source.Code + " by " + instance.Fields[f].Code);
                Model.Add(from >= Fields[f].FillEnd).OnlyEnforceIf(full);
                Model.AddImplication(full, Fields[f].Flooded);
                brings[f] = full;
            }

            var late = Model.NewBoolVar(source.Code + " never");
            Model.Add(from == horizon).OnlyEnforceIf(late);
            var acres = LinearExpr.WeightedSum(brings.Values.Select(b => (LinearExpr)b), brings.Keys.Select(f => (long)Math.Floor(instance.Fields[f].Acres * 100)));
            Model.Add(acres >= (long)Math.Ceiling(need.AcresMissing * 100)).OnlyEnforceIf(late.Not());
            NeverTailwater.Add(late);
        }
        else
        {
            NeverTailwater.Add(null);
        }

        TailwaterFrom.Add(from);
        BringsTailwater.Add(brings);
    }

    public List<BoolVar?> NeverTailwater { get; } = [];

    private void AddLimit(WaterLimit limit)
    {
        var held = limit.Classes.Sum(c => instance.Classes[c].BaseHold);
        // Ground that is wet already may take more than there is: that is said as a conflict, and must not forbid every plan.
        var cap = Math.Max(held, limit.Most(instance));
        var cumulative = Model.AddCumulative(cap);
        foreach (var c in limit.Classes) AddClassDemand(cumulative, c);
        var spare = cap - held;
        foreach (var s in limit.Sources) spare -= AddShut(cumulative, s, spare);
    }

    /// <summary>What a source does not give, by period; never so much that what is held already would not fit. Gives its largest fixed part.</summary>
    private int AddShut(CumulativeConstraint cumulative, int s, int spare)
    {
        var source = instance.Sources[s];
        var most = 0;
        for (var k = 0; k < source.Periods.Length; k++)
        {
            var period = source.Periods[k];
            var interval = Model.NewFixedSizeIntervalVar(LinearExpr.Constant(period.From), period.Until - period.From, source.Code + " not ordered");
            if (Orders[s][k] is { } order)
            {
                cumulative.AddDemand(interval, source.Cap - (source.Step * order));
                continue;
            }

            var shut = Math.Clamp(source.Cap - period.FixedFlow!.Value, 0, Math.Max(0, spare));
            most = Math.Max(most, shut);
            cumulative.AddDemand(interval, shut);
        }

        if (TailwaterFrom[s] is { } from)
        {
            most = Math.Clamp(source.Cap, 0, Math.Max(0, spare));
            cumulative.AddDemand(Model.NewIntervalVar(LinearExpr.Constant(0), from, from, source.Code + " not yet"), most);
        }

        return most;
    }

    private void AddClassDemand(CumulativeConstraint cumulative, int waterClass)
    {
        var item = instance.Classes[waterClass];
        if (item.BaseHold > 0)
            cumulative.AddDemand(Model.NewFixedSizeIntervalVar(LinearExpr.Constant(0), horizon, "held"), item.BaseHold);
        foreach (var field in instance.Fields.Where(f => f.Class == waterClass && f.Need != WaterNeed.None && f.Fill is not null))
        {
            var vars = Fields[field.Index];
            cumulative.AddDemand(FillInterval(field, vars), vars.Flow! - field.HoldNow);
            cumulative.AddDemand(HoldInterval(field, vars), Math.Max(0, field.Hold - field.HoldNow));
        }
    }

    private IntervalVar FillInterval(FieldItem field, FieldVars vars) => field.Need == WaterNeed.Running
        ? Model.NewOptionalIntervalVar(LinearExpr.Constant(0), vars.FillSteps!, vars.FillEndVar!, vars.Sown, field.Code + " fills")
        : Model.NewOptionalIntervalVar(vars.FillStartVar!, vars.FillSteps!, vars.FillEndVar!, vars.Sown, field.Code + " fills");

    private IntervalVar HoldInterval(FieldItem field, FieldVars vars)
    {
        Model.Add(vars.FillEndVar! <= horizon).OnlyEnforceIf(vars.Sown);
        return Model.NewOptionalIntervalVar(vars.FillEndVar!, horizon + 1 - vars.FillEndVar!, LinearExpr.Constant(horizon + 1), vars.Sown, field.Code + " holds");
    }

    private void AddFillings()
    {
        var toFill = instance.Fields.Where(f => f.Need != WaterNeed.None).ToImmutableArray();
        if (instance.Fillings is not { } most || toFill.Length <= most)
        {
            foreach (var field in toFill.Where(f => f.Fill is null)) _ = FillInterval(field, Fields[field.Index]);
            return;
        }

        var cumulative = Model.AddCumulative(most);
        foreach (var field in toFill) cumulative.AddDemand(FillInterval(field, Fields[field.Index]), 1);
    }

    /// <summary>Ordered water that nothing takes up; what a fill uses is counted at its most, which keeps the bound valid.</summary>
    private void AddIdle()
    {
        if (instance.IdleCost <= 0) return;
        var ordered = Enumerable.Range(0, instance.Sources.Length).Where(s => !instance.Sources[s].Periods.IsEmpty).ToHashSet();
        double constant = 0;
        foreach (var s in ordered)
        {
            var source = instance.Sources[s];
            for (var k = 0; k < source.Periods.Length; k++)
            {
                var steps = source.Periods[k].Until - source.Periods[k].From;
                if (Orders[s][k] is { } order) cost.Add(LinearExpr.Term(order, (long)Math.Round(source.Step * steps * instance.IdleCost)));
                else constant += source.Periods[k].FixedFlow!.Value * (double)steps;
            }
        }

        for (var c = 0; c < instance.Classes.Length; c++)
        {
            if (!instance.Classes[c].Sources.Any(ordered.Contains)) continue;
            constant -= instance.Classes[c].BaseHold * (double)horizon;
            foreach (var field in instance.Fields.Where(f => f.Class == c && f.Need != WaterNeed.None && f.Fill is not null)) constant -= AddUse(field);
        }

        Constant += (long)Math.Floor(constant * instance.IdleCost);
    }

    private double AddUse(FieldItem field)
    {
        var vars = Fields[field.Index];
        var extra = Math.Max(0, field.Hold - field.HoldNow);
        var hold = (long)Math.Round(extra * instance.IdleCost);
        // Not flooded: uses nothing. Its end is then put just past the horizon, where it costs nothing and counts as full by no day.
        Model.Add(vars.FillEndVar! == horizon + 1).OnlyEnforceIf(vars.Sown.Not());
        cost.Add(LinearExpr.Term(vars.FillEndVar!, hold));
        cost.Add(LinearExpr.Term(vars.Sown, -(long)Math.Round(field.MostWater * instance.IdleCost)));
        return extra * (horizon + 1.0);
    }
}
