using Watersown.Seed;

namespace Watersown.Schedule.Replan;

/// <summary>Reads what a batch is still good for, and when it could be drained.</summary>
public static class StandingBatches
{
    // As a scale of that size reads.
    internal static readonly DrySeed ScaleStep = DrySeed.FromPounds(0.5);

    /// <summary>A batch against the fields that wait and the mornings that are open.</summary>
    [Source(nameof(Sources.RiceBoardSoaking), "about 24 h to plant after soaking and draining")]
    [Source(nameof(Sources.Arithmetic), "dry seed × price of soaked seed")]
    public static StandingBatch Of(SeasonState state, SoakBatch batch, ImmutableArray<WaitingField> fields, ImmutableArray<OpenMorning> mornings)
    {
        var money = Cost(state, batch.Dry);
        var useBy = Sheets.SeedTimes.UseBy(state, batch);
        var due = batch.InSoak > state.Now;
        var first = mornings.IsEmpty ? null : mornings[0];
        return new StandingBatch(batch, Use(state, batch, fields, mornings))
        {
            Due = due,
            DrainedFor = state.Now - batch.Drained,
            DrainedAtFirstLoad = first?.From - batch.Drained,
            UnderWaterFor = batch.Drained is null && !due ? state.Now - batch.InSoak : null,
            UseBy = useBy,
            IfDumped = money,
            Working = Working.Empty
                .Given("D", "dry seed in the batch", batch.Dry.Pounds, "lb dry", "batch " + batch.Code, batch.Drained ?? batch.InSoak)
                .Given("p", "seed, soak and haul", (double)state.Prices.SoakedSeed.Amount, "$/lb dry", "farm prices")
                .Step("C", "lost if it is thrown away", (double)money.Amount, "$", "D × p", Sources.Arithmetic),
        };
    }

    /// <summary>
    /// The moments at which a batch could be drained for a morning: with the whole draining time before the first load, and
    /// half and a quarter less. Published drains are 12 to 24 h.
    /// </summary>
    [Source(nameof(Sources.CommonPractice), "soak 24 to 48 h, drain 12 to 24 h")]
    public static ImmutableArray<DrainChoice> Drains(SeasonState state, SoakBatch batch, OpenMorning morning)
    {
        if (batch.Drained is not null) return [];
        var rules = state.SoakRules;
        var earliest = Earliest(state, batch);
        return
        [
            .. new[] { 1, 0.75, 0.5 }.Select(share => morning.From - (rules.Drain * share)).Select(t => t < earliest ? earliest : t).Distinct().Where(t => t < morning.From)
                .Select(at => Choice(rules, batch, at, morning.From)),
        ];
    }

    internal static Money Cost(SeasonState state, DrySeed dry) => Money.FromDollars(state.Prices.SoakedSeed.Amount * (decimal)Math.Round(dry.Pounds, 3));

    /// <summary>When a batch is drained for a morning: in time for its first load, but neither before it has soaked enough nor after it is lost.</summary>
    internal static DateTimeOffset? DrainFor(SeasonState state, SoakBatch batch, OpenMorning morning)
    {
        if (batch.Drained is { } off) return off;
        var (earliest, latest) = (Earliest(state, batch), batch.InSoak + state.SoakRules.SoakLost);
        if (earliest > latest) return null;
        var wanted = morning.From - state.SoakRules.Drain;
        return wanted < earliest ? earliest : wanted > latest ? latest : wanted;
    }

    /// <summary>From when to when seed drained at a moment can be sown.</summary>
    internal static (DateTimeOffset From, DateTimeOffset Until) Window(SeasonState state, DateTimeOffset drained)
    {
        var ready = drained + state.SoakRules.Drain;
        return (ready, ready + DrainedSeed.Usable(state, FarmTime.Day(state, ready)));
    }

    private static DateTimeOffset Earliest(SeasonState state, SoakBatch batch)
    {
        var soaked = batch.InSoak + state.SoakRules.SoakLeast;
        return soaked > state.Now ? soaked : state.Now;
    }

    private static DrainChoice Choice(SoakPlace rules, SoakBatch batch, DateTimeOffset at, DateTimeOffset load) => new(at, at - batch.InSoak, load - at)
    {
        OverUsual = at - batch.InSoak > rules.SoakMost,
        WellOver = at - batch.InSoak > rules.SoakMost + TimeSpan.FromHours(1),
        OverLost = at - batch.InSoak > rules.SoakLost,
        ShortDrain = load - at < rules.Drain,
        Working = Working.Empty
            .Given("I", "into soak", Datum.Moment(batch.InSoak), string.Empty, "batch " + batch.Code)
            .Given("O", "taken off the water", Datum.Moment(at), string.Empty, "this choice")
            .Given("L", "first load", Datum.Moment(load), string.Empty, "flying slot and wind")
            .Step("u", "under water", (at - batch.InSoak).TotalHours, "h", "O − I", Sources.Arithmetic)
            .Step("d", "drained at the first load", (load - at).TotalHours, "h", "L − O", Sources.Arithmetic)
            .Constant("um", "usual most under water", rules.SoakMost.TotalHours, "h", Sources.CommonPractice),
    };

    private static BatchUse Use(SeasonState state, SoakBatch batch, ImmutableArray<WaitingField> fields, ImmutableArray<OpenMorning> mornings)
    {
        var keeps = mornings.Any(m => DrainFor(state, batch, m) is { } drained && Window(state, drained) is var window && window.From < m.Until && window.Until > m.From);
        if (!keeps) return BatchUse.Past;
        return fields.Any(f => Fits(f, batch)) ? BatchUse.Live : BatchUse.NoField;
    }

    /// <summary>Its own variety, and enough of it for the whole field.</summary>
    internal static bool Fits(WaitingField field, SoakBatch batch) => field.Takes(batch.Variety) && batch.Dry + ScaleStep >= field.Needed;
}
