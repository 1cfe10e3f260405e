namespace Watersown.Costs;

/// <summary>Planned and spent of one field, and what that means for an acre and a hundredweight.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Land">Net land.</param>
/// <param name="Lines">By category, those with something in them.</param>
public sealed record FieldCost(string Field, Area Land, ImmutableArray<CostLine> Lines)
{
    /// <summary>Grain delivered, at the moisture it is paid at; none where no ticket tells.</summary>
    public Mass? Grain { get; init; }

    public Money Planned => Lines.Aggregate(Money.Zero, (sum, l) => sum + l.Planned);

    public Money Spent => Lines.Aggregate(Money.Zero, (sum, l) => sum + l.Spent);

    public Money PlannedPerAcre => Per(Planned, Land.Acres);

    public Money SpentPerAcre => Per(Spent, Land.Acres);

    /// <summary>Spent for each hundredweight; none without grain.</summary>
    public Money? SpentPerHundredweight => Grain is { Kilograms: > 0 } grain ? Per(Spent, grain.Hundredweights) : null;

    private static Money Per(Money amount, double of) => of > 0 ? Money.FromDollars((double)amount.Amount / of) : Money.Zero;
}

/// <summary>One category of one field.</summary>
public readonly record struct CostLine(CostCategory Category, Money Planned, Money Spent);

/// <summary>Lays plans and bills on fields.</summary>
public static class FieldCosts
{
    /// <summary>One for each field, in their order.</summary>
    /// <param name="fields">Code, net land, grain expected or delivered for costs by grain.</param>
    /// <param name="planned">The newest word for each category and field; a field's own stands before the one for all.</param>
    /// <param name="spent">Bills.</param>
    [Source(nameof(Sources.FarmRecord), "bills and plans as typed, laid on net land")]
    public static ImmutableArray<FieldCost> Of(ImmutableArray<(string Code, Area Land, Mass? Expected, Mass? Delivered)> fields, ImmutableArray<PlannedCost> planned, ImmutableArray<SpentCost> spent)
    {
        var sums = fields.ToDictionary(f => f.Code, _ => new Dictionary<CostCategory, (Money Planned, Money Spent)>(), StringComparer.OrdinalIgnoreCase);
        foreach (var field in fields)
        {
            foreach (var category in planned.Select(p => p.Category).Distinct())
            {
                var mine = planned.LastOrDefault(p => p.Category == category && string.Equals(p.Field, field.Code, StringComparison.OrdinalIgnoreCase)) ?? planned.LastOrDefault(p => p.Category == category && p.Field is null);
                if (mine is null) continue;
                Add(sums[field.Code], category, (mine.PerAcre * field.Land.Acres) + (mine.PerHundredweight * ((field.Delivered ?? field.Expected)?.Hundredweights ?? 0)), Money.Zero);
            }
        }

        foreach (var bill in spent)
        {
            ImmutableArray<(string Code, Area Land, Mass? Expected, Mass? Delivered)> on =
                bill.Fields.IsEmpty ? fields : [.. fields.Where(f => bill.Fields.Contains(f.Code, StringComparer.OrdinalIgnoreCase))];
            if (on.IsEmpty) continue;
            foreach (var (field, part) in on.Zip(CostSpreading.By(bill.Amount, [.. on.Select(f => f.Land)]))) Add(sums[field.Code], bill.Category, Money.Zero, part);
        }

        return
        [
            .. fields.Select(f => new FieldCost(f.Code, f.Land, [.. sums[f.Code].OrderBy(c => c.Key).Select(c => new CostLine(c.Key, c.Value.Planned, c.Value.Spent))]) { Grain = f.Delivered }),
        ];
    }

    private static void Add(Dictionary<CostCategory, (Money Planned, Money Spent)> sums, CostCategory category, Money planned, Money spent)
    {
        var before = sums.GetValueOrDefault(category);
        sums[category] = (before.Planned + planned, before.Spent + spent);
    }
}
