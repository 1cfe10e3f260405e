namespace Watersown.Weather;

/// <summary>How far the figures of weather may go. Common practice, no source.</summary>
public static class WeatherLimits
{
    public static Limit Sustained { get; } = new("sustained_mph", "mph") { Least = 0, Most = 120, UsualMost = 45 };

    public static Limit Gust { get; } = new("gust_mph", "mph") { Least = 0, Most = 250, UsualMost = 70 };

    public static Limit From { get; } = new("from_deg", "degrees") { Least = 0, Most = 360 };

    public static Limit High { get; } = new("high_f", "°F") { Least = -20, Most = 130 };

    public static Limit Low { get; } = new("low_f", "°F") { Least = -20, Most = 130 };

    public static Limit Mean { get; } = new("mean_f", "°F") { Least = -20, Most = 130 };

    public static Limit Rain { get; } = new("rain_in", "in") { Least = 0, Most = 75, UsualMost = 8 };

    public static Limit Month { get; } = new("month", string.Empty) { Least = 1, Most = 12, Whole = true };

    public static Limit Evaporation { get; } = new("evaporation_in_day", "in a day") { Least = 0, Most = 1, UsualMost = 0.5 };

    /// <summary>A forecast older than this is said to be old.</summary>
    public static TimeSpan ForecastOld { get; } = TimeSpan.FromHours(12);
}
