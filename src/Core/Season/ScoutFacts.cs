using Watersown.Stand;

namespace Watersown.Season;

/// <summary>What can hurt a stand or a crop, and is looked for.</summary>
public enum Pest
{
    Shrimp,
    Midge,
    Scum,
    Weevil,

    /// <summary>Armyworm on leaves.</summary>
    ArmywormLeaf,

    /// <summary>Armyworm on panicles.</summary>
    ArmywormPanicle,
}

/// <summary>Somebody looked for something in a field.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Pest">What was looked for.</param>
/// <param name="Seen">It is there.</param>
public sealed record PestLooked(string Field, Pest Pest, bool Seen) : MarkFact
{
    /// <summary>Plants or panicles that bear its damage, of those looked at.</summary>
    public Fraction? Damaged { get; init; }

    public override string? AboutField => Field;
}

/// <summary>The farm's own share of the best yield by stand.</summary>
/// <param name="Points">By rising stand.</param>
public sealed record StandResponseSet(FactList<ResponsePoint> Points) : MarkFact;
