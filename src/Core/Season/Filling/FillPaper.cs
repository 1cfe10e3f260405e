using Watersown.Season.Boards;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Season.Filling;

/// <summary>A check's water over time on paper: time to the right, depth upward.</summary>
/// <param name="Check">The check.</param>
public sealed record FillPaper(CheckScene Check)
{
    private const double Left = 26, Right = 356, Top = 10, Ground = 92;

    /// <summary>Depth at the top of the paper, unless somebody has read more.</summary>
    private static readonly WaterDepth usualTop = WaterDepth.FromInches(4);

    [PlainNumber("points of paper")]
    public static double Width => 360;

    [PlainNumber("points of paper")]
    public static double Height => 112;

    /// <summary>Where the ground lies.</summary>
    [PlainNumber("points of paper, downward")]
    public static double GroundAt => Ground;

    [PlainNumber("points of paper, to the right")]
    public static double LeftEdge => Left;

    [PlainNumber("points of paper, to the right")]
    public static double RightEdge => Right;

    /// <summary>From first water to now, by what was seen; empty where nobody has seen any.</summary>
    public required ImmutableArray<PaperPoint> Seen { get; init; }

    /// <summary>From now on.</summary>
    public required ImmutableArray<PaperPoint> Ahead { get; init; }

    public required ImmutableArray<PaperPoint> Readings { get; init; }

    /// <summary>Least and greatest depth for seed.</summary>
    [PlainNumber("points of paper, downward")]
    public required (double Most, double Least) Wanted { get; init; }

    /// <summary>Where water is first expected; none where it is there, or never is.</summary>
    [PlainNumber("points of paper, to the right")]
    public double? Wet { get; init; }

    /// <summary>Where the last ground is expected to be covered.</summary>
    [PlainNumber("points of paper, to the right")]
    public double? Full { get; init; }

    /// <summary>Where a moment stands.</summary>
    [PlainNumber("points of paper, to the right")]
    public static double At(TimeScale scale, DateTimeOffset moment) => Math.Round(Left + ((Right - Left) * scale.At(moment).Share), 2);

    public static FillPaper Of(FillScene scene, CheckScene check)
    {
        var most = Top4(check);
        double High(WaterDepth depth) => Math.Round(Ground - ((Ground - Top) * Math.Min(1, depth / most)), 2);
        PaperPoint Point(DateTimeOffset at, WaterDepth depth) => new(At(scene.Scale, at), High(depth));
        var start = check.Ahead.IsEmpty ? WaterDepth.Zero : check.Ahead[0].Depth;
        ImmutableArray<PaperPoint> read = [.. check.Readings.Where(r => scene.Scale.Holds(r.At)).Select(r => Point(r.At, r.Depth))];
        ImmutableArray<PaperPoint> seen = check.SeenWet is { } wet && wet <= scene.Now ? [Point(wet, WaterDepth.Zero), .. read.Where(r => r.X > At(scene.Scale, wet)), Point(scene.Now, start)] : [];
        return new FillPaper(check)
        {
            Seen = seen,
            Ahead = [.. check.Ahead.Where(d => scene.Scale.Holds(scene.Now + d.At)).Select(d => Point(scene.Now + d.At, d.Depth))],
            Readings = read,
            Wanted = (High(WaterTargets.SowingMost), High(WaterTargets.SowingLeast)),
            Wet = check.WetAt is { } at && scene.Scale.Holds(at) ? At(scene.Scale, at) : null,
            Full = check.FullAt is { } full && scene.Scale.Holds(full) ? At(scene.Scale, full) : null,
        };
    }

    private static WaterDepth Top4(CheckScene check)
    {
        var deepest = check.Readings.Select(r => r.Depth).Concat(check.Ahead.Select(d => d.Depth)).Append(WaterDepth.Zero).Max();
        return deepest * 1.1 > usualTop ? deepest * 1.1 : usualTop;
    }
}
