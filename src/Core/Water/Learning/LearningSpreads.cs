namespace Watersown.Water.Learning;

/// <summary>
/// How far figures and marks may be off before anything is known better: one spread each, chosen so that learning can run.
/// </summary>
public static class LearningSpreads
{
    [Source(nameof(Sources.FarmDefault), "clay 0.50 to 0.60 ft, leaky 0.75 ft")]
    public static Fraction TakeUp { get; } = Fraction.FromPercent(18);

    [Source(nameof(Sources.FarmDefault), "2 in meant, 1 to 3 in found")]
    public static Fraction Pond { get; } = Fraction.FromPercent(35);

    [Source(nameof(Sources.FarmDefault), "0.03 to 0.25 in a day")]
    public static Fraction Seepage { get; } = Fraction.FromPercent(60);

    /// <summary>From one spring to the next.</summary>
    [Source(nameof(Sources.FarmDefault), "how dry the worked soil is")]
    public static Fraction TakeUpBetween { get; } = Fraction.FromPercent(8);

    [Source(nameof(Sources.FarmDefault), "how boards are set")]
    public static Fraction PondBetween { get; } = Fraction.FromPercent(15);

    [Source(nameof(Sources.FarmDefault), "levees anew every year")]
    public static Fraction SeepageBetween { get; } = Fraction.FromPercent(25);

    /// <summary>No soil that was ever worked loses less: a figure of nothing could learn nothing.</summary>
    [Source(nameof(Sources.FarmDefault), "0.01 in a day")]
    public static DepthRate LeastSeepage { get; } = DepthRate.FromInchesPerDay(0.01);

    /// <summary>Water that comes into a field, against what was ordered for it.</summary>
    [Source(nameof(Sources.FarmDefault), "an order is met within 15 %")]
    public static Fraction Order { get; } = Fraction.FromPercent(15);

    /// <summary>The same, read at the gate.</summary>
    [Source(nameof(Sources.FarmDefault), "weirs 5 %, as read in a field 7 %")]
    public static Fraction FlowRead { get; } = Fraction.FromPercent(7);

    /// <summary>Where other fields fill from the same source: nobody measures who gets what.</summary>
    [Source(nameof(Sources.FarmDefault), "25 %")]
    public static Fraction Shared { get; } = Fraction.FromPercent(25);

    /// <summary>Water seen in a check: it came since the last round.</summary>
    [Source(nameof(Sources.FarmDefault), "2 h")]
    public static TimeSpan SeenWet { get; } = TimeSpan.FromHours(2);

    /// <summary>A check seen full: no sharp moment.</summary>
    [Source(nameof(Sources.FarmDefault), "3 h")]
    public static TimeSpan SeenFull { get; } = TimeSpan.FromHours(3);

    /// <summary>A depth at the stick against the mean of its check: the ground is level within 0.1 ft.</summary>
    [Source(nameof(Sources.FarmDefault), "0.8 in")]
    public static WaterDepth Stick { get; } = WaterDepth.FromInches(0.8);

    /// <summary>Two readings at one stick: the unevenness falls out.</summary>
    [Source(nameof(Sources.FarmDefault), "0.35 in")]
    public static WaterDepth StickDrop { get; } = WaterDepth.FromInches(0.35);

    /// <summary>Lost to the air on the days themselves, against the farm's figure.</summary>
    [Source(nameof(Sources.FarmDefault), "20 %")]
    public static Fraction Evaporation { get; } = Fraction.FromPercent(20);

    /// <summary>No flood goes quite as it is worked out: of the time since its first water.</summary>
    [Source(nameof(Sources.FarmDefault), "3 % of its time")]
    public static Fraction Flood { get; } = Fraction.FromPercent(3);

    /// <summary>From the middle of a bell curve to the end of what holds nine cases of ten, in spreads.</summary>
    [Source(nameof(Sources.Arithmetic), "95 % point of the normal distribution")]
    [PlainNumber("in spreads")]
    public static double NineOfTen => 1.6448536269514722;
}
