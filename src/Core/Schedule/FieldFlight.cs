using Watersown.Flight;
using Watersown.Land;
using Watersown.Shapes;

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
        new(field.Net, loads, PassLength(field, aeroplane), Ferry(state, field, aeroplane));

    /// <summary>As told, or the mean of the passes along the heading that needs fewest, or the usual.</summary>
    [Source(nameof(Sources.FarmRecord), "as told; else the passes laid over its edge")]
    public static Length PassLength(Field field, Aeroplane aeroplane) =>
        field.PassLength ?? (field.Boundary is { } edge ? Passes.Lay(edge, aeroplane.Swath, heading: null).MeanLength : UsualPass);

    /// <summary>As told, or from the strip to the middle of the field, or the usual.</summary>
    [Source(nameof(Sources.FarmRecord), "as told; else strip to middle on the WGS 84 radii of curvature")]
    public static Length Ferry(SeasonState state, Field field, Aeroplane aeroplane)
    {
        if (field.Ferry is { } told) return told;
        var strip = state.Farm.Strips.FirstOrDefault(s => s.Name == aeroplane.Strip) ?? state.Farm.Strips.FirstOrDefault();
        return strip?.At is { } from && Middle(field) is { } to
            ? Geodesic.Between(from.Latitude, from.Longitude, to.Latitude, to.Longitude).Distance
            : UsualFerry;
    }

    /// <summary>The middle of a field, as told or from its edge; none where neither is known.</summary>
    public static GeoPoint? Middle(Field field) =>
        field.Center ?? (field.Boundary is { } edge ? new GeoPoint(edge.Parts[0].Outer.Average(p => p.Latitude), edge.Parts[0].Outer.Average(p => p.Longitude)) : null);
}
