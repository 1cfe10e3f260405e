namespace Watersown.Water;

/// <summary>A soil by its texture, as it takes up water under a flood.</summary>
/// <param name="Texture">Class of texture.</param>
/// <param name="Porosity">Of its volume.</param>
/// <param name="EffectivePorosity">What water can fill and leave.</param>
/// <param name="Suction">At the wetting front.</param>
/// <param name="Conductivity">Of the wetted soil.</param>
public sealed record SoilTexture(string Texture, Fraction Porosity, Fraction EffectivePorosity, WaterDepth Suction, DepthRate Conductivity);

/// <summary>
/// Water that soil drinks under a flood, by Green and Ampt: F − ψΔθ ln(1 + F / ψΔθ) = K t. Cracks of dry clay come on top: measure
/// them, or take them from the first check that fills.
/// </summary>
public static class Infiltration
{
    /// <summary>Textures from coarse to fine.</summary>
    [Source(nameof(Sources.Rawls1983), "table of Green-Ampt parameters")]
    public static ImmutableArray<SoilTexture> Textures { get; } =
    [
        Row("sand", 0.437, 0.417, 4.95, 11.78), Row("loamy sand", 0.437, 0.401, 6.13, 2.99), Row("sandy loam", 0.453, 0.412, 11.01, 1.09), Row("loam", 0.463, 0.434, 8.89, 0.34),
        Row("silt loam", 0.501, 0.486, 16.68, 0.65), Row("sandy clay loam", 0.398, 0.330, 21.85, 0.15), Row("clay loam", 0.464, 0.309, 20.88, 0.10), Row("silty clay loam", 0.471, 0.432, 27.30, 0.10),
        Row("sandy clay", 0.430, 0.321, 23.90, 0.06), Row("silty clay", 0.479, 0.423, 29.22, 0.05), Row("clay", 0.475, 0.385, 31.63, 0.03),
    ];

    /// <summary>ψ Δθ of a soil that holds some of what it can already.</summary>
    /// <param name="soil">Its texture.</param>
    /// <param name="saturation">Effective saturation at the start, from nothing to all.</param>
    [Source(nameof(Sources.Rawls1983), "ψ (1 − Se) θe")]
    public static WaterDepth SuctionDeficit(SoilTexture soil, Fraction saturation) => soil.Suction * ((1 - saturation.Share) * soil.EffectivePorosity.Share);

    /// <summary>Drunk since the soil got wet.</summary>
    /// <param name="conductivity">K.</param>
    /// <param name="suctionDeficit">ψ Δθ.</param>
    /// <param name="span">Since it got wet.</param>
    [Source(nameof(Sources.Chow1988), "F − ψΔθ ln(1 + F / ψΔθ) = K t")]
    public static WaterDepth Drunk(DepthRate conductivity, WaterDepth suctionDeficit, TimeSpan span)
    {
        double kt = conductivity.MetersPerSecond * span.TotalSeconds, s = suctionDeficit.Meters;
        if (kt <= 0) return WaterDepth.Zero;
        // Newton from above, where the law is convex: it never leaves the upper side.
        var f = kt + s + Math.Sqrt(2 * s * kt);
        for (var i = 0; i < 60; i++)
        {
            var step = (f - (s * Math.Log(1 + (f / s))) - kt) / (f / (s + f));
            f -= step;
            if (Math.Abs(step) < 1e-15) break;
        }

        return WaterDepth.FromMeters(f);
    }

    /// <summary>How fast it drinks, having drunk so much.</summary>
    [Source(nameof(Sources.Chow1988), "f = K (ψΔθ / F + 1)")]
    public static DepthRate Rate(DepthRate conductivity, WaterDepth suctionDeficit, WaterDepth drunk) => conductivity * (1 + (suctionDeficit / drunk));

    /// <summary>How long steady rain falls before it stands; never where the soil drinks it all.</summary>
    [Source(nameof(Sources.Chow1988), "tp = K ψΔθ / (i (i − K))")]
    public static TimeSpan? TimeToPond(DepthRate conductivity, WaterDepth suctionDeficit, DepthRate rain)
    {
        if (rain <= conductivity) return null;
        double k = conductivity.MetersPerSecond, i = rain.MetersPerSecond;
        return TimeSpan.FromSeconds(k * suctionDeficit.Meters / (i * (i - k)));
    }

    /// <summary>Water that a soil layer can still take.</summary>
    [Source(nameof(Sources.WaterBalance), "(porosity − water content) × depth")]
    public static WaterDepth Deficit(Fraction porosity, Fraction content, WaterDepth layer) => layer * Math.Max(0, porosity.Share - content.Share);

    private static SoilTexture Row(string texture, double porosity, double effective, double centimeters, double centimetersPerHour) =>
        new(texture, Fraction.FromShare(porosity), Fraction.FromShare(effective), WaterDepth.FromMillimeters(centimeters * 10), DepthRate.FromMillimetersPerDay(centimetersPerHour * 240));
}
