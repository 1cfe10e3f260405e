namespace Watersown.Land;

/// <summary>One named piece of ground sown as one job.</summary>
public sealed record Field
{
    /// <summary>The farm's short code, at most four characters, unique within the farm: <c>N4</c>.</summary>
    public required string Code { get; init; }

    /// <summary>The farm's own name for it, never shortened.</summary>
    public required string Name { get; init; }

    /// <summary>Net sown acres: what is flown, seeded and billed. The only acre figure that must be known.</summary>
    public required Area Net { get; init; }

    /// <summary>Everything inside the edge: levees, ditches, pads.</summary>
    public Area? Gross { get; init; }

    /// <summary>As certified for government or insurance. Never overwritten by the others, nor they by it.</summary>
    public Area? Certified { get; init; }

    public Boundary? Boundary { get; init; }

    /// <summary>Middle of the field, where there is no boundary.</summary>
    public GeoPoint? Center { get; init; }

    /// <summary>Distance to the strip as flown, where there is no geometry.</summary>
    public Length? Ferry { get; init; }

    /// <summary>Direction of the long side, where there is no boundary.</summary>
    public Bearing? LongAxis { get; init; }

    /// <summary>Length of a pass along the long side, where there is no boundary.</summary>
    public Length? PassLength { get; init; }

    /// <summary>Code of the soil of <see cref="Farm.Soils"/>.</summary>
    public string? Soil { get; init; }

    /// <summary>Codes of the water sources that reach it, first choice first.</summary>
    public ImmutableArray<string> Sources { get; init; } = [];

    /// <summary>Checks from the head, first to get water, to the tail.</summary>
    public ImmutableArray<Basin> Basins { get; init; } = [];

    public ImmutableArray<Box> Boxes { get; init; } = [];

    /// <summary>Most water the inlet gate or the boxes can pass into the field.</summary>
    public FlowRate? InletLimit { get; init; }

    public string? BoxNotes { get; init; }

    /// <summary>Anything a relief would want to know.</summary>
    public string? Note { get; init; }
}

/// <summary>A check: one level basin inside a field. (The screen shows the trade's word.)</summary>
/// <param name="Number">Order from the head, 1 first.</param>
/// <param name="Area">Its acres.</param>
public sealed record Basin(int Number, Area Area)
{
    /// <summary>Drop to the next check.</summary>
    public WaterDepth? Drop { get; init; }

    /// <summary>How far the highest ground stands above the mean.</summary>
    public WaterDepth? HighSpot { get; init; }

    public Boundary? Boundary { get; init; }
}

/// <summary>What a box is for.</summary>
public enum BoxKind
{
    Inlet,
    BetweenChecks,
    Drain,
}

/// <summary>The boarded opening through a levee.</summary>
/// <param name="Number">The farm's number for it.</param>
/// <param name="Kind">Inlet, between checks, or drain.</param>
public sealed record Box(int Number, BoxKind Kind)
{
    /// <summary>Check it takes water from; none for an inlet.</summary>
    public int? FromCheck { get; init; }

    /// <summary>Check it gives water to; none for a drain.</summary>
    public int? ToCheck { get; init; }

    public Length? Width { get; init; }

    public WaterDepth? Boards { get; init; }

    public bool Leaks { get; init; }

    /// <summary>Where a drain goes: a public drain, an own return, recirculation.</summary>
    public string? DrainsTo { get; init; }

    public GeoPoint? At { get; init; }
}

/// <summary>How a soil takes and loses water.</summary>
/// <param name="Code">The farm's code: <c>HC</c>.</param>
/// <param name="Name">Heavy clay, clay, clay on hardpan, leaky, saline patch.</param>
/// <param name="Fill">Water to wet the worked soil and stand shallow over it.</param>
/// <param name="Seepage">Lost down and sideways per day once full.</param>
public sealed record Soil(string Code, string Name, WaterDepth Fill, DepthRate Seepage)
{
    /// <summary>How many seasons stand behind the two figures; 0 means a default.</summary>
    public int LearnedFrom { get; init; }
}
