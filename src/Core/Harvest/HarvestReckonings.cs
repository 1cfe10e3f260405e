using Watersown.Reckon;

namespace Watersown.Harvest;

/// <summary>The calculations about harvest that can be asked for by name.</summary>
public static class HarvestReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [GrainWeight];

    private static Reckoning GrainWeight => new(
        "grain-weight",
        "What does this green grain weigh at another moisture?",
        [
            new("green_cwt", KeyKind.Number, "cwt", "grain as weighed") { Least = 0, Most = 100_000_000 },
            new("moisture_pct", KeyKind.Number, "%", "its moisture, wet basis") { Least = 0, Most = 99 },
            new("to_moisture_pct", KeyKind.Number, "%", "moisture to weigh it at, wet basis; 14 is usual") { Least = 0, Most = 99 },
        ],
        [new("cwt", KeyKind.Number, "cwt", "weight at that moisture")],
        Sources.IrriMoisture,
        "green_cwt=102.1 moisture_pct=20 to_moisture_pct=14",
        Weigh)
    { Limits = "Dry matter is conserved. Chaff, dust and grain lost in drying are not in it: a dryer's own shrink table governs what is paid." };

    private static Outcome<Reckoned> Weigh(ReckoningInput given)
    {
        var green = Mass.FromHundredweights(given.Number("green_cwt"));
        var from = Fraction.FromPercent(given.Number("moisture_pct"));
        var to = Fraction.FromPercent(given.Number("to_moisture_pct"));
        var weight = GrainMoisture.WeightAt(green, from, to);
        var working = Working.Empty
            .Given("W", "grain as weighed", green.Hundredweights, "cwt", "typed")
            .Given("M", "its moisture, wet basis", from.Percent, "%", "typed")
            .Given("M2", "moisture to weigh it at, wet basis", to.Percent, "%", "typed")
            .Step("D", "dry matter", green.Hundredweights * (1 - from.Share), "cwt", "W (100 - M) / 100", Sources.MassBalance)
            .Step("W2", "weight at that moisture", weight.Hundredweights, "cwt", "W (100 - M) / (100 - M2)", Sources.IrriMoisture);
        return Outcome<Reckoned>.Of(new Reckoned([("cwt", weight.Hundredweights)], working) { Cautions = Cautions(from, to) });
    }

    private static ImmutableArray<string> Cautions(Fraction from, Fraction to)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (from.Percent is < 12 or > 30) cautions.Add("Harvest moisture is usually 12 to 30 % (common practice, no source): check the meter.");
        if (to > from) cautions.Add("The grain is drier than the moisture asked for: a buyer seldom pays for water that is not there.");
        cautions.Add("The dryer's ticket and its own shrink table govern settlement.");
        return cautions.ToImmutable();
    }
}
