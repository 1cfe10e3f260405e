namespace Watersown.Flight.Laying;

/// <summary>
/// Passes in the order flown as plain numbers, and the shortest way through their breaks. A load keeps its phase: in phase 0
/// even places are flown from one end and odd ones from the other, in phase 1 the other way round, so that the way out hangs on
/// the first pass alone and the way back on the last alone. What can be the best first pass of a load up to here is kept in a
/// queue whose worse ones are dropped as better ones come in: each pass enters and leaves once.
/// </summary>
internal sealed class LineCosts
{
    private readonly double[] seed;
    private readonly double[] one;
    private readonly double[] other;
    private readonly double[] turned;
    private readonly double load;

    public LineCosts(ImmutableArray<FlownLine> lines, LoadPace pace)
    {
        Count = lines.Length;
        (seed, one, other, turned) = (new double[Count + 1], new double[Count], new double[Count], new double[Count]);
        for (var i = 0; i < Count; i++)
        {
            seed[i + 1] = seed[i] + lines[i].Seed.Kilograms;
            one[i] = pace.FerrySeconds(lines[i].From);
            other[i] = pace.FerrySeconds(lines[i].To);
            if (i > 0) turned[i] = turned[i - 1] + LineOrder.TurnSeconds(lines[i - 1], lines[i], pace.Passes);
        }

        load = pace.Turnaround.TotalSeconds;
    }

    public int Count { get; }

    public double Out(int line, int phase) => ((line + phase) & 1) == 0 ? one[line] : other[line];

    public double Back(int line, int phase) => ((line + phase) & 1) == 0 ? other[line] : one[line];

    public double Seed(int from, int past) => seed[past] - seed[from];

    /// <summary>Turns from the first of some passes to the last, in seconds.</summary>
    public double Turning(int from, int past) => turned[past - 1] - turned[from];

    /// <summary>First pass and phase of each load of the quickest split; none where a pass alone is too much.</summary>
    public List<(int First, int Phase)>? Solve(double most)
    {
        var (least, from, phases) = (new double[Count + 1], new int[Count + 1], new byte[Count + 1]);
        var (even, odd) = (new Window(Count), new Window(Count));
        for (var past = 1; past <= Count; past++)
        {
            var line = past - 1;
            if (seed[past] - seed[line] > most) return null;

            // A turn saved before the load counts as one less from here on: only differences matter.
            var before = least[line] - turned[line];
            even.Push(line, before + Out(line, 0));
            odd.Push(line, before + Out(line, 1));
            even.Drop(seed, seed[past] - most);
            odd.Drop(seed, seed[past] - most);
            var (inEven, inOdd) = (even.Least + Back(line, 0), odd.Least + Back(line, 1));
            least[past] = Math.Min(inEven, inOdd) + turned[line] + load;
            (from[past], phases[past]) = inEven <= inOdd ? (even.First, (byte)0) : (odd.First, (byte)1);
        }

        var breaks = new List<(int First, int Phase)>();
        for (var past = Count; past > 0; past = from[past]) breaks.Add((from[past], phases[past]));
        breaks.Reverse();
        return breaks;
    }

    /// <summary>Loads filled up in order, the first pass begun at its nearer end, each load taking up where a turn would have.</summary>
    public List<(int First, int Phase)>? Fill(double most)
    {
        var breaks = new List<(int First, int Phase)>();
        var phase = Count == 0 || one[0] <= other[0] ? 0 : 1;
        for (var first = 0; first < Count;)
        {
            breaks.Add((first, phase));
            var past = first;
            while (past < Count && seed[past + 1] - seed[first] <= most) past++;
            if (past == first) return null;
            first = past;
        }

        return breaks;
    }

    // First passes that may still be best, costs rising from the head on.
    private sealed class Window(int count)
    {
        private readonly int[] lines = new int[count];
        private readonly double[] costs = new double[count];
        private int head;
        private int tail;

        public double Least => costs[head];

        public int First => lines[head];

        public void Push(int line, double cost)
        {
            while (tail > head && costs[tail - 1] > cost) tail--;
            (lines[tail], costs[tail]) = (line, cost);
            tail++;
        }

        public void Drop(double[] seed, double least)
        {
            while (seed[lines[head]] < least) head++;
        }
    }
}
