namespace Watersown.Water.Flood;

/// <summary>Checks that hang together, laid out for reckoning: m, m³, s.</summary>
internal sealed class FloodPart
{
    // s.
    private const double Fast = 1800;

    /// <summary>Lays out some checks of a network with what joins them.</summary>
    /// <param name="network">The whole.</param>
    /// <param name="checks">Checks of this part, by their place in the network.</param>
    /// <param name="boxes">Boxes of this part.</param>
    /// <param name="ditches">Ditches of this part.</param>
    /// <param name="place">Place in its part of every check of the network.</param>
    public FloodPart(FloodNetwork network, List<int> checks, List<int> boxes, List<int> ditches, int[] place)
    {
        (Checks, Boxes) = (checks, boxes);
        var own = checks.ConvertAll(i => network.Checks[i]);
        Area = [.. own.Select(c => c.Area.SquareMeters)];
        TakeUp = [.. own.Select(c => c.TakeUp.Meters)];
        Ground = [.. own.Select(c => c.Ground.Meters)];
        Front = [.. own.Select(c => c.Front.Meters)];
        Full = [.. own.Select(c => c.Area.SquareMeters * (c.TakeUp + c.Front).Meters)];
        Percolation = [.. own.Select(c => c.Percolation.MetersPerSecond)];
        Conductivity = [.. own.Select(c => c.Soaking?.Conductivity.MetersPerSecond ?? 0)];
        Suction = [.. own.Select(c => c.Soaking?.Suction.Meters ?? 0)];
        Inflow = new double[own.Count];
        var joined = boxes.ConvertAll(b => network.Boxes[b]);
        BoxFrom = [.. joined.Select(b => place[b.From])];
        BoxTo = [.. joined.Select(b => b.To is { } to ? place[to] : -1)];
        BoxDitch = [.. joined.Select(b => b.Ditch is { } d ? ditches.IndexOf(d) : -1)];
        Laws = [.. joined.Select(b => new BoxFlow(b.Width.Meters, b.Kind, Math.Min(Area[place[b.From]], Area[place[b.To ?? b.From]])))];
        Crest = [.. joined.Select((b, i) => Ground[BoxFrom[i]] + b.Boards.Meters)];
        DitchTo = [.. ditches.Select(d => network.Ditches[d].To is { } to ? place[to] : -1)];
        DitchNext = [.. ditches.Select(d => network.Ditches[d].Next is { } next ? ditches.IndexOf(next) : -1)];
        DitchCap = [.. ditches.Select(d => network.Ditches[d].Cap.CubicMetersPerSecond)];
        Names = [.. own.Select(c => c.Name)];
        StartCovered = [.. own.Select(c => c.Covered.Share * c.Area.SquareMeters)];
        StartHeld = [.. own.Select((c, i) => StartCovered[i] * (c.TakeUp + c.Depth).Meters)];
    }

    public List<int> Checks { get; }

    public List<int> Boxes { get; }

    public int Count => Area.Length;

    public string[] Names { get; }

    public double[] Area { get; }

    public double[] TakeUp { get; }

    public double[] Ground { get; }

    public double[] Front { get; }

    /// <summary>Held when the last ground is covered, m³.</summary>
    public double[] Full { get; }

    public double[] Percolation { get; }

    public double[] Conductivity { get; }

    public double[] Suction { get; }

    public double[] StartCovered { get; }

    public double[] StartHeld { get; }

    /// <summary>Some of its ground goes on drinking after it got wet.</summary>
    public bool Soaks => Array.Exists(Conductivity, c => c > 0);

    /// <summary>
    /// Every check gives to the next one alone, the last one away, and the ground drinks at once all that it takes up: as most fields are.
    /// </summary>
    public bool InARow =>
        Levees.Count == 0 && DitchTo.Length == 0 && !Soaks &&
        BoxFrom.Distinct().Count() == BoxFrom.Length && BoxFrom.Zip(BoxTo).All(b => b.Second == (b.First + 1 < Count ? b.First + 1 : -1));

    /// <summary>
    /// Some check would run out over its boards faster than in half an hour at the most that is let in: plain steps, one for sixteen
    /// fields, are then worse than <see cref="FloodLinearStep"/> field by field.
    /// </summary>
    public bool RunsOutFast
    {
        get
        {
            var most = Changes.Where(c => c.Kind == FloodChangeKind.Inflow).Aggregate((Now: 0.0, Most: 0.0), (f, c) => (f.Now + c.Value, Math.Max(f.Most, f.Now + c.Value))).Most;
            return BoxFrom.Select((from, b) => Laws[b].Slopes(Laws[b].Head(most), -1).Above / Area[from]).Any(perSecond => perSecond * Fast > 1);
        }
    }

    public int[] BoxFrom { get; }

    public int[] BoxTo { get; }

    public int[] BoxDitch { get; }

    public BoxFlow[] Laws { get; }

    public int[] DitchTo { get; }

    public int[] DitchNext { get; }

    public double[] DitchCap { get; }

    public List<LeveeLaw> Levees { get; } = [];

    /// <summary>What changes during the run, in order of time.</summary>
    public List<FloodChange> Changes { get; } = [];

    // As they stand between two changes.

    public double[] Inflow { get; }

    public double[] Crest { get; }

    public double Evaporation { get; private set; }

    public double Rain { get; private set; }

    public void Apply(FloodChange change)
    {
        switch (change.Kind)
        {
            case FloodChangeKind.Inflow: Inflow[change.Index] += change.Value; break;
            case FloodChangeKind.Boards: Crest[change.Index] = Ground[BoxFrom[change.Index]] + change.Value; break;
            default: (Evaporation, Rain) = (change.Value, change.Second); break;
        }
    }
}

internal enum FloodChangeKind
{
    Inflow,
    Boards,
    Air,
}

/// <summary>Something that changes at a moment.</summary>
/// <param name="At">Seconds since the start.</param>
/// <param name="Kind">What.</param>
/// <param name="Index">Of the check or the box, in the part.</param>
/// <param name="Value">More flow, new boards over the ground, or evaporation.</param>
/// <param name="Second">Rain.</param>
internal readonly record struct FloodChange(double At, FloodChangeKind Kind, int Index, double Value, double Second = 0);
