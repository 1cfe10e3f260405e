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
    /// Strips that cover a figure without bays are together no narrower than it is, however they lie. A field with bays holds
    /// such figures, which must be covered too: its outline drawn in by as much as its deepest bay, and the largest circle in
    /// it. And no pass is longer than its outline is across.
    /// </summary>
    [Source(nameof(Sources.Bang1951), "widths of strips that cover a convex figure add up to its least width or more")]
    public static LayingBound Of(ImmutableArray<PlanePart> field, PassPace pace) => Of(field, FieldRings.Of(field), pace);

    internal static LayingBound Of(ImmutableArray<PlanePart> field, FieldRings rings, PassPace pace)
    {
        var (area, swath, outline) = (rings.Area, pace.Swath, rings.Outline);
        var least = Length.FromMeters(area / swath.Meters);
        var convex = rings.Ends.Length == 1 && outline.Area.SquareMeters - area <= Bay * area;
        var passes = convex
            ? Flight.Passes.Count(outline.Narrowest().Width, swath)
            : Math.Max((int)Math.Ceiling((least / outline.Longest) - Bay), Flight.Passes.Count(Inside(field, outline), swath));
        return new LayingBound(passes, least, (pace with { Turn = pace.LeastTurn }).Time(least, passes), convex);
    }

    // Least width of a figure without bays that lies in the field.
    private static Length Inside(ImmutableArray<PlanePart> field, Hull outline)
    {
        var circle = 2 * LandCut.Inscribed(field);
        if (field.Length > 1 || field[0].Holes.Length > 0) return circle;
        var bays = Bays.Of(field[0].Outer);
        var drawnIn = LandCut.DrawnIn(outline, Length.FromMeters(bays.IsEmpty ? 0 : bays[0].Depth));
        return drawnIn is { } inner && inner.Narrowest().Width > circle ? inner.Narrowest().Width : circle;
    }
}
