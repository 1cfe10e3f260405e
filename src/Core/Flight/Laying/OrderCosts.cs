namespace Watersown.Flight.Laying;

/// <summary>
/// What the quickest split of any order of the passes costs: the same shortest way through the breaks as <see cref="LineCosts"/>,
/// worked out anew for every order asked, without what tells where the breaks lie.
/// </summary>
internal sealed class OrderCosts
{
    private readonly double most;
    private readonly double load;
    private readonly double[] seed;
    private readonly double[] one;
    private readonly double[] other;
    private readonly double[] turns;
    private readonly double[] least;

    public OrderCosts(ImmutableArray<FlownLine> lines, LoadPace pace)
    {
        var count = lines.Length;
        (most, load) = (pace.Limit.Kilograms * (1 + Dust), pace.Turnaround.TotalSeconds);
        seed = [.. lines.Select(l => l.Seed.Kilograms)];
        one = [.. lines.Select(l => pace.FerrySeconds(l.From))];
        other = [.. lines.Select(l => pace.FerrySeconds(l.To))];
        least = new double[count + 1];
        turns = new double[count * count];
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < i; j++) turns[(i * count) + j] = turns[(j * count) + i] = LineOrder.TurnSeconds(lines[i], lines[j], pace.Passes);
        }
    }

    // As in splitting: a load of a whole number of passes must not lose one to floating dust.
    private const double Dust = 1e-9;

    /// <summary>Ferry, turnaround and turns of an order, s; endless where a pass alone is too much.</summary>
    public double Of(int[] order)
    {
        for (var past = 1; past <= order.Length; past++)
        {
            var (last, sown, turning, best) = (order[past - 1], 0.0, 0.0, double.PositiveInfinity);
            for (var first = past - 1; first >= 0; first--)
            {
                var line = order[first];
                sown += seed[line];
                if (sown > most) break;
                if (first < past - 1) turning += turns[(line * seed.Length) + order[first + 1]];

                // Flown by turns: after an even number of turns the last goes the way the first went.
                var even = ((past - 1 - first) & 1) == 0;
                var ferry = Math.Min(one[line] + (even ? other[last] : one[last]), other[line] + (even ? one[last] : other[last]));
                best = Math.Min(best, least[first] + turning + ferry);
            }

            least[past] = best + load;
        }

        return least[order.Length];
    }
}
