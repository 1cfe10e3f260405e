namespace Watersown.Water;

/// <summary>Flooded land whose water is to be raised.</summary>
/// <param name="Name">The farm's name for it.</param>
/// <param name="Land">Its land.</param>
/// <param name="Depth">As it stands.</param>
public sealed record RaisedLand(string Name, Area Land, WaterDepth Depth);

/// <summary>One field of a raise.</summary>
/// <param name="Land">The field.</param>
/// <param name="Volume">Water to bring it to the target.</param>
/// <param name="Alone">Depth it comes to within the time left if all that is to spare goes into it alone; not above the target.</param>
public sealed record RaisePart(RaisedLand Land, Volume Volume, WaterDepth Alone)
{
    public WaterDepth Rise => Alone - Land.Depth;
}

/// <summary>What it takes to raise the water of several fields from one source.</summary>
/// <param name="Target">Depth wanted.</param>
/// <param name="Spare">Flow left over once all that is wet is held.</param>
/// <param name="Left">Time there is.</param>
public sealed record WaterRaise(WaterDepth Target, FlowRate Spare, TimeSpan Left)
{
    /// <summary>Water to bring all of it to the target.</summary>
    public required Volume Volume { get; init; }

    /// <summary>How long that takes; never where nothing is to spare.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Rise of all of it together within the time left; not above what is wanted on the whole.</summary>
    public required WaterDepth Together { get; init; }

    /// <summary>Spare flow that would do it within the time left.</summary>
    public FlowRate? Wanted { get; init; }

    /// <summary>The fields below the target, those first that can be raised most within the time left.</summary>
    public required ImmutableArray<RaisePart> Parts { get; init; }

    /// <summary>It can be done within the time left.</summary>
    public bool InTime => Time is { } time && time <= Left;
}

/// <summary>Deep water before cold nights: what it takes, how long, and which fields gain most while time is short.</summary>
public static class Raising
{
    /// <summary>Depth that is advised between panicle initiation and heading where nights turn cold.</summary>
    [Source(nameof(Sources.UcLatePlanting2023), "about 8 in between panicle initiation and heading")]
    public static WaterDepth ColdNights { get; } = WaterDepth.FromInches(8);

    /// <summary>The raise of some land with a spare flow within a time. Deeper water seeps a little faster: that is not in it.</summary>
    /// <param name="land">Flooded land; what stands at the target or above is left out.</param>
    /// <param name="target">Depth wanted.</param>
    /// <param name="spare">Flow left over once all that is wet is held; below zero counts as none.</param>
    /// <param name="left">Time there is.</param>
    [Source(nameof(Sources.WaterBalance), "Σ land × (target − depth), over the flow left once what is wet is held")]
    public static WaterRaise Of(ImmutableArray<RaisedLand> land, WaterDepth target, FlowRate spare, TimeSpan left)
    {
        var flow = spare > FlowRate.Zero ? spare : FlowRate.Zero;
        var comes = flow * (left > TimeSpan.Zero ? left : TimeSpan.Zero);
        var low = land.Where(l => l.Depth < target).ToImmutableArray();
        var volume = low.Aggregate(Volume.Zero, (sum, l) => sum + (l.Land * (target - l.Depth)));
        var acres = low.Aggregate(Area.Zero, (sum, l) => sum + l.Land);
        return new WaterRaise(target, spare, left)
        {
            Volume = volume,
            Time = Time(volume, flow),
            Together = acres > Area.Zero ? WaterDepth.FromMeters(Math.Min(comes.CubicMeters, volume.CubicMeters) / acres.SquareMeters) : WaterDepth.Zero,
            Wanted = left > TimeSpan.Zero ? FlowRate.FromCubicMetersPerSecond(volume.CubicMeters / left.TotalSeconds) : null,
            Parts = [.. low.Select(l => Part(l, target, comes)).OrderByDescending(p => p.Rise).ThenBy(p => p.Land.Name, StringComparer.Ordinal)],
        };
    }

    private static RaisePart Part(RaisedLand land, WaterDepth target, Volume comes)
    {
        var alone = land.Land > Area.Zero ? land.Depth + WaterDepth.FromMeters(comes.CubicMeters / land.Land.SquareMeters) : target;
        return new RaisePart(land, land.Land * (target - land.Depth), alone < target ? alone : target);
    }

    private static TimeSpan? Time(Volume volume, FlowRate flow)
    {
        if (volume <= Volume.Zero) return TimeSpan.Zero;
        if (flow <= FlowRate.Zero) return null;
        var seconds = volume.CubicMeters / flow.CubicMetersPerSecond;
        return seconds > TimeSpan.MaxValue.TotalSeconds / 2 ? null : TimeSpan.FromSeconds(seconds);
    }
}
