namespace Watersown.Harvest;

/// <summary>Grain at one moisture weighed as if it had another.</summary>
public static class GrainMoisture
{
    /// <summary>
    /// What grain weighs at another moisture, both on a wet basis: its dry matter stays the same. Chaff and grain lost in
    /// handling and drying are not in it, so a dryer's ticket comes out somewhat lower.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A moisture below nothing, or all water.</exception>
    [Source(nameof(Sources.IrriMoisture), "W2 = W1 (100 - M1) / (100 - M2)")]
    [Source(nameof(Sources.MassBalance))]
    public static Mass WeightAt(Mass grain, Fraction moisture, Fraction at)
    {
        foreach (var share in (ReadOnlySpan<double>)[moisture.Share, at.Share])
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(share, 0, nameof(moisture));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(share, 1, nameof(moisture));
        }

        return grain * ((1 - moisture.Share) / (1 - at.Share));
    }
}
