using Watersown.Seed;

namespace Watersown.Season;

/// <summary>One order of water, as it last stood.</summary>
/// <param name="Order">The newest mark's words.</param>
/// <param name="At">When they were said.</param>
/// <param name="By">Who said so.</param>
public sealed record OrderNote(WaterOrdered Order, DateTimeOffset At, string By);

/// <summary>Everything the marks tell of one source.</summary>
/// <param name="Code">Source code.</param>
public sealed record SourceBook(string Code)
{
    /// <summary>The newest flow that somebody saw.</summary>
    public FlowRate? Seen { get; init; }

    public DateTimeOffset? SeenAt { get; init; }

    /// <summary>Orders that have not ended, by the moment they change the flow.</summary>
    public ImmutableArray<OrderNote> Orders { get; init; } = [];

    /// <summary>When it last started or stopped.</summary>
    public DateTimeOffset? SwitchedAt { get; init; }

    public ImmutableArray<StoryLine> Story { get; init; } = [];
}

/// <summary>Where the seed of a batch is.</summary>
public enum BatchPlace
{
    /// <summary>Called for; not under water yet.</summary>
    Called,
    InSoak,
    Drained,
    Sown,
    Dumped,
}

/// <summary>Everything that is told of one batch.</summary>
/// <param name="Code">Batch code.</param>
public sealed record BatchBook(string Code)
{
    /// <summary>The batch as planned with; none where its weight or variety is not known.</summary>
    public SoakBatch? Batch { get; init; }

    public BatchPlace Place { get; init; }

    public string? Lot { get; init; }

    /// <summary>Dry seed put in; none where not told.</summary>
    public DrySeed? Dry { get; init; }

    public DrySeed Sown { get; init; }

    public DrySeed Dumped { get; init; }

    /// <summary>Dry seed of it that is still there.</summary>
    public DrySeed? Remaining { get; init; }

    /// <summary>Nobody said that it was this batch: it was the only one meant for the field.</summary>
    public bool Assumed { get; init; }

    public ImmutableArray<StoryLine> Story { get; init; } = [];
}

/// <summary>Where a trailer is and what is in it.</summary>
/// <param name="Number">The trailer's number.</param>
public sealed record TrailerBook(string Number)
{
    public string? Batch { get; init; }

    public string? Field { get; init; }

    /// <summary>Soaked seed in it by the newest word of the scale.</summary>
    public SoakedSeed? Soaked { get; init; }

    public string? Place { get; init; }

    /// <summary>When this was last told.</summary>
    public DateTimeOffset? At { get; init; }
}

/// <summary>Something broken and not mended.</summary>
/// <param name="Mark">The mark that told of it.</param>
/// <param name="Fault">What it says.</param>
public sealed record OpenFault(Mark Mark, FaultFound Fault);

/// <summary>How far one message has come.</summary>
/// <param name="Message">Its name.</param>
/// <param name="Last">The newest word.</param>
/// <param name="At">When.</param>
/// <param name="By">Who put it down.</param>
public sealed record MessageBook(string Message, Told Last, DateTimeOffset At, string By)
{
    /// <summary>Every word of it in order.</summary>
    public ImmutableArray<Mark> Story { get; init; } = [];
}

/// <summary>A day, or a field's flight on it, called off.</summary>
public sealed record CalledOff(StoodDown What, DateTimeOffset At, string By);
