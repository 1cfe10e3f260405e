using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>One pass as it takes its place in the order flown; it may be flown from either end.</summary>
/// <param name="Number">Of the pass.</param>
/// <param name="From">Where its strip begins.</param>
/// <param name="To">Where its strip ends.</param>
/// <param name="Open">Length with the gate open.</param>
/// <param name="Seed">Laid on it.</param>
public sealed record FlownLine([property: PlainNumber("number")] int Number, PlanePoint From, PlanePoint To, Length Open, SoakedSeed Seed)
{
    /// <summary>Stretches with the gate open, in order from one end to the other.</summary>
    public ImmutableArray<LineSpan> Spans { get; init; } = [];

    /// <summary>From end to end, gaps flown over.</summary>
    public Length Flown => Length.FromMeters(double.Hypot(To.East - From.East, To.North - From.North));
}

/// <summary>What a load costs besides the passes.</summary>
public sealed record LoadPace
{
    /// <summary>Most in one load.</summary>
    public required SoakedSeed Limit { get; init; }

    /// <summary>Where it is loaded.</summary>
    public required PlanePoint Strip { get; init; }

    /// <summary>To and from the strip.</summary>
    public required Speed Ferry { get; init; }

    /// <summary>Reload, taxi, take-off and landing.</summary>
    public required TimeSpan Turnaround { get; init; }

    /// <summary>Speed and turns of the passes themselves.</summary>
    public required PassPace Passes { get; init; }

    internal double FerrySeconds(PlanePoint place) => double.Hypot(place.East - Strip.East, place.North - Strip.North) / Ferry.MetersPerSecond;
}

/// <summary>One load: passes one after another in the order flown.</summary>
/// <param name="First">Place of its first pass in the order flown, from 0.</param>
/// <param name="Passes">Passes on it, parts counted as passes.</param>
/// <param name="FromTo">The first pass is flown from its <see cref="FlownLine.From"/>, the next the other way, and so on; otherwise turned round.</param>
/// <param name="Seed">In the hopper.</param>
/// <param name="Ferry">There and back.</param>
public sealed record LaidLoad([property: PlainNumber("place in the order")] int First, [property: PlainNumber("passes")] int Passes, bool FromTo, SoakedSeed Seed, TimeSpan Ferry)
{
    /// <summary>Of its first pass, sown by the load before.</summary>
    public Fraction SownBefore { get; init; }

    /// <summary>Of its last pass, sown when it is empty; all of it where loads are whole passes.</summary>
    public Fraction SownOfLast { get; init; } = Fraction.FromShare(1);
}

/// <summary>A field's passes shared out over loads.</summary>
/// <param name="Loads">In the order flown.</param>
/// <param name="Ferry">There and back, all loads.</param>
/// <param name="Turnaround">Reload, taxi, take-off and landing, all loads.</param>
/// <param name="Turning">Turns from pass to pass within loads, and lining up once more where a load takes up within a pass.</param>
public sealed record LoadSplit(ImmutableArray<LaidLoad> Loads, TimeSpan Ferry, TimeSpan Turnaround, TimeSpan Turning)
{
    /// <summary>All that the split decides; the passes themselves take the same time in any.</summary>
    public TimeSpan Time => Ferry + Turnaround + Turning;
}
