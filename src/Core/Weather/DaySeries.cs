namespace Watersown.Weather;

/// <summary>How a day of a series is known.</summary>
public enum DayBasis
{
    /// <summary>Somebody typed it.</summary>
    Typed,

    /// <summary>It stood in a file.</summary>
    File,

    /// <summary>Missing: the mean of the days on either side of the gap.</summary>
    Neighbors,

    /// <summary>Missing or still to come: the normal of the month.</summary>
    Normal,
}

/// <summary>A day that somebody or some file told whole.</summary>
/// <param name="Warmth">Its high and low.</param>
/// <param name="Basis">Typed or of a file.</param>
/// <param name="Source">Who or what told it.</param>
/// <param name="At">When it came in; none where the farm document holds it.</param>
public sealed record KnownDay(DayWarmth Warmth, DayBasis Basis, string Source, DateTimeOffset? At)
{
    public DateOnly Day => Warmth.Day;
}

/// <summary>A day of a series without gaps.</summary>
/// <param name="Warmth">Its high and low.</param>
/// <param name="Basis">How it is known.</param>
public sealed record SeriesDay(DayWarmth Warmth, DayBasis Basis)
{
    public DateOnly Day => Warmth.Day;

    /// <summary>It was measured, not filled in.</summary>
    public bool Measured => Basis is DayBasis.Typed or DayBasis.File;
}

/// <summary>Days on end for a count of warmth. What is missing is filled, and each day says how; where nothing can fill it the series ends.</summary>
public static class DaySeries
{
    /// <summary>A gap of so many days is bridged by its neighbors; beyond it the season has moved on. Common practice, no source.</summary>
    public const int BridgedDays = 3;

    /// <summary>The series from one day until another, or until the first day of which nothing is known.</summary>
    /// <param name="known">Days told, one each.</param>
    /// <param name="normals">What fills the rest.</param>
    /// <param name="from">First day.</param>
    /// <param name="until">Last day.</param>
    [Source(nameof(Sources.CommonPractice), "gaps of at most three days by the mean of their neighbors, else the normal of the month")]
    public static ImmutableArray<SeriesDay> Of(ImmutableArray<KnownDay> known, FarmNormals normals, DateOnly from, DateOnly until)
    {
        var told = known.ToDictionary(k => k.Day);
        var days = ImmutableArray.CreateBuilder<SeriesDay>();
        for (var day = from; day <= until; day = day.AddDays(1))
        {
            if (told.TryGetValue(day, out var one)) days.Add(new SeriesDay(one.Warmth, one.Basis));
            else if (Bridge(told, day) is { } bridge) days.Add(new SeriesDay(bridge, DayBasis.Neighbors));
            else if (normals.On(day) is { } normal) days.Add(new SeriesDay(new DayWarmth(day, normal.High, normal.Low), DayBasis.Normal));
            else break;
        }

        return days.ToImmutable();
    }

    private static DayWarmth? Bridge(Dictionary<DateOnly, KnownDay> told, DateOnly day)
    {
        for (var before = 1; before <= BridgedDays; before++)
        {
            if (!told.TryGetValue(day.AddDays(-before), out var left)) continue;
            for (var after = 1; before + after - 1 <= BridgedDays; after++)
            {
                if (told.TryGetValue(day.AddDays(after), out var right))
                    return new DayWarmth(day, Half(left.Warmth.High, right.Warmth.High), Half(left.Warmth.Low, right.Warmth.Low));
            }

            return null;
        }

        return null;
    }

    private static Temperature Half(Temperature one, Temperature other) => Temperature.FromCelsius((one.Celsius + other.Celsius) / 2);
}
