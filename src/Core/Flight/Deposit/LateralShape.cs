using Watersown.Flight.Patterns;

namespace Watersown.Flight.Deposit;

/// <summary>
/// How one pass lays seed beside its line: straight between knots a spacing apart, nothing at the first knot and the last, all of it
/// together one. The line need not be in its middle.
/// </summary>
public sealed record LateralShape
{
    private LateralShape(Length from, Length spacing, ImmutableArray<double> shares, bool tested) =>
        (From, Spacing, Shares, Tested) = (from, spacing, shares, tested);

    /// <summary>Where the first knot lies, to the right of the line; below zero to the left.</summary>
    public Length From { get; }

    /// <summary>From knot to knot.</summary>
    public Length Spacing { get; }

    /// <summary>At each knot, the share of the pass that falls on a strip one meter wide there.</summary>
    [PlainNumber("share of a pass for each meter across")]
    public ImmutableArray<double> Shares { get; }

    /// <summary>From trays of the farm's own test; else a trapezoid that is only supposed.</summary>
    public bool Tested { get; }

    /// <summary>Width over which any seed falls.</summary>
    public Length Width => Spacing * (Shares.Length - 1);

    /// <summary>Where the last knot lies.</summary>
    public Length Until => From + Width;

    /// <summary>How far right of the line the middle of what falls lies.</summary>
    [Source(nameof(Sources.OverlapGeometry), "Σ p x / Σ p")]
    public Length Middle
    {
        get
        {
            var (all, moment) = (0.0, 0.0);
            for (var i = 0; i < Shares.Length; i++) (all, moment) = (all + Shares[i], moment + (Shares[i] * i));
            return From + (Spacing * (moment / all));
        }
    }

    /// <summary>A trapezoid about the line: two thirds of the swath level, each slope a third of it, so that passes a swath apart lie even.</summary>
    [Source(nameof(Sources.OverlapGeometry), "trapezoid with level part T and slopes b is even at S = T + b; T = 2 S / 3, b = S / 3 supposed")]
    public static LateralShape Supposed(Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        var level = 1 / swath.Meters;
        return new LateralShape(swath * (-2.0 / 3), swath / 3, [0, level, level, level, 0], tested: false);
    }

    /// <summary>The mean of the passes of a test, trays joined by straight lines to nothing one spacing outside the ends.</summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays over their own sum")]
    public static LateralShape Of(TrayTest test) => test.IsWhole
        ? Of(test.MeanRow, test.Spacing, test.Offset)
        : throw new ArgumentException("The rows of trays differ or hold nothing.", nameof(test));

    /// <summary>The same from one row, left to right, whose middle lay an offset to the right of the line; not all of it empty.</summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays over their own sum")]
    public static LateralShape Of(ImmutableArray<SoakedSeed> trays, Length spacing, Length offset)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(spacing.Meters, 0, nameof(spacing));
        double[] row = [.. trays.Select(t => t.Kilograms)];
        var (first, last) = (Array.FindIndex(row, t => t > 0), Array.FindLastIndex(row, t => t > 0));
        if (first < 0 || row.Any(t => t < 0)) throw new ArgumentException("Trays hold nothing, or less.", nameof(trays));
        var sum = row.Sum() * spacing.Meters;
        return new LateralShape(
            ((first - 1 - ((row.Length - 1) / 2.0)) * spacing) + offset,
            spacing,
            [0, .. row[first..(last + 1)].Select(t => t / sum), 0],
            tested: true);
    }

    /// <summary>What falls on a strip one meter wide at a place to the right of the line.</summary>
    [return: PlainNumber("share of a pass for each meter across")]
    public double At(Length right)
    {
        var at = (right - From) / Spacing;
        if (!(at > 0 && at < Shares.Length - 1)) return 0;
        var knot = (int)at;
        return Shares[knot] + ((at - knot) * (Shares[knot + 1] - Shares[knot]));
    }
}
