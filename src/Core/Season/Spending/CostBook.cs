using Watersown.Costs;
using Watersown.Season.Harvests;

namespace Watersown.Season.Spending;

/// <summary>What marks tell of money.</summary>
public sealed record CostBook
{
    public static CostBook Empty { get; } = new();

    /// <summary>The newest word for each category and field.</summary>
    public ImmutableArray<PlannedCost> Planned { get; init; } = [];

    /// <summary>Bills in order.</summary>
    public ImmutableArray<(Mark Mark, CostPaid Bill)> Bills { get; init; } = [];

    /// <summary>Planned and spent by field.</summary>
    /// <param name="farm">The fields and their land.</param>
    /// <param name="harvest">Grain expected and delivered.</param>
    public ImmutableArray<FieldCost> ByField(Land.Farm farm, HarvestBook harvest)
    {
        var tally = harvest.Tally();
        return FieldCosts.Of(
            [.. farm.Fields.Select(f => (f.Code, f.Net, harvest.Means.Expected is { } grain ? grain * f.Net : (Mass?)null, tally.Fields.FirstOrDefault(t => string.Equals(t.Field, f.Code, StringComparison.OrdinalIgnoreCase))?.Paid))],
            Planned,
            [.. Bills.Select(b => new SpentCost(b.Bill.Category, b.Bill.Amount, b.Bill.Fields.AsArray()))]);
    }
}
