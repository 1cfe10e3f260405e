namespace Watersown.Flight.Laying;

/// <summary>
/// Where to break the passes into loads. Passes are taken in the order given, each load is a run of whole passes, and each may
/// begin at the end of its first pass that is nearer; of all such splits the quickest is found, with no guess in it.
/// </summary>
public static class LoadSplitting
{
    // A load of a whole number of passes must not lose one to floating dust.
    private const double Dust = 1e-9;

    /// <summary>The quickest split into whole passes; none where one pass is more than a load.</summary>
    /// <param name="lines">In the order flown.</param>
    /// <param name="pace">What a load costs.</param>
    [Source(nameof(Sources.ShortestPath), "least time to pass j = least over i of time to i + ferry out + turns + ferry back + turnaround")]
    public static LoadSplit? Whole(ImmutableArray<FlownLine> lines, LoadPace pace)
    {
        var costs = new LineCosts(lines, pace);
        var breaks = costs.Solve(pace.Limit.Kilograms * (1 + Dust));
        return breaks is null ? null : Read(costs, breaks, pace);
    }

    /// <summary>Full loads one after another in the order flown, each as many whole passes as go in, turned at every break as at a turn: what is done without thinking.</summary>
    [Source(nameof(Sources.CommonPractice), "fill up, fly until the next pass no longer goes in")]
    public static LoadSplit? FilledUp(ImmutableArray<FlownLine> lines, LoadPace pace)
    {
        var costs = new LineCosts(lines, pace);
        var breaks = costs.Fill(pace.Limit.Kilograms * (1 + Dust));
        return breaks is null ? null : Read(costs, breaks, pace);
    }

    /// <summary>Fewest loads of whole passes in the order flown; none where one pass is more than a load.</summary>
    [Source(nameof(Sources.Arithmetic), "each load takes as many passes as go in")]
    [return: PlainNumber("loads")]
    public static int? Fewest(ImmutableArray<FlownLine> lines, SoakedSeed limit)
    {
        var (loads, left, most) = (0, 0.0, limit.Kilograms * (1 + Dust));
        foreach (var line in lines)
        {
            var seed = line.Seed.Kilograms;
            if (seed > most) return null;
            if (seed > left + (Dust * most)) (loads, left) = (loads + 1, most);
            left -= seed;
        }

        return loads;
    }

    /// <summary>
    /// Ferry that no loads of whole passes can beat, in whatever order and split. There are no fewer loads than all seed asks for;
    /// each flies out to one end of a pass and back from another, and no end serves twice: the nearest ends of all, so many.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "2 × fewest loads ends of passes, those nearest to the strip")]
    public static TimeSpan LeastFerry(ImmutableArray<FlownLine> lines, LoadPace pace)
    {
        var loads = (int)Math.Ceiling((lines.Sum(line => line.Seed.Kilograms) / pace.Limit.Kilograms) - (1e3 * Dust));
        return TimeSpan.FromSeconds(lines.SelectMany(line => new[] { pace.FerrySeconds(line.From), pace.FerrySeconds(line.To) }).Order().Take(2 * Math.Max(1, loads)).Sum());
    }

    /// <summary>
    /// The smallest limit that saves a load; none where there is but one. Loads of whole passes change in steps: a pound more
    /// may save a flight, or nothing.
    /// </summary>
    [Source(nameof(Sources.WholePassCount), "the smallest limit at which one load fewer holds all passes")]
    public static SoakedSeed? ForOneFewer(ImmutableArray<FlownLine> lines, SoakedSeed limit)
    {
        if (Fewest(lines, limit) is not { } now || now < 2) return null;
        var (low, high) = (limit, lines.Aggregate(SoakedSeed.Zero, (sum, line) => sum + line.Seed));
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Fewest(lines, middle) < now) high = middle;
            else low = middle;
        }

        return high * (1 + (2 * Dust)); // so that every way of adding up fits
    }

    private static LoadSplit Read(LineCosts costs, List<(int First, int Phase)> breaks, LoadPace pace)
    {
        var loads = ImmutableArray.CreateBuilder<LaidLoad>(breaks.Count);
        var (ferry, turning) = (0.0, 0.0);
        for (var b = 0; b < breaks.Count; b++)
        {
            var (first, phase) = breaks[b];
            var past = b + 1 < breaks.Count ? breaks[b + 1].First : costs.Count;
            var seconds = costs.Out(first, phase) + costs.Back(past - 1, phase);
            loads.Add(new LaidLoad(first, past - first, (first + phase) % 2 == 0, SoakedSeed.FromKilograms(costs.Seed(first, past)), TimeSpan.FromSeconds(seconds)));
            ferry += seconds;
            turning += costs.Turning(first, past);
        }

        return new LoadSplit(loads.MoveToImmutable(), TimeSpan.FromSeconds(ferry), breaks.Count * pace.Turnaround, TimeSpan.FromSeconds(turning));
    }
}
