namespace Watersown.Flight;

/// <summary>What must leave the hopper, and what did.</summary>
public static class GateFlow
{
    /// <summary>Above this soaked rate a ram-air spreader lays a poor pattern.</summary>
    [Source(nameof(Sources.SpreaderSetUp))]
    public static SoakedRate SpreadFallsOff { get; } = SoakedRate.FromPoundsPerAcre(250);

    /// <summary>Soaked seed through the gate so that a rate is laid down at this ground speed and swath.</summary>
    [Source(nameof(Sources.UcFundamentalRelationship), "flow = rate × land rate")]
    public static MassFlow Of(SoakedRate rate, Speed ground, Length swath) => rate * LandRate.Of(ground, swath);

    /// <summary>The rate really laid down, from what measured passes used up.</summary>
    /// <param name="used">Weighed in less weighed out, soaked.</param>
    /// <param name="passes">Passes flown; 1 or more.</param>
    /// <param name="pass">Length of each with the gate open; above zero.</param>
    /// <param name="swath">Distance between passes; above zero.</param>
    [Source(nameof(Sources.FloridaDryCalibration), "table 1: 43,560 × weight used / area covered")]
    public static SoakedRate FromWeighOut(SoakedSeed used, int passes, Length pass, Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(passes, 1);
        var area = passes * (pass * swath);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(area.SquareMeters, 0, nameof(pass));
        return SoakedRate.FromKilogramsPerSquareMeter(used.Kilograms / area.SquareMeters);
    }
}
