using Watersown.Wording;

namespace Watersown.Land;

/// <summary>An edge drawn by hand against what the farm says of its field.</summary>
/// <param name="Edge">The boundary.</param>
/// <param name="Enclosed">What it encloses.</param>
/// <param name="Gross">The gross acres of the farm; none where not told.</param>
public sealed record MeasuredEdge(Boundary Edge, Area Enclosed, Area? Gross)
{
    /// <summary>How much more it encloses than the gross acres; less than nothing where it is less.</summary>
    [PlainNumber("share of the gross acres")]
    public double? Off => Gross is { } gross && gross > Area.Zero ? (Enclosed / gross) - 1 : null;
}

/// <summary>Takes corners, as tapped, walked or typed, for the edge of a field.</summary>
public static class DrawnEdge
{
    /// <summary>Beyond this the edge and the gross acres hardly mean the same ground. Common practice, no source.</summary>
    [PlainNumber("share of the gross acres")]
    [Source(nameof(Sources.FarmDefault), "3 %")]
    public const double MostOff = 0.03;

    /// <summary>The edge with its acres, or everything that keeps it from being one; acres far from the gross are a warning.</summary>
    /// <param name="corners">Corners in order, the first not repeated.</param>
    /// <param name="field">The field it is to be of.</param>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static Outcome<MeasuredEdge> Of(ImmutableArray<GeoPoint> corners, Field field) =>
        BoundaryDrawing.Create([new BoundaryPart(corners.IsEmpty ? corners : corners.Add(corners[0]), [])], field.Name).Then(edge => Measure(edge, field));

    /// <summary>An edge from a file against its field.</summary>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static Outcome<MeasuredEdge> Measure(Boundary edge, Field field)
    {
        var measured = new MeasuredEdge(edge, GeodesicArea.Of(edge), field.Gross);
        return measured.Off is { } off && Math.Abs(off) > MostOff
            ? Outcome<MeasuredEdge>.Of(measured, [Differs(measured, field.Name)])
            : Outcome<MeasuredEdge>.Of(measured);
    }

    /// <summary>That an edge and the gross acres do not mean the same ground.</summary>
    internal static Problem Differs(MeasuredEdge measured, string where) => LandProblems.BoundaryDiffers.At(where,
        ("value", Acres(measured.Enclosed)), ("limit", Acres(measured.Gross!.Value)), ("share", Say.Number(Math.Abs(measured.Off!.Value) * 100, 1) + " %"));

    private static string Acres(Area area) => Say.Number(area.Acres, 2).TrimEnd('0').TrimEnd('.') + " ac";
}
