using System.Runtime.Intrinsics;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Straight passes on one heading, before any is laid.</summary>
/// <param name="Heading">From the plane's north, 0 up to but not including 180.</param>
/// <param name="Passes">Passes, evenly spaced, a swath apart or a little less.</param>
/// <param name="Open">Length over the field with the gate open, all passes together.</param>
/// <param name="Least">Time no such passes can beat: open length and turns; gaps flown over would come to it.</param>
public sealed record HeadingTime(Bearing Heading, [property: PlainNumber("passes")] int Passes, Length Open, TimeSpan Least);

/// <summary>Every heading of a field, each step of it, from the one across which it is narrowest on: they turn with the field.</summary>
public sealed class HeadingSweep
{
    /// <summary>A quarter of a degree from one heading to the next.</summary>
    [PlainNumber("headings over half a turn")]
    public const int Headings = 720;

    private static readonly double[] Sines = [.. Enumerable.Range(0, Headings).Select(k => Math.Sin(k * Math.PI / Headings))];
    private static readonly double[] Cosines = [.. Enumerable.Range(0, Headings).Select(k => Math.Cos(k * Math.PI / Headings))];

    private readonly PassPace pace;
    private readonly double first;
    private readonly double[] passes;
    private readonly double[] open;

    private HeadingSweep(PassPace pace, double first, double[] passes, double[] open) => (this.pace, this.first, this.passes, this.open) = (pace, first, passes, open);

    /// <summary>One heading of the sweep.</summary>
    public HeadingTime this[int index] =>
        new(Bearing.FromDegrees(Degrees(index)), (int)passes[index], Length.FromMeters(open[index]), pace.Time(Length.FromMeters(open[index]), (int)passes[index], Bearing.FromDegrees(Degrees(index))));

    /// <summary>All headings of half a turn: passes and length over the field on each.</summary>
    [Source(nameof(Sources.WholePassCount), "each edge adds signed lines × where the middle one crosses it; passes = width / swath, rounded up")]
    public static HeadingSweep Of(ImmutableArray<PlanePart> field, PassPace pace) => Of(FieldRings.Of(field), pace);

    internal static HeadingSweep Of(FieldRings rings, PassPace pace)
    {
        var narrow = rings.Outline.Narrowest().Heading.Degrees;
        rings = rings.Turned(narrow);
        var (passes, open, swath) = (new double[Headings], new double[Headings], pace.Swath.Meters);
        var k = 0;
        if (Vector256.IsHardwareAccelerated)
        {
            for (; k + SweepLanes.Count <= Headings; k += SweepLanes.Count)
                SweepLanes.Sweep(rings, swath, Sines.AsSpan(k, SweepLanes.Count), Cosines.AsSpan(k, SweepLanes.Count), passes.AsSpan(k), open.AsSpan(k));
        }

        for (; k < Headings; k++) (passes[k], open[k]) = SweepLine.At(rings, swath, Sines[k], Cosines[k]);
        return new HeadingSweep(pace, narrow, passes, open);
    }

    internal double Degrees(int index) => (first + (index * 180.0 / Headings)) % 180;

    /// <summary>Headings by what no passes on them can beat, the least first; seconds beside them.</summary>
    internal (double[] Seconds, int[] Order) Ranked()
    {
        var turn = pace.Turn.TotalSeconds;
        var (seconds, order) = (new double[Headings], new int[Headings]);
        for (var k = 0; k < Headings; k++) (seconds[k], order[k]) = ((open[k] / pace.SpeedOn(Bearing.FromDegrees(Degrees(k))).MetersPerSecond) + ((passes[k] - 1) * turn), k);
        Array.Sort([.. seconds], order);
        return (seconds, order);
    }
}
