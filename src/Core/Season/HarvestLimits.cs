namespace Watersown.Season;

/// <summary>How far the figures of a harvest may go. Common practice, no source, unless arithmetic decides.</summary>
public static class HarvestLimits
{
    public static Limit Combines { get; } = new("combines", "combines") { Least = 0, Most = 100, UsualMost = 12, Whole = true };

    public static Limit EachDay { get; } = new("each_ac_day", "ac a day") { Above = 0, Most = 1000, UsualLeast = 15, UsualMost = 90 };

    public static Limit Sets { get; } = new("sets_day", "sets a day") { Least = 0, Most = 1000, UsualMost = 60, Whole = true };

    public static Limit SetWeight { get; } = new("set_lb", "lb") { Above = 0, Most = 200_000, UsualLeast = 30_000, UsualMost = 56_000 };

    public static Limit Expected { get; } = new("expected_cwt_ac", "cwt/ac") { Above = 0, Most = 300, UsualLeast = 40, UsualMost = 130 };

    public static Limit CutFrom { get; } = new("cut_from_pct", "%") { Least = 10, Most = 45, UsualLeast = 18, UsualMost = 26 };

    public static Limit CutTo { get; } = new("cut_to_pct", "%") { Least = 5, Most = 40, UsualLeast = 14, UsualMost = 22 };

    public static Limit Moisture { get; } = new("moisture_pct", "%") { Least = 5, Most = 45, UsualLeast = 12, UsualMost = 30 };

    public static Limit Foreign { get; } = new("foreign_pct", "%") { Least = 0, Most = 50, UsualMost = 5 };

    public static Limit Land { get; } = new("cut_ac", "ac") { Above = 0, Most = 2000 };

    public static Limit Gross { get; } = new("gross_lb", "lb") { Above = 0, Most = 300_000, UsualMost = 100_000 };

    public static Limit Tare { get; } = new("tare_lb", "lb") { Least = 0, Most = 200_000, UsualMost = 50_000 };

    public static Limit Net { get; } = new("gross_lb", "lb net") { Above = 0, Most = 200_000, UsualMost = 56_000 };

    public static Limit Share { get; } = new("share_pct", "%") { Above = 0, Most = 100 };

    public static Limit Head { get; } = new("head_pct", "%") { Least = 0, Most = 100, UsualLeast = 40, UsualMost = 72 };

    public static Limit Total { get; } = new("total_pct", "%") { Least = 0, Most = 100, UsualLeast = 55, UsualMost = 78 };

    /// <summary>What a field gave, once all of it is delivered.</summary>
    public static Limit Given { get; } = new("given_cwt_ac", "cwt/ac") { Least = 0, Most = 1000, UsualLeast = 40, UsualMost = 130 };
}
