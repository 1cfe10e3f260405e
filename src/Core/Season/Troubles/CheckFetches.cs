using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Shapes;

namespace Watersown.Season.Troubles;

/// <summary>Water from levee to levee along a wind.</summary>
/// <param name="Check">Number of the check; none where the field is one.</param>
/// <param name="Fetch">The longest straight way over it.</param>
public sealed record CheckFetch(int? Check, Length Fetch);

/// <summary>Fetch of each check of a field along a wind.</summary>
/// <param name="Checks">From the head.</param>
/// <param name="Guessed">No levees are drawn: each is taken as a check shaped like the field.</param>
public sealed record FieldFetch(ImmutableArray<CheckFetch> Checks, bool Guessed)
{
    public Length Longest => Checks.Select(c => c.Fetch).Max();
}

/// <summary>How far wind blows over the water of each check.</summary>
public static class CheckFetches
{
    /// <summary>The longest straight way along the wind over each drawn check, or the field's over the root of its number of checks.</summary>
    /// <param name="field">The field.</param>
    /// <param name="from">Where the wind comes from; of an unknown one the longer of north and east is taken.</param>
    [Source(nameof(Sources.CoastalEngineeringManual), "part II-2: straight-line fetch; levees end it")]
    [Source(nameof(Sources.FarmDefault), "checks shaped like the field, where none is drawn")]
    public static FieldFetch Of(Field field, Bearing? from)
    {
        if (FieldPlace.Middle(field) is not { } middle) return Guess(field, FieldFlight.UsualPass);
        var plane = new MapPlane(FarmPlane.At(middle), middle);
        if (!field.Basins.IsEmpty && field.Basins.All(b => b.Boundary is not null))
            return new FieldFetch([.. field.Basins.Select(b => new CheckFetch(b.Number, Along(plane.Place(b.Boundary!), from)))], Guessed: false);
        return Guess(field, Along(FieldPlace.Outlined(field, plane, middle).Parts, from));
    }

    private static FieldFetch Guess(Field field, Length extent)
    {
        var each = extent / Math.Sqrt(Math.Max(1, field.Basins.Length));
        return new FieldFetch(field.Basins.IsEmpty ? [new CheckFetch(null, each)] : [.. field.Basins.Select(b => new CheckFetch(b.Number, each))], Guessed: true);
    }

    private static Length Along(ImmutableArray<PlanePart> parts, Bearing? from)
    {
        if (from is { } known) return Chords.Longest(parts, known);
        Length north = Chords.Longest(parts, Bearing.FromDegrees(0)), east = Chords.Longest(parts, Bearing.FromDegrees(90));
        return north > east ? north : east;
    }
}
