using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>What all parts of the reading share: the farm's clock and the problems found so far.</summary>
internal sealed record PartReader(FarmClock Clock, ImmutableArray<Problem>.Builder Problems)
{
    /// <summary>What is wrong with the boundary file, told after all else.</summary>
    public ImmutableArray<Problem>.Builder Aside { get; } = ImmutableArray.CreateBuilder<Problem>();

    public DateTimeOffset? Moment(JsonFacts facts, string key, string where) =>
        facts.Moment(key) is { } written ? Clock.Read(written, where, Problems) : null;

    public static GeoPoint? Point(JsonFacts? point) =>
        point is { } facts && facts.Number(LandLimits.Latitude) is { } latitude and >= -90 and <= 90 && facts.Number(LandLimits.Longitude) is { } longitude and >= -180 and <= 180
            ? new GeoPoint(latitude, longitude)
            : null;
}
