using System.Globalization;
using Watersown.Schedule.Board;
using Watersown.Schedule.Board.Paper;
using Watersown.Wording;

namespace Watersown.Pocket.Schedule;

/// <summary>Writes places of the board as a drawing spells them, and names looks in the style sheet.</summary>
internal static class Drawn
{
    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    public static string Points(IEnumerable<PaperPoint> points) => string.Join(' ', points.Select(p => N(p.X) + "," + N(p.Y)));

    public static string Look(BarState state) => state switch
    {
        BarState.TooWet => "b-wet",
        BarState.DryGround => "b-dry",
        BarState.Working => "b-work",
        BarState.Filling => "b-fill",
        BarState.Full => "b-full",
        BarState.Sowing => "b-sow",
        BarState.Sown => "b-sown",
        BarState.InSoak => "b-soak",
        BarState.Drained => "b-drain",
        BarState.OnTheRoad => "b-road",
        _ => "b-unknown",
    };

    public static string Look(FlowUse use) => use switch
    {
        FlowUse.Holding => "b-full",
        FlowUse.Filling => "b-fill",
        FlowUse.Short => "b-short",
        _ => "b-over",
    };

    public static string Look(LaneUse use) => use switch
    {
        LaneUse.Sowing => "b-flown",
        LaneUse.InSoak => "b-soak",
        LaneUse.Drained => "b-drain",
        LaneUse.ComingBack => "b-road",
        LaneUse.PastUse => "b-spent",
        _ => "b-work",
    };

    public static string Look(BandKind kind) => kind switch { BandKind.Night => "band-night", BandKind.Wind => "band-wind", _ => "band-unknown" };
}
