using Watersown.Land;
using Watersown.Water;
using Watersown.Weather;

namespace Watersown.Season.Troubles;

/// <summary>How wind has pulled at the loose seed of a field. Ranks fields to look at; promises nothing.</summary>
/// <param name="Field">The field.</param>
/// <param name="SownAt">When it was sown.</param>
public sealed record SettleRisk(Field Field, DateTimeOffset SownAt)
{
    /// <summary>The index; only its order means something.</summary>
    [PlainNumber("an index; only its order means something")]
    public required double Index { get; init; }

    /// <summary>The index over that of the first.</summary>
    public Fraction Share { get; init; }

    /// <summary>Depth told, or the sowing depth where nobody told one.</summary>
    public required WaterDepth Depth { get; init; }

    public required bool DepthTold { get; init; }

    /// <summary>The strongest wind since it was sown; none where nobody told of any.</summary>
    public Wind? Strongest { get; init; }

    /// <summary>Water from levee to levee along that wind in the longest check.</summary>
    public Length? Fetch { get; init; }

    /// <summary>No levees are drawn: the fetch is the field's over the root of its number of checks.</summary>
    public bool FetchGuessed { get; init; }

    /// <summary>What that wind did over each check by wave theory, the worst first.</summary>
    public ImmutableArray<CheckWaves> Checks { get; init; } = [];

    /// <summary>How that wind leans the water of the longest check, once it has blown a quarter of an hour.</summary>
    public LeaningWater? Lean { get; init; }

    /// <summary>Strongest wind still forecast while its seed is loose.</summary>
    public Wind? Coming { get; init; }

    /// <summary>What lowering its boards tonight would change, where wind that can move seed is still to come.</summary>
    public LoweredBoards? Lowered { get; init; }

    /// <summary>Somebody looked since the strongest wind.</summary>
    public bool Scouted { get; init; }

    public required Working Working { get; init; }
}
