namespace Watersown.Harvest;

/// <summary>How much land a day of harvest takes: by the combines, and by what the dryer has room for.</summary>
/// <param name="Combining">Land that the combines cut in a day.</param>
/// <param name="ByDryer">Land whose green grain fills the dryer's room in a day.</param>
/// <param name="SetsPossible">Sets that the combines would fill in a day.</param>
/// <param name="Days">Days for all of the land at the slower of the two.</param>
public sealed record HarvestRate(Area Combining, Area ByDryer, [property: PlainNumber("sets of two trailers")] double SetsPossible, [property: PlainNumber("days")] double Days)
{
    public bool DryerBinds => ByDryer < Combining;

    /// <summary>The slower of the two.</summary>
    public Area InADay => DryerBinds ? ByDryer : Combining;

    /// <summary>Works it out with its working.</summary>
    /// <param name="combining">Land that all combines cut in a day.</param>
    /// <param name="yield">Grain at the moisture it is paid at.</param>
    /// <param name="moisture">Moisture it is cut at.</param>
    /// <param name="sets">Sets in a day.</param>
    /// <param name="set">Green grain in a set.</param>
    /// <param name="land">All land to cut.</param>
    public static Worked<HarvestRate> Of(Area combining, GrainYield yield, Fraction moisture, [PlainNumber("sets in a day")] double sets, Mass set, Area land)
    {
        var green = GrainMoisture.WeightAt(Mass.FromHundredweights(yield.HundredweightsPerAcre), HarvestMeans.PaidAt, moisture).Hundredweights;
        var possible = combining.Acres * green / set.Hundredweights;
        var byDryer = Area.FromAcres(sets * set.Hundredweights / green);
        var slower = byDryer < combining ? byDryer : combining;
        var days = slower > Area.Zero ? land / slower : 0;
        var working = Working.Empty
            .Given("A", "land the combines cut in a day", combining.Acres, "ac", "told")
            .Given("Y", "grain at 14 % moisture", yield.HundredweightsPerAcre, "cwt/ac", "told")
            .Given("M", "moisture when cut, wet basis", moisture.Percent, "%", "samples, or the middle of the range")
            .Given("D", "sets the dryer takes in a day", sets, "sets", "told")
            .Given("S", "green grain in a set", set.Hundredweights, "cwt", "told, or the usual")
            .Given("L", "land to cut", land.Acres, "ac", "fields sown and not cut")
            .Step("G", "green grain", green, "cwt/ac", "Y (100 - 14) / (100 - M)", Sources.IrriMoisture)
            .Step("P", "sets the combines could fill", possible, "sets a day", "A G / S", Sources.HarvestBalance)
            .Step("B", "land the dryer has room for", byDryer.Acres, "ac a day", "D S / G", Sources.HarvestBalance)
            .Step("N", "days at the slower of the two", days, "days", "L / min(A, B)", Sources.HarvestBalance);
        return new(new HarvestRate(combining, byDryer, possible, days), working);
    }
}
