namespace Watersown.Flight.Patterns;

/// <summary>What a tray test says.</summary>
public sealed record TrayAnswer
{
    public required TrayTest Test { get; init; }

    public required TrayAsk Ask { get; init; }

    /// <summary>Of the mean row.</summary>
    public required SpreadPattern Pattern { get; init; }

    public required ImmutableArray<TraySpread> Trays { get; init; }

    /// <summary>Unevenness swath by swath, narrow to wide.</summary>
    public required ImmutableArray<SwathPoint> Curve { get; init; }

    public required ModeAnswer OneWay { get; init; }

    public required ModeAnswer BackAndForth { get; init; }

    /// <summary>How far to the right of the flight line the middle of what was caught lies.</summary>
    public required Length Middle { get; init; }

    /// <summary>Swath by the quick rule of half the middle; none where nothing lay on the line.</summary>
    public Length? HalfMean { get; init; }

    /// <summary>The offset of the lines that evens back and forth; none where it gains less than a point.</summary>
    public LineOffset? Offset { get; init; }

    /// <summary>What the trays say left the gate; none without a speed.</summary>
    public MassFlow? Laid { get; init; }

    /// <summary>That over what the gate gave; none where one of them is not told.</summary>
    public Fraction? Closure { get; init; }

    /// <summary>The largest difference between the sum of passes and its Fourier form: a check of the arithmetic.</summary>
    public required Fraction FourierDifference { get; init; }

    public required Working Working { get; init; }
}

/// <summary>What the passes left on one tray.</summary>
/// <param name="Across">To the right of the flight line; below zero to the left.</param>
/// <param name="Mean">Of the passes.</param>
/// <param name="Least">Of them.</param>
/// <param name="Most">Of them.</param>
public readonly record struct TraySpread(Length Across, SoakedSeed Mean, SoakedSeed Least, SoakedSeed Most);

/// <summary>Unevenness at a swath, chance taken out where the weight of a grain is known.</summary>
/// <param name="Swath">From pass to pass.</param>
/// <param name="OneWay">Flown all one way.</param>
/// <param name="BackAndForth">Flown back and forth.</param>
public readonly record struct SwathPoint(Length Swath, Fraction OneWay, Fraction BackAndForth)
{
    public Fraction In(FlyingMode mode) => mode == FlyingMode.OneWay ? OneWay : BackAndForth;
}

/// <summary>The widest swaths within the limit in one way of flying; none where no swath keeps it.</summary>
/// <param name="Widest">Steered exactly.</param>
/// <param name="Steady">The limit is kept as well with all swaths that the steering error makes of it.</param>
public sealed record ModeAnswer(Length? Widest, Length? Steady)
{
    /// <summary>Unevenness at <see cref="Steady"/>.</summary>
    public Fraction? CvAtSteady { get; init; }

    /// <summary>Narrowest and widest of what the single passes alone would say; none for a single pass, or where one keeps the limit nowhere.</summary>
    public (Length Least, Length Most)? OfPasses { get; init; }
}

/// <summary>Lines moved beside their place so that an off-center pattern lies evenly back and forth.</summary>
/// <param name="ToLeft">How far each line is flown to the left of its place, seen along the flight; below zero to the right.</param>
/// <param name="Swath">The swath it is reckoned at.</param>
/// <param name="Before">Unevenness back and forth as the lines lie.</param>
/// <param name="After">The same with the lines moved.</param>
public sealed record LineOffset(Length ToLeft, Length Swath, Fraction Before, Fraction After);
