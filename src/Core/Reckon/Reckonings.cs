namespace Watersown.Reckon;

/// <summary>Every calculation that can be asked for by name. Each capability lists its own; here they come together.</summary>
public static class Reckonings
{
    public static ImmutableArray<Reckoning> All { get; } =
    [
        .. Land.LandReckonings.All,
        .. Weather.WeatherReckonings.All,
        .. Weather.AirReckonings.All,
        .. Growth.GrowthReckonings.All,
        .. Seed.SeedReckonings.All,
        .. Seed.RateReckonings.All,
        .. Nutrition.NutritionReckonings.All,
        .. Water.WaterReckonings.All,
        .. Flight.FlightReckonings.All,
        .. Holds.HoldReckonings.All,
        .. Stand.StandReckonings.All,
        .. Harvest.HarvestReckonings.All,
        .. Costs.CostReckonings.All,
    ];

    public static Reckoning? Find(string name) => All.FirstOrDefault(r => string.Equals(r.Name, name, StringComparison.Ordinal));
}
