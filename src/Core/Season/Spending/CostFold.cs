using Watersown.Costs;
using Watersown.Schedule;
using Watersown.Season.Harvests;
using Watersown.Wording;

namespace Watersown.Season.Spending;

/// <summary>Plans and bills as the marks about them go by.</summary>
internal sealed class CostFold(ImmutableArray<Doubt>.Builder doubts)
{
    private readonly List<PlannedCost> planned = [];
    private readonly List<(Mark Mark, CostPaid Bill)> bills = [];

    public void Apply(Mark mark)
    {
        if (mark.Fact is CostPlanned plan)
        {
            var at = planned.FindIndex(p => p.Category == plan.Category && Same(p.Field, plan.Field));
            var before = at < 0 ? new PlannedCost(plan.Category) { Field = plan.Field } : planned[at];
            var now = before with { PerAcre = plan.PerAcre ?? before.PerAcre, PerHundredweight = plan.PerHundredweight ?? before.PerHundredweight };
            if (at < 0) planned.Add(now);
            else planned[at] = now;
        }

        if (mark.Fact is not CostPaid bill) return;
        if (bill.Invoice is { } number && bills.FirstOrDefault(b => Same(b.Bill.Invoice, number) && b.Bill.Amount == bill.Amount) is { Mark: { } first })
            doubts.Add(new Doubt(CostProblems.BillTwice.At(number, ("value", number), ("limit", Dollars(bill.Amount))), [first.Id, mark.Id]) { Field = bill.AboutField });
        bills.Add((mark, bill));
    }

    public CostBook Close(SeasonState state, HarvestBook harvest)
    {
        var book = new CostBook { Planned = [.. planned], Bills = [.. bills] };
        if (bills.Count == 0 || planned.Count == 0) return book;
        var lines = book.ByField(state.Farm, harvest).SelectMany(f => f.Lines).GroupBy(l => l.Category).Select(g => (g.Key, Planned: Sum(g.Select(l => l.Planned)), Spent: Sum(g.Select(l => l.Spent))));
        foreach (var (category, meant, spent) in lines)
        {
            if (meant <= Money.Zero || spent <= meant * 3) continue;
            doubts.Add(new Doubt(CostProblems.FarAbovePlan.At("costs", ("value", Dollars(spent)), ("limit", Dollars(meant))), [.. bills.Where(b => b.Bill.Category == category).Select(b => b.Mark.Id)]));
        }

        return book;
    }

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate(Money.Zero, (a, b) => a + b);

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static string Dollars(Money amount) => "$" + Say.Number((double)amount.Amount, 2);
}
