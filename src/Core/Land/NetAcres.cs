namespace Watersown.Land;

/// <summary>What is sown of a field, guessed from what lies inside its edge where the farm has no figure of its own.</summary>
public static class NetAcres
{
    /// <summary>Checks of a field of which nothing more is known.</summary>
    [PlainNumber("count")]
    [Source(nameof(Sources.FarmDefault), "5 checks")]
    public const int UsualChecks = 5;

    /// <summary>Fields below this lose more to their edges.</summary>
    [Source(nameof(Sources.FarmDefault), "70 ac")]
    public static Area Small { get; } = Area.FromAcres(70);

    /// <summary>The share of a field that levees, ditches and pads take.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one check, or more than a field can have.</exception>
    [Source(nameof(Sources.FarmDefault), "2.8 % + 0.4 % a check, 1 % more under 70 ac")]
    public static Fraction Loss(Area gross, [PlainNumber("count of checks")] int checks)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(checks, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(checks, LandLimits.MaxBasinsPerField);

        // Beyond what any field was seen to lose the straight line says nothing.
        return Fraction.FromShare(Math.Min(0.12, 0.028 + (0.004 * checks) + (gross < Small ? 0.01 : 0)));
    }

    /// <summary>Net sown land of a gross field. A default: the farm's own figure always goes before it.</summary>
    [Source(nameof(Sources.FarmDefault), "gross × (1 − loss)")]
    public static Area Estimate(Area gross, [PlainNumber("count of checks")] int checks) => gross * (1 - Loss(gross, checks).Share);
}
