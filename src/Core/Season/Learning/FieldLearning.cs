using Watersown.Land;
using Watersown.Water.Learning;

namespace Watersown.Season.Learning;

/// <summary>A mark and what it says against the rest.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Verdict">How far it is off, and how much it counts.</param>
public sealed record MarkVerdict(Mark Mark, SightingVerdict Verdict);

/// <summary>When a check is wet and full, with the ends of each.</summary>
/// <param name="Number">Order from the head.</param>
public sealed record CheckMoments(int Number)
{
    public DateTimeOffset? FirstWet { get; init; }

    /// <summary>None where it was full already, or never is.</summary>
    public MomentRange? Full { get; init; }
}

/// <summary>A moment with its ends: in nine cases of ten it lies between them.</summary>
/// <param name="Middle">The likeliest.</param>
/// <param name="Low">Hardly sooner.</param>
/// <param name="High">Hardly later; none where it may never come.</param>
public sealed record MomentRange(DateTimeOffset Middle, DateTimeOffset Low, DateTimeOffset? High);

/// <summary>What a field's marks say of what it takes and loses, and of the flood that runs.</summary>
/// <param name="Field">The field.</param>
public sealed record FieldLearning(Field Field)
{
    /// <summary>What the farm says of its soil.</summary>
    public required FloodFigures Farm { get; init; }

    /// <summary>What marks taught; none where none of them counts.</summary>
    public LearnedWater? Learned { get; init; }

    /// <summary>Its newest flood worked out.</summary>
    public required FloodFitted Newest { get; init; }

    /// <summary>When that flood's run begins.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>The marks of the newest flood, in order.</summary>
    public ImmutableArray<MarkVerdict> Marks { get; init; } = [];

    /// <summary>The flood runs now.</summary>
    public bool Filling { get; init; }

    /// <summary>When all of it is full, where it fills; none where it never is.</summary>
    public MomentRange? Full { get; init; }

    /// <summary>Its checks from the head, where it fills.</summary>
    public ImmutableArray<CheckMoments> Checks { get; init; } = [];

    /// <summary>How the fill was worked out.</summary>
    public required Working Working { get; init; }
}
