using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Pocket.Water.Ditches;

/// <summary>What a source is, in a word.</summary>
internal static class DitchSaid
{
    public static string Kind(WaterSourceKind kind, DitchWords words) => kind switch
    {
        WaterSourceKind.DistrictTurnout => words.Turnout,
        WaterSourceKind.LiftPump => words.Pump,
        WaterSourceKind.Well => words.Well,
        WaterSourceKind.Tailwater => words.Tailwater,
        _ => words.JoinedDitch,
    };
}
