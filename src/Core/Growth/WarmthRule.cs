namespace Watersown.Growth;

/// <summary>How the temperature of a day is drawn between its lowest and its highest.</summary>
public enum WarmthMethod
{
    /// <summary>The whole day at its mean; a mean below the lower threshold counts as nothing.</summary>
    Simple,

    /// <summary>Half the day at its lowest, half at its highest, each brought to the thresholds first.</summary>
    SimpleFloored,

    /// <summary>Straight up to the highest and straight back to the same lowest.</summary>
    SingleTriangle,

    /// <summary>Straight up from this morning's lowest, straight down to the next morning's.</summary>
    DoubleTriangle,

    /// <summary>A sine course up to the highest and back to the same lowest.</summary>
    SingleSine,

    /// <summary>Half a sine course from this morning's lowest, half to the next morning's.</summary>
    DoubleSine,
}

/// <summary>What warmth above the upper threshold is worth.</summary>
public enum Cutoff
{
    /// <summary>Growth goes on as at the upper threshold.</summary>
    Horizontal,

    /// <summary>Growth slows above the upper threshold as fast as it rose below it.</summary>
    Intermediate,

    /// <summary>Growth stops while it is warmer than the upper threshold.</summary>
    Vertical,
}

/// <summary>How degree-days are counted. A count means nothing without it, so it is stored with every count.</summary>
/// <param name="Method">How the day is drawn.</param>
/// <param name="Lower">Below it nothing grows.</param>
public sealed record WarmthRule(WarmthMethod Method, Temperature Lower)
{
    /// <summary>Above it more warmth brings nothing more; none where there is no such limit.</summary>
    public Temperature? Upper { get; init; }

    /// <summary>What happens above <see cref="Upper"/>; without one it does not matter.</summary>
    public Cutoff Cutoff { get; init; }

    /// <summary>The next morning's lowest is needed too.</summary>
    public bool NeedsNextMorning => Method is WarmthMethod.DoubleTriangle or WarmthMethod.DoubleSine;
}
