using Watersown.Reckon;

namespace Watersown.Costs;

/// <summary>The calculations about money that can be asked for by name.</summary>
public static class CostReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [Even];

    private static Reckoning Even => new(
        "break-even",
        "Which yield and which price just pay what an acre costs?",
        [
            new("cost_ac", KeyKind.Number, "$/ac", "cost of an acre") { Least = 0, Most = 100_000 },
            new("price_cwt", KeyKind.Number, "$/cwt", "price of grain") { Least = 0, AboveLeast = true, Most = 1000 },
            new("yield_cwt_ac", KeyKind.Number, "cwt/ac", "grain of an acre at 14 %, where known") { Least = 0, AboveLeast = true, Most = 300, Optional = true },
            new("farm_share_pct", KeyKind.Number, "%", "the farm's share of the grain; all where not given") { Least = 0, AboveLeast = true, Most = 100, Optional = true },
        ],
        [
            new("yield_needed_cwt_ac", KeyKind.Number, "cwt/ac", "grain an acre needs"),
            new("price_needed_cwt", KeyKind.Number, "$/cwt", "price a hundredweight needs") { Nullable = true, NullMeans = "no yield given" },
            new("margin_ac", KeyKind.Number, "$/ac", "left for an acre") { Nullable = true, NullMeans = "no yield given" },
        ],
        Sources.NswPlantStand,
        "cost_ac=1691 price_cwt=18 yield_cwt_ac=95",
        Work)
    { Limits = "An estimate from figures typed, no advice to a lender or a landlord: settlements follow the lease." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var even = BreakEven.Of(
            Money.FromDollars(given.Number("cost_ac")), Money.FromDollars(given.Number("price_cwt")),
            given.NumberOrNone("yield_cwt_ac") is { } grain ? GrainYield.FromHundredweightsPerAcre(grain) : null,
            Fraction.FromPercent(given.NumberOrNone("farm_share_pct") ?? 100));
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("yield_needed_cwt_ac", even.Value.Yield.HundredweightsPerAcre),
                ("price_needed_cwt", even.Value.Price is { } price ? (Datum)(double)price.Amount : new Datum.Nothing()),
                ("margin_ac", even.Value.Margin is { } margin ? (Datum)(double)margin.Amount : new Datum.Nothing()),
            ],
            even.Working));
    }
}
