namespace Watersown.Flight.Flown;

/// <summary>What a track of an aeroplane at this work can be.</summary>
public static class TrackLimits
{
    /// <summary>Faster over the ground than any aeroplane at this work, wind and all.</summary>
    [Source(nameof(Sources.CommonPractice), "250 mph")]
    public static Speed Fastest { get; } = Speed.FromMilesPerHour(250);

    /// <summary>The hardest turn or pull there is, with some to spare.</summary>
    [PlainNumber("meters per second, each second")]
    [Source(nameof(Sources.CommonPractice), "twice gravity")]
    public const double HardestPull = 20;

    /// <summary>How far a receiver may wander from one place to the next without having jumped.</summary>
    [Source(nameof(Sources.CommonPractice), "15 m")]
    public static Length Wander { get; } = Length.FromMeters(15);

    /// <summary>How far a receiver's error changes from one place to the next without having jumped.</summary>
    [Source(nameof(Sources.CommonPractice), "8 m")]
    public static Length Tremble { get; } = Length.FromMeters(8);

    /// <summary>A step longer than this is not looked at for turns: too much can happen in it.</summary>
    [Source(nameof(Sources.CommonPractice), "2 s")]
    public static TimeSpan LongestTurn { get; } = TimeSpan.FromSeconds(2);

    /// <summary>Going back in time by less is the logger telling a stretch twice; by more, a clock that was set.</summary>
    [Source(nameof(Sources.CommonPractice), "10 min")]
    public static TimeSpan LongestRepeat { get; } = TimeSpan.FromMinutes(10);

    /// <summary>Places in a row that must agree with each other before they are believed against the one before.</summary>
    [PlainNumber("places")]
    [Source(nameof(Sources.CommonPractice), "3 places")]
    public const int Agreeing = 3;

    /// <summary>Time is missing where a step is longer than this many usual ones, and longer than <see cref="LeastGap"/>.</summary>
    [PlainNumber("usual steps")]
    [Source(nameof(Sources.CommonPractice), "4 usual steps")]
    public const double GapSteps = 4;

    [Source(nameof(Sources.CommonPractice), "2.5 s")]
    public static TimeSpan LeastGap { get; } = TimeSpan.FromSeconds(2.5);

    /// <summary>What lies farther from the field is counted, not kept.</summary>
    [Source(nameof(Sources.CommonPractice), "2 miles")]
    public static Length Reach { get; } = Length.FromMiles(2);

    /// <summary>From here on, places on a straight line between their neighbors are let go.</summary>
    [PlainNumber("places")]
    public const int ThinFrom = 1_000_000;

    /// <summary>How far off that line such a place may lie.</summary>
    [Source(nameof(Sources.CommonPractice), "2 cm")]
    public static Length Straight { get; } = Length.FromMeters(0.02);

    /// <summary>Most places kept near one field: a day at ten a second is below a million.</summary>
    [PlainNumber("places")]
    public const int Most = 4_000_000;
}
