namespace Watersown.Schedule;

/// <summary>Days and hours as the farm's clock shows them. A season plan lies within one offset from UTC.</summary>
public static class FarmTime
{
    /// <summary>The moment at which the farm's clock shows that hour of that day.</summary>
    public static DateTimeOffset At(SeasonState state, DateOnly day, TimeOnly hour) =>
        new(day.Year, day.Month, day.Day, hour.Hour, hour.Minute, hour.Second, state.Offset);

    /// <summary>The farm's day at a moment.</summary>
    public static DateOnly Day(SeasonState state, DateTimeOffset moment)
    {
        var local = moment.ToOffset(state.Offset);
        return new DateOnly(local.Year, local.Month, local.Day);
    }

    /// <summary>The first moment of a day.</summary>
    public static DateTimeOffset Midnight(SeasonState state, DateOnly day) => At(state, day, TimeOnly.MinValue);
}
