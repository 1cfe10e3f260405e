using Watersown.Growth;

namespace Watersown.Season;

/// <summary>How far the figures of the crop may go. Common practice, no source.</summary>
public static class CropLimits
{
    public static Limit Leaf { get; } = new("leaf", string.Empty) { Least = 1, Most = StagePoint.LeafMost, Whole = true };

    public static Limit Damaged { get; } = new("damaged_pct", "%") { Least = 0, Most = 100 };

    public static Limit Stand { get; } = new("stand_ft2", "plants/ft²") { Least = 0, Most = 1000 };

    public static Limit Share { get; } = new("share_pct", "%") { Least = 0, Most = 100 };

    public static Limit Nitrogen { get; } = new("n_lb_ac", "lb N/ac") { Above = 0, Most = 400, UsualMost = 220 };

    public static Limit Ticket { get; } = new("ticket_gal", "gal") { Above = 0, Most = 1_000_000 };

    public static Limit Reading { get; } = new("value", string.Empty) { Least = 0, Most = 10_000 };

    public static Limit Initiation { get; } = new("pi_dd_f", "°F·d") { Above = 0, Most = 5000, UsualLeast = 700, UsualMost = 1500 };

    public static Limit Heading { get; } = new("heading_dd_f", "°F·d") { Above = 0, Most = 6000, UsualLeast = 1400, UsualMost = 2800 };

    public static Limit Mature { get; } = new("mature_dd_f", "°F·d") { Above = 0, Most = 8000, UsualLeast = 2000, UsualMost = 3600 };
}

/// <summary>What can be wrong with what is told of the crop.</summary>
public static class CropProblems
{
    public static ProblemKind TargetsNotRising { get; } = new("CROP-001", ProblemWeight.Refuse,
        "{value} do not rise from panicle initiation over heading to mature. Give the warmth from sowing to each.",
        "{value} no van subiendo de inicio de panícula por espigado a madurez. Dé el calor desde la siembra hasta cada uno.");
}
