namespace Watersown.Flight.Deposit;

/// <summary>How finely a deposit is looked at, and what counts as even or thin.</summary>
public sealed record DepositOptions
{
    /// <summary>Side of a cell; none for that of coverage. Coarser where there would be too many.</summary>
    public Length? Cell { get; init; }

    /// <summary>So near to the rate asked for counts as that rate.</summary>
    [Source(nameof(Sources.CommonPractice), "±15 %, the limit of most spreader tests")]
    public Fraction Near { get; init; } = Fraction.FromPercent(15);

    /// <summary>Less than this share of the rate asked for is thin. The outermost half slope of a pattern along the field's edge is not.</summary>
    [Source(nameof(Sources.FarmDefault), "two fifths")]
    public Fraction Thin { get; init; } = Fraction.FromPercent(40);

    /// <summary>Which thin pieces are a place worth walking to.</summary>
    public Cover.CoverOptions Places { get; init; } = new();
}
