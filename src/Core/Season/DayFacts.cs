using Watersown.Weather;

namespace Watersown.Season;

/// <summary>Days of weather out of a file.</summary>
/// <param name="Source">The file or station, in words.</param>
/// <param name="Days">Its days of the season.</param>
public sealed record WeatherTaken(string Source, FactList<WeatherDay> Days) : MarkFact
{
    /// <summary>No mark holds more days; a longer file is several.</summary>
    public const int DaysMost = 400;
}

/// <summary>What days are like as a rule, typed or worked out of a file.</summary>
/// <param name="Source">Where they come from, in words.</param>
/// <param name="Months">Month by month.</param>
public sealed record NormalsTaken(string Source, FactList<MonthNormal> Months) : MarkFact;
