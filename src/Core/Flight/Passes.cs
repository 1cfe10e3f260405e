using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>One pass over a field.</summary>
/// <param name="Number">From the left, looking along the heading; 1 first.</param>
/// <param name="Open">Stretches over the field, gate open, in order along the heading.</param>
public sealed record Pass(int Number, ImmutableArray<LineSpan> Open)
{
    /// <summary>Length with the gate open.</summary>
    public Length OpenLength => Open.Aggregate(Length.Zero, (sum, span) => sum + span.Length);
}

/// <summary>Straight parallel passes over a field.</summary>
/// <param name="Heading">From true north.</param>
/// <param name="Width">Extent of the field square to the heading, pieces and holes taken together.</param>
/// <param name="Swath">The swath asked for.</param>
/// <param name="All">The passes, left to right.</param>
public sealed record PassPlan(Bearing Heading, Length Width, Length Swath, ImmutableArray<Pass> All)
{
    /// <summary>The width shared out evenly: the swath or a little less.</summary>
    public Length Spacing => Width / All.Length;

    /// <summary>Length over the field with the gate open, all passes together.</summary>
    public Length OpenLength => All.Aggregate(Length.Zero, (sum, pass) => sum + pass.OpenLength);

    /// <summary>Mean length over the field of one pass.</summary>
    public Length MeanLength => OpenLength / All.Length;
}

/// <summary>
/// How a field is flown in straight passes. Knows the edge of the field, nothing of wires, wind, sun or neighbors: a wish
/// for the pilot, who flies what is safe. Passes along the ends (trim passes) are not in it.
/// </summary>
public static class Passes
{
    /// <summary>More passes than any field takes; a swath that small is a slip.</summary>
    [PlainNumber("passes")]
    public const int Most = 5000;

    // A width of a whole number of swaths must not take one more for floating dust; on the ground it is a tenth of a millimeter.
    private const double Dust = 1e-4;

    /// <summary>The heading across which the field is narrowest, so that fewest passes and turns cover it.</summary>
    [Source(nameof(Sources.WidthTheorem), "over the hull of every piece")]
    public static WidthAcross Narrowest(ImmutableArray<PlanePart> field) => OutlineOf(field).Narrowest();

    /// <summary>The next whole number of swaths across a width.</summary>
    [Source(nameof(Sources.WholePassCount), "width / swath, rounded up")]
    [return: PlainNumber("passes")]
    public static int Count(Length width, Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        return Math.Max(1, (int)Math.Ceiling(Math.Min(int.MaxValue, (width.Meters - Dust) / swath.Meters)));
    }

    /// <summary>
    /// Passes over a field on a plane, shared out evenly over its width. For land that is not convex the width is the
    /// outline's: turns may be saved by flying it in two headings.
    /// </summary>
    /// <param name="field">Pieces of the field.</param>
    /// <param name="swath">Widest distance between passes.</param>
    /// <param name="heading">From the plane's north; none for the narrowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than <see cref="Most"/> passes.</exception>
    [Source(nameof(Sources.WholePassCount), "lines at (i − 1/2) × width / passes, cut to the field")]
    public static PassPlan Lay(ImmutableArray<PlanePart> field, Length swath, Bearing? heading)
    {
        var outline = OutlineOf(field);
        var across = heading is { } asked ? new WidthAcross(asked, outline.Across(asked)) : outline.Narrowest();
        var count = Count(across.Width, swath);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Most, nameof(swath));
        var spacing = across.Width / count;
        var left = Length.FromMeters(outline.Corners.Min(c => c.RightOf(across.Heading)));
        var lines = Sweep.Lines(field, across.Heading, left + (spacing / 2), spacing, count);
        return new PassPlan(across.Heading, across.Width, swath, [.. lines.Select((open, i) => new Pass(i + 1, open))]);
    }

    /// <summary>
    /// Passes over a boundary, laid on a plane through its own middle, where the plane's north is true north.
    /// </summary>
    [Source(nameof(Sources.WholePassCount), "on the plane of the field itself")]
    public static PassPlan Lay(Boundary field, Length swath, Bearing? heading) => Lay(FarmPlane.Over(field).ToPlane(field), swath, heading);

    /// <summary>The convex outline of every piece of the field together.</summary>
    [Source(nameof(Sources.WidthTheorem), "over the hull of every piece")]
    public static Hull OutlineOf(ImmutableArray<PlanePart> field) => Hull.Of(field.SelectMany(p => p.Outer));
}
