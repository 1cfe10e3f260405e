namespace Watersown.Flight;

/// <summary>How neighboring passes are flown.</summary>
public enum FlyingMode
{
    /// <summary>All the same way: the right side of one meets the left side of the next.</summary>
    OneWay,

    /// <summary>Each the other way: right meets right, left meets left.</summary>
    BackAndForth,
}

/// <summary>How evenly passes a swath apart lay the seed.</summary>
/// <param name="Mean">Mean weight caught on one tray.</param>
/// <param name="Rate">The same over the land, as caught: soaked.</param>
/// <param name="Cv">Standard deviation over mean, population form.</param>
public sealed record SwathEvenness(SoakedSeed Mean, SoakedRate Rate, Fraction Cv);

/// <summary>
/// What one pass laid on a row of trays square to its track, left to right seen along the flight, the flight line over
/// the middle of the row. Fields are always sown less evenly than a pattern promises.
/// </summary>
public sealed class SpreadPattern
{
    /// <summary>Fewest trays that show a pattern.</summary>
    [PlainNumber("trays")]
    public const int FewestTrays = 3;

    private const double WidestStep = 0.05;
    private readonly Overlap overlap;
    private readonly Area tray;

    private SpreadPattern(Overlap overlap, Area tray) => (this.overlap, this.tray) = (overlap, tray);

    /// <summary>Width over which anything was caught, a spacing for each tray.</summary>
    public Length Width => Length.FromMeters(overlap.CaughtWidth);

    /// <summary>Seed laid for each meter flown, from all the trays together.</summary>
    [Source(nameof(Sources.OverlapGeometry), "sum of trays × spacing / tray area")]
    public SoakedSeed PerMeter => SoakedSeed.FromKilograms(overlap.Total / tray.SquareMeters);

    /// <summary>From tray to tray.</summary>
    public Length Spacing => Length.FromMeters(overlap.Spacing);

    /// <summary>Width of the joined form, from nothing to nothing.</summary>
    public Length JoinedWidth => Length.FromMeters(overlap.JoinedWidth);

    /// <summary>How far to the right of the flight line the middle of what was caught lies.</summary>
    [Source(nameof(Sources.OverlapGeometry), "Σ p x / Σ p")]
    public Length Middle => Length.FromMeters(overlap.Middle);

    /// <summary>
    /// The quick rule: as far apart as the deposit takes to fall to half of what lies on the line, left and right together. Exact for a
    /// triangle and a trapezoid about the line; none where nothing lay on it.
    /// </summary>
    [Source(nameof(Sources.OhioB817))]
    public Length? HalfMeanSwath => overlap.HalfMeanWidth() is { } width ? Length.FromMeters(width) : null;

    /// <summary>A pattern from the trays; at least three of them, none below zero, not all empty.</summary>
    public static SpreadPattern Of(ImmutableArray<SoakedSeed> trays, Length spacing, Area tray) => Of(trays, spacing, tray, Length.Zero);

    /// <summary>The same from a row whose middle lay an offset to the right of the flight line.</summary>
    public static SpreadPattern Of(ImmutableArray<SoakedSeed> trays, Length spacing, Area tray, Length offset)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trays.Length, FewestTrays, nameof(trays));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(spacing.Meters, 0, nameof(spacing));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(tray.SquareMeters, 0, nameof(tray));
        return new SpreadPattern(new Overlap([.. trays.Select(t => t.Kilograms)], spacing.Meters, offset.Meters), tray);
    }

    /// <summary>
    /// Evenness at a swath. Where the swath is a whole number of tray spacings the trays themselves are summed; else they
    /// are joined as in <see cref="Joined"/>.
    /// </summary>
    [Source(nameof(Sources.OverlapGeometry), "collector form for whole ratios of swath to spacing")]
    public SwathEvenness Over(Length swath, FlyingMode mode) =>
        Evenness(swath, overlap.WholeRatio(swath.Meters, mode) is { } ratio ? overlap.SummedCv(ratio, mode) : overlap.JoinedCv(swath.Meters, mode));

    /// <summary>
    /// Evenness at a swath with the trays joined by straight lines, to nothing one spacing outside the ends; integrated
    /// exactly.
    /// </summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays, integrated exactly over one period")]
    public SwathEvenness Joined(Length swath, FlyingMode mode) => Evenness(swath, overlap.JoinedCv(swath.Meters, mode));

    /// <summary>What all passes together lay at a place to the right of a line, in the joined form.</summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays")]
    public SoakedSeed Laid(Length across, Length swath, FlyingMode mode) => SoakedSeed.FromKilograms(overlap.Deposit(across.Meters, swath.Meters, mode));

    /// <summary>The evenness of the joined form by its Fourier series: a check of <see cref="Joined"/>.</summary>
    [Source(nameof(Sources.OverlapGeometry), "CV² = 2 Σ |P(k/S) / P(0)|², back and forth over 2 S")]
    public Fraction ByFourier(Length swath, FlyingMode mode) => Fraction.FromShare(overlap.FourierCv(swath.Meters, mode));

    /// <summary>
    /// The widest swath, in steps of 0.05 m, at which the joined pattern is within a limit; none where no step is.
    /// Narrower swaths may still be beyond it: look at the whole list.
    /// </summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays; beyond the pattern's own width CV² = S ∫p² / (∫p)² − 1")]
    public Length? WidestWithin(Fraction limit, FlyingMode mode)
    {
        var beyond = WholeSteps(overlap.WidthAtCvWithoutOverlap(limit.Share));
        if (beyond * WidestStep >= overlap.JoinedWidth) return Length.FromMeters(beyond * WidestStep);
        for (var step = WholeSteps(overlap.JoinedWidth); step > 0; step--)
        {
            // Floating dust must not lose a step at which the limit is met exactly.
            if (overlap.JoinedCv(step * WidestStep, mode) <= limit.Share + 1e-12) return Length.FromMeters(step * WidestStep);
        }

        return null;
    }

    /// <summary>What even a perfect drop would show on trays that catch so many seeds each.</summary>
    [Source(nameof(Sources.CountingStatistics))]
    public static Fraction CountingFloor([PlainNumber("seeds on a tray")] double seedsPerTray)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(seedsPerTray, 0);
        return Fraction.FromShare(1 / Math.Sqrt(seedsPerTray));
    }

    private static int WholeSteps(double meters) => (int)Math.Floor((meters / WidestStep) + 1e-9);

    private SwathEvenness Evenness(Length swath, double cv)
    {
        var mean = overlap.Total / swath.Meters;
        return new SwathEvenness(SoakedSeed.FromKilograms(mean), SoakedRate.FromKilogramsPerSquareMeter(mean / tray.SquareMeters), Fraction.FromShare(cv));
    }
}
