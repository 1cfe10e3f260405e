using Watersown.Reckon;

namespace Watersown.Seed;

/// <summary>What a truck with seed may weigh by the federal bridge formula; state, county and farm roads have rules of their own.</summary>
public static class BridgeWeight
{
    private const double Cap = 80_000;

    internal static Reckoning Reckoning => new(
        "bridge-weight",
        "What may a truck with its seed weigh on a federal road?",
        [
            new("axle_span_ft", KeyKind.Number, "ft", "from the first to the last axle of the group") { Least = 1, Most = 150 },
            new("axles", KeyKind.WholeNumber, string.Empty, "axles in the group") { Least = 2, Most = 15 },
            new("empty_lb", KeyKind.Number, "lb", "truck and trailer empty, where the whole of it is asked for") { Least = 0, Most = 100_000, Optional = true },
        ],
        [
            new("formula_lb", KeyKind.Number, "lb", "by the formula as it stands"),
            new("most_lb", KeyKind.Number, "lb", "to the nearest 500 lb, 80,000 lb at most"),
            new("seed_wet_lb", KeyKind.Number, "lb soaked", "left for seed; none without the empty weight"),
        ],
        Sources.BridgeFormula,
        "axle_span_ft=51 axles=5 empty_lb=32000",
        Reckon)
    { Limits = "Single axles 20,000 lb and pairs 34,000 lb are limits of their own. State, county and soft levee roads differ." };

    /// <summary>By the formula, before rounding.</summary>
    [Source(nameof(Sources.BridgeFormula), "W = 500 [L N / (N − 1) + 12 N + 36]")]
    public static Mass Of(Length span, [PlainNumber("axles")] int axles)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(axles, 2);
        return Mass.FromPounds(500 * ((span.Feet * axles / (axles - 1)) + (12 * axles) + 36));
    }

    /// <summary>To the nearest 500 lb, and never above 80,000 lb.</summary>
    [Source(nameof(Sources.BridgeFormula), "nearest 500 lb; gross 80,000 lb")]
    public static Mass Most(Length span, [PlainNumber("axles")] int axles) =>
        Mass.FromPounds(Math.Min(Cap, 500 * Math.Round(Of(span, axles).Pounds / 500, MidpointRounding.AwayFromZero)));

    private static Outcome<Reckoned> Reckon(ReckoningInput given)
    {
        var (span, axles) = (Length.FromFeet(given.Number("axle_span_ft")), given.Whole("axles"));
        var (formula, most) = (Of(span, axles), Most(span, axles));
        var empty = given.NumberOrNone("empty_lb");
        if (empty > most.Pounds) return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("empty_lb", ("value", Wording.Say.Number(empty.Value) + " lb"), ("limit", "it may weigh " + Wording.Say.Number(most.Pounds) + " lb in all"), ("remedy", "Check the weight and the axles.")));
        var working = Working.Empty
            .Given("L", "first to last axle", span.Feet, "ft", "typed")
            .Given("N", "axles", axles, string.Empty, "typed")
            .Given("E", "empty", Datum.Of(empty), "lb", empty is null ? "not given" : "typed")
            .Step("W", "by the formula", formula.Pounds, "lb", "500 [L N / (N − 1) + 12 N + 36]", Sources.BridgeFormula)
            .Step("M", "most", most.Pounds, "lb", "W to the nearest 500, 80,000 at most", Sources.BridgeFormula);
        return Outcome<Reckoned>.Of(new Reckoned([("formula_lb", formula.Pounds), ("most_lb", most.Pounds), ("seed_wet_lb", Datum.Of(most.Pounds - empty))], working)
        {
            Cautions = ["Law in outline, of one country, and perhaps out of date: the haulier knows the rule of the road."],
        });
    }
}
