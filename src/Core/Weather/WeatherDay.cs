namespace Watersown.Weather;

/// <summary>One day of weather as it was told; what was not told is none.</summary>
/// <param name="Day">The day.</param>
public sealed record WeatherDay(DateOnly Day)
{
    public Temperature? High { get; init; }

    public Temperature? Low { get; init; }

    public WaterDepth? Rain { get; init; }

    /// <summary>High and low are both there: the day can be counted.</summary>
    public bool IsWhole => High is not null && Low is not null;
}

/// <summary>Days on end.</summary>
public readonly record struct DayRun(DateOnly From, DateOnly Until)
{
    public int Days => Until.DayNumber - From.DayNumber + 1;

    /// <summary>Days put together to runs without a gap.</summary>
    public static ImmutableArray<DayRun> Of(IEnumerable<DateOnly> days)
    {
        var runs = ImmutableArray.CreateBuilder<DayRun>();
        foreach (var day in days.Distinct().Order())
        {
            if (runs.Count > 0 && runs[^1].Until.DayNumber + 1 == day.DayNumber) runs[^1] = runs[^1] with { Until = day };
            else runs.Add(new DayRun(day, day));
        }

        return runs.ToImmutable();
    }
}
