using Watersown.Flight.Cover;
using Watersown.Flight.Deposit;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>What is asked about a track.</summary>
/// <param name="Field">The edge of the field.</param>
/// <param name="Swath">How wide a pass sows.</param>
public sealed record FlownQuestion(Boundary Field, Length Swath)
{
    /// <summary>How finely to look; none for the usual.</summary>
    public Length? Cell { get; init; }

    /// <summary>What carries the seed on; none to take the aeroplane's own line.</summary>
    public SeedCarry? Carry { get; init; }

    /// <summary>The heading planned, to hold the lines against; none where there was no plan.</summary>
    public Bearing? Planned { get; init; }

    /// <summary>What the land was to get; none where pounds are not asked.</summary>
    public SeedRate? Rate { get; init; }

    /// <summary>How a pass lays; none for <see cref="LateralShape.Supposed"/>.</summary>
    public LateralShape? Shape { get; init; }

    /// <summary>How far right of the line of flight the middle of the swath lies: where the middle of the pattern lies.</summary>
    public Length Right => Shape?.Middle ?? Length.Zero;

    /// <summary>Seed that went out by the scale; none to take the gate as set for the rate asked for.</summary>
    public SeedOut? Out { get; init; }
}

/// <summary>Seed that went out through the gate.</summary>
/// <param name="Soaked">As weighed.</param>
/// <param name="Factor">Soaked weight over dry weight.</param>
public sealed record SeedOut(SoakedSeed Soaked, [property: PlainNumber("soaked weight over dry weight")] double Factor)
{
    /// <summary>The same as dry seed.</summary>
    [Source(nameof(Sources.MassBalance), "soaked weight / factor")]
    public DrySeed Dry => DrySeed.FromKilograms(Soaked.Kilograms / Factor);
}

/// <summary>What one should know before acting on it.</summary>
public enum FlownCaution
{
    /// <summary>The gate was open, and that is all: whether seed came out, only the field shows.</summary>
    Always,

    GateWorkedOut,

    DrawnApart,

    SignalStuck,

    NoTime,

    /// <summary>Time is missing on the field.</summary>
    UnknownGround,

    /// <summary>Other ground was flown near by, or in the same file.</summary>
    OtherGround,

    /// <summary>The swath is taken as told, even from edge to edge.</summary>
    SwathAsTold,

    /// <summary>What falls where was worked out with the farm's own test of the pattern.</summary>
    PatternTested,

    /// <summary>No pattern was tested: the form of it is supposed.</summary>
    PatternSupposed,
}

/// <summary>A share with how far it can be off.</summary>
/// <param name="Share">Over the field, or over what was swept.</param>
/// <param name="Error">Either way.</param>
public readonly record struct MeasuredShare(Fraction Share, Fraction Error);

/// <summary>What was flown over one field.</summary>
public sealed record FlownReport
{
    public required FlownQuestion Question { get; init; }

    public required FlownTrack Track { get; init; }

    public required FlownRuns Runs { get; init; }

    /// <summary>Where each run came down.</summary>
    public required ImmutableArray<FlownRun> Landed { get; init; }

    public required FlownPasses Passes { get; init; }

    public required FieldCover Cover { get; init; }

    /// <summary>What was laid where.</summary>
    public required FieldDeposit Deposit { get; init; }

    /// <summary>Where it lies thin though it was flown over: thin places in which no bare place lies.</summary>
    public ImmutableArray<ThinPlace> ThinPlaces => [.. Deposit.Places.Where(thin => !Cover.ThinPlaces.Any(bare => Within(thin, bare)))];

    /// <summary>The land within the edge, less its holes.</summary>
    public required Area Net { get; init; }

    /// <summary>Of that, the land that was swept at least once.</summary>
    public required Area Flown { get; init; }

    public required MeasuredShare Skip { get; init; }

    public required MeasuredShare Overlap { get; init; }

    public required MeasuredShare OffField { get; init; }

    /// <summary>Against the plan; none where there was none.</summary>
    public required LineErrors? LineErrors { get; init; }

    public required ImmutableArray<FlownCaution> Cautions { get; init; }

    public required Working Working { get; init; }

    // Both run along the same passes: within its length and width of the middle.
    private static bool Within(ThinPlace thin, ThinPlace bare) =>
        Math.Abs(bare.At.AheadOf(thin.Heading) - thin.Middle.AheadOf(thin.Heading)) <= thin.Long.Meters / 2
        && Math.Abs(bare.At.RightOf(thin.Heading) - thin.Middle.RightOf(thin.Heading)) <= thin.Wide.Meters / 2;
}
