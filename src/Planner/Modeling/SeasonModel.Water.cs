using Google.OrTools.Sat;
using Watersown.Planner.Decoding;
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
            Orders.Add([.. source.Periods.Select((p, k) => p.FixedFlow is null ? Model.NewIntVar(0, source.MostIn(k) / source.Step, source.Code + " order") : null)]);
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
        var shut = new StepProfile();
        foreach (var s in limit.Sources) AddShut(cumulative, s, cap - held, shut);
    }

    /// <summary>What a source does not give, stretch by stretch; never so much that what is held already would not fit.</summary>
    private void AddShut(CumulativeConstraint cumulative, int s, int spare, StepProfile shut)
    {
        var source = instance.Sources[s];
        var stretches = source.Stretches;
        foreach (var stretch in stretches)
        {
            var order = stretch.Period >= 0 ? Orders[s][stretch.Period] : null;
            var closed = source.Cap - source.FixedMost(stretch);
            if (order is null && closed == 0) continue;
            var fits = Math.Clamp(closed, 0, Math.Max(0, spare - shut.Peak(stretch.From, stretch.Until)));
            shut.Take(stretch.From, stretch.Until, fits);
            var interval = Model.NewFixedSizeIntervalVar(LinearExpr.Constant(stretch.From), stretch.Steps, source.Code + " not given");
            if (order is null) cumulative.AddDemand(interval, fits);
            else cumulative.AddDemand(interval, source.Cap - (closed - fits) - Comes(source, stretch, order));
        }

        if (TailwaterFrom[s] is not { } from) return;
        var late = Math.Clamp(source.Cap, 0, Math.Max(0, spare - shut.Peak(0, horizon)));
        shut.Take(0, horizon, late);
        cumulative.AddDemand(Model.NewIntervalVar(LinearExpr.Constant(0), from, from, source.Code + " not yet"), late);
    }

    /// <summary>What comes of an order in a stretch: all of it, or no more than the source can give where that changes within its period.</summary>
    private LinearExpr Comes(SourceItem source, SupplyStretch stretch, IntVar order)
    {
        if (stretch.Most == source.MostIn(stretch.Period)) return LinearExpr.Term(order, source.Step);
        var comes = Model.NewIntVar(0, stretch.Most, source.Code + " comes");
        Model.Add(comes <= source.Step * order);
        return LinearExpr.Term(comes, 1);
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
            foreach (var group in source.Stretches.GroupBy(x => x.Period))
            {
                // Where less can come than was ordered nothing is counted: the bound stays below the true cost.
                var steps = group.Where(x => x.Most == source.MostIn(group.Key)).Sum(x => x.Steps);
                if (Orders[s][group.Key] is { } order) cost.Add(LinearExpr.Term(order, (long)Math.Round(source.Step * steps * instance.IdleCost)));
                else constant += group.Sum(x => source.FixedMost(x) * (double)x.Steps);
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
