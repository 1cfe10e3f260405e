namespace Watersown.Weather;

/// <summary>Wind at a moment, seen or forecast. A forecast stands until the next one of the list.</summary>
/// <param name="At">When it blows so.</param>
/// <param name="Sustained">Steady wind.</param>
/// <param name="Gust">Strongest puff.</param>
public sealed record Wind(DateTimeOffset At, Speed Sustained, Speed Gust)
{
    /// <summary>Where it comes from.</summary>
    public Bearing? From { get; init; }

    /// <summary>When the forecast was issued; none where somebody saw or measured it.</summary>
    public DateTimeOffset? Issued { get; init; }
}

/// <summary>The warmth of one day.</summary>
public sealed record DayWarmth(DateOnly Day, Temperature High, Temperature Low)
{
    public Temperature Mean => Temperature.FromCelsius((High.Celsius + Low.Celsius) / 2);
}
