using Watersown.Documents.Json;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of money.</summary>
internal static class CostForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<CostPlanned>("cost-planned",
            [Need("category", new Outline.Word(MarkWords.Costs.All), "what on"), AnyField, May(CostLimits.PerAcre, "for each net acre"), May(CostLimits.PerHundredweight, "for each hundredweight of grain at 14 %")],
            (pen, f) =>
            {
                pen.Text("category", MarkWords.Costs.Of(f.Category));
                pen.Text("field", f.Field);
                pen.Number(CostLimits.PerAcre.Key, (double?)f.PerAcre?.Amount);
                pen.Number(CostLimits.PerHundredweight.Key, (double?)f.PerHundredweight?.Amount);
            },
            f => new CostPlanned(MarkWords.Costs.Find(f.Text("category"))!.Value)
            {
                Field = f.Text("field"),
                PerAcre = f.Number(CostLimits.PerAcre) is { } acre ? Money.FromDollars(acre) : null,
                PerHundredweight = f.Number(CostLimits.PerHundredweight) is { } weight ? Money.FromDollars(weight) : null,
            }),
        Of<CostPaid>("cost-paid",
            [
                Need("category", new Outline.Word(MarkWords.Costs.All), "what for"),
                Need(CostLimits.Amount, "the bill; below nothing for money back"),
                May("fields", new Outline.Several(Text, 500), "fields it falls on; all where not given"),
                May("what", Text, "for what, in the farm's words"),
                May("invoice", Text, "number of the bill"),
            ],
            (pen, f) =>
            {
                pen.Text("category", MarkWords.Costs.Of(f.Category));
                pen.Number(CostLimits.Amount.Key, (double)f.Amount.Amount);
                if (!f.Fields.IsEmpty) pen.Texts("fields", f.Fields.AsArray());
                pen.Text("what", f.What);
                pen.Text("invoice", f.Invoice);
            },
            f => new CostPaid(MarkWords.Costs.Find(f.Text("category"))!.Value, Money.FromDollars(f.Number(CostLimits.Amount)!.Value)) { Fields = [.. f.Texts("fields")], What = f.Text("what"), Invoice = f.Text("invoice") }),
    ];
}
