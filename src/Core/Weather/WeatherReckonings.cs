using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>The calculations about weather that can be asked for by name.</summary>
public static class WeatherReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [ReferenceReckoning.Reckoning, HourReckoning.Reckoning, ThinWeatherReckoning.Reckoning, CropWaterReckoning.Reckoning, SunReckoning.Reckoning];
}
