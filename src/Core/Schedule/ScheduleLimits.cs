namespace Watersown.Schedule;

/// <summary>How far the figures of the season's work and money may go. Common practice, no source.</summary>
public static class ScheduleLimits
{
    public static Limit PlanNumber { get; } = new("plan_number", string.Empty) { Least = 1, Most = 1_000_000, Whole = true };

    public static Limit BasinsWet { get; } = new("checks_wet", "checks") { Least = 0, Most = Land.LandLimits.MaxBasinsPerField, Whole = true };

    public static Limit Depth { get; } = new("depth_in", "in") { Least = 0, Most = 36, UsualMost = 14 };

    public static Limit TractorCount { get; } = new("count", "tractors") { Least = 0, Most = 1000, Whole = true };

    public static Limit TractorRate { get; } = new("rate_ac_h", "ac/h") { Above = 0, UsualMost = 40 };

    public static Limit Drivers { get; } = new("drivers", "drivers") { Least = 0, Most = 1000, Whole = true };

    public static Limit Irrigators { get; } = new("irrigators", "irrigators") { Least = 0, Most = 1000, Whole = true };

    public static Limit FieldsPerIrrigator { get; } = new("fields_per_irrigator", "fields") { Least = 1, Most = 1000, Whole = true };

    public static Limit OwnDelay { get; } = new("own_delay_usd_ac_day", "$ an acre a day") { Least = 0, UsualMost = 30 };

    public static Limit Grain { get; } = new("grain_usd_cwt", "$ a cwt") { Least = 0, UsualLeast = 8, UsualMost = 50 };

    public static Limit HeadAge { get; } = new("head_age_usd_ac_day2", "$ an acre and squared day") { Least = 0, UsualMost = 100 };

    public static Limit HeadAgeFree { get; } = new("head_age_free_days", "days") { Least = 0, Most = 365, UsualMost = 30 };

    public static Limit IdleWater { get; } = new("idle_water_usd_ac_ft", "$ an acre-foot") { Least = 0, UsualMost = 500 };

    public static Limit Seed { get; } = new("seed_usd_dry_lb", "$ a lb dry") { Least = 0, UsualMost = 3 };

    public static Limit SoakAndHaul { get; } = new("soak_and_haul_usd_dry_lb", "$ a lb dry") { Least = 0, UsualMost = 1 };

    public static Limit FlyingHour { get; } = new("flying_usd_h", "$ an hour") { Least = 0, UsualMost = 5000 };

    public static Limit FlyingAcre { get; } = new("flying_usd_ac", "$ an acre") { Least = 0, UsualMost = 100 };

    public static Limit FlyingWetPound { get; } = new("flying_usd_wet_lb", "$ a lb wet") { Least = 0, UsualMost = 1 };

    public static Limit Unsown { get; } = new("unsown_usd_ac", "$ an acre") { Least = 0, UsualMost = 5000 };

    /// <summary>A mark may be this far ahead of the moment of planning: clocks of phones differ.</summary>
    public static TimeSpan ClockSlack { get; } = TimeSpan.FromMinutes(10);
}
