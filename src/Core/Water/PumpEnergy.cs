namespace Watersown.Water;

/// <summary>Electricity that a pump takes to lift water.</summary>
public static class PumpEnergy
{
    // 2,719,226 ft·lb lift one acre-foot by one foot; 2,655,224 ft·lb are one kWh.
    private const double FootPoundsPerAcreFootFoot = 2_719_226;
    private const double FootPoundsPerKilowattHour = 2_655_224;

    /// <summary>Electricity to lift a volume, in kWh.</summary>
    /// <param name="volume">Water delivered.</param>
    /// <param name="lift">Total dynamic head: standing lift, drawdown, friction and pressure at the outlet together.</param>
    /// <param name="efficiency">Wire to water, above 0.</param>
    [Source(nameof(Sources.EnergyToLift), "1.0241 kWh per acre-foot and foot at 100 %")]
    [return: PlainNumber("kWh, the one sort of energy at the desk")]
    public static double KilowattHours(Volume volume, Length lift, Fraction efficiency)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(efficiency.Share, nameof(efficiency));
        return volume.AcreFeet * lift.Feet * PerAcreFootFoot / efficiency.Share;
    }

    /// <summary>kWh to lift one acre-foot by one foot with nothing lost.</summary>
    [Source(nameof(Sources.EnergyToLift), "2,719,226 ft·lb / 2,655,224 ft·lb per kWh")]
    [PlainNumber("kWh per acre-foot and foot")]
    public static double PerAcreFootFoot => FootPoundsPerAcreFootFoot / FootPoundsPerKilowattHour;
}
