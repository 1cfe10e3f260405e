using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>What thin air takes off a load.</summary>
public static partial class FlightReckonings
{
    private const string FixedPropeller = "fixed";

    private static Reckoning HotStrip => new(
        "hot-strip",
        "How much lighter is an aeroplane to be in thin air to need no more strip?",
        [
            new("density_altitude_ft", KeyKind.Number, "ft", "density altitude at the strip, as reckon air-density gives it") { Least = -5000, Most = 15_000 },
            Above("takeoff_lb", "lb", "weight at take-off that the strip was good for in standard air at sea level", 100_000),
            new("propeller", KeyKind.Text, string.Empty, "constant-speed where not told") { Choices = ["constant-speed", FixedPropeller], Optional = true },
        ],
        [
            Result("distance_factor", string.Empty, "take-off distance at the same weight over that in standard air at sea level"),
            Result("same_distance_lb", "lb", "weight that needs no more distance than then"),
            Result("lighter_lb", "lb", "how much lighter that is"),
        ],
        Sources.MountainFlyingRules,
        "density_altitude_ft=2722 takeoff_lb=9000",
        ReckonHotStrip)
    { Limits = "A sketch for planning loads, from rules made for light piston aeroplanes. Wind, slope, surface and the aeroplane's own data are not in it." };

    private static Outcome<Reckoned> ReckonHotStrip(ReckoningInput given)
    {
        var (altitude, weight) = (Length.FromFeet(given.Number("density_altitude_ft")), Mass.FromPounds(given.Number("takeoff_lb")));
        var propeller = given.Has("propeller") && given.Text("propeller") == FixedPropeller ? Propeller.Fixed : Propeller.ConstantSpeed;
        var factor = HotDay.DistanceFactor(altitude, propeller);
        var same = HotDay.SameDistance(weight, factor);
        var working = Working.Empty
            .Given("h", "density altitude", altitude.Feet, "ft", "typed")
            .Given("W", "weight at take-off", weight.Pounds, "lb", "typed")
            .Given("p", "propeller", propeller == Propeller.Fixed ? FixedPropeller : "constant-speed", string.Empty, given.Has("propeller") ? "typed" : "not told")
            .Step("f", "take-off distance over that in standard air", factor, string.Empty, propeller == Propeller.Fixed ? "1 + 0.12 h/1,000 to 8,000 ft, 0.20 above" : "1 + 0.10 h/1,000 to 8,000 ft, 0.15 above", Sources.MountainFlyingRules)
            .Step("Wh", "weight for the same distance", same.Pounds, "lb", "W / √f", Sources.MountainFlyingRules);
        return Outcome<Reckoned>.Of(new Reckoned([("distance_factor", factor), ("same_distance_lb", same.Pounds), ("lighter_lb", (weight - same).Pounds)], working)
        {
            Cautions = ["No strip length, load or take-off is judged here: the aeroplane's own data and the pilot do that.", PilotDecides],
        });
    }
}
