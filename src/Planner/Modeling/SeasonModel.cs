using Google.OrTools.Sat;
using Google.OrTools.Util;
using Watersown.Planner.Instances;

namespace Watersown.Planner.Modeling;

/// <summary>
/// The season as a constraint model: intervals for every step of every field on shared things, calendars inside the start
/// domains, and, so that the bound means something, a literal for every field and day with energy rows for water, aeroplane
/// and trailers. Whole numbers throughout: five-minute steps, hundredths of a cfs, thousandths of a dollar.
/// </summary>
internal sealed partial class SeasonModel
{
    private readonly Instance instance;
    private readonly List<LinearExpr> cost = [];
    private readonly int horizon;

    private SeasonModel(Instance instance)
    {
        this.instance = instance;
        horizon = instance.Clock.Horizon;
    }

    public CpModel Model { get; } = new();

    public List<FieldVars> Fields { get; } = [];

    /// <summary>Orders by source and period, in steps of the source; a constant where it cannot be changed.</summary>
    public List<List<IntVar?>> Orders { get; } = [];

    public List<IntVar?> TailwaterFrom { get; } = [];

    /// <summary>By source that brings tailwater: field full by then.</summary>
    public List<Dictionary<int, BoolVar>> BringsTailwater { get; } = [];

    /// <summary>Costs that no choice can change: kept out of the search, added to its bound.</summary>
    public long Constant { get; private set; }

    public static SeasonModel Build(Instance instance)
    {
        var model = new SeasonModel(instance);
        foreach (var field in instance.Fields) model.AddField(field);
        model.AddGround();
        model.AddWater();
        model.AddSeed();
        model.AddAir();
        model.AddDayRows();
        model.Model.Minimize(LinearExpr.Sum(model.cost));
        return model;
    }

    private void AddField(FieldItem field)
    {
        var name = field.Code;
        var sown = Model.NewBoolVar(name + " sown");
        var canSow = field.Impossible is null;
        if (!canSow) Model.Add(sown == 0);
        var vars = NewVars(field, sown, field.Need == WaterNeed.None ? Model.TrueLiteral() : sown);
        Fields.Add(vars);
        cost.Add(LinearExpr.Term(sown, -field.UnsownCost));
        Constant += field.UnsownCost;
        if (field.Need != WaterNeed.None) AddFill(field, vars);
        Model.Add(vars.Sow >= vars.FillEnd).OnlyEnforceIf(sown);
        AddHeadAge(field, vars);
        if (field.PinnedSow is { } pin) Model.Add(vars.Sow == pin).OnlyEnforceIf(sown);
    }

    private FieldVars NewVars(FieldItem field, BoolVar sown, ILiteral flooded)
    {
        var name = field.Code;
        var toFill = field.Need != WaterNeed.None;
        var start = field.Need == WaterNeed.ToStart ? Model.NewIntVar(field.PinnedFill ?? 0, field.PinnedFill ?? horizon, name + " fill") : null;
        var steps = toFill ? Model.NewIntVar(field.Fill?.LeastSteps ?? field.UsualFill, field.Fill?.MostSteps ?? field.UsualFill, name + " steps") : null;
        var end = toFill ? Model.NewIntVar(0, horizon + 1, name + " full") : null;
        return new FieldVars
        {
            Sown = sown,
            Flooded = flooded,
            FillStartVar = start,
            FillStart = start ?? LinearExpr.Constant(field.FirstWater),
            FillSteps = steps,
            FillEndVar = end,
            FillEnd = end ?? LinearExpr.Constant(0),
            Flow = field.Fill is { } curve ? Model.NewIntVar(curve.LeastFlow, curve.MostFlow, name + " flow") : null,
            Sow = Model.NewIntVarFromDomain(SowDomain(field), name + " sow"),
            SowEnd = Model.NewIntVar(0, horizon + SeasonClock.PerDay, name + " sow end"),
            SoakDay = Model.NewIntVar(field.PinnedSoakDay ?? instance.Soak.FirstDay, field.PinnedSoakDay ?? instance.Clock.Days, name + " soak day"),
            OwnBatch = Model.NewBoolVar(name + " own batch"),
            AgeCost = Model.NewIntVar(0, 1_000_000_000_000, name + " age cost"),
        };
    }

    /// <summary>All starts from which the whole job ends inside a window of some aeroplane.</summary>
    private Domain SowDomain(FieldItem field)
    {
        var spans = new List<long[]>();
        for (var p = 0; p < instance.Planes.Length; p++) spans.AddRange(Spans(field, p));
        return spans.Count == 0 ? Domain.FromValues([horizon]) : Domain.FromIntervals([.. spans]);
    }

    private IEnumerable<long[]> Spans(FieldItem field, int plane) =>
        instance.Planes[plane].Windows
            .Where(w => w.Until - w.From >= field.FlySteps[plane])
            .Select(w => new long[] { w.From, w.Until - field.FlySteps[plane] });

    private void AddFill(FieldItem field, FieldVars vars)
    {
        if (field.Need == WaterNeed.Running) Model.Add(vars.FillEndVar! == vars.FillSteps!).OnlyEnforceIf(vars.Sown);
        if (field.Fill is not { } curve) return;
        foreach (var (left, right) in curve.Pieces)
        {
            long width = right.Flow - left.Flow;
            Model.Add((vars.FillSteps! * width) >= (left.Steps * width) + ((right.Steps - left.Steps) * (vars.Flow! - left.Flow)));
        }
    }

    /// <summary>
    /// Age of the head check beyond the free days, squared: lines that touch the curve from below keep the bound valid; the
    /// plan's own cost is reckoned exactly afterwards.
    /// </summary>
    private void AddHeadAge(FieldItem field, FieldVars vars)
    {
        foreach (var (slope, touch) in AgeLines(field))
            Model.Add((vars.AgeCost * SeasonClock.PerDay) >= (slope * (vars.Sow - vars.FillStart - Free(instance))) - touch).OnlyEnforceIf(vars.Sown);
        cost.Add(vars.AgeCost);
    }

    /// <summary>What the lines say of a planned field: the least whole cost that satisfies them all.</summary>
    internal static long AgeCostOf(Instance instance, FieldItem field, FieldSolution planned)
    {
        long least = 0;
        foreach (var (slope, touch) in AgeLines(field))
        {
            var need = (slope * (planned.Sow - planned.FillStart - Free(instance))) - touch;
            least = Math.Max(least, (long)Math.Ceiling(need / (double)SeasonClock.PerDay));
        }

        return least;
    }

    private static int Free(Instance instance) => (int)Math.Round(instance.State.Prices.HeadAgeFree.TotalDays * SeasonClock.PerDay);

    // c ≥ k d² + 2 k d (x − d), with x the days beyond the free ones; times 288 to stay whole.
    private static IEnumerable<(long Slope, long Touch)> AgeLines(FieldItem field)
    {
        for (var day = 0.25; day <= 30; day += day < 6 ? 0.5 : 2)
            yield return ((long)Math.Round(2 * field.HeadAgeCost * day), (long)Math.Round(field.HeadAgeCost * day * day * SeasonClock.PerDay));
    }
}
