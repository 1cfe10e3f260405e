namespace Watersown.Flight.Patterns;

/// <summary>What is asked of a tray test.</summary>
public sealed record TrayAsk
{
    /// <summary>Unevenness the farm is content with.</summary>
    [Source(nameof(Sources.CommonPractice), "20 to 25 % for granular seed from aircraft; no published limit was found")]
    public static Fraction UsualLimit { get; } = Fraction.FromPercent(20);

    /// <summary>How far a pass strays from its line.</summary>
    [Source(nameof(Sources.CommonPractice), "about a meter with satellite guidance")]
    public static Length UsualSteering { get; } = Length.FromMeters(1);

    /// <summary>The widest swath that a limit still lets pass is looked for up to it.</summary>
    public Fraction Limit { get; init; } = UsualLimit;

    public Length Steering { get; init; } = UsualSteering;
}
