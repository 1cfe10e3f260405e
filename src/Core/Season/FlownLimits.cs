namespace Watersown.Season;

/// <summary>How far the figures of what was flown may go. Common practice, no source, unless geometry decides.</summary>
public static class FlownLimits
{
    public static Limit Billed { get; } = new("billed_ac", "ac") { Above = 0, Most = 5000, UsualMost = 400 };

    public static Limit Swath { get; } = new("swath_ft", "ft") { Above = 0, Most = 500, UsualLeast = 30, UsualMost = 90 };

    public static Limit Net { get; } = new("net_ac", "ac") { Above = 0, Most = 2000, UsualLeast = 5, UsualMost = 400 };

    public static Limit Skip { get; } = Share("skip_pct");

    public static Limit SkipError { get; } = Share("skip_error_pct");

    public static Limit Overlap { get; } = Share("overlap_pct");

    public static Limit OffField { get; } = Share("off_field_pct");

    public static Limit Passes { get; } = new("passes", string.Empty) { Least = 0, Most = 100_000, Whole = true };

    public static Limit Heading { get; } = new("heading_deg", "°") { Least = 0, Most = 360 };

    public static Limit Run { get; } = new("run_deg", "°") { Least = 0, Most = 360 };

    public static Limit Spacing { get; } = new("mean_spacing_ft", "ft") { Least = 0, Most = 100_000 };

    public static Limit Bare { get; } = new("bare_ac", "ac") { Least = 0, Most = 100_000 };

    public static Limit Latitude { get; } = new("lat", "°") { Least = -90, Most = 90 };

    public static Limit Longitude { get; } = new("lon", "°") { Least = -180, Most = 180 };

    public static Limit Degrees { get; } = new("lines", "°") { Least = -180, Most = 180 };

    private static Limit Share(string key) => new(key, "%") { Least = 0, Most = 100 };
}
