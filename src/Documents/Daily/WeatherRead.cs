using Watersown.Weather;

namespace Watersown.Documents.Daily;

/// <summary>In what form a file tells its days.</summary>
public enum WeatherForm
{
    /// <summary>A table with headings, one line a day.</summary>
    Table,

    /// <summary>GHCN-Daily in its fixed form, one line a month and element.</summary>
    GhcnFixed,

    /// <summary>GHCN-Daily by station or year, one line a day and element, no headings.</summary>
    GhcnLines,

    /// <summary>An hourly EnergyPlus weather file.</summary>
    Epw,
}

/// <summary>The scale of temperatures that a file does not tell.</summary>
public enum WarmthScale
{
    Fahrenheit,
    Celsius,
}

/// <summary>What is told beside a file of weather.</summary>
public sealed record WeatherOptions
{
    /// <summary>Scale of its temperatures; needed where neither headings nor form tell it.</summary>
    public WarmthScale? Scale { get; init; }

    /// <summary>Dates such as 3/4/2026 have the day first.</summary>
    public bool DayFirst { get; init; }

    /// <summary>Rain is in millimeters; as the scale of temperatures tells, where not given.</summary>
    public bool? RainMetric { get; init; }

    /// <summary>Station to take, where a file holds several.</summary>
    public string? Station { get; init; }
}

/// <summary>What a file told of its days.</summary>
/// <param name="Form">Its form.</param>
/// <param name="Source">The file and station, in words.</param>
/// <param name="Days">In order, one each.</param>
public sealed record WeatherRead(WeatherForm Form, string Source, ImmutableArray<WeatherDay> Days)
{
    /// <summary>Made of months of different years: what is usual, not what was.</summary>
    public bool TypicalYear { get; init; }

    /// <summary>What was taken for what, and in which units.</summary>
    public ImmutableArray<(string Heading, string Meaning)> Taken { get; init; } = [];

    /// <summary>Values that failed the source's own quality checks and were left out.</summary>
    [PlainNumber("values")]
    public int Failed { get; init; }

    /// <summary>Days between the first and the last that are not there, or not whole.</summary>
    public ImmutableArray<DayRun> Missing
    {
        get
        {
            if (Days.IsEmpty) return [];
            var whole = Days.Where(d => d.IsWhole).Select(d => d.Day).ToHashSet();
            return DayRun.Of(Enumerable.Range(Days[0].Day.DayNumber, Days[^1].Day.DayNumber - Days[0].Day.DayNumber + 1).Select(DateOnly.FromDayNumber).Where(d => !whole.Contains(d)));
        }
    }
}
