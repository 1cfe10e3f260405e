using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Passes of the cells put into the order flown, and the turns that the order takes.</summary>
public static class LineOrder
{
    /// <summary>All passes in the order flown, numbered through the cells. A line over no land, as between two bays, is not flown.</summary>
    [Source(nameof(Sources.Definition))]
    public static ImmutableArray<FlownLine> Of(ImmutableArray<LaidCell> cells, LayingAsk ask)
    {
        var lines = ImmutableArray.CreateBuilder<FlownLine>();
        var left = cells.ToList();
        while (left.Count > 0)
        {
            var cell = Nearest(left, lines);
            left.Remove(cell);
            var ends = new StripEnds(cell);
            ImmutableArray<FlownLine> across = [.. cell.Plan.All.Where(p => p.Open.Length > 0).Select((p, i) => Line(p, ends, lines.Count + i + 1, ask.Hopper))];
            var whole = Places(across.Length, cell.Plan.Spacing, ask).Select(place => across[place - 1]);

            // What lies beyond something that is not flown over is flown on the way back.
            ImmutableArray<ImmutableArray<FlownLine>> pieces = [.. whole.Select(line => Obstructed.Broken(line, ask.Round).ToImmutableArray())];
            var order = pieces.Select(p => p[0]).Concat(pieces.Reverse().SelectMany(p => p.Skip(1))).ToList();
            if (lines.Count > 0 && order.Count > 0 && Apart(lines[^1], order[^1]) < Apart(lines[^1], order[0])) order.Reverse();
            lines.AddRange(order);
        }

        return lines.ToImmutable();
    }

    /// <summary>Passes from end to end and every turn between them.</summary>
    [Source(nameof(Sources.WholePassCount), "Σ length / speed + Σ turns")]
    public static TimeSpan Time(ImmutableArray<FlownLine> lines, PassPace pace)
    {
        var seconds = lines.Sum(line => (line.Flown / pace.Speed).TotalSeconds);
        for (var i = 1; i < lines.Length; i++) seconds += TurnSeconds(lines[i - 1], lines[i], pace);
        return TimeSpan.FromSeconds(seconds);
    }

    /// <summary>
    /// From one pass to the next flown: the turn by the watch reaches the pass beside; farther off the ground between is flown
    /// besides, unless the order is one of far turns and their time is reckoned. Nearer ends are taken, as passes may be flown
    /// from either.
    /// </summary>
    internal static double TurnSeconds(FlownLine from, FlownLine to, PassPace pace)
    {
        var apart = Apart(from, to);
        var beyond = apart - (Beside * pace.Swath.Meters);
        if (beyond > 0 && pace.Reach is { } reach) return reach.Time(Length.FromMeters(apart)).TotalSeconds;
        return pace.Turn.TotalSeconds + (Math.Max(0, beyond) / pace.Speed.MetersPerSecond);
    }

    // The cell that begins nearest to where the last one ended; the first as it comes.
    private static LaidCell Nearest(List<LaidCell> left, ImmutableArray<FlownLine>.Builder lines)
    {
        if (lines.Count == 0) return left[0];
        var (from, to) = (lines[^1].From, lines[^1].To);
        return left.MinBy(cell => cell.Land.SelectMany(p => p.Outer).Min(corner => Math.Min(Between(from, corner), Between(to, corner))))!;
    }

    // Passes evened out lie a little under a swath apart; the next but one is certainly beyond this.
    private const double Beside = 1.5;

    private static double Apart(FlownLine a, FlownLine b)
    {
        double east = a.To.East - a.From.East, north = a.To.North - a.From.North, length = double.Hypot(east, north);
        double otherEast = b.To.East - b.From.East, otherNorth = b.To.North - b.From.North, otherLength = double.Hypot(otherEast, otherNorth);
        if (Math.Abs((east * otherNorth) - (north * otherEast)) > 1e-6 * length * otherLength)
            return Math.Min(Math.Min(Between(a.From, b.From), Between(a.To, b.To)), Math.Min(Between(a.From, b.To), Between(a.To, b.From)));
        return Math.Abs((east * (b.From.North - a.From.North)) - (north * (b.From.East - a.From.East))) / length;
    }

    private static double Between(PlanePoint a, PlanePoint b) => double.Hypot(a.East - b.East, a.North - b.North);

    private static ImmutableArray<int> Places(int passes, Length spacing, LayingAsk ask) => ask.Order switch
    {
        PassOrderKind.BackAndForth => PassOrder.BackAndForth(passes),
        PassOrderKind.Racetrack => PassOrder.Racetrack(passes, (ask.Pace.Reach ?? TurnReach.Of(ask.Pace.Turn, ask.Pace.Speed, ask.Pace.Swath)).Offset(spacing)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static FlownLine Line(Pass pass, StripEnds ends, int number, HopperAsk? hopper)
    {
        var (from, to) = ends.Of(pass.Number - 1);
        return new FlownLine(number, from, to, pass.OpenLength, hopper is null ? SoakedSeed.Zero : hopper.Rate * (pass.OpenLength * ends.Spacing)) { Spans = pass.Open };
    }

    // Both ends of every pass of a cell, on the plane of the field.
    private sealed class StripEnds(LaidCell cell)
    {
        private readonly (double Sin, double Cos) along = Math.SinCos(cell.Plan.Heading.Radians);
        private readonly FieldRings rings = FieldRings.Of(cell.Land);
        private StripReach? reach;

        public Length Spacing => cell.Plan.Spacing;

        public (PlanePoint From, PlanePoint To) Of(int strip)
        {
            reach ??= StripReach.Of(rings, cell.Plan.Swath.Meters, along.Sin, along.Cos);
            var right = SweepLine.Extent(rings, along.Sin, along.Cos).Low + ((strip + 0.5) * Spacing.Meters);
            return (At(reach.Near[strip], right), At(reach.Far[strip], right));
        }

        private PlanePoint At(double ahead, double right) => new(
            rings.Middle.East + (ahead * along.Sin) + (right * along.Cos),
            rings.Middle.North + (ahead * along.Cos) - (right * along.Sin));
    }
}
