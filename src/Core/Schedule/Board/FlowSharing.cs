namespace Watersown.Schedule.Board;

/// <summary>
/// Shares water among fields so that as much of their want is met as can be: the greatest flow from fields over sources and
/// shared caps, found along paths that still have room, first choices first (Ford and Fulkerson, 1956).
/// </summary>
public sealed class FlowSharing
{
    private const double Least = 1e-9;

    private readonly List<Edge>[] edges;
    private readonly ImmutableArray<(ImmutableArray<int> Sources, FlowRate Want)> fields;
    private readonly double[] missing;
    private readonly int sink;

    public FlowSharing(ImmutableArray<FlowRate> given, ImmutableArray<(FlowRate Cap, ImmutableArray<int> Sources)> caps, ImmutableArray<(ImmutableArray<int> Sources, FlowRate Want)> fields)
    {
        this.fields = fields;
        sink = fields.Length + given.Length + caps.Length;
        edges = [.. Enumerable.Range(0, sink + 1).Select(_ => new List<Edge>())];
        for (var f = 0; f < fields.Length; f++)
        {
            foreach (var s in fields[f].Sources) Join(f, fields.Length + s, double.MaxValue);
        }

        for (var s = 0; s < given.Length; s++)
        {
            var cap = Array.FindIndex([.. caps], c => c.Sources.Contains(s));
            Join(fields.Length + s, cap < 0 ? sink : fields.Length + given.Length + cap, given[s].CubicFeetPerSecond);
        }

        for (var c = 0; c < caps.Length; c++) Join(fields.Length + given.Length + c, sink, caps[c].Cap.CubicFeetPerSecond);
        missing = [.. fields.Select((f, i) => Missing(i, f.Want.CubicFeetPerSecond))];
    }

    /// <summary>What a field gets from a source.</summary>
    public FlowRate Flow(int field, int source) =>
        FlowRate.FromCubicFeetPerSecond(edges[field].Where(e => e.To == fields.Length + source).Sum(e => e.Back!.Room));

    /// <summary>What no source can give it.</summary>
    public FlowRate Missing(int field) => FlowRate.FromCubicFeetPerSecond(missing[field]);

    private double Missing(int field, double want)
    {
        while (want > Least)
        {
            var pushed = Push(field, want, new bool[sink + 1]);
            if (pushed <= Least) break;
            want -= pushed;
        }

        return want > Least ? want : 0;
    }

    private double Push(int node, double most, bool[] seen)
    {
        if (node == sink) return most;
        seen[node] = true;
        foreach (var edge in edges[node])
        {
            if (seen[edge.To] || edge.Room <= Least) continue;
            var pushed = Push(edge.To, Math.Min(most, edge.Room), seen);
            if (pushed <= Least) continue;
            edge.Room -= pushed;
            edge.Back!.Room += pushed;
            return pushed;
        }

        return 0;
    }

    private void Join(int from, int to, double room)
    {
        var there = new Edge(to) { Room = room };
        var back = new Edge(from) { Back = there };
        there.Back = back;
        edges[from].Add(there);
        edges[to].Add(back);
    }

    private sealed class Edge(int to)
    {
        public int To { get; } = to;

        public double Room { get; set; }

        public Edge? Back { get; set; }
    }
}
