namespace Watersown.Holds;

/// <summary>Figures that are typed about treatments.</summary>
public static class HoldLimits
{
    /// <summary>More than 45 days is unusual (common practice, no source).</summary>
    public static Limit Days { get; } = new("hold_days", "days") { Least = 0, Most = 366, UsualMost = 45, Whole = true };

    public static Limit Round { get; } = new("round", "times") { Least = 1, Most = 99, Whole = true };

    public static Limit LeastDepth { get; } = new("least_depth_in", "in") { Least = 0, Most = 36 };

    public static Limit WindLeast { get; } = new("least_wind_mph", "mph") { Least = 0, Most = 120 };

    public static Limit WindMost { get; } = new("most_wind_mph", "mph") { Least = 0, Most = 120 };

    public static Limit NoticeHours { get; } = new("notice_h", "h") { Least = 0, Most = 2160, Whole = true };

    public static Limit Reentry { get; } = new("reentry_h", "h") { Least = 0, Most = 8760, Whole = true };

    public static Limit PreHarvest { get; } = new("pre_harvest_days", "days") { Least = 0, Most = 366, Whole = true };

    public static Limit Land { get; } = new("land_ac", "ac") { Above = 0, Most = 100_000 };

    public static Limit Wind { get; } = new("wind_mph", "mph") { Least = 0, Most = 120, UsualMost = 45 };

    public static Limit OwnReportDay { get; } = new("own_report_day", "day of the month") { Least = 1, Most = 31, Whole = true };

    public static Limit HiredReportDays { get; } = new("hired_report_days", "days") { Least = 0, Most = 366, Whole = true };
}
