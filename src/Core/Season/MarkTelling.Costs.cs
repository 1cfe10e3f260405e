using Watersown.Costs;

namespace Watersown.Season;

public sealed partial class MarkTelling
{
    private string? Cost(MarkFact fact) => fact switch
    {
        CostPlanned f => Joined(
            Fill(tell.Words.Cost.MarkPlanned, ("what", CostNames.Of(f.Category, tell.Words.Cost))),
            f.PerAcre is { } acre ? Fill(tell.Words.Cost.PerAcre, ("amount", Cents(acre))) : null,
            f.PerHundredweight is { } weight ? Fill(tell.Words.Cost.PerHundredweight, ("amount", Cents(weight))) : null),
        CostPaid f => Joined(
            Fill(tell.Words.Cost.MarkPaid, ("what", CostNames.Of(f.Category, tell.Words.Cost)), ("amount", Cents(f.Amount))),
            f.What, f.Invoice, f.Fields.Count > 1 ? string.Join(", ", f.Fields) : null),
        _ => null,
    };

    private static string Cents(Money amount) => "$" + Wording.Say.Number((double)amount.Amount, 2);
}
