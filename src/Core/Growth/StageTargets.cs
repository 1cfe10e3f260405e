namespace Watersown.Growth;

/// <summary>Warmth from sowing to each stage of a class of varieties, counted by one rule.</summary>
/// <param name="Initiation">To panicle initiation.</param>
/// <param name="Heading">To half of the panicles out.</param>
/// <param name="Mature">To ripe.</param>
public sealed record StageTargets(DegreeDays Initiation, DegreeDays Heading, DegreeDays Mature)
{
    /// <summary>The rule by which the usual targets were made.</summary>
    [Source(nameof(Sources.FarmDefault), "mean of the day above 50 °F, no upper threshold")]
    public static WarmthRule Rule { get; } = new(WarmthMethod.Simple, Temperature.FromFahrenheit(50));

    /// <summary>From heading to ripe, the same for every class.</summary>
    private static readonly DegreeDays ripening = DegreeDays.FromFahrenheit(640);

    [Source(nameof(Sources.StageTargetsFitted))]
    public static StageTargets VeryEarly { get; } = Of(980, 1780);

    [Source(nameof(Sources.StageTargetsFitted))]
    public static StageTargets Early { get; } = Of(1030, 1910);

    [Source(nameof(Sources.StageTargetsFitted))]
    public static StageTargets Intermediate { get; } = Of(1180, 2150);

    /// <summary>Each stage comes after the one before.</summary>
    public bool Rising => DegreeDays.Zero < Initiation && Initiation < Heading && Heading < Mature;

    /// <summary>Booting: midway between panicle initiation and heading.</summary>
    [Source(nameof(Sources.WaterWarmth2018), "midway between panicle initiation and heading")]
    public DegreeDays Booting => DegreeDays.FromCelsius((Initiation.Celsius + Heading.Celsius) / 2);

    /// <summary>Warmth to a stage that is not told by leaves.</summary>
    public DegreeDays To(CropStage stage) => stage switch
    {
        CropStage.PanicleInitiation => Initiation,
        CropStage.Booting => Booting,
        CropStage.Heading => Heading,
        CropStage.Mature => Mature,
        _ => throw new ArgumentOutOfRangeException(nameof(stage), "Leaves have a count of their own."),
    };

    private static StageTargets Of(double initiation, double heading) =>
        new(DegreeDays.FromFahrenheit(initiation), DegreeDays.FromFahrenheit(heading), DegreeDays.FromFahrenheit(heading) + ripening);
}

/// <summary>Leaves by warmth above 0 °C.</summary>
public static class LeafPace
{
    /// <summary>From sowing to the first leaf seen under water: 7 to 10 days at the 19 °C of a normal May.</summary>
    [Source(nameof(Sources.LeavesUnderWater), "7 to 10 days after seeding; turned into warmth at 19 °C")]
    public static DegreeDays First { get; } = DegreeDays.FromCelsius(163);

    /// <summary>From leaf to leaf while there is no panicle.</summary>
    [Source(nameof(Sources.Yoshida1981), "p. 21: 5 days at 20 °C, 4 days at 25 °C")]
    public static DegreeDays Leaf { get; } = DegreeDays.FromCelsius(100);

    /// <summary>From leaf to leaf once the panicle has begun.</summary>
    [Source(nameof(Sources.Yoshida1981), "p. 21: about 170 degree-days")]
    public static DegreeDays LeafAfterInitiation { get; } = DegreeDays.FromCelsius(170);

    /// <summary>The rule that leaves go by.</summary>
    public static WarmthRule Rule { get; } = new(WarmthMethod.Simple, Temperature.FromCelsius(0));

    /// <summary>Warmth from sowing to a leaf.</summary>
    [Source(nameof(Sources.Yoshida1981), "p. 21")]
    public static DegreeDays To(int leaf) => DegreeDays.FromCelsius(First.Celsius + ((leaf - 1) * Leaf.Celsius));
}
