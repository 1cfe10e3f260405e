using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Loads that may stop within a pass: at a quarter, a half or three quarters of it, the next load taking it up there, the same way
/// and after lining up once more. The quickest split of the passes in the order given, with no guess in it: the shortest way
/// through all such places, each with the way that its pass is flown.
/// </summary>
internal sealed class PartLoads
{
    private const int Parts = 4;
    private const double Dust = 1e-9;

    private readonly ImmutableArray<FlownLine> lines;
    private readonly LoadPace pace;
    private readonly double lineUp;
    private readonly double[] seed;
    private readonly double[] turned;

    private PartLoads(ImmutableArray<FlownLine> lines, LoadPace pace, TimeSpan lineUp)
    {
        (this.lines, this.pace, this.lineUp) = (lines, pace, lineUp.TotalSeconds);
        (seed, turned) = (new double[lines.Length + 1], new double[lines.Length]);
        for (var i = 0; i < lines.Length; i++)
        {
            seed[i + 1] = seed[i] + lines[i].Seed.Kilograms;
            if (i > 0) turned[i] = turned[i - 1] + LineOrder.TurnSeconds(lines[i - 1], lines[i], pace.Passes);
        }
    }

    /// <summary>The quickest split; none where a quarter of a pass is more than a load.</summary>
    public static LoadSplit? Of(ImmutableArray<FlownLine> lines, LoadPace pace, TimeSpan lineUp)
    {
        var parts = new PartLoads(lines, pace, lineUp);
        return parts.Solve() is { } stops ? parts.Read(stops) : null;
    }

    // A place to stop: parts of all passes sown up to it, and the way the pass there is flown (0 from its first end).
    private readonly record struct Stop(int Parts, int Way)
    {
        public int Pass => Parts / PartLoads.Parts;

        public int Share => Parts % PartLoads.Parts;
    }

    private List<(Stop From, Stop To, int Way)>? Solve()
    {
        var count = lines.Length * Parts;
        var (least, before) = (new double[(count + 1) * 2], new (Stop From, int Way)[(count + 1) * 2]);
        Array.Fill(least, double.PositiveInfinity);
        least[0] = least[1] = 0;
        for (var to = 1; to <= count; to++)
        {
            for (var from = to - 1; from >= 0 && Seed(from, to) <= pace.Limit.Kilograms * (1 + Dust); from--)
            {
                for (var way = 0; way < 2; way++)
                {
                    // The way of the first pass; within a pass it is the one it was begun in, between passes either.
                    var start = new Stop(from, from % Parts == 0 ? 0 : way);
                    var last = new Stop(to, (way + ((to - 1) / Parts) - (from / Parts)) & 1);
                    var seconds = least[(from * 2) + start.Way] + Cost(from, to, way, last.Way);
                    var at = (to * 2) + (to % Parts == 0 ? 0 : last.Way);
                    if (seconds >= least[at]) continue;
                    (least[at], before[at]) = (seconds, (start, way));
                }
            }
        }

        return double.IsPositiveInfinity(least[count * 2]) ? null : Back(before, count);
    }

    private static List<(Stop From, Stop To, int Way)> Back((Stop From, int Way)[] before, int count)
    {
        var loads = new List<(Stop From, Stop To, int Way)>();
        for (var at = new Stop(count, 0); at.Parts > 0; at = loads[^1].From) loads.Add((before[(at.Parts * 2) + at.Way].From, at, before[(at.Parts * 2) + at.Way].Way));
        loads.Reverse();
        return loads;
    }

    private double Cost(int from, int to, int way, int lastWay) =>
        pace.Turnaround.TotalSeconds + (from % Parts == 0 ? 0 : lineUp) + Turning(from, to) + Ferry(from, to, way, lastWay);

    private double Turning(int from, int to) => turned[(to - 1) / Parts] - turned[from / Parts];

    private double Ferry(int from, int to, int way, int lastWay) =>
        pace.FerrySeconds(Place(from / Parts, from % Parts, way)) + pace.FerrySeconds(Place((to - 1) / Parts, to - ((to - 1) / Parts * Parts), lastWay));

    private PlanePoint Place(int pass, int share, int way)
    {
        var (line, part) = (lines[pass], share / (double)Parts);
        var (from, to) = way == 0 ? (line.From, line.To) : (line.To, line.From);
        return new PlanePoint(from.East + (part * (to.East - from.East)), from.North + (part * (to.North - from.North)));
    }

    private double Sown(int parts)
    {
        var pass = parts / Parts;
        return seed[pass] + (parts % Parts == 0 ? 0 : parts % Parts / (double)Parts * (seed[pass + 1] - seed[pass]));
    }

    private double Seed(int from, int to) => Sown(to) - Sown(from);

    private LoadSplit Read(List<(Stop From, Stop To, int Way)> stops)
    {
        var (loads, ferry, turning) = (ImmutableArray.CreateBuilder<LaidLoad>(stops.Count), 0.0, 0.0);
        foreach (var (from, to, way) in stops)
        {
            var (first, last) = (from.Parts / Parts, (to.Parts - 1) / Parts);
            var seconds = Ferry(from.Parts, to.Parts, way, (way + last - first) & 1);
            loads.Add(new LaidLoad(first, last - first + 1, way == 0, SoakedSeed.FromKilograms(Seed(from.Parts, to.Parts)), TimeSpan.FromSeconds(seconds))
            {
                SownBefore = Fraction.FromShare(from.Share / (double)Parts),
                SownOfLast = Fraction.FromShare(to.Share == 0 ? 1 : to.Share / (double)Parts),
            });
            ferry += seconds;
            turning += Turning(from.Parts, to.Parts) + (from.Share == 0 ? 0 : lineUp);
        }

        return new LoadSplit(loads.MoveToImmutable(), TimeSpan.FromSeconds(ferry), stops.Count * pace.Turnaround, TimeSpan.FromSeconds(turning));
    }
}
