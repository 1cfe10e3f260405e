namespace Watersown.Flight;

/// <summary>How far the figures told by the flying service may go. Common practice, no source; never used to approve a flight.</summary>
public static class FlightLimits
{
    public static Limit Hopper { get; } = new("hopper_gal", "gal") { Above = 0, Most = 1500 };

    public static Limit WorkingLoad { get; } = new("working_load_wet_lb", "lb wet") { Above = 0, UsualLeast = 500, UsualMost = 5000 };

    public static Limit TopLoad { get; } = new("top_load_wet_lb", "lb wet") { Above = 0, UsualLeast = 500, UsualMost = 5000 };

    public static Limit Swath { get; } = new("swath_ft", "ft") { Above = 0, UsualLeast = 30, UsualMost = 90 };

    public static Limit Working { get; } = new("working_mph", "mph") { Above = 0, UsualLeast = 80, UsualMost = 170 };

    public static Limit Ferry { get; } = new("ferry_mph", "mph") { Above = 0, UsualLeast = 80, UsualMost = 220 };

    public static Limit Turn { get; } = new("turn_s", "s") { Least = 0, Most = 3600, UsualMost = 120 };

    public static Limit Reload { get; } = new("reload_s", "s") { Least = 0, Most = 36_000, UsualMost = 900 };

    public static Limit GroundAndAir { get; } = new("ground_and_air_s", "s") { Least = 0, Most = 36_000, UsualMost = 900 };

    public static Limit WindLimit { get; } = new("wind_limit_mph", "mph") { Least = 0, Most = 120, UsualMost = 25 };

    public static Limit Tray { get; } = new("grams", "g") { Least = 0, Most = 10_000 };

    public static Limit TraySpacing { get; } = new("spacing_m", "m") { Least = 0.05, Most = 5 };

    public static Limit TrayArea { get; } = new("tray_m2", "m²") { Least = 0.001, Most = 10 };

    public static Limit TrayOffset { get; } = new("offset_m", "m") { Least = -50, Most = 50 };

    public static Limit TestSpeed { get; } = new("speed_mph", "mph") { Above = 0, Most = 300, UsualLeast = 80, UsualMost = 170 };

    public static Limit Gate { get; } = new("gate_lb_min", "lb/min") { Above = 0, Most = 100_000, UsualMost = 8000 };

    public static Limit ThousandGrains { get; } = new("grams_per_1000", "g") { Least = 1, Most = 200, UsualLeast = 18, UsualMost = 50 };

    public static Limit GustLimit { get; } = new("gust_limit_mph", "mph") { Least = 0, Most = 120, UsualMost = 35 };
}
