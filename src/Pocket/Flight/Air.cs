using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Pocket.Flight;

/// <summary>Words for why nobody flew, short enough for a button.</summary>
internal static class Air
{
    public static string Word(StandDownReason why, Words words) => why == StandDownReason.Other ? words.FlightScreen.WhyOther : StageNames.Of(why, words.Story);
}
