using Watersown.Harvest;

namespace Watersown.Season.Harvests;

/// <summary>What marks tell of the harvest.</summary>
public sealed record HarvestBook
{
    public static HarvestBook Empty { get; } = new();

    public HarvestMeans Means { get; init; } = new();

    /// <summary>Room at dryers other than usual, in the order it was told.</summary>
    public ImmutableArray<DryerRoom> Rooms { get; init; } = [];

    /// <summary>Fields of which something is told.</summary>
    public ImmutableArray<FieldHarvest> Fields { get; init; } = [];

    /// <summary>Tickets, each number of a dryer once, the oldest first.</summary>
    public ImmutableArray<(Mark Mark, GrainTicketed Ticket)> Tickets { get; init; } = [];

    /// <summary>Landlords' shares, the newest word for each.</summary>
    public ImmutableArray<CropShareTold> Shares { get; init; } = [];

    public FieldHarvest Field(string code) => Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase)) ?? new FieldHarvest(code);

    /// <summary>Grain by field and variety, told over what was cut.</summary>
    public GrainTally Tally() => GrainTally.Of([.. Tickets.Select(t => t.Ticket)], code => Field(code).Cut ?? Area.Zero, Shares);
}

/// <summary>What marks tell of one field's harvest.</summary>
/// <param name="Code">Field code.</param>
public sealed record FieldHarvest(string Code)
{
    /// <summary>In order of time.</summary>
    public ImmutableArray<MoistureSample> Samples { get; init; } = [];

    public bool Lodged { get; init; }

    /// <summary>When the boards came out.</summary>
    public DateTimeOffset? BoardsOut { get; init; }

    /// <summary>Land cut so far; none where nothing was.</summary>
    public Area? Cut { get; init; }

    /// <summary>When it was last cut.</summary>
    public DateTimeOffset? CutAt { get; init; }

    /// <summary>Somebody said that all of it is cut.</summary>
    public bool Done { get; init; }

    /// <summary>Land that still stands.</summary>
    public Area Left(Area net) => Done || (Cut ?? Area.Zero) >= net ? Area.Zero : net - (Cut ?? Area.Zero);
}
