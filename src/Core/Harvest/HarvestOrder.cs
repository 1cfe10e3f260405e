namespace Watersown.Harvest;

/// <summary>A field with grain still standing.</summary>
/// <param name="Code">Field code.</param>
/// <param name="Left">Land not cut yet.</param>
/// <param name="Yield">Grain expected, at the moisture it is paid at.</param>
public sealed record StandingGrain(string Code, Area Left, GrainYield Yield)
{
    /// <summary>Never mixed with another in one set; grain of no known variety counts as one of its own.</summary>
    public string? Variety { get; init; }

    /// <summary>None where nobody sampled it: then it is taken to be fit, and the answer says so.</summary>
    public MoistureTrend? Trend { get; init; }

    public bool Lodged { get; init; }

    /// <summary>The ground does not carry a combine before.</summary>
    public DateOnly? Carries { get; init; }
}

/// <summary>What is asked of a harvest.</summary>
/// <param name="Fields">Fields with grain standing.</param>
/// <param name="Means">Combines and dryer; both must be told.</param>
/// <param name="From">First day of cutting.</param>
public sealed record HarvestAsk(ImmutableArray<StandingGrain> Fields, HarvestMeans Means, DateTimeOffset From)
{
    public ImmutableArray<DryerRoom> Rooms { get; init; } = [];

    /// <summary>Orders weighed at most.</summary>
    [PlainNumber("orders")]
    public int Tries { get; init; } = 600;
}

/// <summary>Land of one field cut on one day.</summary>
public readonly record struct DayCut(string Field, string? Variety, Area Land, Mass Green, Fraction Moisture);

/// <summary>One day of harvest.</summary>
/// <param name="Day">The day.</param>
/// <param name="Cuts">What is cut, in order.</param>
/// <param name="Sets">Sets filled or begun, by variety.</param>
/// <param name="Room">Sets that the dryers take that day.</param>
public sealed record HarvestDay(DateOnly Day, ImmutableArray<DayCut> Cuts, ImmutableArray<(string? Variety, int Count)> Sets, [property: PlainNumber("sets of two trailers")] int Room);

/// <summary>In which order the fields are cut, and when.</summary>
public sealed record HarvestPlan
{
    /// <summary>Field codes, first choice first.</summary>
    public required ImmutableArray<string> Order { get; init; }

    public required ImmutableArray<HarvestDay> Days { get; init; }

    /// <summary>The last day of cutting; none where it does not end within the days looked at.</summary>
    public required DateOnly? Finish { get; init; }

    /// <summary>Land that stands below the moisture of risk, or lies down though fit, summed over the days: a measure to choose by.</summary>
    [PlainNumber("square meters times days")]
    public required double Waiting { get; init; }

    /// <summary>No order ends earlier: all grain through all room, all land through all combines.</summary>
    public required DateOnly? NotBefore { get; init; }

    /// <summary>The dryers, not the combines, decide how long it takes.</summary>
    public required bool DryerBinds { get; init; }

    /// <summary>Acre-days at risk, for people.</summary>
    [PlainNumber("acres times days")]
    public double WaitingAcreDays => Area.FromSquareMeters(Waiting).Acres;

    /// <summary>Days on which a field is cut.</summary>
    public IEnumerable<(DateOnly Day, DayCut Cut)> Of(string field) => Days.SelectMany(d => d.Cuts.Where(c => c.Field == field).Select(c => (d.Day, c)));
}

/// <summary>
/// Puts fields in an order for the combines so that as little grain as may be waits too dry or lying down, and the end comes
/// early. Orders are weighed by a day-by-day count of combines and dryer room in which a set holds one variety only.
/// </summary>
public static class HarvestOrder
{
    /// <summary>Days looked at.</summary>
    public const int MostDays = 150;

    /// <summary>The best order found, and what comes of it: the same ask gives the same plan.</summary>
    /// <exception cref="ArgumentException">Combines, their rate or the dryer's sets are not told.</exception>
    public static HarvestPlan Plan(HarvestAsk ask)
    {
        if (ask.Means is not { Combining: not null, Sets: not null }) throw new ArgumentException("combines and dryer are not told", nameof(ask));
        var count = new HarvestCount(ask);
        var best = Starts(ask).Select(o => (Order: o, Cost: count.Cost(o).Rank)).MinBy(s => s.Cost);
        var (order, cost) = (best.Order, best.Cost);
        var tries = ask.Tries;
        for (var better = true; better && tries > 0;)
        {
            better = false;
            for (var from = 0; from < order.Length && tries > 0; from++)
            {
                for (var to = 0; to < order.Length && tries > 0; to++)
                {
                    if (from == to) continue;
                    tries--;
                    var moved = Moved(order, from, to);
                    var trial = count.Cost(moved).Rank;
                    if (trial.CompareTo(cost) >= 0) continue;
                    (order, cost, better) = (moved, trial, true);
                }
            }
        }

        return count.Plan(order);
    }

    /// <summary>What comes of an order that somebody chose.</summary>
    /// <param name="ask">The harvest.</param>
    /// <param name="codes">Every field's code once.</param>
    public static HarvestPlan InOrder(HarvestAsk ask, ImmutableArray<string> codes) =>
        new HarvestCount(ask).Plan([.. codes.Select(c => ask.Fields.Select((f, i) => (f, i)).First(p => p.f.Code == c).i)]);

    // By when each comes into danger, by how wet it is, and as the farm lists them.
    private static IEnumerable<int[]> Starts(HarvestAsk ask)
    {
        var all = Enumerable.Range(0, ask.Fields.Length).ToArray();
        yield return [.. all.OrderBy(i => ask.Fields[i].Lodged ? 0 : 1).ThenBy(i => ask.Fields[i].Trend?.Reaches(ask.Means.CutTo) ?? DateTimeOffset.MaxValue)];
        yield return [.. all.OrderBy(i => ask.Fields[i].Trend?.Latest.Moisture ?? Fraction.One)];
        yield return [.. all.OrderBy(i => ask.Fields[i].Variety, StringComparer.Ordinal).ThenBy(i => ask.Fields[i].Trend?.Reaches(ask.Means.CutTo) ?? DateTimeOffset.MaxValue)];
        yield return all;
    }

    private static int[] Moved(int[] order, int from, int to)
    {
        var list = order.ToList();
        var taken = list[from];
        list.RemoveAt(from);
        list.Insert(to, taken);
        return [.. list];
    }
}
