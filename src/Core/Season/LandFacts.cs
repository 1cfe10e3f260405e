using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>How far a field has come: ground work done, flooding, full, sown.</summary>
public sealed record StageReached(string Field, FieldStage Stage) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>What the farm says of a field, put right on the spot.</summary>
public sealed record FieldCorrected(string Field) : MarkFact
{
    /// <summary>Net acres.</summary>
    public Area? Net { get; init; }

    /// <summary>Gross acres.</summary>
    public Area? Gross { get; init; }

    /// <summary>Acres as certified.</summary>
    public Area? Certified { get; init; }

    /// <summary>Dry seed per acre.</summary>
    public SeedRate? Rate { get; init; }

    public string? Variety { get; init; }

    public string? Name { get; init; }

    public override string? AboutField => Field;
}

/// <summary>The edge of a field, as somebody drew, walked or imported it.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Land">Its pieces; of each the outer ring first, then its holes.</param>
public sealed record BoundaryDrawn(string Field, FactList<FactList<FactList<GeoPoint>>> Land) : MarkFact
{
    public override string? AboutField => Field;

    /// <summary>The fact of a boundary.</summary>
    public static BoundaryDrawn Of(string field, Boundary edge) =>
        new(field, [.. edge.Parts.Select(p => (FactList<FactList<GeoPoint>>)[[.. p.Outer], .. p.Holes.Select(h => (FactList<GeoPoint>)[.. h])])]);

    /// <summary>The boundary of the fact.</summary>
    public Boundary ToBoundary() => new([.. Land.Select(p => new BoundaryPart(p[0].AsArray(), [.. p.Skip(1).Select(h => h.AsArray())]))]);
}

/// <summary>Plants inside rings thrown in one zone.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Zone">The farm's word for the zone.</param>
/// <param name="ZoneLand">Its acres.</param>
/// <param name="Rings">Plants in each ring.</param>
public sealed record RingsCounted(string Field, string Zone, Area? ZoneLand, FactList<int> Rings) : MarkFact
{
    /// <summary>Land inside a ring; one square foot where not said.</summary>
    public Area? Ring { get; init; }

    public override string? AboutField => Field;
}

/// <summary>What somebody looked for in a field, and what was there.</summary>
/// <param name="Field">Field code.</param>
/// <param name="What">What was looked for: <c>shrimp</c>, <c>algae</c>, <c>leaf stage</c>.</param>
/// <param name="Seen">What was seen; in words or a figure.</param>
public sealed record Scouted(string Field, string What, string Seen) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>Words, typed or spoken; about a field or about none.</summary>
public sealed record Noted(string Text, string? Field) : MarkFact
{
    public override string? AboutField => Field;
}

/// <summary>A picture.</summary>
/// <param name="Attachment">Name the picture is kept under.</param>
/// <param name="Field">Field code, if it is of one.</param>
public sealed record Photographed(string Attachment, string? Field) : MarkFact
{
    public override string? AboutField => Field;
}
