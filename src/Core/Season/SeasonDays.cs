using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Season;

/// <summary>A stretch of days that nobody measured, and what fills it; nothing where the series breaks off there.</summary>
public sealed record DayGap(DayRun Run, DayBasis? Fill);

/// <summary>The season's days as counts of warmth need them.</summary>
public static class SeasonDays
{
    /// <summary>Day from which the season's weather matters: the earliest first water or sowing, else the first of April.</summary>
    public static DateOnly From(SeasonBook book)
    {
        var spring = new DateOnly(book.State.Now.Year, 4, 1);
        var starts = book.State.Fields.Select(f => f.FirstWater ?? f.SownAt).OfType<DateTimeOffset>().Select(t => FarmTime.Day(book.State, t)).Where(d => d.Year == spring.Year).ToList();
        return starts.Count == 0 ? spring : starts.Min();
    }

    /// <summary>The last day that is over.</summary>
    public static DateOnly Yesterday(SeasonBook book) => FarmTime.Day(book.State, book.Now).AddDays(-1);

    /// <summary>The days of a stretch that nobody measured, in runs of one fill.</summary>
    public static ImmutableArray<DayGap> Gaps(WeatherBook weather, DateOnly from, DateOnly until)
    {
        var gaps = ImmutableArray.CreateBuilder<DayGap>();
        for (var day = from; day <= until; day = day.AddDays(1))
        {
            var one = DaySeries.Of(weather.Known, weather.Normals, day, day).FirstOrDefault();
            if (one is { Measured: true }) continue;
            if (gaps.Count > 0 && gaps[^1].Run.Until.AddDays(1) == day && gaps[^1].Fill == one?.Basis) gaps[^1] = gaps[^1] with { Run = gaps[^1].Run with { Until = day } };
            else gaps.Add(new DayGap(new DayRun(day, day), one?.Basis));
        }

        return gaps.ToImmutable();
    }
}
