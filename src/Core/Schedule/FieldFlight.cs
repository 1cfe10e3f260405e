using Watersown.Flight;
using Watersown.Land;

namespace Watersown.Schedule;

/// <summary>What sowing a field asks of an aeroplane, from what is known of its place and shape.</summary>
public static class FieldFlight
{
    /// <summary>Half a mile: the usual run of a field nobody has drawn.</summary>
    [Source(nameof(Sources.FarmDefault), "half a mile")]
    public static Length UsualPass { get; } = Length.FromFeet(2640);

    /// <summary>Two miles from the strip, where nobody has said how far.</summary>
    [Source(nameof(Sources.FarmDefault), "two miles")]
    public static Length UsualFerry { get; } = Length.FromMiles(2);

    /// <summary>The job of sowing a field in so many loads.</summary>
    [Source(nameof(Sources.FarmRecord), "the field's own pass and ferry, or the usual")]
    public static FlyingJob Job(SeasonState state, Field field, int loads, Aeroplane aeroplane) =>
        new(field.Net, loads, field.PassLength ?? UsualPass, Ferry(state, field, aeroplane));

    /// <summary>As told, or from the strip to the middle of the field, or the usual.</summary>
    [Source(nameof(Sources.FarmRecord), "as told; else strip to middle on the WGS 84 radii of curvature")]
    public static Length Ferry(SeasonState state, Field field, Aeroplane aeroplane)
    {
        if (field.Ferry is { } told) return told;
        var strip = state.Farm.Strips.FirstOrDefault(s => s.Name == aeroplane.Strip) ?? state.Farm.Strips.FirstOrDefault();
        return strip?.At is { } from && field.Center is { } to ? Apart(from, to) : UsualFerry;
    }

    // Two points a few miles apart, on the ellipsoid's own radii at the middle latitude; within 1e-6 at ten miles.
    [Source(nameof(Sources.Definition), "WGS 84 radii of curvature")]
    private static Length Apart(GeoPoint from, GeoPoint to)
    {
        const double a = 6378137, e2 = 0.00669437999014;
        var middle = (from.Latitude + to.Latitude) / 2 * Math.PI / 180;
        var w = 1 - (e2 * Math.Sin(middle) * Math.Sin(middle));
        var north = (to.Latitude - from.Latitude) * Math.PI / 180 * a * (1 - e2) / Math.Pow(w, 1.5);
        var east = (to.Longitude - from.Longitude) * Math.PI / 180 * a / Math.Sqrt(w) * Math.Cos(middle);
        return Length.FromMeters(double.Hypot(north, east));
    }
}
