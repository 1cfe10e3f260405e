namespace Watersown.Weather;

/// <summary>What a day of a month is like as a rule.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="High">Mean of the highest; the same as <paramref name="Low"/> where only the day's mean is known.</param>
/// <param name="Low">Mean of the lowest.</param>
public sealed record MonthNormal(int Month, Temperature High, Temperature Low)
{
    public Temperature Mean => Temperature.FromCelsius((High.Celsius + Low.Celsius) / 2);

    /// <summary>Only the mean of the day is known, not how far it swings.</summary>
    public bool MeanOnly => High == Low;
}

/// <summary>Normals of the farm, month by month, and where they come from.</summary>
/// <param name="Months">Months that are known.</param>
/// <param name="Source">In words.</param>
public sealed record FarmNormals(ImmutableArray<MonthNormal> Months, string Source)
{
    /// <summary>A month of fewer days says little of what is usual; common practice.</summary>
    private const int LeastDays = 25;

    /// <summary>The farm has none.</summary>
    public static FarmNormals None { get; } = new([], string.Empty);

    /// <summary>The normal of a day's month.</summary>
    public MonthNormal? On(DateOnly day) => Months.FirstOrDefault(m => m.Month == day.Month);

    /// <summary>These, with months of other normals in their place.</summary>
    public FarmNormals With(FarmNormals other) => other.Months.IsEmpty ? this : new FarmNormals(
        [.. other.Months.Concat(Months.Where(m => other.Months.All(o => o.Month != m.Month))).OrderBy(m => m.Month)],
        Source.Length == 0 || other.Months.Length == 12 || Source == other.Source ? other.Source : other.Source + "; " + Source);

    /// <summary>Monthly means of days; months with few days are left out.</summary>
    [Source(nameof(Sources.Arithmetic), "mean of all highs and of all lows of the month")]
    public static FarmNormals Of(IEnumerable<WeatherDay> days, string source) => new(
        [
            .. days.Where(d => d.IsWhole).GroupBy(d => d.Day.Month).Where(g => g.Count() >= LeastDays).OrderBy(g => g.Key)
                .Select(g => new MonthNormal(g.Key, Mean(g.Select(d => d.High!.Value)), Mean(g.Select(d => d.Low!.Value)))),
        ],
        source);

    private static Temperature Mean(IEnumerable<Temperature> readings) => Temperature.FromCelsius(readings.Average(t => t.Celsius));
}
