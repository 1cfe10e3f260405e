using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Passes of the cells put into the order flown, and the turns that the order takes.</summary>
public static class LineOrder
{
    /// <summary>All passes in the order flown, numbered through the cells. A strip of no land, as between two pieces, is not flown.</summary>
    [Source(nameof(Sources.Definition))]
    public static ImmutableArray<FlownLine> Of(ImmutableArray<LaidCell> cells, LayingAsk ask)
    {
        ImmutableArray<ImmutableArray<FlownLine>> blocks = [.. cells.Select(cell => Within(cell, ask)).Where(block => !block.IsEmpty)];
        return [.. CellOrder.Shortest(blocks, ask.Pace).SelectMany(block => block).Select((line, i) => line with { Number = i + 1 })];
    }

    // What lies beyond something that is not flown over is flown on the way back.
    private static ImmutableArray<FlownLine> Within(LaidCell cell, LayingAsk ask)
    {
        var ends = new StripEnds(cell);
        ImmutableArray<FlownLine> across = [.. cell.Plan.All.SelectMany(ends.Lines).Select((p, i) => Line(p.Open, p.From, p.To, ends.Spacing, i + 1, ask.Hopper))];
        var whole = Places(across.Length, cell.Plan.Spacing, ask).Select(place => across[place - 1]);
        ImmutableArray<ImmutableArray<FlownLine>> pieces = [.. whole.Select(line => Obstructed.Broken(line, ask.Round).ToImmutableArray())];
        return [.. pieces.Select(p => p[0]), .. pieces.Reverse().SelectMany(p => p.Skip(1))];
    }

    /// <summary>Passes from end to end and every turn between them.</summary>
    [Source(nameof(Sources.WholePassCount), "Σ length / speed + Σ turns")]
    public static TimeSpan Time(ImmutableArray<FlownLine> lines, PassPace pace)
    {
        var seconds = Flying(lines, pace).TotalSeconds;
        for (var i = 1; i < lines.Length; i++) seconds += TurnSeconds(lines[i - 1], lines[i], pace);
        return TimeSpan.FromSeconds(seconds);
    }

    /// <summary>Passes from end to end, turns left out; in wind each as if flown one way as often as the other.</summary>
    internal static TimeSpan Flying(ImmutableArray<FlownLine> lines, PassPace pace) => TimeSpan.FromSeconds(lines.Sum(line =>
        (line.Flown / pace.SpeedOn(Bearing.FromDegrees(Math.Atan2(line.To.East - line.From.East, line.To.North - line.From.North) * 180 / Math.PI))).TotalSeconds));

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

    private static FlownLine Line(ImmutableArray<LineSpan> open, PlanePoint from, PlanePoint to, Length spacing, int number, HopperAsk? hopper)
    {
        var length = open.Aggregate(Length.Zero, (sum, span) => sum + span.Length);
        return new FlownLine(number, from, to, length, hopper is null ? SoakedSeed.Zero : hopper.Rate * (length * spacing)) { Spans = open };
    }

    // Both ends of every pass of a cell, on the plane of the field.
    private sealed class StripEnds(LaidCell cell)
    {
        // Of a strip, from its middle; land narrower than what is left is a thread.
        private static readonly double[] Aside = [0.25, 0.375, 0.4375];

        private readonly (double Sin, double Cos) along = Math.SinCos(cell.Plan.Heading.Radians);
        private readonly FieldRings rings = FieldRings.Of(cell.Land);
        private StripReach? reach;

        public Length Spacing => cell.Plan.Spacing;

        /// <summary>The pass of a strip. Where its middle lies over no land, as beside a bay, a pass over what land there is on either side.</summary>
        public IEnumerable<(ImmutableArray<LineSpan> Open, PlanePoint From, PlanePoint To)> Lines(Pass pass)
        {
            reach ??= StripReach.Of(rings, cell.Plan.Swath.Meters, along.Sin, along.Cos);
            var (near, far) = (reach.Near[pass.Number - 1], reach.Far[pass.Number - 1]);
            if (far <= near) yield break;
            var middle = SweepLine.Extent(rings, along.Sin, along.Cos).Low + ((pass.Number - 0.5) * Spacing.Meters);
            if (pass.Open.Length > 0)
            {
                yield return (pass.Open, At(near, middle), At(far, middle));
                yield break;
            }

            foreach (var side in new[] { -1, 1 })
            {
                foreach (var share in Aside)
                {
                    var right = middle + (side * share * Spacing.Meters);
                    var open = Sweep.Lines(cell.Land, cell.Plan.Heading, Length.FromMeters(At(0, right).RightOf(cell.Plan.Heading)), Spacing, 1)[0];
                    if (open.IsEmpty) continue;
                    yield return (open, At(near, right), At(far, right));
                    break;
                }
            }
        }

        private PlanePoint At(double ahead, double right) => new(
            rings.Middle.East + (ahead * along.Sin) + (right * along.Cos),
            rings.Middle.North + (ahead * along.Cos) - (right * along.Sin));
    }
}
