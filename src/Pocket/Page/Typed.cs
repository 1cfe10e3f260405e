using Watersown.Schedule.Sheets;

namespace Watersown.Pocket.Page;

/// <summary>Numbers from the pad, in the reader's units, as quantities.</summary>
/// <param name="telling">Knows the units.</param>
public sealed class Typed(Telling telling)
{
    private static readonly ImmutableArray<double> Inches = [0, 1, 2, 3, 4, 6, 8];
    private static readonly ImmutableArray<double> Centimeters = [0, 2.5, 5, 7.5, 10, 15, 20];

    /// <summary>Depths that are marked with one tap.</summary>
    public ImmutableArray<double> Depths => telling.Metric ? Centimeters : Inches;

    public string DepthUnit => telling.Metric ? "cm" : telling.Words.Common.Inches;

    public string FlowUnit => telling.Metric ? telling.Words.Common.LitersPerSecond : telling.Words.Common.CubicFeetPerSecond;

    public string LandUnit => telling.Metric ? telling.Words.Common.Hectares : telling.Words.Common.Acres;

    public WaterDepth Depth(double value) => telling.Metric ? WaterDepth.FromMeters(value / 100) : WaterDepth.FromInches(value);

    /// <summary>A loss in a day.</summary>
    public DepthRate DepthRate(double value) => telling.Metric ? Quantities.DepthRate.FromMillimetersPerDay(value * 10) : Quantities.DepthRate.FromInchesPerDay(value);

    /// <summary>A width on the ground: feet or meters.</summary>
    public Length Gap(double value) => telling.Metric ? Length.FromMeters(value) : Length.FromFeet(value);

    public FlowRate Flow(double value) => telling.Metric ? FlowRate.FromCubicMetersPerSecond(value / 1000) : FlowRate.FromCubicFeetPerSecond(value);

    public SoakedSeed Soaked(double value) => telling.Metric ? SoakedSeed.FromKilograms(value) : SoakedSeed.FromPounds(value);

    public DrySeed Dry(double value) => telling.Metric ? DrySeed.FromKilograms(value) : DrySeed.FromPounds(value);

    public Speed Speed(double value) => telling.Metric ? Quantities.Speed.FromKilometersPerHour(value) : Quantities.Speed.FromMilesPerHour(value);

    public SeedRate Rate(double value) => telling.Metric ? SeedRate.FromKilogramsPerHectare(value) : SeedRate.FromPoundsPerAcre(value);

    /// <summary>Grain on a scale.</summary>
    public Mass Weight(double value) => telling.Metric ? Mass.FromKilograms(value) : Mass.FromPounds(value);

    public string GrainUnit => telling.Metric ? "t/" + telling.Words.Common.Hectares : "cwt/" + telling.Words.Common.Acres;

    public GrainYield Grain(double value) => telling.Metric ? GrainYield.FromTonnesPerHectare(value) : GrainYield.FromHundredweightsPerAcre(value);

    public Temperature Warm(double value) => telling.Metric ? Temperature.FromCelsius(value) : Temperature.FromFahrenheit(value);

    public Area Land(double value) => telling.Metric ? Area.FromHectares(value) : Area.FromAcres(value);
}
