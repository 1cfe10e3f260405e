using Watersown.Schedule;
using Watersown.Season.Harvests;
using Watersown.Season.Spending;

namespace Watersown.Season;

/// <summary>
/// The season as the ground and the logbook together tell it: the state that a plan starts from, and the stories behind it.
/// Worked out anew from the same marks, it is the same on every device.
/// </summary>
public sealed record SeasonBook
{
    /// <summary>What a plan starts from.</summary>
    public required SeasonState State { get; init; }

    /// <summary>The farm document that the marks were laid on.</summary>
    public required SeasonState Ground { get; init; }

    /// <summary>Every mark.</summary>
    public required Logbook Log { get; init; }

    /// <summary>The moment it is told for.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>Every mark that happened by now with how it stands, in order.</summary>
    public ImmutableArray<StoryLine> Story { get; init; } = [];

    /// <summary>One for each field of the farm, in its order, then those that only marks tell of.</summary>
    public ImmutableArray<FieldBook> Fields { get; init; } = [];

    public ImmutableArray<SourceBook> Sources { get; init; } = [];

    /// <summary>Every batch that was ever told of, spent ones too.</summary>
    public ImmutableArray<BatchBook> Batches { get; init; } = [];

    public ImmutableArray<TrailerBook> Trailers { get; init; } = [];

    /// <summary>What is broken and not mended, the newest first.</summary>
    public ImmutableArray<OpenFault> Faults { get; init; } = [];

    /// <summary>Treatments, holds and what is wanted of the water.</summary>
    public HoldBook Holds { get; init; } = HoldBook.Empty;

    public ImmutableArray<MessageBook> Messages { get; init; } = [];

    /// <summary>Samples, cuts and tickets.</summary>
    public HarvestBook Harvest { get; init; } = HarvestBook.Empty;

    /// <summary>Plans and bills.</summary>
    public CostBook Costs { get; init; } = CostBook.Empty;

    /// <summary>Days of weather, measured and usual.</summary>
    public WeatherBook Weather { get; init; } = WeatherBook.Empty;

    /// <summary>Warmth to the stages, as the farm says.</summary>
    public CropTargets Targets { get; init; } = CropTargets.Usual;

    /// <summary>The farm's own yield by stand; empty where it has typed none.</summary>
    public ImmutableArray<Stand.ResponsePoint> Response { get; init; } = [];

    /// <summary>Days called off.</summary>
    public ImmutableArray<CalledOff> CalledOff { get; init; } = [];

    /// <summary>Plans that were given a number, in order of it.</summary>
    public ImmutableArray<PlanIssued> Plans { get; init; } = [];

    /// <summary>Marks that do not agree with each other or with what can be.</summary>
    public ImmutableArray<Doubt> Doubts { get; init; } = [];

    /// <summary>Marks that can still be taken back with one tap, the newest first.</summary>
    public ImmutableArray<Mark> Undoable { get; init; } = [];

    /// <summary>The book of a field; an empty one where nothing is known of it.</summary>
    public FieldBook Field(string code) => Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase)) ?? new FieldBook(code);

    public BatchBook? Batch(string code) => Batches.FirstOrDefault(b => string.Equals(b.Code, code, StringComparison.OrdinalIgnoreCase));

    public TrailerBook? Trailer(string number) => Trailers.FirstOrDefault(t => string.Equals(t.Number, number, StringComparison.OrdinalIgnoreCase));

    public MessageBook? Message(string name) => Messages.FirstOrDefault(m => string.Equals(m.Message, name, StringComparison.Ordinal));
}

/// <summary>How a mark stands among the others.</summary>
public enum Standing
{
    /// <summary>It counts.</summary>
    Stands,

    /// <summary>Another mark stands in for it.</summary>
    Replaced,

    /// <summary>It was taken back.</summary>
    Withdrawn,

    /// <summary>It only takes another back.</summary>
    Withdraws,
}

/// <summary>What a mark changed of its field.</summary>
public enum FieldChange
{
    Stage,
    ChecksWet,
    FirstWater,
    FullSince,
    SownAt,
    Depth,
    Net,
    Rate,
    Variety,
    Name,
    Gross,
    Certified,
    Boundary,
}

/// <summary>One mark in a story.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Standing">Whether it counts.</param>
public sealed record StoryLine(Mark Mark, Standing Standing)
{
    /// <summary>The mark that replaced or withdrew it.</summary>
    public MarkId? By { get; init; }

    /// <summary>What it changed of its field; nothing where something newer was known already.</summary>
    public ImmutableArray<FieldChange> Changes { get; init; } = [];

    /// <summary>Put down more than an hour after it happened.</summary>
    public bool Late => Mark.Entered - Mark.Happened > TimeSpan.FromHours(1);
}

/// <summary>Something that does not agree, with the marks behind it.</summary>
/// <param name="Problem">What, in words.</param>
/// <param name="Marks">The marks it is about.</param>
public sealed record Doubt(Problem Problem, ImmutableArray<MarkId> Marks)
{
    /// <summary>Code of the field it is about.</summary>
    public string? Field { get; init; }
}
