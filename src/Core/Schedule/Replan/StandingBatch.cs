using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>What a batch is still good for when a morning is lost.</summary>
public enum BatchUse
{
    /// <summary>It can still be sown on a coming morning.</summary>
    Live,

    /// <summary>It was drained so long ago, or has been under water so long, that no coming morning is inside its window.</summary>
    Past,

    /// <summary>It would keep, but no waiting field takes its variety with no more than its weight.</summary>
    NoField,
}

/// <summary>A batch as it stands on a blown-out morning.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Use">What it is still good for.</param>
public sealed record StandingBatch(SoakBatch Batch, BatchUse Use)
{
    /// <summary>Not under water yet: it can be called off, or cut to what is needed, at no loss.</summary>
    public required bool Due { get; init; }

    /// <summary>How long it has been drained at the moment of asking; none while under water.</summary>
    public TimeSpan? DrainedFor { get; init; }

    /// <summary>How long it will have been drained at the first load of the next open morning.</summary>
    public TimeSpan? DrainedAtFirstLoad { get; init; }

    /// <summary>How long it has been under water; none once drained or before it goes in.</summary>
    public TimeSpan? UnderWaterFor { get; init; }

    /// <summary>Last moment of sowing, once drained.</summary>
    public DateTimeOffset? UseBy { get; init; }

    /// <summary>What its seed has cost: lost if it is thrown away.</summary>
    public required Money IfDumped { get; init; }

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>One moment at which a batch could be drained, with what it makes of the seed.</summary>
/// <param name="At">When it is taken off the water.</param>
/// <param name="UnderWater">How long it has been under water then.</param>
/// <param name="DrainedAtFirstLoad">How long it has drained when the first load leaves.</param>
public sealed record DrainChoice(DateTimeOffset At, TimeSpan UnderWater, TimeSpan DrainedAtFirstLoad)
{
    /// <summary>Longer under water than the usual most.</summary>
    public required bool OverUsual { get; init; }

    /// <summary>More than an hour over the usual most: no longer the top of the usual.</summary>
    public bool WellOver { get; init; }

    /// <summary>So long under water that the house counts it lost.</summary>
    public required bool OverLost { get; init; }

    /// <summary>Drained shorter than the rule of the house.</summary>
    public required bool ShortDrain { get; init; }

    public Working Working { get; init; } = Working.Empty;
}
