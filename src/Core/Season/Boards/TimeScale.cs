namespace Watersown.Season.Boards;

/// <summary>One stretch of time that everything of a page is drawn on, so that an eye can drop a plumb line.</summary>
/// <param name="From">Left edge.</param>
/// <param name="Until">Right edge; later than <paramref name="From"/>.</param>
public sealed record TimeScale(DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>Midnights strictly inside, by the offset of <see cref="From"/>.</summary>
    public ImmutableArray<DateTimeOffset> Midnights
    {
        get
        {
            var days = ImmutableArray.CreateBuilder<DateTimeOffset>();
            for (var day = new DateTimeOffset(From.Year, From.Month, From.Day, 0, 0, 0, From.Offset).AddDays(1); day < Until; day = day.AddDays(1)) days.Add(day);
            return days.ToImmutable();
        }
    }

    /// <summary>Hours of the day divisible by a number, strictly inside, by the offset of <see cref="From"/>.</summary>
    /// <param name="hours">How many hours apart; a divisor of 24.</param>
    public ImmutableArray<DateTimeOffset> Every(int hours)
    {
        var first = new DateTimeOffset(From.Year, From.Month, From.Day, 0, 0, 0, From.Offset);
        return [.. Enumerable.Range(1, (int)((Until - first).TotalHours / hours)).Select(i => first.AddHours(i * hours)).Where(t => t > From && t < Until)];
    }

    /// <summary>How far along the scale a moment lies; what lies outside stands at the edge.</summary>
    public Fraction At(DateTimeOffset moment) => Fraction.FromShare(Math.Clamp((moment - From) / (Until - From), 0, 1));

    /// <summary>How much of the scale a stretch takes.</summary>
    public Fraction Width(DateTimeOffset from, DateTimeOffset until) => Fraction.FromShare(Math.Max(0, At(until).Share - At(from).Share));

    public bool Holds(DateTimeOffset moment) => moment >= From && moment <= Until;
}
