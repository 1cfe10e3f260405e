using Watersown.Land;
using Watersown.Seed;

namespace Watersown.Flight;

/// <summary>Splits what is left of a flight's seed over the loads still to be flown.</summary>
public static class LoadSheets
{
    private const double Dust = 1e-9;

    /// <summary>The sheet as it stands.</summary>
    /// <param name="all">Soaked seed of the flight; above zero.</param>
    /// <param name="wetFactor">Soaked weight over dry weight.</param>
    /// <param name="limit">The most in a load this morning; above zero.</param>
    /// <param name="top">The most that the pilot ever named.</param>
    /// <param name="flown">Loads that have left, in order. One nobody weighed counts as it stood on the sheet.</param>
    /// <param name="units">Weights are whole numbers of these.</param>
    [Source(nameof(Sources.Arithmetic), "equal whole loads of what is left; dry = soaked ÷ factor")]
    public static LoadSheet Of(SoakedSeed all, [PlainNumber("soaked weight over dry weight")] double wetFactor, SoakedSeed limit, SoakedSeed? top, ImmutableArray<FlownLoad> flown, UnitSystem units)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(all.Kilograms, 0, nameof(all));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(limit.Kilograms, 0, nameof(limit));
        var gone = Gone(all, limit, flown, units);
        var sent = gone.Aggregate(SoakedSeed.Zero, (sum, w) => sum + w);
        var left = all > sent ? Whole(all - sent, units) : 0;
        var count = left == 0 ? 0 : Count(FromWhole(left, units), limit);
        var rest = count == 0 ? [] : LoadTally.Shares(left, count).Select(w => FromWhole(w, units)).ToImmutableArray();
        return new LoadSheet
        {
            All = all,
            Limit = limit,
            Lines = Lines([.. gone, .. rest], flown, wetFactor),
            Gone = sent,
            GoneDry = Soaking.DryOf(sent, wetFactor),
            Left = FromWhole(left, units),
            FullAndRest = FullAndRest(FromWhole(left, units), limit, count),
            OneFewer = count < 2 ? null : new LoadChoice(count - 1, FromWhole(left, units) / (count - 1), FromWhole(left, units) / (count - 1)) { WithinTop = top is { } most ? FromWhole(left, units) / (count - 1) <= most : null },
            Working = Show(all, wetFactor, limit, sent, FromWhole(left, units), count),
        };
    }

    private static ImmutableArray<SoakedSeed> Gone(SoakedSeed all, SoakedSeed limit, ImmutableArray<FlownLoad> flown, UnitSystem units)
    {
        var gone = ImmutableArray.CreateBuilder<SoakedSeed>(flown.Length);
        var left = all;
        foreach (var load in flown)
        {
            var whole = left.Kilograms > 0 ? Whole(left, units) : 0;
            var weight = load.Soaked ?? (whole == 0 ? SoakedSeed.Zero : FromWhole(LoadTally.Shares(whole, Count(left, limit))[0], units));
            gone.Add(weight);
            left -= weight;
        }

        return gone.ToImmutable();
    }

    private static ImmutableArray<LoadLine> Lines(ImmutableArray<SoakedSeed> weights, ImmutableArray<FlownLoad> flown, double wetFactor)
    {
        var lines = ImmutableArray.CreateBuilder<LoadLine>(weights.Length);
        var sum = SoakedSeed.Zero;
        for (var i = 0; i < weights.Length; i++)
        {
            sum += weights[i];
            lines.Add(new LoadLine(i + 1, weights[i], Soaking.DryOf(sum, wetFactor)) { Gone = i < flown.Length ? flown[i].At : null });
        }

        return lines.ToImmutable();
    }

    private static LoadChoice? FullAndRest(SoakedSeed left, SoakedSeed limit, int count)
    {
        if (count < 2) return null;
        var last = left - (limit * (count - 1));
        return new LoadChoice(count, limit, last) { WithinTop = true, SmallLast = last < limit * LoadSheet.SmallLoad.Share };
    }

    private static int Count(SoakedSeed left, SoakedSeed limit) => Math.Max(1, (int)Math.Ceiling((left / limit) - Dust));

    private static int Whole(SoakedSeed seed, UnitSystem units) => (int)Math.Round(units == UnitSystem.Metric ? seed.Kilograms : seed.Pounds, MidpointRounding.AwayFromZero);

    private static SoakedSeed FromWhole(int weight, UnitSystem units) => units == UnitSystem.Metric ? SoakedSeed.FromKilograms(weight) : SoakedSeed.FromPounds(weight);

    private static Working Show(SoakedSeed all, double wetFactor, SoakedSeed limit, SoakedSeed sent, SoakedSeed left, int count) => Working.Empty
        .Given("W", "soaked seed of the flight", all.Pounds, "lb wet", "seed of the field, or the scale")
        .Given("F", "soaked weight over dry weight", wetFactor, string.Empty, "seed")
        .Given("H", "most in a load this morning", limit.Pounds, "lb wet", "the pilot")
        .Given("G", "gone", sent.Pounds, "lb wet", "ticked loads")
        .Step("R", "left", left.Pounds, "lb wet", "W − G", Sources.Arithmetic)
        .Step("n", "loads left", count, string.Empty, "ceil(R / H)", Sources.Arithmetic)
        .Step("w", "each", count == 0 ? 0 : left.Pounds / count, "lb wet", "R / n, in whole units", Sources.Arithmetic)
        .Step("D", "dry seed in it", count == 0 ? 0 : left.Pounds / count / wetFactor, "lb dry", "w / F", Sources.MassBalance);
}
