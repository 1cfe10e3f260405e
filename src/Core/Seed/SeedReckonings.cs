using Watersown.Reckon;

namespace Watersown.Seed;

/// <summary>The calculations about seed that can be asked for by name.</summary>
public static class SeedReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [WetWeight, BridgeWeight.Reckoning];

    private static Reckoning WetWeight => new(
        "wet-weight",
        "What will this dry seed weigh once soaked and drained?",
        [
            new("dry_lb", KeyKind.Number, "lb dry", "dry seed") { Least = 0, Most = 100_000_000 },
            new("moisture_before_pct", KeyKind.Number, "%", "moisture before soaking, wet basis") { Least = 0, Most = 99 },
            new("moisture_after_pct", KeyKind.Number, "%", "moisture after draining, wet basis") { Least = 0, Most = 99 },
        ],
        [
            new("wet_lb", KeyKind.Number, "lb soaked", "soaked seed"),
            new("wet_factor", KeyKind.Number, string.Empty, "soaked weight over dry weight"),
        ],
        Sources.MassBalance,
        "dry_lb=15450 moisture_before_pct=13 moisture_after_pct=30",
        WeighSoaked)
    { Limits = "Water clinging to the outside of the seed is not counted: weigh a sample after draining and use that." };

    private static Outcome<Reckoned> WeighSoaked(ReckoningInput given)
    {
        var dry = DrySeed.FromPounds(given.Number("dry_lb"));
        var before = Fraction.FromPercent(given.Number("moisture_before_pct"));
        var after = Fraction.FromPercent(given.Number("moisture_after_pct"));
        if (after < before)
        {
            return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("moisture_after_pct",
                ("value", Wording.Say.Figure(after.Percent) + " %"),
                ("limit", "soaked seed is never drier than the " + Wording.Say.Figure(before.Percent) + " % it had before"),
                ("remedy", "Check which of the two moistures is which.")));
        }

        var factor = Soaking.WetFactor(before, after);
        var wet = Soaking.Weigh(dry, factor);
        var working = Working.Empty
            .Given("D", "dry seed", dry.Pounds, "lb dry", "typed")
            .Given("m0", "moisture before soaking, wet basis", before.Percent, "%", "typed")
            .Given("m1", "moisture after draining, wet basis", after.Percent, "%", "typed")
            .Step("F", "soaked weight over dry weight", factor, string.Empty, "(100 - m0) / (100 - m1)", Sources.MassBalance)
            .Step("W", "soaked seed", wet.Pounds, "lb soaked", "D × F", Sources.MassBalance);
        return Outcome<Reckoned>.Of(new Reckoned([("wet_lb", wet.Pounds), ("wet_factor", factor)], working)
        {
            Cautions = ["Weigh a drained sample of this lot: the scale ticket beats any factor."],
        });
    }
}
