using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>What a line comes to along a heading, added up over its whole way rather than at its places.</summary>
internal sealed record LineSums
{
    private double Way { get; init; }

    private double SumAhead { get; init; }

    private double SumRight { get; init; }

    private double SumAheadAhead { get; init; }

    private double SumRightRight { get; init; }

    private double SumAheadRight { get; init; }

    private double Start { get; init; }

    private double End { get; init; }

    private double LeastRight { get; init; } = double.PositiveInfinity;

    private double MostRight { get; init; } = double.NegativeInfinity;

    public double Least { get; private init; } = double.PositiveInfinity;

    public double Most { get; private init; } = double.NegativeInfinity;

    public bool IsAlong => Most - Least >= MostRight - LeastRight;

    /// <summary>Mean offset right of the heading.</summary>
    public double Right => SumRight / Way;

    /// <summary>Degrees between its mean line, the way it was flown, and the heading.</summary>
    public double Lean => (Math.Atan(Slope) * 180 / Math.PI) + (End >= Start ? 0 : 180);

    public double Strays => Math.Sqrt(Math.Max(0, RightSquare - (Slope * Slope * AheadSquare)));

    private double AheadSquare => (SumAheadAhead / Way) - (SumAhead / Way * SumAhead / Way);

    private double RightSquare => (SumRightRight / Way) - (SumRight / Way * SumRight / Way);

    private double Slope => AheadSquare > 0 ? ((SumAheadRight / Way) - (SumAhead / Way * SumRight / Way)) / AheadSquare : 0;

    public static LineSums Of(FlownRun run, Bearing heading)
    {
        var line = run.Line;
        var sums = new LineSums { Start = line[0].AheadOf(heading), End = line[^1].AheadOf(heading) };
        for (var i = 1; i < line.Length; i++)
        {
            var (a0, a1) = (line[i - 1].AheadOf(heading), line[i].AheadOf(heading));
            var (r0, r1) = (line[i - 1].RightOf(heading), line[i].RightOf(heading));
            var way = Turn.Hypot(a1 - a0, r1 - r0);
            sums = sums with
            {
                Way = sums.Way + way,
                SumAhead = sums.SumAhead + (way * (a0 + a1) / 2),
                SumRight = sums.SumRight + (way * (r0 + r1) / 2),
                SumAheadAhead = sums.SumAheadAhead + (way * ((a0 * a0) + (a0 * a1) + (a1 * a1)) / 3),
                SumRightRight = sums.SumRightRight + (way * ((r0 * r0) + (r0 * r1) + (r1 * r1)) / 3),
                SumAheadRight = sums.SumAheadRight + (way * ((2 * a0 * r0) + (a0 * r1) + (a1 * r0) + (2 * a1 * r1)) / 6),
                Least = Math.Min(sums.Least, Math.Min(a0, a1)),
                Most = Math.Max(sums.Most, Math.Max(a0, a1)),
                LeastRight = Math.Min(sums.LeastRight, Math.Min(r0, r1)),
                MostRight = Math.Max(sums.MostRight, Math.Max(r0, r1)),
            };
        }

        return sums;
    }

    /// <summary>The same line goes on: the same way, ahead of where this one ended.</summary>
    public bool GoesOnWith(LineSums next, double apart) =>
        IsAlong && next.IsAlong && Math.Abs(next.Right - Right) <= apart && End >= Start == next.End >= next.Start
        && (End >= Start ? next.Least >= Most - apart : next.Most <= Least + apart);

    public LineSums With(LineSums next) => next with
    {
        Way = Way + next.Way,
        SumAhead = SumAhead + next.SumAhead,
        SumRight = SumRight + next.SumRight,
        SumAheadAhead = SumAheadAhead + next.SumAheadAhead,
        SumRightRight = SumRightRight + next.SumRightRight,
        SumAheadRight = SumAheadRight + next.SumAheadRight,
        Start = Start,
        Least = Math.Min(Least, next.Least),
        Most = Math.Max(Most, next.Most),
        LeastRight = Math.Min(LeastRight, next.LeastRight),
        MostRight = Math.Max(MostRight, next.MostRight),
    };
}
