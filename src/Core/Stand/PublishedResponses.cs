namespace Watersown.Stand;

/// <summary>Where the best stand was found.</summary>
public enum ResponseRegion
{
    California,
    MidSouth,
    Australia,
}

/// <summary>
/// Shares of the best yield by stand after the optima that were published, which disagree. The optimum is published; how fast yield
/// falls below it is not, and is drawn here.
/// </summary>
public static class PublishedResponses
{
    [Source(nameof(Sources.UcStand2024), "about 25 plants/ft²")]
    [Source(nameof(Sources.FarmDefault), "the fall below it")]
    public static ImmutableArray<ResponsePoint> California => Overseeding.UsualResponse;

    /// <summary>Best from 15 plants/ft²; below it the usual fall, drawn in.</summary>
    [Source(nameof(Sources.MidSouthStand), "15 to 20 plants/ft²")]
    [Source(nameof(Sources.FarmDefault), "the fall below it")]
    public static ImmutableArray<ResponsePoint> MidSouth { get; } = [.. Overseeding.UsualResponse.Select(p => new ResponsePoint(p.Stand * (15.0 / 25), p.Share))];

    /// <summary>Flat from 40 plants/m² where plants stand evenly; 30 still gave 12 of 14.9 t/ha.</summary>
    [Source(nameof(Sources.NswPlantStand), "fig. 1: no difference from 40 to 700 plants/m²")]
    [Source(nameof(Sources.EvenStand2020), "over 12 t/ha at 30 plants/m², evenly spread; to 14.9 t/ha")]
    public static ImmutableArray<ResponsePoint> Australia { get; } = [At(0, 0), At(30, 0.81), At(40, 1)];

    /// <summary>The response of a region.</summary>
    [Source(nameof(Sources.FarmDefault), "the fall below each published optimum")]
    public static ImmutableArray<ResponsePoint> Of(ResponseRegion region) => region switch
    {
        ResponseRegion.California => California,
        ResponseRegion.MidSouth => MidSouth,
        ResponseRegion.Australia => Australia,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static ResponsePoint At(double perSquareMeter, double share) => new(PlantDensity.FromPerSquareMeter(perSquareMeter), Fraction.FromShare(share));
}
