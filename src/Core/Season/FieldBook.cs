using Watersown.Season.Learning;
using Watersown.Weather;

namespace Watersown.Season;

/// <summary>Everything the marks tell of one field.</summary>
/// <param name="Code">Field code.</param>
public sealed record FieldBook(string Code)
{
    /// <summary>The farm does not have it (yet).</summary>
    public bool Unknown { get; init; }

    /// <summary>Its marks in order.</summary>
    public ImmutableArray<StoryLine> Story { get; init; } = [];

    /// <summary>Water in each check of which something is known, from the head.</summary>
    public ImmutableArray<CheckBook> Checks { get; init; } = [];

    /// <summary>The newest reading told for the field as a whole.</summary>
    public DepthNote? Depth { get; init; }

    /// <summary>Sowings, parts too, in order.</summary>
    public ImmutableArray<Sowing> Sowings { get; init; } = [];

    /// <summary>Sowings before it was sown again, in order.</summary>
    public ImmutableArray<Sowing> SownBefore { get; init; } = [];

    /// <summary>Acres sown so far; not above net.</summary>
    public Area Sown { get; init; }

    /// <summary>Loads flown since it was last wholly sown, in order.</summary>
    public ImmutableArray<LoadNote> Loads { get; init; } = [];

    /// <summary>Soaked seed left over after its sowing.</summary>
    public SoakedSeed? Left { get; init; }

    /// <summary>Ring counts by zone, the newest of each.</summary>
    public ImmutableArray<(Mark Mark, RingsCounted Count)> Counts { get; init; } = [];

    /// <summary>Stages of the crop that somebody saw, in order.</summary>
    public ImmutableArray<(Mark Mark, StageSeen Seen)> Stages { get; init; } = [];

    /// <summary>Looks for pests, in order.</summary>
    public ImmutableArray<(Mark Mark, PestLooked Look)> Looks { get; init; } = [];

    /// <summary>Days of its flood's own warmth.</summary>
    public ImmutableArray<DayWarmth> Flood { get; init; } = [];

    /// <summary>When somebody last looked for anything in it.</summary>
    public DateTimeOffset? ScoutedAt { get; init; }

    /// <summary>The newest track held against it.</summary>
    public (Mark Mark, TrackLooked Look)? Track { get; init; }

    /// <summary>What the flying service last said that it flew.</summary>
    public FlightBilled? Billed { get; init; }

    /// <summary>What its marks say of the water it takes; none where it has no flood, or nobody knows what water comes.</summary>
    public FieldLearning? Learning { get; init; }

    public CheckBook? Check(int number) => Checks.FirstOrDefault(c => c.Number == number);
}

/// <summary>Water in one check.</summary>
/// <param name="Number">Order from the head, 1 first.</param>
public sealed record CheckBook(int Number)
{
    public DateTimeOffset? FirstWet { get; init; }

    public DateTimeOffset? FullSince { get; init; }

    /// <summary>When it was seen dry, if that is the last that was seen.</summary>
    public DateTimeOffset? DrySince { get; init; }

    /// <summary>There is water in it.</summary>
    public bool IsWet { get; init; }

    /// <summary>Nobody saw it wet, but water seen below it went through it.</summary>
    public bool Implied { get; init; }

    /// <summary>The newest reading.</summary>
    public DepthNote? Depth { get; init; }
}

/// <summary>A depth with who read it when.</summary>
public sealed record DepthNote(WaterDepth Depth, DateTimeOffset At, string By, Sureness Sure);

/// <summary>One sowing of a field or a part of it.</summary>
/// <param name="At">When.</param>
/// <param name="Land">Acres.</param>
/// <param name="Mark">The mark that told of it.</param>
public sealed record Sowing(DateTimeOffset At, Area Land, MarkId Mark)
{
    public string? Part { get; init; }

    public string? Batch { get; init; }

    /// <summary>Dry seed, as told.</summary>
    public DrySeed? Dry { get; init; }

    public bool Resow { get; init; }
}

/// <summary>One load flown.</summary>
/// <param name="Number">Number of the load on that field, where told.</param>
/// <param name="At">When it left.</param>
/// <param name="By">Who ticked it.</param>
public sealed record LoadNote(int? Number, DateTimeOffset At, string By)
{
    public string? Trailer { get; init; }

    public SoakedSeed? Soaked { get; init; }
}
