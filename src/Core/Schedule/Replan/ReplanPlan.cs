using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>One field of a plan for the coming mornings.</summary>
/// <param name="Field">The field.</param>
/// <param name="Day">The farm's day of sowing; <see cref="ReplanCase.Later"/> where no open morning takes it.</param>
public sealed record PlannedSowing(WaitingField Field, DateOnly Day)
{
    /// <summary>When the first load leaves; none where no open morning takes it.</summary>
    public DateTimeOffset? Start { get; init; }

    /// <summary>The aeroplane is free again, in whole steps of five minutes.</summary>
    public DateTimeOffset? End { get; init; }

    /// <summary>Time in the air, to the second.</summary>
    public TimeSpan InAir { get; init; }

    /// <summary>The aeroplane's name.</summary>
    public string Aeroplane { get; init; } = string.Empty;

    /// <summary>The batch that serves it; none for seed still to be called.</summary>
    public SoakBatch? Batch { get; init; }

    /// <summary>For seed still to be called: when it goes under water.</summary>
    public DateTimeOffset? Soak { get; init; }

    /// <summary>When its seed is taken off the water.</summary>
    public DateTimeOffset? Drain { get; init; }

    public Area Land => Field.Land.Net;

    /// <summary>Dry seed sown in this line.</summary>
    public DrySeed Dry => Field.Season.Rate * Land;

    public bool IsLater => Start is null;

    /// <summary>Its water is older at sowing than the days that are free.</summary>
    public bool IsOld(ReplanCase from) => Field.WaterAge(Day) is { } age && age > from.State.Prices.HeadAgeFree.TotalDays;
}

/// <summary>What a plan does with one batch that is under water or drained.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Used">Dry seed sown of it.</param>
/// <param name="Lost">Dry seed left over; nothing for a batch that can still be called off.</param>
public sealed record BatchFate(SoakBatch Batch, DrySeed Used, DrySeed Lost)
{
    /// <summary>When it is taken off the water; none where it is not used or already is.</summary>
    public DateTimeOffset? Drain { get; init; }

    /// <summary>Hours under water when drained.</summary>
    public TimeSpan? UnderWater { get; init; }

    /// <summary>Longer under water than usual.</summary>
    public bool OverUsual { get; init; }

    /// <summary>It never goes under water.</summary>
    public bool CalledOff { get; init; }
}

/// <summary>A soak to be called.</summary>
/// <param name="By">The warehouse's last hour.</param>
/// <param name="Soak">When it goes under water.</param>
/// <param name="Fields">Fields with the dry weight of each.</param>
public sealed record SoakCall(DateTimeOffset By, DateTimeOffset Soak, ImmutableArray<(WaitingField Field, DrySeed Dry)> Fields)
{
    public DrySeed Dry => Fields.Aggregate(DrySeed.Zero, (sum, f) => sum + f.Dry);
}

/// <summary>A way through the coming mornings: whole fields, each on one morning from one batch or from seed called afresh.</summary>
public sealed record ReplanPlan
{
    /// <summary>In order of sowing.</summary>
    public required ImmutableArray<PlannedSowing> Sowings { get; init; }

    /// <summary>Batches that can still be used, with what becomes of them.</summary>
    public required ImmutableArray<BatchFate> Batches { get; init; }

    /// <summary>In order of the hour of the call.</summary>
    public required ImmutableArray<SoakCall> Calls { get; init; }

    public DrySeed SeedLost => Batches.Aggregate(DrySeed.Zero, (sum, b) => sum + b.Lost);

    /// <summary>What the seed lost has cost.</summary>
    public required Money SeedCost { get; init; }

    /// <summary>Acres times the days from the day of planning to their sowing.</summary>
    [PlainNumber("acres times days")]
    public required decimal AcreDays { get; init; }

    /// <summary>Acres times the squared days that their head check was wet beyond those that are free.</summary>
    [PlainNumber("acres times squared days")]
    public required decimal WaterAge { get; init; }

    /// <summary>Money under prices: seed lost, delay and water age together.</summary>
    public Money Cost(ReplanPrices prices) => SeedCost + DelayCost(prices) + AgeCost(prices);

    public Money DelayCost(ReplanPrices prices) => Money.FromDollars(AcreDays * prices.Delay.Amount);

    public Money AgeCost(ReplanPrices prices) => Money.FromDollars(WaterAge * prices.HeadAge.Amount);

    /// <summary>Each morning on which something is sown, with the time in the air and how long the aeroplanes can be planned for.</summary>
    public ImmutableArray<(DateOnly Day, TimeSpan InAir, TimeSpan Open)> Mornings(ReplanCase from) =>
    [
        .. Sowings.Where(s => !s.IsLater).GroupBy(s => s.Day).OrderBy(g => g.Key)
            .Select(g => (g.Key, Sum(g.Select(s => s.InAir)), Sum(from.Mornings.First(m => m.Day == g.Key).Spans.Select(s => s.Until - s.From)))),
    ];

    /// <summary>Which batch goes to which field: what makes two plans clearly different.</summary>
    internal string BatchMap => string.Join(';', Sowings.Where(s => s.Batch is not null).OrderBy(s => s.Field.Code, StringComparer.Ordinal).Select(s => s.Field.Code + "=" + s.Batch!.Code));

    private static TimeSpan Sum(IEnumerable<TimeSpan> spans) => TimeSpan.FromTicks(spans.Sum(s => s.Ticks));
}

/// <summary>The two prices that a grower carries in the head, and that decide.</summary>
/// <param name="HeadAge">Dollars an acre and squared day of water in the head check beyond the free days.</param>
/// <param name="Delay">Dollars an acre and day.</param>
public sealed record ReplanPrices(Money HeadAge, Money Delay)
{
    /// <summary>As the farm has them.</summary>
    [Source(nameof(Sources.FarmRecord), "the farm's own prices")]
    public static ReplanPrices Of(PlanPrices prices) => new(prices.HeadAge, Schedule.DelayCost.PerAcreDay(prices));
}
