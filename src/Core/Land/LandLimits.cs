namespace Watersown.Land;

/// <summary>How far the figures of the ground and its water may go. Common practice, no source, unless geometry decides.</summary>
public static class LandLimits
{
    /// <summary>Fields of one farm.</summary>
    public const int MaxFields = 2000;

    /// <summary>Checks of one field.</summary>
    public const int MaxBasinsPerField = 400;

    /// <summary>Letters of a short code of a field.</summary>
    public const int MaxCodeLength = 4;

    public static Limit SeasonYear { get; } = new("season_year", string.Empty) { Least = 1990, Most = 2200, Whole = true };

    public static Limit Net { get; } = new("net_ac", "ac") { Above = 0, Most = 2000, UsualLeast = 5, UsualMost = 400 };

    public static Limit Gross { get; } = new("gross_ac", "ac") { Above = 0, Most = 2000, UsualLeast = 5, UsualMost = 400 };

    public static Limit Certified { get; } = new("certified_ac", "ac") { Above = 0, Most = 2000 };

    public static Limit Ferry { get; } = new("ferry_mi", "mi") { Least = 0, Most = 500, UsualMost = 15 };

    public static Limit LongAxis { get; } = new("long_axis_deg", "degrees") { Least = 0, Most = 360 };

    public static Limit PassLength { get; } = new("pass_length_ft", "ft") { Above = 0, Most = 100_000, UsualMost = 15_000 };

    public static Limit InletLimit { get; } = new("inlet_limit_cfs", "cfs") { Above = 0, UsualMost = 60 };

    public static Limit Latitude { get; } = new("lat_deg", "degrees") { Least = -90, Most = 90 };

    public static Limit Longitude { get; } = new("lon_deg", "degrees") { Least = -180, Most = 180 };

    public static Limit BasinCount { get; } = new("checks", string.Empty) { Least = 1, Most = MaxBasinsPerField, Whole = true };

    public static Limit BasinNumber { get; } = new("number", string.Empty) { Least = 1, Most = MaxBasinsPerField, Whole = true };

    public static Limit BasinArea { get; } = new("ac", "ac") { Above = 0, Most = 2000 };

    public static Limit Drop { get; } = new("drop_ft", "ft") { UsualLeast = 0, UsualMost = 0.6 };

    public static Limit HighSpot { get; } = new("high_spot_in", "in") { Least = 0, Most = 36, UsualMost = 3 };

    public static Limit BoxNumber { get; } = new("number", string.Empty) { Least = 0, Most = 10_000, Whole = true };

    public static Limit FromCheck { get; } = new("from_check", string.Empty) { Least = 1, Most = MaxBasinsPerField, Whole = true };

    public static Limit ToCheck { get; } = new("to_check", string.Empty) { Least = 1, Most = MaxBasinsPerField, Whole = true };

    public static Limit BoxWidth { get; } = new("width_ft", "ft") { Above = 0, UsualLeast = 1.5, UsualMost = 8 };

    public static Limit Boards { get; } = new("boards_in", "in") { Least = 0, Most = 30 };

    public static Limit Fill { get; } = new("fill_ft", "ft") { Above = 0, Most = 3, UsualLeast = 0.3, UsualMost = 1.2 };

    public static Limit Seepage { get; } = new("seep_in_day", "in a day") { Least = 0, Most = 3, UsualMost = 0.5 };

    public static Limit LearnedFrom { get; } = new("learned_from", "seasons") { Least = 0, Most = 200, Whole = true };

    public static Limit Cap { get; } = new("cap_cfs", "cfs") { Above = 0, UsualMost = 60 };

    /// <summary>A pump's rating as its plate says it. 60 cfs is 26,930 gpm.</summary>
    public static Limit CapGallons { get; } = new("cap_gpm", "gpm") { Above = 0, UsualMost = 26_930 };

    public static Limit Notice { get; } = new("notice_h", "h") { Least = 0, Most = 2160, UsualMost = 168 };

    public static Limit MinStep { get; } = new("min_step_cfs", "cfs") { Above = 0, UsualMost = 20 };

    public static Limit Running { get; } = new("running_cfs", "cfs") { Least = 0, UsualMost = 60 };

    public static Limit TurnOn { get; } = new("on_h", "h") { Above = 0, Most = 2160 };

    public static Limit TurnEvery { get; } = new("every_h", "h") { Least = 6, Most = 4320, UsualMost = 1080 };

    public static Limit TurnFlow { get; } = new("turn_cfs", "cfs") { Above = 0, UsualMost = 60 };

    /// <summary>Nothing left is a true answer.</summary>
    public static Limit Left { get; } = new("left_cfs", "cfs") { Least = 0, UsualMost = 60 };

    public static Limit LeftShare { get; } = new("left_pct", "%") { Least = 0, Most = 100 };

    public static Limit NeedsFull { get; } = new("full_ac", "ac") { Least = 0, Most = 1_000_000 };

    public static Limit PadTrailers { get; } = new("pad_trailers", "trailers") { Least = 1, Most = 100, Whole = true };

    /// <summary>For the record only.</summary>
    public static Limit Runway { get; } = new("runway_ft", "ft") { Above = 0, UsualMost = 10_000 };

    public static Limit HazardHeight { get; } = new("height_ft", "ft") { Least = 0, Most = 10_000, UsualMost = 2000 };

    public static Limit HazardWithin { get; } = new("within_ft", "ft") { Least = 0, Most = 100_000 };

    public static Limit HazardHeightWithin { get; } = new("height_within_ft", "ft") { Least = 0, Most = 10_000 };

    /// <summary>A top above the sea may lie below it.</summary>
    public static Limit HazardTop { get; } = new("top_ft", "ft") { Least = -2000, Most = 40_000 };

    public static Limit HazardCount { get; } = new("count", string.Empty) { Least = 1, Most = 9, Whole = true };
}
