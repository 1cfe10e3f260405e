using Watersown.Season.Boards;

namespace Watersown.Season.Filling;

/// <summary>Paper on which water is drawn over time: time to the right, water upward from the ground.</summary>
/// <param name="Scale">From when until when.</param>
public sealed record TimePaper(TimeScale Scale)
{
    [PlainNumber("points of paper")]
    public static double Width => 360;

    /// <summary>Upper edge of what is drawn.</summary>
    [PlainNumber("points of paper, downward")]
    public static double Top => 10;

    [PlainNumber("points of paper, to the right")]
    public static double LeftEdge => 28;

    [PlainNumber("points of paper, to the right")]
    public static double RightEdge => 357;

    /// <summary>Where there is no water.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Ground { get; init; }

    /// <summary>With room for the days under it.</summary>
    [PlainNumber("points of paper")]
    public double Height => Ground + 20;

    /// <summary>Where a moment stands.</summary>
    [PlainNumber("points of paper, to the right")]
    public double At(DateTimeOffset moment) => Math.Round(LeftEdge + ((RightEdge - LeftEdge) * Scale.At(moment).Share), 2);

    /// <summary>How high a share of all that there is room for stands.</summary>
    [PlainNumber("points of paper, downward")]
    public double High([PlainNumber("share of the most that is drawn")] double share) => Math.Round(Ground - ((Ground - Top) * Math.Min(1, share)), 2);
}
