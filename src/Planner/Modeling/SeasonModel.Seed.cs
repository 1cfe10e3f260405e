using Google.OrTools.Sat;
using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

internal sealed partial class SeasonModel
{
    private void AddSeed()
    {
        var trailers = instance.Trailers is { } most ? Model.AddCumulative(most) : null;
        AddBatches(trailers);
        foreach (var field in instance.Fields)
        {
            var vars = Fields[field.Index];
            List<ILiteral> seed = [vars.OwnBatch];
            seed.AddRange(vars.Batches.Where(b => b is not null).Select(b => (ILiteral)b!));
            // Exactly one lot of seed if sown, none if not.
            Model.Add(LinearExpr.Sum(seed.Select(s => LinearExpr.Affine(s.AsExpr(), 1, 0))) == vars.Sown);
            AddOwnBatch(field, vars, trailers);
        }
    }

    private void AddOwnBatch(FieldItem field, FieldVars vars, CumulativeConstraint? trailers)
    {
        var soak = instance.Soak;
        var into = (vars.SoakDay * SeasonClock.PerDay) + (soak.Hour - instance.Clock.Origin);
        Model.Add(vars.Sow >= into + soak.Least).OnlyEnforceIf(vars.OwnBatch);
        Model.Add(vars.SowEnd <= into + soak.Most + instance.Usable.Max()).OnlyEnforceIf(vars.OwnBatch);
        if (trailers is null) return;
        var until = Model.NewIntVar(0, horizon + (10 * SeasonClock.PerDay), field.Code + " trailers back");
        Model.Add(until == vars.SowEnd + soak.Return).OnlyEnforceIf(vars.OwnBatch);
        var size = Model.NewIntVar(0, soak.Most + instance.Usable.Max() + soak.Return, field.Code + " trailer steps");
        trailers.AddDemand(Model.NewOptionalIntervalVar(into, size, until, vars.OwnBatch, field.Code + " trailers"), field.Trailers);
        vars.TrailerUntil = until;
        vars.TrailerSteps = size;
    }

    private void AddBatches(CumulativeConstraint? trailers)
    {
        for (var b = 0; b < instance.Batches.Length; b++)
        {
            var batch = instance.Batches[b];
            var users = new List<(FieldItem Field, BoolVar Used)>();
            foreach (var field in instance.Fields)
            {
                var fits = Decoder.Fits(batch, field) && batch.GoodUntil > batch.ReadyFrom;
                var used = fits ? Model.NewBoolVar(batch.Code + " on " + field.Code) : null;
                Fields[field.Index].Batches.Add(used);
                if (used is null) continue;
                users.Add((field, used));
                Model.Add(Fields[field.Index].Sow >= batch.ReadyFrom).OnlyEnforceIf(used);
                Model.Add(Fields[field.Index].SowEnd <= batch.GoodUntil).OnlyEnforceIf(used);
                if (trailers is not null) AddBatchTrailers(trailers, batch, field, used);
            }

            if (users.Count > 1) Model.AddAtMostOne(users.Select(u => (ILiteral)u.Used));
            if (trailers is not null && !batch.CanBeCalledOff)
                trailers.AddDemand(Model.NewFixedSizeIntervalVar(LinearExpr.Constant(0), instance.Soak.Return, batch.Code + " stands"), batch.Trailers);
            AddLoss(batch, users);
        }
    }

    private void AddBatchTrailers(CumulativeConstraint trailers, BatchItem batch, FieldItem field, BoolVar used)
    {
        var from = batch.CanBeCalledOff ? 0 : instance.Soak.Return;
        var until = Fields[field.Index].SowEnd + instance.Soak.Return;
        var size = until - from;
        trailers.AddDemand(Model.NewOptionalIntervalVar(LinearExpr.Constant(from), size, until, used, $"{batch.Code} waits for {field.Code}"), batch.Trailers);
    }

    private void AddLoss(BatchItem batch, List<(FieldItem Field, BoolVar Used)> users)
    {
        var all = (long)Math.Round(batch.DryPounds * batch.CostPerPound * 1000);
        if (!batch.CanBeCalledOff) Constant += all;
        foreach (var (field, used) in users)
        {
            var left = (long)Math.Round(Math.Max(0, batch.DryPounds - field.DryPounds) * batch.CostPerPound * 1000);
            cost.Add(LinearExpr.Term(used, batch.CanBeCalledOff ? left : left - all));
        }
    }
}
