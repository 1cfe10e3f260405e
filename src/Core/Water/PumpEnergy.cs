namespace Watersown.Water;

/// <summary>Electricity that a pump takes to lift water.</summary>
public static class PumpEnergy
{
    /// <summary>Electricity to lift a volume, in kWh.</summary>
    /// <param name="volume">Water delivered.</param>
    /// <param name="lift">Total dynamic head: standing lift, drawdown, friction and pressure at the outlet together.</param>
    /// <param name="efficiency">Wire to water, above 0.</param>
    [Source(nameof(Sources.EnergyToLift), "1.024 kWh per acre-foot and foot at 100 %")]
    [return: PlainNumber("kWh, the one sort of energy at the desk")]
    public static double KilowattHours(Volume volume, Length lift, Fraction efficiency)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(efficiency.Share, nameof(efficiency));
        return volume.AcreFeet * lift.Feet * PerAcreFootFoot / efficiency.Share;
    }

    /// <summary>
    /// kWh to lift one acre-foot by one foot with nothing lost: 2,719,226 ft·lb over the 2,655,224 ft·lb of a kWh is 1.0241, and
    /// water of 15 °C is a thousandth lighter than that, so no more digits are true.
    /// </summary>
    [Source(nameof(Sources.EnergyToLift), "2,719,226 ft·lb / 2,655,224 ft·lb per kWh")]
    [PlainNumber("kWh per acre-foot and foot")]
    public static double PerAcreFootFoot => 1.024;
}
