namespace Watersown.Harvest;

/// <summary>What an order of fields comes to; less is better, the first figure first.</summary>
/// <param name="Left">Land not cut within the days looked at, square meters.</param>
/// <param name="Waiting">Square meters times days at risk.</param>
/// <param name="Finish">Days until the last is cut.</param>
/// <param name="Early">Square meters times days until they are cut: of two alike, the one that has more in.</param>
internal readonly record struct HarvestCost(double Left, double Waiting, int Finish, double Early)
{
    /// <summary>To be compared by: without the dust of sums.</summary>
    public (double, double, int, double) Rank => (Math.Round(Left), Math.Round(Waiting), Finish, Math.Round(Early));
}

/// <summary>Counts a harvest through day by day, for one order of the fields.</summary>
internal sealed class HarvestCount
{
    // Less land than this is a rounding, not a strip left standing.
    private const double Crumb = 1;
    private readonly HarvestAsk ask;
    private readonly DateOnly start;
    private readonly double combining;
    private readonly double set;
    private readonly int[] variety;
    private readonly string?[] varieties;
    private readonly double[][] moisture;
    private readonly int[] carries;
    private readonly List<Room>[] rooms;

    public HarvestCount(HarvestAsk ask)
    {
        this.ask = ask;
        start = new DateOnly(ask.From.Year, ask.From.Month, ask.From.Day);
        combining = ask.Means.Combining!.Value.SquareMeters;
        set = ask.Means.SetWeight.Kilograms;
        varieties = [.. ask.Fields.Select(f => f.Variety).Distinct(StringComparer.Ordinal)];
        variety = [.. ask.Fields.Select(f => Array.IndexOf(varieties, f.Variety))];
        var noon = new DateTimeOffset(start.Year, start.Month, start.Day, 12, 0, 0, ask.From.Offset);
        // A day beyond the last is looked at, to see what waits over night.
        moisture = [.. ask.Fields.Select(f => Enumerable.Range(0, HarvestOrder.MostDays + 1).Select(d => f.Trend?.On(noon.AddDays(d)).Share ?? (ask.Means.CutFrom.Share + ask.Means.CutTo.Share) / 2).ToArray())];
        carries = [.. ask.Fields.Select(f => f.Carries is { } day ? day.DayNumber - start.DayNumber : 0)];
        rooms = [.. Enumerable.Range(0, HarvestOrder.MostDays).Select(d => Rooms(start.AddDays(d)))];
    }

    public HarvestCost Cost(int[] order) => Run(order, null);

    public HarvestPlan Plan(int[] order)
    {
        var days = ImmutableArray.CreateBuilder<HarvestDay>();
        var cost = Run(order, days);
        return new HarvestPlan
        {
            Order = [.. order.Select(i => ask.Fields[i].Code)],
            Days = days.ToImmutable(),
            Finish = cost.Left > 0 || order.Length == 0 ? null : start.AddDays(cost.Finish),
            Waiting = cost.Waiting,
            NotBefore = Bound() is { } bound ? start.AddDays(bound) : null,
            DryerBinds = DryerBinds(),
        };
    }

    private HarvestCost Run(int[] order, ImmutableArray<HarvestDay>.Builder? told)
    {
        var left = ask.Fields.Select(f => f.Left.SquareMeters).ToArray();
        double waiting = 0, early = 0;
        var finish = 0;
        var begun = new double[varieties.Length];
        for (var day = 0; day < HarvestOrder.MostDays && left.Any(l => l > 0); day++)
        {
            var room = rooms[day].Select(r => r.Sets).ToArray();
            var combine = combining;
            var cuts = told is null ? null : ImmutableArray.CreateBuilder<DayCut>();
            var sets = new int[varieties.Length];
            Array.Clear(begun);
            foreach (var field in order)
            {
                if (left[field] <= 0 || combine <= Crumb || !IsFit(field, day)) continue;
                var green = GreenPerLand(field, day);
                var want = Math.Min(left[field], combine);
                var taken = Take(day, variety[field], want * green, room, begun, sets);
                var land = taken / green;
                if (land <= Crumb) continue;
                combine -= land;
                left[field] = left[field] - land <= Crumb ? 0 : left[field] - land;
                early += land * day;
                finish = day;
                cuts?.Add(new DayCut(ask.Fields[field].Code, ask.Fields[field].Variety, Area.FromSquareMeters(land), Mass.FromKilograms(taken), Fraction.FromShare(moisture[field][day])));
            }

            for (var field = 0; field < left.Length; field++)
            {
                if (left[field] > 0 && carries[field] <= day && IsAtRisk(field, day + 1)) waiting += left[field];
            }

            if (cuts is { Count: > 0 })
                told!.Add(new HarvestDay(start.AddDays(day), cuts.ToImmutable(), [.. sets.Select((n, i) => (varieties[i], n)).Where(s => s.n > 0)], rooms[day].Sum(r => r.Sets)));
        }

        return new HarvestCost(left.Sum(), waiting, finish, early);
    }

    private bool IsFit(int field, int day) => carries[field] <= day && moisture[field][day] <= ask.Means.CutFrom.Share + 1e-12;

    private bool IsAtRisk(int field, int day) => moisture[field][day] < ask.Means.CutTo.Share || (ask.Fields[field].Lodged && moisture[field][day] <= ask.Means.CutFrom.Share);

    private double GreenPerLand(int field, int day) =>
        GrainMoisture.WeightAt(Mass.FromKilograms(ask.Fields[field].Yield.KilogramsPerSquareMeter), HarvestMeans.PaidAt, Fraction.FromShare(moisture[field][day])).Kilograms;

    /// <summary>Grain that finds room that day: first in the set begun, then in room for its variety, then in any.</summary>
    private double Take(int day, int kind, double want, int[] room, double[] begun, int[] sets)
    {
        var taken = Math.Min(want, begun[kind]);
        begun[kind] -= taken;
        foreach (var only in (ReadOnlySpan<bool>)[true, false])
        {
            for (var r = 0; r < room.Length && want - taken > 1e-6; r++)
            {
                var given = rooms[day][r].Variety;
                if (only ? given is null || given != varieties[kind] : given is not null) continue;
                while (room[r] > 0 && want - taken > 1e-6)
                {
                    room[r]--;
                    sets[kind]++;
                    var part = Math.Min(set, want - taken);
                    taken += part;
                    begun[kind] = set - part;
                }
            }
        }

        return taken;
    }

    private List<Room> Rooms(DateOnly day)
    {
        var on = ask.Rooms.Where(r => r.IsOn(day)).ToList();
        // The last word on the usual dryer's day stands in for its usual sets; other dryers stand beside it.
        var own = on.LastOrDefault(r => r.Dryer is null);
        var usual = own is null ? new Room(ask.Means.Sets!.Value, null) : new Room(own.Sets, own.Variety);
        return [usual, .. on.Where(r => r.Dryer is not null).Select(r => new Room(r.Sets, r.Variety))];
    }

    private int? Bound()
    {
        if (ask.Fields.IsEmpty) return null;
        var land = ask.Fields.Sum(f => f.Left.SquareMeters);
        var grain = Enumerable.Range(0, ask.Fields.Length).Sum(i => ask.Fields[i].Left.SquareMeters * Lightest(i));
        for (var day = 0; day < HarvestOrder.MostDays; day++)
        {
            land -= combining;
            grain -= rooms[day].Sum(r => r.Sets) * set;
            if (land <= Crumb && grain <= set * 1e-9) return day;
        }

        return null;
    }

    // Grain weighs least when it is driest of all the days looked at.
    private double Lightest(int field) => Enumerable.Range(0, HarvestOrder.MostDays).Where(d => IsFit(field, d)).Select(d => GreenPerLand(field, d)).DefaultIfEmpty(GreenPerLand(field, 0)).Min();

    private bool DryerBinds()
    {
        if (ask.Fields.IsEmpty) return false;
        var green = Enumerable.Range(0, ask.Fields.Length).Sum(i => ask.Fields[i].Left.SquareMeters * GreenPerLand(i, 0)) / ask.Fields.Sum(f => f.Left.SquareMeters);
        return rooms[0].Sum(r => r.Sets) * set < combining * green;
    }

    private readonly record struct Room(int Sets, string? Variety);
}
