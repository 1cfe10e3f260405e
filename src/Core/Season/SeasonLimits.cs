using Watersown.Land;

namespace Watersown.Season;

/// <summary>How far the figures of marks may go. Common practice, no source, unless geometry decides.</summary>
public static class SeasonLimits
{
    /// <summary>A mark may have happened this far ahead of now: clocks of phones differ.</summary>
    public static TimeSpan ClockSlack { get; } = TimeSpan.FromMinutes(10);

    /// <summary>A mark can be undone for so long after it was put down.</summary>
    public static TimeSpan UndoFor { get; } = TimeSpan.FromMinutes(10);

    /// <summary>An order of water is not put down later than this after it began.</summary>
    public static TimeSpan OrderBack { get; } = TimeSpan.FromDays(7);

    public static Limit Check { get; } = new("check", string.Empty) { Least = 1, Most = LandLimits.MaxBasinsPerField, Whole = true };

    public static Limit ToCheck { get; } = new("to_check", string.Empty) { Least = 1, Most = LandLimits.MaxBasinsPerField, Whole = true };

    public static Limit Box { get; } = new("box", string.Empty) { Least = 0, Most = 10_000, Whole = true };

    public static Limit Boards { get; } = new("height_in", "in") { Least = 0, Most = 30 };

    public static Limit Flow { get; } = new("flow_cfs", "cfs") { Least = 0, Most = 10_000, UsualMost = 60 };

    public static Limit Gap { get; } = new("width_ft", "ft") { Above = 0, Most = 5000, UsualMost = 100 };

    public static Limit Soaked { get; } = new("wet_lb", "lb wet") { Above = 0, Most = 10_000_000, UsualMost = 35_000 };

    /// <summary>Nothing left is a true answer.</summary>
    public static Limit Left { get; } = new("left_wet_lb", "lb wet") { Least = 0, Most = 10_000_000, UsualMost = 35_000 };

    public static Limit Load { get; } = new("wet_lb", "lb wet") { Above = 0, Most = 20_000, UsualMost = 5000 };

    public static Limit Loads { get; } = new("loads", "loads") { Least = 1, Most = 1000, Whole = true };

    public static Limit LoadNumber { get; } = new("number", string.Empty) { Least = 1, Most = 1000, Whole = true };

    public static Limit Part { get; } = new("part_ac", "ac") { Above = 0, Most = 2000 };

    public static Limit Zone { get; } = new("zone_ac", "ac") { Above = 0, Most = 2000 };

    public static Limit Rings { get; } = new("rings", "plants") { Least = 0, Most = 10_000, UsualMost = 120, Whole = true };

    public static Limit Ring { get; } = new("ring_ft2", "ft²") { Above = 0, Most = 1000, UsualLeast = 0.5, UsualMost = 12 };

    public static Limit Plan { get; } = new("plan", string.Empty) { Least = 1, Most = 1_000_000, Whole = true };

    public static Limit PlanNumber { get; } = new("number", string.Empty) { Least = 1, Most = 1_000_000, Whole = true };
}
