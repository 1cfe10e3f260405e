namespace Watersown.Flight;

/// <summary>A load that has left.</summary>
/// <param name="At">When.</param>
/// <param name="Soaked">Its weight; none where nobody said.</param>
public sealed record FlownLoad(DateTimeOffset At, SoakedSeed? Soaked);

/// <summary>One line of a load sheet.</summary>
/// <param name="Number">1 first.</param>
/// <param name="Soaked">Soaked weight of the load, a whole number of the farm's units.</param>
/// <param name="DrySoFar">Dry seed out once it is gone.</param>
public sealed record LoadLine(int Number, SoakedSeed Soaked, DrySeed DrySoFar)
{
    /// <summary>When it left, if it has.</summary>
    public DateTimeOffset? Gone { get; init; }
}

/// <summary>Another way to put what is left into the hopper.</summary>
/// <param name="Loads">How many loads.</param>
/// <param name="Each">Soaked weight of each but the last.</param>
/// <param name="Last">Soaked weight of the last.</param>
public sealed record LoadChoice(int Loads, SoakedSeed Each, SoakedSeed Last)
{
    /// <summary>It stays within the most the pilot named; unknown where he named none.</summary>
    public bool? WithinTop { get; init; }

    /// <summary>The last load is under a quarter of the weight asked for this morning.</summary>
    public bool SmallLast { get; init; }
}

/// <summary>The loads of a flight as they are flown: ticked ones as weighed, the rest by the weight that the pilot wants this morning.</summary>
public sealed record LoadSheet
{
    /// <summary>A last load under this share of a full one is a ferry for little.</summary>
    [Source(nameof(Sources.FarmDefault), "a quarter of a full load")]
    public static Fraction SmallLoad { get; } = Fraction.FromPercent(25);

    public required SoakedSeed All { get; init; }

    /// <summary>Most in a load this morning.</summary>
    public required SoakedSeed Limit { get; init; }

    public required ImmutableArray<LoadLine> Lines { get; init; }

    public required SoakedSeed Gone { get; init; }

    public required DrySeed GoneDry { get; init; }

    public required SoakedSeed Left { get; init; }

    /// <summary>What is left, in full loads and a last one that is what remains.</summary>
    public LoadChoice? FullAndRest { get; init; }

    /// <summary>What is left, in one load fewer than it takes within the limit.</summary>
    public LoadChoice? OneFewer { get; init; }

    public required Working Working { get; init; }

    public LoadLine? Next => Lines.FirstOrDefault(l => l.Gone is null);
}
