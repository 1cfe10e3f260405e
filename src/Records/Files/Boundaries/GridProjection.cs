namespace Watersown.Records.Files.Boundaries;

/// <summary>A map projection by the name the projection package knows, with the parameters it must have.</summary>
internal sealed record GridProjection(string Method, ImmutableArray<(string Name, double Value)> Parameters)
{
    private static readonly string[] meridianParameters = ["central_meridian", "latitude_of_origin", "false_easting", "false_northing"];
    private static readonly string[] conicParameters = [.. meridianParameters, "standard_parallel_1", "standard_parallel_2"];
    private static readonly string[] scaledParameters = [.. meridianParameters, "scale_factor"];
    private static readonly string[] sphereParameters = ["central_meridian", "false_easting", "false_northing"];

    /// <summary>The projection of a PROJCS; none where it is not one of those checked, or lacks a number it needs.</summary>
    public static GridProjection? From(WktNode system)
    {
        var given = system.Children
            .Where(c => c.Keyword == "PARAMETER" && c.Texts.Length == 1 && c.Numbers.Length == 1)
            .GroupBy(c => Standard(c.Name.ToLowerInvariant()), StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.First().Numbers[0], StringComparer.Ordinal);
        return Plain(system.Child("PROJECTION")?.Name) switch
        {
            "transversemercator" or "gausskruger" => With("Transverse_Mercator", scaledParameters, given),
            "lambertconformalconic" or "lambertconformalconic2sp" when given.GetValueOrDefault("scale_factor", 1) == 1 => With("Lambert_Conformal_Conic_2SP", conicParameters, given),
            "albers" or "albersconicequalarea" => With("Albers_Conic_Equal_Area", conicParameters, given),
            "lambertazimuthalequalarea" => With("Lambert_Azimuthal_Equal_Area", meridianParameters, given),
            "obliquestereographic" or "doublestereographic" => With("Oblique_Stereographic", scaledParameters, given),
            "mercatorauxiliarysphere" or "popularvisualisationpseudomercator" => Web(given),
            "mercator1sp" when IsWeb(system) => Web(given),
            _ => null,
        };
    }

    // Web Mercator is written as the Mercator of the ellipsoid with a remark that the earth be taken for a ball.
    private static bool IsWeb(WktNode system) =>
        system.Children.Any(c => c.Keyword == "EXTENSION" && c.Texts.Any(t => t.Contains("+a=6378137 +b=6378137", StringComparison.Ordinal)))
        || Plain(system.Name).Contains("pseudomercator", StringComparison.Ordinal);

    private static GridProjection? Web(Dictionary<string, double> given) =>
        given.GetValueOrDefault("auxiliary_sphere_type") == 0 && given.GetValueOrDefault("standard_parallel_1") == 0
            ? With("Popular_Visualisation Pseudo-Mercator", sphereParameters, given)
            : null;

    private static GridProjection? With(string method, string[] needed, Dictionary<string, double> given) =>
        needed.All(n => given.TryGetValue(n, out var value) && double.IsFinite(value))
            ? new GridProjection(method, [.. needed.Select(n => (n, given[n]))])
            : null;

    // The two families of writers name the middle of some projections differently.
    private static string Standard(string parameter) => parameter switch
    {
        "longitude_of_center" or "longitude_of_origin" => "central_meridian",
        "latitude_of_center" => "latitude_of_origin",
        _ => parameter,
    };

    private static string Plain(string? name) => string.Concat((name ?? string.Empty).ToLowerInvariant().Where(char.IsAsciiLetterOrDigit));
}
