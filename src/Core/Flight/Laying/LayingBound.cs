using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>What no straight passes over a field can beat, on whatever headings they are flown.</summary>
/// <param name="Passes">Fewest passes.</param>
/// <param name="Length">Least length with the gate open.</param>
/// <param name="Time">That length and the turns between that many passes.</param>
/// <param name="Convex">The outline has no bay and no hole: the fewest passes are then known exactly.</param>
public sealed record LayingBound([property: PlainNumber("passes")] int Passes, Length Length, TimeSpan Time, bool Convex)
{
    // An outline bent in by less than this share of its land counts as one without bays.
    private const double Bay = 1e-9;

    /// <summary>
    /// Strips that cover a figure without bays are together no narrower than it is, however they lie; those over a field with
    /// bays and holes lack at most strips over these. The largest circle in the field must be covered too, and no pass is longer
    /// than the outline is across.
    /// </summary>
    [Source(nameof(Sources.Bang1951), "widths of strips that cover a convex figure add up to its least width or more")]
    public static LayingBound Of(ImmutableArray<PlanePart> field, PassPace pace) => Of(field, FieldRings.Of(field), pace);

    internal static Length LeastLength(ImmutableArray<PlanePart> field, PassPace pace) => Length.FromMeters(FieldRings.Of(field).Area / pace.Swath.Meters);

    internal static LayingBound Of(ImmutableArray<PlanePart> field, FieldRings rings, PassPace pace)
    {
        var (area, swath, outline) = (rings.Area, pace.Swath, rings.Outline);
        var least = Length.FromMeters(area / swath.Meters);
        var convex = rings.Ends.Length == 1 && outline.Area.SquareMeters - area <= Bay * area;
        var passes = Flight.Passes.Count(convex ? outline.Narrowest().Width : StripsNeeded.Of(field, swath), swath);
        if (!convex) passes = Math.Max(passes, (int)Math.Ceiling((least / outline.Longest) - Bay));
        return new LayingBound(passes, least, (pace with { Turn = pace.LeastTurn }).Time(least, passes), convex);
    }
}
