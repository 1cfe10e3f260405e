using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>The calculations about flying seed that can be asked for by name; one file for each sort.</summary>
public static partial class FlightReckonings
{
    private const string PilotDecides = "A planning figure, not flight guidance: the pilot decides whether, how and with what load to fly.";

    public static ImmutableArray<Reckoning> All { get; } =
    [
        LandCovered, GateOpening, WeighOut,
        EqualLoads, HopperLoad, FieldHours,
        StraightPasses, LaidField, WorkDone, Evenness, TurnRadius, AtTheLoader, HotStrip, SeedThrow,
        Covered, Steering, ReceiverWords,
    ];

    private static ReckoningKey GroundSpeed(string meaning) =>
        new("speed_mph", KeyKind.Number, "mph", meaning) { Least = 0, AboveLeast = true, Most = 300 };

    private static ReckoningKey SwathFeet =>
        new("swath_ft", KeyKind.Number, "ft", "distance from one pass to the next") { Least = 0, AboveLeast = true, Most = 500 };

    private static ReckoningKey Above(string key, string unit, string meaning, double most) =>
        new(key, KeyKind.Number, unit, meaning) { Least = 0, AboveLeast = true, Most = most };

    private static ReckoningKey FromZero(string key, string unit, string meaning, double most) =>
        new(key, KeyKind.Number, unit, meaning) { Least = 0, Most = most };

    private static ReckoningKey Result(string key, string unit, string meaning) => new(key, KeyKind.Number, unit, meaning);
}
