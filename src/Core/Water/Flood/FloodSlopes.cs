namespace Watersown.Water.Flood;

/// <summary>
/// How the flows of a part move with what its checks hold: what is lost with the check's own, what runs over boards and through levees
/// with that of both sides, what a ditch lifts with all that drains into it.
/// </summary>
internal sealed class FloodSlopes
{
    private readonly FloodPart part;
    private readonly FloodSystem system;
    private readonly (double Stage, double Slope, double Wet)[] stages;
    private readonly (double From, double To)[] boxes;
    private readonly (double From, double To)[] levees;
    private readonly bool[] lifting;
    private readonly double[] ditch;
    private readonly double[] diagonal;
    private readonly int[] gives;
    private (int Down, int Up)[] boxPlaces = [];
    private (int Down, int Up)[] leveePlaces = [];
    private FloodMatrix? matrix;

    public FloodSlopes(FloodPart part, FloodSystem system)
    {
        (this.part, this.system) = (part, system);
        (stages, diagonal) = (new (double, double, double)[part.Count], new double[part.Count]);
        (boxes, levees) = (new (double, double)[part.BoxFrom.Length], new (double, double)[part.Levees.Count]);
        (lifting, ditch) = (new bool[part.DitchTo.Length], new double[part.DitchTo.Length]);
        gives = [.. part.BoxTo.Select((to, b) => to >= 0 ? to : End(part.BoxDitch[b]))];
    }

    /// <summary>The fastest that a check runs out, 1/s: one over the time in which it would, if nothing came.</summary>
    public double Fastest { get; private set; }

    /// <summary>Takes them at one state.</summary>
    /// <param name="held">Held by each check, m³.</param>
    /// <param name="rates">Rates at that state.</param>
    public void At(double[] held, FloodFlows rates)
    {
        for (var i = 0; i < stages.Length; i++)
        {
            stages[i] = system.Stages(i, held[i], rates.Net[i] > 0);
            diagonal[i] = (part.Evaporation + part.Percolation[i]) * stages[i].Wet;
        }

        for (var b = 0; b < boxes.Length; b++)
        {
            var (from, to, crest) = (part.BoxFrom[b], part.BoxTo[b], part.Crest[b]);
            var (above, below) = part.Laws[b].Slopes(stages[from].Stage - crest, to < 0 ? -1 : stages[to].Stage - crest);
            boxes[b] = Joint(from, to, above, below);
        }

        for (var l = 0; l < levees.Length; l++)
        {
            var levee = part.Levees[l];
            var (near, far) = levee.Depths(part, stages[levee.From].Stage, levee.To < 0 ? 0 : stages[levee.To].Stage);
            levees[l] = Joint(levee.From, levee.To, levee.Rate * near, -levee.Rate * far);
        }

        Lift(rates);
        Fastest = 0;
        foreach (var one in diagonal) Fastest = Math.Max(Fastest, one);
    }

    /// <summary>Adds to some flows how they change where what is held moves.</summary>
    public void Carry(double[] moved, FloodFlows flows)
    {
        for (var i = 0; i < stages.Length; i++)
        {
            var (evaporated, percolated) = (part.Evaporation * stages[i].Wet * moved[i], part.Percolation[i] * stages[i].Wet * moved[i]);
            flows.Evaporated += evaporated;
            flows.Percolated += percolated;
            flows.Net[i] -= evaporated + percolated;
        }

        Array.Clear(ditch);
        for (var b = 0; b < boxes.Length; b++)
        {
            var (from, to) = (part.BoxFrom[b], part.BoxTo[b]);
            var more = (boxes[b].From * moved[from]) + (to < 0 ? 0 : boxes[b].To * moved[to]);
            flows.Box[b] += more;
            flows.Net[from] -= more;
            if (to >= 0) flows.Net[to] += more;
            else if (part.BoxDitch[b] >= 0) ditch[part.BoxDitch[b]] += more;
            else flows.Left += more;
        }

        for (var l = 0; l < levees.Length; l++)
        {
            var (from, to) = (part.Levees[l].From, part.Levees[l].To);
            var more = (levees[l].From * moved[from]) + (to < 0 ? 0 : levees[l].To * moved[to]);
            flows.Net[from] -= more;
            if (to >= 0) flows.Net[to] += more;
            else flows.Left += more;
        }

        for (var d = 0; d < ditch.Length; d++)
        {
            var lifted = lifting[d] ? ditch[d] : 0;
            flows.Left += ditch[d] - lifted;
            if (part.DitchTo[d] >= 0) flows.Net[part.DitchTo[d]] += lifted;
            else if (part.DitchNext[d] >= 0) ditch[part.DitchNext[d]] += lifted;
            else flows.Left += lifted;
        }
    }

    /// <summary>The matrix 1 − s × slopes, eliminated.</summary>
    public FloodMatrix Matrix(double seconds)
    {
        matrix ??= Lay();
        matrix.Clear();
        for (var i = 0; i < stages.Length; i++) matrix.Add(i, seconds * (part.Evaporation + part.Percolation[i]) * stages[i].Wet);
        for (var b = 0; b < boxes.Length; b++) Put(matrix, part.BoxFrom[b], part.BoxTo[b], boxes[b], part.BoxTo[b] >= 0 || Lifted(part.BoxDitch[b]) ? boxPlaces[b] : (-1, -1), seconds);
        for (var l = 0; l < levees.Length; l++) Put(matrix, part.Levees[l].From, part.Levees[l].To, levees[l], leveePlaces[l], seconds);
        matrix.Eliminate();
        return matrix;
    }

    private static void Put(FloodMatrix matrix, int from, int to, (double From, double To) slopes, (int Down, int Up) places, double seconds)
    {
        matrix.Add(from, seconds * slopes.From);
        if (places.Down >= 0) matrix.Add(places.Down, -seconds * slopes.From);
        if (to < 0) return;
        matrix.Add(places.Up, seconds * slopes.To);
        matrix.Add(to, -seconds * slopes.To);
    }

    // Only once a step asks for it: most parts never do.
    private FloodMatrix Lay()
    {
        var laid = new FloodMatrix(part.Count, gives.Select((to, b) => (part.BoxFrom[b], to)).Concat(part.Levees.Select(l => (l.From, l.To))).Where(j => j.Item2 >= 0));
        (int, int) Places(int from, int gets) => gets < 0 ? (-1, -1) : (laid.Place(gets, from), laid.Place(from, gets));
        boxPlaces = [.. gives.Select((to, b) => Places(part.BoxFrom[b], to))];
        leveePlaces = [.. part.Levees.Select(l => Places(l.From, l.To))];
        return laid;
    }

    private (double From, double To) Joint(int from, int to, double above, double below)
    {
        var slopes = (From: above * stages[from].Slope, To: to < 0 ? 0 : below * stages[to].Slope);
        diagonal[from] += slopes.From;
        if (to >= 0) diagonal[to] -= slopes.To;
        return slopes;
    }

    // A ditch lifts more where more comes until its pump can no more.
    private void Lift(FloodFlows rates)
    {
        Array.Clear(ditch);
        for (var b = 0; b < boxes.Length; b++)
        {
            if (part.BoxTo[b] < 0 && part.BoxDitch[b] >= 0) ditch[part.BoxDitch[b]] += rates.Box[b];
        }

        for (var d = 0; d < ditch.Length; d++)
        {
            lifting[d] = ditch[d] < part.DitchCap[d];
            if (part.DitchTo[d] < 0 && part.DitchNext[d] >= 0) ditch[part.DitchNext[d]] += Math.Min(part.DitchCap[d], ditch[d]);
        }
    }

    // Check that a ditch gives to in the end.
    private int End(int of)
    {
        while (of >= 0 && part.DitchTo[of] < 0) of = part.DitchNext[of];
        return of < 0 ? -1 : part.DitchTo[of];
    }

    private bool Lifted(int of)
    {
        while (of >= 0 && lifting[of])
        {
            if (part.DitchTo[of] >= 0) return true;
            of = part.DitchNext[of];
        }

        return false;
    }
}
