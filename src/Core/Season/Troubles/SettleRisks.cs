using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;
using Watersown.Weather;

namespace Watersown.Season.Troubles;

/// <summary>Ranks the fields whose seed is still loose by what wind did over them.</summary>
public static class SettleRisks
{
    /// <summary>The fields, the most at risk first. Empty where nothing was sown within the days that seed takes to hold.</summary>
    [Source(nameof(Sources.FarmDefault), "the index of wind, fetch, depth and hours since sowing")]
    public static ImmutableArray<SettleRisk> Of(SeasonBook book)
    {
        var state = book.State;
        var fresh = state.Farm.Fields.Where(f => state.Season(f.Code).SownAt is { } at && at <= state.Now && state.Now - at < state.SeedLoose).Select(f => Of(book, f, state.Season(f.Code).SownAt!.Value))
            .OrderByDescending(r => r.Index).ThenByDescending(r => r.SownAt).ThenBy(r => r.Field.Code, StringComparer.Ordinal).ToImmutableArray();
        return fresh.IsEmpty || fresh[0].Index <= 0 ? fresh : [.. fresh.Select(r => r with { Share = Fraction.FromShare(r.Index / fresh[0].Index) })];
    }

    private static SettleRisk Of(SeasonBook book, Field field, DateTimeOffset sown)
    {
        var state = book.State;
        var told = state.Season(field.Code).Depth;
        var depth = Standing(told) ?? WaterTargets.Sowing;
        var hours = Blown(state, field, sown, Earlier(sown + state.SeedLoose, state.Now));
        var strongest = Strongest(hours);
        var index = SettleIndex.Of(sown, depth, hours, state.SeedLoose);
        var checks = strongest is null ? [] : Worst(book, field, depth, strongest.Wind);
        var lowered = Lower(book, field, sown, depth);
        var working = Show(state, (sown, depth, told is not null), hours, index);
        if (!checks.IsEmpty) working = working.Then(checks[0].Show(strongest!.Wind));
        return new SettleRisk(field, sown)
        {
            Index = index,
            Depth = depth,
            DepthTold = told is not null,
            Strongest = strongest?.Wind,
            Fetch = strongest?.Fetch,
            FetchGuessed = CheckFetches.Of(field, strongest?.Wind.From).Guessed,
            Checks = checks,
            Lean = strongest is null ? null : WindSetup.Of(strongest.Wind.Sustained, strongest.Fetch, depth),
            Coming = state.Wind.Where(w => w.At > state.Now && w.At < sown + state.SeedLoose).OrderByDescending(w => w.Sustained).ThenByDescending(w => w.Gust).FirstOrDefault(),
            Lowered = lowered,
            Scouted = strongest is not null && book.Field(field.Code).ScoutedAt > strongest.From,
            Working = lowered is null ? working : working.Then(lowered.Show()),
        };
    }

    // Every check under one wind, as deep as it was told, else as the field.
    private static ImmutableArray<CheckWaves> Worst(SeasonBook book, Field field, WaterDepth depth, Wind wind)
    {
        var story = book.Field(field.Code);
        return
        [
            .. CheckFetches.Of(field, wind.From).Checks
                .Select(c => CheckWaves.Of(c, (c.Check is { } number ? Standing(story.Check(number)?.Depth?.Depth) : null) ?? depth, wind.Sustained))
                .OrderByDescending(c => c.Pull).ThenByDescending(c => c.Fetch).ThenBy(c => c.Check),
        ];
    }

    private static LoweredBoards? Lower(SeasonBook book, Field field, DateTimeOffset sown, WaterDepth depth)
    {
        var coming = Blown(book.State, field, book.State.Now, sown + book.State.SeedLoose);
        if (Strongest(coming) is not { } strongest || strongest.Wind.Sustained <= SettleIndex.Calm || LoweredBoards.Target(depth) is not { } lower) return null;
        var before = Worst(book, field, depth, strongest.Wind)[0];
        if (before.Depth <= lower) return null;
        return new LoweredBoards(strongest.Wind, before, CheckWaves.Of(new CheckFetch(before.Check, before.Fetch), lower, strongest.Wind.Sustained))
        {
            IndexBefore = SettleIndex.Of(sown, depth, coming, book.State.SeedLoose),
            IndexAfter = SettleIndex.Of(sown, lower, coming, book.State.SeedLoose),
            NoSpill = book.State.Season(field.Code).NoSpill,
        };
    }

    private static BlownHours? Strongest(ImmutableArray<BlownHours> hours) => hours.OrderByDescending(h => h.Wind.Sustained).ThenByDescending(h => h.Wind.Gust).FirstOrDefault();

    private static WaterDepth? Standing(WaterDepth? told) => told is { } read && read > WaterDepth.Zero ? read : null;

    private static DateTimeOffset Earlier(DateTimeOffset one, DateTimeOffset other) => one < other ? one : other;

    private static ImmutableArray<BlownHours> Blown(SeasonState state, Field field, DateTimeOffset from, DateTimeOffset until)
    {
        ImmutableArray<DateTimeOffset> cuts = [from, .. state.Wind.Select(w => w.At).Where(t => t > from && t < until).Distinct().Order(), until];
        var blown = cuts.Zip(cuts.Skip(1), (start, end) => (Start: start, End: end, Wind: FlyingWindows.Standing(state, start))).Where(b => b.Wind is not null).ToArray();
        var fetches = blown.Select(b => b.Wind!.From).Distinct().Select(f => (From: f, CheckFetches.Of(field, f).Longest)).ToArray();
        return [.. blown.Select(b => new BlownHours(b.Start, b.End, b.Wind!, fetches.First(f => f.From == b.Wind!.From).Longest))];
    }

    private static Working Show(SeasonState state, (DateTimeOffset Sown, WaterDepth Depth, bool Told) field, ImmutableArray<BlownHours> hours, double index)
    {
        var (sown, depth, told) = field;
        var working = Working.Empty
            .Given("s", "sown", Datum.Moment(sown), string.Empty, "marks or farm")
            .Given("d", "depth", depth.Inches, "in", told ? "stick" : "not told: the sowing depth")
            .Given("L", "seed counts as loose for", state.SeedLoose.TotalHours, "h", state.Anchoring is null ? "usual; roots hold about 5–10 days after seeding, later in cold water (from memory)" : "farm");
        foreach (var blown in hours.Where(h => h.Wind.Sustained > SettleIndex.Calm))
        {
            working = working.Given("w", "wind for " + Wording.Say.Number((blown.Until - blown.From).TotalHours, 1) + " h over " + Wording.Say.Number(blown.Fetch.Feet) + " ft", blown.Wind.Sustained.MilesPerHour, "mph",
                blown.Wind.Issued is null ? "seen" : "forecast", blown.Wind.At);
        }

        return working.Step("i", "index, to rank by: shallower counts as calmer, as growers saw it; the waves below are theory and may say the opposite", index, "mph² h ft",
            "Σ (w − 12)² × hours × fetch × (1 − hours since sowing / L) × d / 2 in", Sources.FarmDefault);
    }
}
