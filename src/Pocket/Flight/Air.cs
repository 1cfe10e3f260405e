using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Pocket.Flight;

/// <summary>Words for why nobody flew.</summary>
internal static class Air
{
    public static string Word(StandDownReason why, FlightScreenWords words) => why switch
    {
        StandDownReason.Wind => words.WhyWind,
        StandDownReason.Rain => words.WhyRain,
        StandDownReason.Fog => words.WhyFog,
        StandDownReason.Aeroplane => words.WhyAeroplane,
        StandDownReason.Seed => words.WhySeed,
        StandDownReason.Field => words.WhyField,
        StandDownReason.Other => words.WhyOther,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
