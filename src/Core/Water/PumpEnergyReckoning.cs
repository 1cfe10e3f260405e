using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>What it takes to pump water.</summary>
internal static class PumpEnergyReckoning
{
    /// <summary>Below this a pump is worth a test.</summary>
    private const double PoorEfficiency = 0.5;

    public static Reckoning Reckoning => new(
        "pump-energy",
        "How much electricity does it take to pump this water, and what does it cost?",
        [
            new("volume_ac_ft", KeyKind.Number, "ac-ft", "water delivered") { Least = 0, Most = 1_000_000 },
            new("lift_ft", KeyKind.Number, "ft", "total dynamic head: standing lift, drawdown, friction and pressure together") { Least = 0, Most = 3000 },
            new("efficiency_pct", KeyKind.Number, "%", "wire-to-water efficiency") { Least = 0, AboveLeast = true, Most = 100 },
            new("price_kwh", KeyKind.Number, "$/kWh", "price of electricity") { Least = 0, Most = 100, Optional = true },
        ],
        [
            new("kwh", KeyKind.Number, "kWh", "electricity for all of it"),
            new("kwh_per_ac_ft", KeyKind.Number, "kWh", "electricity for one acre-foot"),
            new("cost", KeyKind.Number, "$", "cost of it") { NullMeans = "no price given" },
        ],
        Sources.EnergyToLift,
        "volume_ac_ft=70.8 lift_ft=60 efficiency_pct=60 price_kwh=0.20",
        Work)
    { Limits = "Electric pumps. Demand charges and standing charges are not in the cost." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var volume = Volume.FromAcreFeet(given.Number("volume_ac_ft"));
        var lift = Length.FromFeet(given.Number("lift_ft"));
        var efficiency = Fraction.FromPercent(given.Number("efficiency_pct"));
        var each = PumpEnergy.KilowattHours(Volume.FromAcreFeet(1), lift, efficiency);
        var all = PumpEnergy.KilowattHours(volume, lift, efficiency);
        var cost = given.NumberOrNone("price_kwh") * all;
        var working = Working.Empty
            .Given("W", "water delivered", given.Number("volume_ac_ft"), "ac-ft", "typed")
            .Given("H", "total dynamic head", given.Number("lift_ft"), "ft", "typed")
            .Given("η", "wire-to-water efficiency", given.Number("efficiency_pct"), "%", "typed")
            .Constant("k", "energy to lift one acre-foot by one foot", PumpEnergy.PerAcreFootFoot, "kWh", Sources.EnergyToLift)
            .Step("E1", "electricity for one acre-foot", each, "kWh", "k H / (η / 100)", Sources.EnergyToLift)
            .Step("E", "electricity for all of it", all, "kWh", "E1 W", Sources.Arithmetic);
        if (given.NumberOrNone("price_kwh") is { } price)
        {
            working = working
                .Given("p", "price of electricity", price, "$/kWh", "typed")
                .Step("C", "cost", Datum.Of(cost), "$", "E p", Sources.Arithmetic);
        }

        return Outcome<Reckoned>.Of(new Reckoned([("kwh", all), ("kwh_per_ac_ft", each), ("cost", Datum.Of(cost))], working) { Cautions = [.. Cautions(efficiency, cost)] });
    }

    private static IEnumerable<string> Cautions(Fraction efficiency, double? cost)
    {
        if (efficiency.Share < PoorEfficiency) yield return "Under 50 % from wire to water the pump is worth a test.";
        if (cost is not null) yield return "Demand and standing charges come on top.";
    }
}
