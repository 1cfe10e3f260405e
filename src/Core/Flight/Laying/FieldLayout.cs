using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>A piece of the field that is flown on one heading.</summary>
/// <param name="Number">From 1, in the order flown.</param>
/// <param name="Land">What is sown of it.</param>
/// <param name="Plan">Its passes, left to right.</param>
/// <param name="Narrowest">Passes on the heading across which it is narrowest: with no other heading does this piece take fewer.</param>
public sealed record LaidCell([property: PlainNumber("number")] int Number, ImmutableArray<PlanePart> Land, PassPlan Plan, [property: PlainNumber("passes")] int Narrowest)
{
    /// <summary>Land in it, on the plane.</summary>
    public Area Area => Area.FromSquareMeters(FieldRings.Of(Land).Area);
}

/// <summary>
/// A field laid out in straight passes: cells, passes in the order flown, loads, and how near to what nothing can beat. All on
/// the plane that the field was given on. A wish for the pilot, who flies what can be flown.
/// </summary>
public sealed record FieldLayout
{
    public required ImmutableArray<LaidCell> Cells { get; init; }

    /// <summary>Swath, speed and turn that it was laid out for.</summary>
    public required PassPace Pace { get; init; }

    /// <summary>Passes in the order flown, numbered through all cells.</summary>
    public required ImmutableArray<FlownLine> Lines { get; init; }

    /// <summary>How many of them, the last ones, go along wires over ground that climbing passes leave.</summary>
    [PlainNumber("passes")]
    public int AlongWires { get; init; }

    /// <summary>Left unsown round what stands in the way.</summary>
    public Area Unsown { get; init; }

    /// <summary>Passes and turns in the order laid; loads and ferry are not in it.</summary>
    public required TimeSpan Passing { get; init; }

    /// <summary>What no straight passes of this swath can beat.</summary>
    public required LayingBound Bound { get; init; }

    /// <summary>The whole field on the one heading that is quickest.</summary>
    public required FlownHeading OneHeading { get; init; }

    /// <summary>None where nothing was said of loads, or where one pass takes more than a load.</summary>
    public LoadChoice? Loads { get; init; }

    [PlainNumber("passes")]
    public int Passes => Lines.Length;

    /// <summary>Gate open, all passes together.</summary>
    public Length Open => Lines.Aggregate(Length.Zero, (sum, line) => sum + line.Open);

    /// <summary>From end to end of every pass, gaps flown over.</summary>
    public Length Flown => Lines.Aggregate(Length.Zero, (sum, line) => sum + line.Flown);

    /// <summary>What the run wished for takes more than the quickest cells would; nothing where it was free.</summary>
    public TimeSpan RunCosts { get; init; }

    /// <summary>What its heading takes more in passes and turns than the quickest would, and saves again in the ferry of its loads.</summary>
    public TimeSpan ForFerry { get; init; }

    /// <summary>Passes, turns, ferry and turnaround; none without loads.</summary>
    public TimeSpan? Job { get; init; }

    /// <summary>Time above the bound, over the bound.</summary>
    [PlainNumber("share of the bound")]
    public double Gap => (Passing - Bound.Time) / Bound.Time;
}

/// <summary>How the passes are shared out over loads.</summary>
/// <param name="Whole">The quickest split into whole passes found, in the order flown.</param>
/// <param name="FilledUp">Loads filled up in the order laid, for comparison.</param>
public sealed record LoadChoice(LoadSplit Whole, LoadSplit FilledUp)
{
    /// <summary>The quickest split in the order laid; what the order found for the loads saves is against it.</summary>
    public required LoadSplit InOrder { get; init; }

    /// <summary>Loads that may stop within a pass; none where the farm does not let them.</summary>
    public LoadSplit? Parted { get; init; }

    /// <summary>No loads of whole passes ferry less, in whatever order and split.</summary>
    public required TimeSpan LeastFerry { get; init; }

    /// <summary>The quicker of those that the farm lets be flown.</summary>
    public LoadSplit Chosen => Parted is { } parted && parted.Time < Whole.Time ? parted : Whole;

    /// <summary>Smallest limit at which a load is saved; none where there is one load.</summary>
    public SoakedSeed? ForOneFewer { get; init; }

    /// <summary>The quickest split at that limit.</summary>
    public LoadSplit? WithOneFewer { get; init; }

    /// <summary>What that saves.</summary>
    public TimeSpan? OneFewerSaves => WithOneFewer is { } fewer ? Whole.Time - fewer.Time : null;
}
