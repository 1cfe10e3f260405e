using Watersown.Flight;
using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>One way to sow one field: a morning, and a batch or fresh seed. Numbers are whole so that sums are exact.</summary>
/// <param name="Morning">Index of the morning; −1 for later than all of them.</param>
/// <param name="Batch">Index among the live batches; −1 for seed called afresh.</param>
/// <param name="Ready">The seed can be sown from then.</param>
/// <param name="Good">And until then.</param>
/// <param name="AcreDays">Hundredths of an acre times days.</param>
/// <param name="WaterAge">Hundredths of an acre times squared days.</param>
internal sealed record SowingWay(int Morning, int Batch, DateTimeOffset Ready, DateTimeOffset Good, long AcreDays, long WaterAge)
{
    /// <summary>For fresh seed: when it goes under water.</summary>
    public DateTimeOffset? Soak { get; init; }
}

/// <summary>The case in whole numbers: every field with every way it could be sown by itself.</summary>
internal sealed class Weighing
{
    // Tenths of a pound and hundredths of an acre: finer than any scale or survey of the trade.
    private const double PoundParts = 10;
    private const double AcreParts = 100;

    public Weighing(ReplanCase from)
    {
        Case = from;
        Live = [.. from.Batches.Where(b => b.Use == BatchUse.Live)];
        Windows = [.. Live.Select(b => from.Mornings.Select(m => StandingBatches.DrainFor(from.State, b.Batch, m) is { } drained ? StandingBatches.Window(from.State, drained) : ((DateTimeOffset, DateTimeOffset)?)null).ToImmutableArray())];
        Pounds = [.. Live.Select(b => Parts(b.Batch.Dry))];
        Needs = [.. from.Fields.Select(f => Parts(f.Needed))];
        Ways = [.. from.Fields.Select((f, i) => WaysOf(f).ToImmutableArray())];
        Times = [.. from.Fields.Select(TimesOf)];
        Trailers = [.. from.Fields.Select(f => SeedClock.Trailers(f.Needed, from.State.WetFactor, from.State.SoakRules.HaulLimit))];
        Stock = Stocks(from);
    }

    public ReplanCase Case { get; }

    public ImmutableArray<StandingBatch> Live { get; }

    /// <summary>Dry seed in each live batch, in tenths of a pound.</summary>
    public ImmutableArray<long> Pounds { get; }

    /// <summary>Dry seed that each field asks for, in tenths of a pound.</summary>
    public ImmutableArray<long> Needs { get; }

    /// <summary>Every way of each field: earliest morning first, seed that is there before seed to be called.</summary>
    public ImmutableArray<ImmutableArray<SowingWay>> Ways { get; }

    /// <summary>Time that each field keeps each aeroplane, in whole steps.</summary>
    public ImmutableArray<ImmutableDictionary<string, TimeSpan>> Times { get; }

    /// <summary>Trailers that fresh seed of each field takes up.</summary>
    public ImmutableArray<int> Trailers { get; }

    /// <summary>Dry seed at hand by variety, in tenths of a pound, where the farm has said how much.</summary>
    public ImmutableDictionary<string, long> Stock { get; }

    /// <summary>From when to when each live batch can be sown, drained for each morning; none where it cannot be.</summary>
    public ImmutableArray<ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)?>> Windows { get; }

    public static long Parts(DrySeed dry) => (long)Math.Round(dry.Pounds * PoundParts);

    public static DrySeed Dry(long parts) => DrySeed.FromPounds(parts / PoundParts);

    public static long Parts(Area land) => (long)Math.Round(land.Acres * AcreParts);

    public static decimal Acres(long parts) => parts / 100m;

    /// <summary>Acres times squared days beyond the free ones, in hundredths.</summary>
    public static long AgeOn(ReplanCase from, WaitingField field, Area land, DateOnly day)
    {
        if (field.WaterAge(day) is not { } age) return 0;
        var over = Math.Max(0, age - from.State.Prices.HeadAgeFree.TotalDays);
        return (long)Math.Round(Parts(land) * over * over);
    }

    /// <summary>The first morning that a batch serves: it is drained for that one.</summary>
    public static int FirstMorning(IReadOnlyList<SowingWay?> ways, int batch)
    {
        var first = int.MaxValue;
        foreach (var way in ways)
        {
            if (way is not null && way.Batch == batch && way.Morning < first) first = way.Morning;
        }

        return first;
    }

    /// <summary>The fields of one morning, with what keeps each from the aeroplane and by when it must be done.</summary>
    public ImmutableArray<AirJob> Jobs(IReadOnlyList<SowingWay?> ways, int morning)
    {
        var jobs = ImmutableArray.CreateBuilder<AirJob>();
        for (var i = 0; i < ways.Count; i++)
        {
            if (ways[i] is not { } way || way.Morning != morning) continue;
            var (ready, good) = way.Batch < 0 ? (way.Ready, way.Good) : Windows[way.Batch][FirstMorning(ways, way.Batch)]!.Value;
            jobs.Add(new AirJob(i, Case.Fields[i].Full > ready ? Case.Fields[i].Full : ready, good));
        }

        return jobs.ToImmutable();
    }

    private IEnumerable<SowingWay> WaysOf(WaitingField field)
    {
        for (var m = 0; m < Case.Mornings.Length; m++)
        {
            var morning = Case.Mornings[m];
            if (field.Full >= morning.Until) continue;
            var (days, age) = Cost(field, morning.Day);
            foreach (var b in Enumerable.Range(0, Live.Length).Where(b => StandingBatches.Fits(field, Live[b].Batch)).OrderByDescending(b => Live[b].Batch.MeantFor.Contains(field.Code, StringComparer.Ordinal)).ThenBy(b => b))
            {
                if (Windows[b][m] is not var (ready, good)) continue;
                if (ready < morning.Until && good > morning.From) yield return new SowingWay(m, b, ready, good, days, age);
            }

            if (FreshFor(field, morning) is { } soak)
            {
                var (ready, good) = StandingBatches.Window(Case.State, soak + Case.State.SoakRules.SoakLeast);
                yield return new SowingWay(m, -1, ready, good, days, age) { Soak = soak };
            }
        }

        var (late, old) = Cost(field, Case.Later);
        yield return new SowingWay(-1, -1, default, default, late, old);
    }

    private (long Days, long Age) Cost(WaitingField field, DateOnly day) =>
        (Parts(field.Land.Net) * (day.DayNumber - Case.Today.DayNumber), AgeOn(Case, field, field.Land.Net, day));

    /// <summary>The latest soak that is ready before the morning is over: a later call leaves more open.</summary>
    private DateTimeOffset? FreshFor(WaitingField field, OpenMorning morning)
    {
        var rules = Case.State.SoakRules;
        // A soak that a person has pinned for today was called in time, though the hour of calls is over by now.
        var called = Case.State.Pins.Any(p => p.Field == field.Code && p.Task == TaskWords.Of(PlanTaskKind.Soak) && FarmTime.Day(Case.State, p.Start) == Case.Today);
        for (var day = morning.Day; day >= (called ? Case.Today : Case.FirstSoakDay); day = day.AddDays(-1))
        {
            var soak = FarmTime.At(Case.State, day, rules.SoakHour);
            if (soak + rules.SoakLeast + rules.Drain < morning.Until) return soak;
        }

        return null;
    }

    private ImmutableDictionary<string, TimeSpan> TimesOf(WaitingField field)
    {
        var times = ImmutableDictionary.CreateBuilder<string, TimeSpan>(StringComparer.Ordinal);
        foreach (var plane in Case.Mornings.SelectMany(m => m.Spans).Select(s => s.Aeroplane).DistinctBy(p => p.Name, StringComparer.Ordinal))
            times[plane.Name] = AirOrder.Up(Air(Case.State, field, field.Needed, field.Land.Net, plane));
        return times.ToImmutable();
    }

    public static TimeSpan Air(SeasonState state, WaitingField field, DrySeed dry, Area land, Aeroplane plane)
    {
        var loads = Loads.Equal(dry, state.WetFactor, plane.WorkingLoad).Count;
        return FlyingTime.Of(FieldFlight.Job(state, field.Land, loads, plane) with { Net = land }, plane);
    }

    private static ImmutableDictionary<string, long> Stocks(ReplanCase from) => from.State.Lots.GroupBy(l => l.Variety, StringComparer.Ordinal)
        .Where(g => g.All(l => l.InHand is not null))
        .ToImmutableDictionary(g => g.Key, g => g.Sum(l => Parts(l.InHand!.Value)), StringComparer.Ordinal);
}
