namespace Watersown.Growth;

/// <summary>How far a reckoned stage can be off, two times out of three.</summary>
public static class StageError
{
    /// <summary>Standard error of heading reckoned from sowing by plain degree-days, over 35 environments.</summary>
    [Source(nameof(Sources.Japan1990), "6.5 days")]
    [PlainNumber("days")]
    public const double Heading = 6.5;

    /// <summary>How much one day's mean differs from the normal of its month, °F.</summary>
    [Source(nameof(Sources.FarmDefault), "5 °F")]
    private const double DaySpread = 5;

    /// <summary>Warm days follow warm days: so many days count as one.</summary>
    [Source(nameof(Sources.FarmDefault), "3 days")]
    private const double Persistence = 3;

    /// <summary>No forecast of a leaf is better than this.</summary>
    private const double LeafLeast = 1;

    /// <summary>No day of a crop in season brings less, so that an error in warmth is a number of days.</summary>
    private const double LeastPace = 5; // °F·d

    /// <summary>
    /// The error of a stage: that of the method over the share of the way since what was last seen, and that of days which
    /// nobody has measured yet.
    /// </summary>
    /// <param name="point">The stage.</param>
    /// <param name="share">Warmth still to come since what was last seen, over all of it from sowing; for leaves over that to heading.</param>
    /// <param name="unmeasured">Days on the way for which the normal was taken.</param>
    /// <param name="pace">Warmth of a day when it comes.</param>
    [Source(nameof(Sources.Japan1990), "standard error of heading, over the share of the way")]
    [Source(nameof(Sources.FarmDefault), "√(method² + weather²), weather = 5 °F √(3 n) / warmth of a day")]
    [return: PlainNumber("days, either way")]
    public static double Of(StagePoint point, Fraction share, [PlainNumber("days")] int unmeasured, DegreeDays pace)
    {
        var method = point.ByLeaf ? Math.Max(LeafLeast, Heading * share.Share) : Heading * share.Share;
        var weather = DaySpread * Math.Sqrt(Persistence * unmeasured) / Math.Max(LeastPace, pace.Fahrenheit);
        return Math.Sqrt((method * method) + (weather * weather));
    }
}
