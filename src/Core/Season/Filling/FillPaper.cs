using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Season.Filling;

/// <summary>A check's water over time on paper.</summary>
/// <param name="Check">The check.</param>
/// <param name="Paper">Where moments and depths stand.</param>
public sealed record FillPaper(CheckScene Check, TimePaper Paper)
{
    /// <summary>Depth at the top of the paper, unless somebody has read more.</summary>
    private static readonly WaterDepth usualTop = WaterDepth.FromInches(4);

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

    public static FillPaper Of(FillScene scene, CheckScene check)
    {
        var (paper, most) = (new TimePaper(scene.Scale) { Ground = 92 }, MostOf(check));
        double High(WaterDepth depth) => paper.High(depth / most);
        PaperPoint Point(DateTimeOffset at, WaterDepth depth) => new(paper.At(at), High(depth));
        var start = check.Ahead.IsEmpty ? WaterDepth.Zero : check.Ahead[0].Depth;
        ImmutableArray<PaperPoint> read = [.. check.Readings.Where(r => scene.Scale.Holds(r.At)).Select(r => Point(r.At, r.Depth))];
        ImmutableArray<PaperPoint> seen = check.SeenWet is { } wet && wet <= scene.Now ? [Point(wet, WaterDepth.Zero), .. read.Where(r => r.X > paper.At(wet)), Point(scene.Now, start)] : [];
        return new FillPaper(check, paper)
        {
            Seen = seen,
            Ahead = [.. check.Ahead.Where(d => scene.Scale.Holds(scene.Now + d.At)).Select(d => Point(scene.Now + d.At, d.Depth))],
            Readings = read,
            Wanted = (High(WaterTargets.SowingMost), High(WaterTargets.SowingLeast)),
            Wet = check.WetAt is { } at && scene.Scale.Holds(at) ? paper.At(at) : null,
        };
    }

    private static WaterDepth MostOf(CheckScene check)
    {
        var deepest = check.Readings.Select(r => r.Depth).Concat(check.Ahead.Select(d => d.Depth)).Append(WaterDepth.Zero).Max();
        return deepest * 1.1 > usualTop ? deepest * 1.1 : usualTop;
    }
}
