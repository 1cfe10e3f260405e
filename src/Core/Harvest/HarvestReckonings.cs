using Watersown.Reckon;

namespace Watersown.Harvest;

/// <summary>The calculations about harvest that can be asked for by name.</summary>
public static class HarvestReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [GrainWeight, Rate];

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

    private static Reckoning Rate => new(
        "harvest-rate",
        "How much land do combines and dryer take in a day, and how many days is that for all of it?",
        [
            new("combines", KeyKind.WholeNumber, string.Empty, "how many combines") { Least = 1, Most = 100 },
            new("each_ac_day", KeyKind.Number, "ac/day", "land one of them cuts in a day") { Least = 0, AboveLeast = true, Most = 1000 },
            new("yield_cwt_ac", KeyKind.Number, "cwt/ac", "grain expected, at 14 % moisture") { Least = 0, AboveLeast = true, Most = 300 },
            new("moisture_pct", KeyKind.Number, "%", "moisture when cut, wet basis") { Least = 5, Most = 45 },
            new("sets_day", KeyKind.Number, "sets/day", "sets of two trailers that the dryer takes in a day") { Least = 0, AboveLeast = true, Most = 1000 },
            new("set_lb", KeyKind.Number, "lb", "green grain in a set") { Least = 0, AboveLeast = true, Most = 200_000 },
            new("land_ac", KeyKind.Number, "ac", "all land to cut") { Least = 0, Most = 1_000_000 },
        ],
        [
            new("sets_possible", KeyKind.Number, "sets/day", "sets the combines could fill"),
            new("combining_ac_day", KeyKind.Number, "ac/day", "land the combines cut"),
            new("dryer_ac_day", KeyKind.Number, "ac/day", "land the dryer has room for"),
            new("days", KeyKind.Number, "days", "days at the slower of the two"),
        ],
        Sources.HarvestBalance,
        "combines=2 each_ac_day=45 yield_cwt_ac=95 moisture_pct=20 sets_day=15 set_lb=50000 land_ac=2900",
        Pace)
    { Limits = "Every day alike: no rain, no breakdown, no partly filled set, one moisture. An order of fields day by day is on the page of the harvest." };

    private static Outcome<Reckoned> Pace(ReckoningInput given)
    {
        var rate = HarvestRate.Of(
            Area.FromAcres(given.Whole("combines") * given.Number("each_ac_day")), GrainYield.FromHundredweightsPerAcre(given.Number("yield_cwt_ac")),
            Fraction.FromPercent(given.Number("moisture_pct")), given.Number("sets_day"), Mass.FromPounds(given.Number("set_lb")), Area.FromAcres(given.Number("land_ac")));
        return Outcome<Reckoned>.Of(new Reckoned(
            [("sets_possible", rate.Value.SetsPossible), ("combining_ac_day", rate.Value.Combining.Acres), ("dryer_ac_day", rate.Value.ByDryer.Acres), ("days", rate.Value.Days)],
            rate.Working));
    }

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
