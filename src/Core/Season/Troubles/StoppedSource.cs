using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Troubles;

/// <summary>A covered field once its water stopped coming.</summary>
/// <param name="Field">The field.</param>
/// <param name="Season">How far it has come.</param>
public sealed record FieldLasting(Field Field, FieldSeason Season)
{
    /// <summary>Depth at the place that falls dry first; none where nobody told one.</summary>
    public WaterDepth? Depth { get; init; }

    /// <summary>When that depth was read; none where only the farm document has it.</summary>
    public DateTimeOffset? DepthAt { get; init; }

    /// <summary>Check that falls dry first; none where the depth is of the whole field.</summary>
    public int? Check { get; init; }

    /// <summary>How far the highest ground stands above the mean.</summary>
    public required WaterDepth HighSpot { get; init; }

    public required DepthRate Loss { get; init; }

    /// <summary>From losing its water to the first bare soil; none where the depth is not known or nothing is lost.</summary>
    public TimeSpan? Lasts { get; init; }

    /// <summary>When the first bare soil shows.</summary>
    public DateTimeOffset? BareAt { get; init; }

    /// <summary>When the plan sows it; none where it is sown or not planned.</summary>
    public DateTimeOffset? Sow { get; init; }

    /// <summary>It is still covered when it is to be sown.</summary>
    public bool SowStands => Sow is { } sow && (BareAt is not { } bare || sow < bare);

    /// <summary>Other running sources that reach it.</summary>
    public ImmutableArray<string> OtherSources { get; init; } = [];

    public required Working Working { get; init; }
}

/// <summary>A field that can no longer be filled in time, as far as anybody knows.</summary>
/// <param name="Field">The field.</param>
/// <param name="Season">How far it has come.</param>
public sealed record FillLost(Field Field, FieldSeason Season)
{
    /// <summary>Age of its head check now; none while it is dry.</summary>
    public TimeSpan? HeadAge { get; init; }

    /// <summary>When the plan had it full.</summary>
    public DateTimeOffset? FullAt { get; init; }

    /// <summary>The flight that falls.</summary>
    public DateTimeOffset? Sow { get; init; }

    /// <summary>Age of the head check on the morning of that flight.</summary>
    public TimeSpan? HeadAgeAtSow { get; init; }

    /// <summary>Running again by then, at the flow it had, still fills it before the flight; none where nothing can.</summary>
    public DateTimeOffset? BackBy { get; init; }

    /// <summary>The batch meant for it, where it has a name.</summary>
    public string? Batch { get; init; }

    /// <summary>Before this its soak can be called off or moved; none where there is none or it is under water already.</summary>
    public DateTimeOffset? CancelBy { get; init; }

    /// <summary>Its seed is under water already.</summary>
    public bool Soaking { get; init; }

    /// <summary>Full fields of the same variety that could take the seed instead, oldest water first.</summary>
    public ImmutableArray<string> Instead { get; init; } = [];

    public ImmutableArray<string> OtherSources { get; init; } = [];

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>Who hears of it.</summary>
public enum TroubleRole
{
    /// <summary>Whoever mends the pump or the well.</summary>
    Repair,
    District,
    Warehouse,
    Dispatcher,
    Irrigator,
    Tractor,
}

/// <summary>Somebody to ring, now or later.</summary>
/// <param name="Role">Who.</param>
/// <param name="By">Before when; none where it is now.</param>
public sealed record TroubleCall(TroubleRole Role, DateTimeOffset? By)
{
    /// <summary>Name of the message, the same through all its states.</summary>
    public required string Message { get; init; }

    /// <summary>By name, where the farm has somebody for it.</summary>
    public Person? Person { get; init; }

    /// <summary>Field codes it is about.</summary>
    public ImmutableArray<string> Fields { get; init; } = [];

    /// <summary>How far it has come.</summary>
    public MessageBook? Said { get; init; }
}

/// <summary>A source gives nothing: how long each field lasts, which flights fall, and who must hear of it when.</summary>
/// <param name="Source">The source.</param>
/// <param name="Since">When it stopped; the moment of reading where it still runs.</param>
public sealed record StoppedSource(WaterSource Source, DateTimeOffset Since)
{
    /// <summary>Covered fields, the soonest bare first; those whose depth nobody told come last.</summary>
    public required ImmutableArray<FieldLasting> Fields { get; init; }

    /// <summary>Half-filled fields, then those whose fill was to begin within days; in order of their flights.</summary>
    public required ImmutableArray<FillLost> Fills { get; init; }

    /// <summary>Soonest first.</summary>
    public required ImmutableArray<TroubleCall> Calls { get; init; }

    /// <summary>When the first bare soil shows.</summary>
    public DateTimeOffset? FirstBare => Fields.Select(f => f.BareAt).Min();
}
