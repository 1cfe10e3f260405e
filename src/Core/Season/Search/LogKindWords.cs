using Watersown.Wording;

namespace Watersown.Season.Search;

/// <summary>The word for each sort of mark.</summary>
public static class LogKindWords
{
    public static string Of(LogKind kind, SeasonScreenWords words) => kind switch
    {
        LogKind.Water => words.KindWater,
        LogKind.Faults => words.KindFaults,
        LogKind.Ground => words.KindGround,
        LogKind.Holds => words.KindHolds,
        LogKind.Seed => words.KindSeed,
        LogKind.Flight => words.KindFlight,
        LogKind.Weather => words.KindWeather,
        LogKind.Scouting => words.KindScouting,
        LogKind.Harvest => words.KindHarvest,
        LogKind.Money => words.KindMoney,
        LogKind.Told => words.KindTold,
        LogKind.Plans => words.KindPlans,
        LogKind.Notes => words.KindNotes,
        LogKind.TakenBack => words.KindTakenBack,
        LogKind.Newer => words.KindNewer,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
