using Watersown.Nutrition;

namespace Watersown.Season;

/// <summary>When in the season nitrogen went on.</summary>
public enum NitrogenTiming
{
    /// <summary>Injected as aqua before the water.</summary>
    Aqua,

    /// <summary>Dry, before or at sowing.</summary>
    Starter,

    /// <summary>Flown on later.</summary>
    Topdress,
}

/// <summary>Nitrogen was put on a field.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Timing">When in the season.</param>
/// <param name="Rate">Nitrogen itself, not the product.</param>
public sealed record NitrogenOn(string Field, NitrogenTiming Timing, NutrientRate Rate) : MarkFact
{
    /// <summary>Gallons of the ticket, where it was aqua.</summary>
    public Volume? Ticket { get; init; }

    public override string? AboutField => Field;
}

/// <summary>Soil or leaf of a field was read.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Reading">What was read.</param>
/// <param name="Value">In the unit of the reading.</param>
public sealed record NutrientRead(string Field, NutrientReading Reading, [property: PlainNumber("in the unit of the reading")] double Value) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>Somebody decided on a topdress.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Rate">What is to go on; none where it was decided against.</param>
public sealed record TopdressDecided(string Field, NutrientRate? Rate) : MarkFact
{
    public override string? AboutField => Field;
}
