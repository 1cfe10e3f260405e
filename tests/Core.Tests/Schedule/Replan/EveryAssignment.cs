using Watersown.Flight;
using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>
/// Lays out every assignment of whole fields to mornings and seed, without any shortcut, and keeps the cheapest. It knows the
/// rules of the trade alone: it shares nothing with the search but the slots, the warmth rule and the time in the air.
/// </summary>
internal sealed class EveryAssignment(ReplanCase from, decimal headAge, decimal delay)
{
    private readonly SeasonState state = from.State;
    private readonly SoakPlace rules = from.State.SoakRules;
    private readonly (int Day, string? Batch)[] chosen = new (int, string?)[from.Fields.Length];

    public decimal Least { get; private set; } = decimal.MaxValue;

    public int Tried { get; private set; }

    public static decimal Cheapest(ReplanCase from, decimal headAge, decimal delay)
    {
        var every = new EveryAssignment(from, headAge, delay);
        every.Lay(0);
        return every.Least;
    }

    private void Lay(int field)
    {
        if (field == chosen.Length)
        {
            Tried++;
            if (Works()) Least = Math.Min(Least, Cost());
            return;
        }

        for (var day = 0; day <= from.Mornings.Length; day++)
        {
            // The day after the last of the mornings stands for later; only fresh seed is there then.
            foreach (var batch in day == from.Mornings.Length ? [null] : state.Batches.Select(b => b.Code).Append(null))
            {
                chosen[field] = (day, batch);
                Lay(field + 1);
            }
        }
    }

    private bool Works() => VarietiesMatch() && PoundsSuffice() && TrailersSuffice() && Enumerable.Range(0, from.Mornings.Length).All(Flies);

    private bool VarietiesMatch() => chosen.Index().All(c => c.Item.Batch is null || from.Fields[c.Index].Season.Variety is null || from.Fields[c.Index].Season.Variety == Batch(c.Item.Batch).Variety);

    private bool PoundsSuffice()
    {
        var fromBatches = state.Batches.All(b => Served(b.Code).Sum(f => f.Needed.Pounds) <= b.Dry.Pounds + 0.5 + 1e-6);
        var fresh = chosen.Index().Where(c => c.Item.Batch is null && c.Item.Day < from.Mornings.Length).GroupBy(c => from.Fields[c.Index].Season.Variety);
        return fromBatches && fresh.All(g => state.Lots.Where(l => l.Variety == g.Key).ToList() is { Count: 0 }
            || state.Lots.Where(l => l.Variety == g.Key).ToList() is var lots && (lots.Exists(l => l.InHand is null) || g.Sum(c => from.Fields[c.Index].Needed.Pounds) <= lots.Sum(l => l.InHand!.Value.Pounds) + 1e-6));
    }

    private bool Flies(int morning)
    {
        var fields = Enumerable.Range(0, chosen.Length).Where(i => chosen[i].Day == morning).ToArray();
        var free = from.Mornings[morning].Spans.Select(s => s.From).ToArray();
        return Fly(morning, fields, free);
    }

    private bool Fly(int morning, int[] fields, DateTimeOffset[] free)
    {
        if (fields.Length == 0) return true;
        foreach (var field in fields)
        {
            if (SeedFor(field, morning) is not var (ready, good)) return false;
            for (var s = 0; s < free.Length; s++)
            {
                var span = from.Mornings[morning].Spans[s];
                var start = Five(new[] { free[s], ready, from.Fields[field].Full }.Max());
                var end = start + InTheAir(from.Fields[field], span.Aeroplane);
                if (end > span.Until || end > good) continue;
                if (Fly(morning, [.. fields.Where(f => f != field)], [.. free.Select((t, i) => i == s ? end : t)])) return true;
            }
        }

        return false;
    }

    private TimeSpan InTheAir(WaitingField field, Aeroplane plane)
    {
        var loads = (int)Math.Ceiling((field.Needed.Pounds * state.WetFactor / plane.WorkingLoad.Pounds) - 1e-9);
        return TimeSpan.FromMinutes(Math.Ceiling(FlyingTime.Of(FieldFlight.Job(state, field.Land, loads, plane), plane).TotalMinutes / 5) * 5);
    }

    private static DateTimeOffset Five(DateTimeOffset moment) =>
        new DateTimeOffset(2026, 1, 1, 0, 0, 0, moment.Offset) is var start ? start.AddMinutes(Math.Ceiling((moment - start).TotalMinutes / 5) * 5) : moment;

    private (DateTimeOffset Ready, DateTimeOffset Good)? SeedFor(int field, int morning)
    {
        var off = chosen[field].Batch is { } code ? DrainOf(code) : FreshSoak(morning) + rules.SoakLeast;
        if (off is not { } drained) return null;
        var ready = drained + rules.Drain;
        return (ready, ready + DrainedSeed.Usable(state, FarmTime.Day(state, ready)));
    }

    // For the first morning that it serves, a whole draining time ahead, never before it has soaked nor after it is lost.
    private DateTimeOffset? DrainOf(string code)
    {
        var batch = Batch(code);
        if (batch.Drained is { } off) return off;
        var first = from.Mornings[chosen.Where(c => c.Batch == code).Min(c => c.Day)].From - rules.Drain;
        var (soonest, last) = (new[] { batch.InSoak + rules.SoakLeast, state.Now }.Max(), batch.InSoak + rules.SoakLost);
        return soonest > last ? null : new[] { soonest, new[] { first, last }.Min() }.Max();
    }

    private DateTimeOffset? FreshSoak(int morning)
    {
        var into = new DateTimeOffset(from.Mornings[morning].Day, rules.SoakHour, state.Offset);
        while (into + rules.SoakLeast + rules.Drain >= from.Mornings[morning].Until) into = into.AddDays(-1);
        var callsClosed = state.Now.TimeOfDay > rules.CallsUntil.ToTimeSpan();
        return FarmTime.Day(state, into).DayNumber - FarmTime.Day(state, state.Now).DayNumber < (callsClosed ? 1 : 0) ? null : into;
    }

    private bool TrailersSuffice()
    {
        if (state.SoakPlace?.Trailers is not { } most) return true;
        var taken = new List<(DateTimeOffset From, DateTimeOffset Until, int Count)>();
        for (var i = 0; i < chosen.Length; i++)
        {
            if (chosen[i].Batch is not null || chosen[i].Day >= from.Mornings.Length) continue;
            if (FreshSoak(chosen[i].Day) is not { } into) return false;
            taken.Add((into, from.Mornings[chosen[i].Day].Until + rules.TrailerReturn, Count(from.Fields[i].Needed)));
        }

        var calls = taken.Select(t => t.From).ToList();
        foreach (var batch in state.Batches)
        {
            var days = chosen.Where(c => c.Batch == batch.Code).Select(c => c.Day).ToList();
            if (days.Count == 0 && batch.InSoak > state.Now) continue;
            var until = days.Count == 0 ? state.Now + rules.TrailerReturn : from.Mornings[days.Max()].Until + rules.TrailerReturn;
            taken.Add((batch.InSoak > state.Now ? batch.InSoak : state.Now, until, batch.Trailers.Length > 0 ? batch.Trailers.Length : Count(batch.Dry)));
        }

        return calls.TrueForAll(at => taken.Where(t => t.From <= at && t.Until > at).Sum(t => t.Count) <= most);
    }

    private int Count(DrySeed dry) => rules.HaulLimit is { } limit ? Math.Max(1, (int)Math.Ceiling((dry.Pounds * state.WetFactor / limit.Pounds) - 1e-9)) : 1;

    private decimal Cost()
    {
        decimal cost = 0;
        foreach (var batch in state.Batches.Where(b => b.InSoak <= state.Now && from.Batches.Single(s => s.Batch == b).Use == BatchUse.Live))
            cost += Math.Max(0, Tenths(batch.Dry) - Served(batch.Code).Sum(f => Tenths(f.Needed))) * state.Prices.SoakedSeed.Amount;
        for (var i = 0; i < chosen.Length; i++)
        {
            var (field, day) = (from.Fields[i], chosen[i].Day < from.Mornings.Length ? from.Mornings[chosen[i].Day].Day : from.Mornings[^1].Day.AddDays(1));
            var acres = Math.Round((decimal)field.Land.Net.Acres, 2);
            var over = Math.Max(0, day.DayNumber - (field.FirstWater ?? day).DayNumber - 8);
            cost += (acres * (day.DayNumber - from.Today.DayNumber) * delay) + (acres * over * over * headAge);
        }

        return cost;
    }

    private static decimal Tenths(DrySeed dry) => Math.Round((decimal)dry.Pounds, 1);

    private IEnumerable<WaitingField> Served(string code) => Enumerable.Range(0, chosen.Length).Where(i => chosen[i].Batch == code).Select(i => from.Fields[i]);

    private SoakBatch Batch(string code) => state.Batches.Single(b => b.Code == code);
}
