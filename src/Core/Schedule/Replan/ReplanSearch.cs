namespace Watersown.Schedule.Replan;

/// <summary>What a plan is weighed by, in the whole numbers of the search.</summary>
internal readonly record struct Weights(long Lost, long AcreDays, long WaterAge, int Calls)
{
    /// <summary>No worse in anything; of two that are alike in all that costs, the one with fewer calls.</summary>
    public bool NoWorseThan(Weights other) =>
        Lost <= other.Lost && AcreDays <= other.AcreDays && WaterAge <= other.WaterAge
        && (Lost < other.Lost || AcreDays < other.AcreDays || WaterAge < other.WaterAge || Calls <= other.Calls);
}

/// <summary>
/// Every plan that no other beats in seed lost, delay and water age at once: whatever the prices are, the cheapest is one of
/// them. Branch and bound over the fields, one way of sowing each; a branch is left only where a plan already found is no
/// worse than the best that could still come of it.
/// </summary>
internal sealed class ReplanSearch
{
    private readonly Weighing weighing;
    private readonly ISet<string> without;
    private readonly int[] order;
    private readonly SowingWay?[] chosen;
    private readonly long[] left;
    private readonly Dictionary<string, long> stock;
    private readonly (long Days, long Age)[] rest;
    private readonly List<(Weights Weights, SowingWay[] Ways)> front = [];

    private ReplanSearch(Weighing weighing, ISet<string> without)
    {
        (this.weighing, this.without) = (weighing, without);
        var fields = weighing.Case.Fields.Length;
        // Fields that live seed fits come first: their choices decide the rest.
        order = [.. Enumerable.Range(0, fields).OrderByDescending(i => weighing.Ways[i].Any(w => w.Batch >= 0)).ThenBy(i => i)];
        chosen = new SowingWay?[fields];
        left = [.. weighing.Pounds];
        stock = weighing.Stock.ToDictionary(StringComparer.Ordinal);
        rest = new (long, long)[fields + 1];
        for (var i = fields - 1; i >= 0; i--)
        {
            var ways = weighing.Ways[order[i]];
            rest[i] = (rest[i + 1].Days + ways.Min(w => w.AcreDays), rest[i + 1].Age + ways.Min(w => w.WaterAge));
        }
    }

    /// <summary>The plans, each as one way for each field in the order of the case.</summary>
    /// <param name="weighing">The case in whole numbers.</param>
    /// <param name="without">Plans that give batches to fields in one of these ways are left out.</param>
    public static ImmutableArray<(Weights Weights, ImmutableArray<SowingWay> Ways)> Run(Weighing weighing, params ReadOnlySpan<string> without)
    {
        var search = new ReplanSearch(weighing, new HashSet<string>(without.ToArray(), StringComparer.Ordinal));
        search.Take(0, 0, 0, 0);
        return [.. search.front.Select(f => (f.Weights, f.Ways.ToImmutableArray()))];
    }

    /// <summary>Which batch goes to which field, as <see cref="ReplanPlan.BatchMap"/> says it.</summary>
    public static string Map(Weighing weighing, IReadOnlyList<SowingWay> ways) => string.Join(';', Enumerable.Range(0, ways.Count)
        .Where(i => ways[i].Batch >= 0).Select(i => weighing.Case.Fields[i].Code + "=" + weighing.Live[ways[i].Batch].Batch.Code).Order(StringComparer.Ordinal));

    private void Take(int depth, long days, long age, int calls)
    {
        var least = new Weights(LeastLost(depth), days + rest[depth].Days, age + rest[depth].Age, calls);
        if (front.Exists(f => f.Weights.NoWorseThan(least))) return;
        if (depth == order.Length)
        {
            Keep(least);
            return;
        }

        var field = order[depth];
        foreach (var way in weighing.Ways[field])
        {
            if (!TakeSeed(field, way)) continue;
            chosen[field] = way;
            if (FitsAir(way)) Take(depth + 1, days + way.AcreDays, age + way.WaterAge, calls + (way.Batch < 0 ? 1 : 0));
            GiveBack(field, way);
        }
    }

    private void Keep(Weights weights)
    {
        SowingWay[] ways = [.. chosen.OfType<SowingWay>()];
        if (!TrailerCount.Fits(weighing, ways) || (without.Count > 0 && without.Contains(Map(weighing, ways)))) return;
        front.RemoveAll(f => weights.NoWorseThan(f.Weights));
        front.Add((weights, ways));
    }

    private bool TakeSeed(int field, SowingWay way)
    {
        var need = weighing.Needs[field];
        if (way.Batch >= 0)
        {
            if (left[way.Batch] + Weighing.Parts(StandingBatches.ScaleStep) < need) return false;
            left[way.Batch] -= need;
            return true;
        }

        if (way.Morning < 0 || Variety(field) is not { } variety || !stock.TryGetValue(variety, out var hand)) return true;
        if (hand < need) return false;
        stock[variety] = hand - need;
        return true;
    }

    private void GiveBack(int field, SowingWay way)
    {
        if (way.Batch >= 0) left[way.Batch] += weighing.Needs[field];
        else if (way.Morning >= 0 && Variety(field) is { } variety && stock.TryGetValue(variety, out var hand)) stock[variety] = hand + weighing.Needs[field];
        chosen[field] = null;
    }

    private string? Variety(int field) => weighing.Case.Fields[field].Season.Variety;

    /// <summary>
    /// The morning still holds its fields, and so do the other mornings of its batch: one drain, for the first of them, has
    /// to do for all. An earlier drain never makes a later morning easier, so a branch that does not fit stays unfit.
    /// </summary>
    private bool FitsAir(SowingWay way)
    {
        if (way.Morning < 0) return true;
        for (var m = 0; m < weighing.Case.Mornings.Length; m++)
        {
            if (m != way.Morning && (way.Batch < 0 || !chosen.Any(w => w is not null && w.Batch == way.Batch && w.Morning == m))) continue;
            if (AirOrder.Fit(weighing, weighing.Case.Mornings[m], weighing.Jobs(chosen, m)) is null) return false;
        }

        return true;
    }

    /// <summary>Seed that is lost whatever the fields still open do: each is taken to empty every batch that fits it.</summary>
    private long LeastLost(int depth)
    {
        long lost = 0;
        for (var b = 0; b < left.Length; b++)
        {
            if (weighing.Live[b].Due) continue;
            var may = left[b];
            for (var d = depth; d < order.Length && may > 0; d++)
            {
                if (weighing.Ways[order[d]].Any(w => w.Batch == b)) may -= weighing.Needs[order[d]];
            }

            lost += Math.Max(0, may);
        }

        return lost;
    }
}
