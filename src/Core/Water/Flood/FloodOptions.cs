namespace Watersown.Water.Flood;

/// <summary>How fine a flood is worked out, and how often its depths are told.</summary>
public sealed record FloodOptions
{
    /// <summary>Error of one step that is let pass, in depth over a whole check.</summary>
    public WaterDepth StepError { get; init; } = WaterDepth.FromMeters(5e-6);

    /// <summary>Longest step.</summary>
    public TimeSpan StepMost { get; init; } = TimeSpan.FromHours(2);

    /// <summary>Time between told depths; none are told where it is zero.</summary>
    public TimeSpan Telling { get; init; } = TimeSpan.FromHours(1);
}

/// <summary>Where the water of a run came from and went.</summary>
public sealed record FloodBalance
{
    public required Volume In { get; init; }

    public required Volume Rain { get; init; }

    /// <summary>To the air.</summary>
    public required Volume Evaporated { get; init; }

    /// <summary>Into the ground, beyond what it took up when it got wet.</summary>
    public required Volume Percolated { get; init; }

    /// <summary>Over drains, through outer levees and past full ditches.</summary>
    public required Volume Left { get; init; }

    /// <summary>More in ponds and worked soil at the end than at the start.</summary>
    public required Volume Stored { get; init; }

    /// <summary>What does not add up: rounding, and nothing else.</summary>
    public Volume Residual => In + Rain - Evaporated - Percolated - Left - Stored;
}

/// <summary>A check at a moment.</summary>
/// <param name="At">Since the start.</param>
/// <param name="Depth">Water standing, spread over the whole check.</param>
/// <param name="Covered">Ground covered.</param>
public readonly record struct FloodDepth(TimeSpan At, WaterDepth Depth, Fraction Covered);

/// <summary>What happened in one check.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="FirstWet">When the first thousandth of it was taken up; none where it stayed dry, zero where it was wet at the start.</param>
/// <param name="Full">When the last ground was covered.</param>
/// <param name="Depth">At the end, over the whole check.</param>
/// <param name="Covered">At the end.</param>
public sealed record FloodStory(string Name, TimeSpan? FirstWet, TimeSpan? Full, WaterDepth Depth, Fraction Covered)
{
    public ImmutableArray<FloodDepth> Depths { get; init; } = [];

    /// <summary>Deepest at the end of any step, over the whole check.</summary>
    public WaterDepth Deepest { get; init; }
}

/// <summary>What one box passed.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="FirstOver">When water first stood over its boards.</param>
/// <param name="Passed">In all, what ran back taken off.</param>
/// <param name="Most">Strongest flow at the end of any step.</param>
public sealed record BoxStory(string Name, TimeSpan? FirstOver, Volume Passed, FlowRate Most);

/// <summary>A flood as it ran.</summary>
/// <param name="Checks">In the network's order.</param>
/// <param name="Boxes">In the network's order.</param>
/// <param name="Balance">Of all of it.</param>
public sealed record FloodRun(ImmutableArray<FloodStory> Checks, ImmutableArray<BoxStory> Boxes, FloodBalance Balance)
{
    /// <summary>Steps that were taken, over all parts that hang together.</summary>
    public int Steps { get; init; }

    /// <summary>When the last check was full; none where one never is.</summary>
    public TimeSpan? AllFull => Checks.Any(c => c.Full is null) ? null : Checks.Max(c => c.Full);
}
