using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>The calculations about water that can be asked for by name.</summary>
public static class WaterReckonings
{
    public static ImmutableArray<Reckoning> All { get; } =
    [
        FillReckoning.Reckoning,
        FillChecksReckoning.Reckoning,
        SourceFillReckoning.Reckoning,
        BoxFlowReckoning.Reckoning,
        OpeningReckonings.Gate,
        OpeningReckonings.Levee,
        DryOutReckoning.Reckoning,
        PumpEnergyReckoning.Reckoning,
        WindReckoning.Reckoning,
        RaiseReckoning.Reckoning,
        PondTemperatureReckoning.Reckoning,
        PondSaltReckoning.Reckoning,
        InfiltrationReckoning.Reckoning,
        BreachReckoning.Reckoning,
    ];
}
