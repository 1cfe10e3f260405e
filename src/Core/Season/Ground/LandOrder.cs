namespace Watersown.Season.Ground;

/// <summary>In which order fields are listed.</summary>
public enum LandOrder
{
    /// <summary>As the farm lists them.</summary>
    Farm,

    /// <summary>Those farthest along first.</summary>
    Stage,

    /// <summary>The largest first.</summary>
    Acres,

    /// <summary>The oldest reading of depth first; those never read before them.</summary>
    DepthAge,
}

/// <summary>Which fields are shown, and in which order.</summary>
/// <param name="Order">The order.</param>
/// <param name="Look">Only those that look so; none for all.</param>
/// <param name="Block">Only those of one block; none for all.</param>
public sealed record LandChoice(LandOrder Order, GroundLook? Look, string? Block)
{
    public static LandChoice All { get; } = new(LandOrder.Farm, Look: null, Block: null);

    /// <summary>The rows chosen; fields that are alike stay in the farm's order.</summary>
    public ImmutableArray<LandRow> Of(IEnumerable<LandRow> rows)
    {
        var chosen = rows.Where(r => (Look is null || r.Look == Look) && (Block is null || string.Equals(r.Block, Block, StringComparison.Ordinal)));
        return Order switch
        {
            LandOrder.Stage => [.. chosen.OrderByDescending(r => r.Season.StageUntold ? -1 : (int)r.Season.Stage)],
            LandOrder.Acres => [.. chosen.OrderByDescending(r => r.Field.Net.Acres)],
            LandOrder.DepthAge => [.. chosen.OrderBy(r => r.Depth?.At ?? DateTimeOffset.MinValue)],
            _ => [.. chosen],
        };
    }
}
