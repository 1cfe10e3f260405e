using Watersown.Land;

namespace Watersown.Flight.Hazards;

/// <summary>What became of a line of the public obstacle file since its last edition.</summary>
public enum ObstacleAction
{
    Unknown,
    Added,
    Changed,
    TakenDown,
}

/// <summary>One line of the public obstacle file, decoded: what stands, where, how high, and how far the file may be off.</summary>
/// <param name="Id">Area code and number, as <c>08-025404</c>.</param>
/// <param name="At">Its point.</param>
/// <param name="Type">The file's word for it: <c>TOWER</c>, <c>POLE</c>, <c>T-L TWR</c>.</param>
/// <param name="Height">Above the ground.</param>
public sealed record Obstacle(string Id, GeoPoint At, string Type, Length Height)
{
    public bool Verified { get; init; }

    public string Country { get; init; } = string.Empty;

    public string State { get; init; } = string.Empty;

    public string City { get; init; } = string.Empty;

    public int Count { get; init; } = 1;

    /// <summary>Top above the sea; none where the line leaves it blank.</summary>
    public Length? Top { get; init; }

    public HazardLight Light { get; init; }

    public HazardMarking Marking { get; init; }

    /// <summary>How far from its point it may stand; none where the file does not know.</summary>
    public Length? Within { get; init; }

    public Length? HeightWithin { get; init; }

    /// <summary>Number of the study it was reported in.</summary>
    public string Study { get; init; } = string.Empty;

    public ObstacleAction Action { get; init; }

    public DateOnly? ActionDay { get; init; }

    /// <summary>The hazard that it is to the farm, named as from the file.</summary>
    public Hazard ToHazard(DateOnly fileOf) => new(Kind, Name)
    {
        Points = [At],
        Height = Height,
        Listing = new HazardListing(Id, fileOf)
        {
            Verified = Verified,
            Within = Within,
            HeightWithin = HeightWithin,
            Top = Top,
            Light = Light,
            Marking = Marking,
            Count = Count,
            TakenDown = Action == ObstacleAction.TakenDown,
            Changed = ActionDay,
        },
    };

    private string Name => (Type.Length == 0 ? "obstacle" : Type.ToLowerInvariant()) + " " + Id;

    // A tower of a transmission line carries wires; what no word tells is left as other, never guessed lower.
    private HazardKind Kind => Type switch
    {
        _ when Has("T-L") || Has("CATENARY") || Has("WIRE") || Has("LINE") || Has("TRAMWAY") => HazardKind.Wire,
        _ when Has("POLE") || Has("SIGN") => HazardKind.Pole,
        _ when Has("TREE") => HazardKind.Trees,
        _ when Has("TOWER") || Has("TWR") || Has("STACK") || Has("TANK") || Has("WINDMILL") || Has("RIG") || Has("ANTENNA") || Has("ELEVATOR") || Has("SILO") || Has("SPIRE") || Has("MONUMENT") => HazardKind.Tower,
        _ => HazardKind.Other,
    };

    private bool Has(string word) => Type.Contains(word, StringComparison.Ordinal);
}
