namespace Watersown.Season;

/// <summary>Wind as somebody felt or measured it.</summary>
public sealed record WindSeen(Speed Sustained, Speed Gust) : MarkFact
{
    /// <summary>Where it comes from.</summary>
    public Bearing? From { get; init; }

    /// <summary>Where it was felt.</summary>
    public string? Place { get; init; }
}

/// <summary>One moment of a forecast of wind.</summary>
public sealed record ForecastHour(DateTimeOffset At, Speed Sustained, Speed Gust)
{
    public Bearing? From { get; init; }
}

/// <summary>A forecast of wind as it was heard or fetched.</summary>
/// <param name="Issued">When it was issued.</param>
/// <param name="Hours">What it says.</param>
/// <param name="Source">Who gave it, in words.</param>
public sealed record ForecastHeard(DateTimeOffset Issued, FactList<ForecastHour> Hours, string? Source) : MarkFact;

/// <summary>The warmth of a day.</summary>
public sealed record WarmthRead(DateOnly Day, Temperature High, Temperature Low) : MarkFact;
