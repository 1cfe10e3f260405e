namespace Watersown.Seed;

/// <summary>How far the figures of seed may go. Common practice, no source.</summary>
public static class SeedLimits
{
    /// <summary>Roots hold about 5 to 10 days after seeding, later in cold water (from memory).</summary>
    public static Limit Anchoring { get; } = new("anchor_days", "days") { Above = 0, Most = 30, UsualLeast = 3, UsualMost = 10 };

    public static Limit Rate { get; } = new("rate_dry_lb_ac", "lb/ac dry") { Above = 0, Most = 2000, UsualLeast = 120, UsualMost = 200 };

    public static Limit InHand { get; } = new("in_hand_dry_lb", "lb dry") { Least = 0 };

    public static Limit Germination { get; } = new("germination_pct", "%") { Above = 0, Most = 100, UsualLeast = 80 };

    public static Limit SeedsPerPound { get; } = new("seeds_per_lb", "seeds in a pound") { Above = 0, UsualLeast = 13_000, UsualMost = 22_000 };

    /// <summary>Soaked seed holds all of its dry seed and more water: never lighter than dry.</summary>
    public static Limit WetFactor { get; } = new("wet_factor", "lb soaked for a lb dry") { Least = 1, Most = 3, UsualLeast = 1.10, UsualMost = 1.40 };

    public static Limit BatchDry { get; } = new("dry_lb", "lb dry") { Above = 0, UsualMost = 120_000 };

    public static Limit Weighed { get; } = new("weighed_wet_lb", "lb wet") { Above = 0 };

    public static Limit HaulLimit { get; } = new("haul_limit_wet_lb", "lb wet") { Above = 0, UsualMost = 27_000 };

    public static Limit Road { get; } = new("road_mi", "mi") { Least = 0, UsualMost = 150 };

    public static Limit Trailers { get; } = new("trailers", "trailers") { Least = 0, Most = 1000, Whole = true };

    public static Limit SoakLeast { get; } = new("soak_least_h", "h") { Least = 0, Most = 240, UsualLeast = 18, UsualMost = 60 };

    public static Limit SoakMost { get; } = new("soak_most_h", "h") { Least = 0, Most = 240, UsualLeast = 18, UsualMost = 60 };

    public static Limit SoakLost { get; } = new("soak_lost_h", "h") { Least = 0, Most = 240, UsualLeast = 24, UsualMost = 96 };

    public static Limit Drain { get; } = new("drain_h", "h") { Least = 0, Most = 240, UsualMost = 48 };

    public static Limit TrailerReturn { get; } = new("trailer_return_h", "h") { Least = 0, Most = 240, UsualMost = 72 };

    public static Limit Haul { get; } = new("haul_h", "h") { Least = 0, Most = 240, UsualMost = 8 };

    /// <summary>Under the water for less is unlikely to sprout.</summary>
    public static TimeSpan UsualSoakLeast { get; } = TimeSpan.FromHours(18);

    /// <summary>Under the water for longer is unlikely to be fit.</summary>
    public static TimeSpan UsualSoakMost { get; } = TimeSpan.FromHours(60);
}
