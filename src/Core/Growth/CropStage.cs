namespace Watersown.Growth;

/// <summary>How far the crop has come, by what can be seen.</summary>
public enum CropStage
{
    /// <summary>So many leaves of the main stem are out.</summary>
    Leaf,

    /// <summary>The first side shoots show.</summary>
    Tillering,

    /// <summary>A panicle of a millimeter can be seen in a split stem.</summary>
    PanicleInitiation,

    Booting,

    /// <summary>Half of the panicles are out.</summary>
    Heading,

    /// <summary>The grain is ripe enough that no more dry matter comes to it.</summary>
    Mature,
}

/// <summary>A stage; for <see cref="CropStage.Leaf"/> with the number of the leaf.</summary>
/// <param name="Stage">Which.</param>
/// <param name="Leaf">Leaves of the main stem; 0 for other stages.</param>
public readonly record struct StagePoint(CropStage Stage, int Leaf = 0) : IComparable<StagePoint>
{
    /// <summary>Leaves that can be told apart on the main stem from the edge of a field.</summary>
    public const int LeafMost = 8;

    /// <summary>Tillers show with the fifth leaf.</summary>
    public const int TilleringLeaf = 5;

    public static StagePoint OfLeaf(int leaf) => new(CropStage.Leaf, leaf);

    /// <summary>Every stage, in the order of the season.</summary>
    public static ImmutableArray<StagePoint> All { get; } =
    [
        .. Enumerable.Range(1, LeafMost).Select(OfLeaf).Append(new StagePoint(CropStage.Tillering)).Order(),
        new(CropStage.PanicleInitiation), new(CropStage.Booting), new(CropStage.Heading), new(CropStage.Mature),
    ];

    /// <summary>It is told by leaves, not by the panicle.</summary>
    public bool ByLeaf => Stage is CropStage.Leaf or CropStage.Tillering;

    public static bool operator <(StagePoint left, StagePoint right) => left.CompareTo(right) < 0;

    public static bool operator >(StagePoint left, StagePoint right) => left.CompareTo(right) > 0;

    public static bool operator <=(StagePoint left, StagePoint right) => left.CompareTo(right) <= 0;

    public static bool operator >=(StagePoint left, StagePoint right) => left.CompareTo(right) >= 0;

    public int CompareTo(StagePoint other) => Rank.CompareTo(other.Rank);

    // Two to a leaf, so that tillering stands between the fifth and the sixth.
    private int Rank => Stage switch { CropStage.Leaf => 2 * Leaf, CropStage.Tillering => (2 * TilleringLeaf) + 1, _ => 100 + (int)Stage };
}
