using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Seed;

namespace Watersown.Season.Boards;

/// <summary>The clocks of all seed in hand on one scale of time.</summary>
public static class SeedBoards
{
    private static readonly ImmutableArray<string> CallKinds = ["call-soak", "put-in-soak", "drain", "dump-seed"];

    /// <summary>How far past its use a batch is still drawn.</summary>
    private static readonly TimeSpan Beyond = TimeSpan.FromHours(12);

    /// <summary>The board at the moment of the book.</summary>
    [Source(nameof(Sources.RiceBoardSoaking), "soak, drain, and about a day to plant")]
    [Source(nameof(Sources.FarmDefault), "usable time by the warmth of the day")]
    public static SeedBoard Of(SeasonBook book, SeasonPlan? plan)
    {
        var state = book.State;
        var lines = state.Batches.Where(b => IsLive(book, b)).Select(b => Line(book, plan, b)).OrderBy(l => l.Last.At).ThenBy(l => l.Batch.Code, StringComparer.Ordinal).ToImmutableArray();
        return new SeedBoard
        {
            Scale = Scale(state, lines),
            Batches = lines,
            Calls = plan is null ? [] : [.. plan.Decisions.Where(d => CallKinds.Contains(d.Kind, StringComparer.Ordinal)).OrderBy(d => d.By)],
            Lots = state.Lots,
        };
    }

    private static bool IsLive(SeasonBook book, SoakBatch batch) => book.Batch(batch.Code)?.Place is not (BatchPlace.Sown or BatchPlace.Dumped);

    private static TimeScale Scale(SeasonState state, ImmutableArray<BatchLine> lines)
    {
        var from = lines.Select(l => l.Batch.InSoak).Append(state.Now.AddHours(-6)).Min();
        var until = lines.Select(l => l.UseBy).Append(state.Now.AddHours(48)).Max() + Beyond;
        return new TimeScale(from.ToOffset(state.Offset), until.ToOffset(state.Offset));
    }

    private static BatchLine Line(SeasonBook book, SeasonPlan? plan, SoakBatch batch)
    {
        var state = book.State;
        var rules = state.SoakRules;
        var flights = plan?.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Batch == batch.Code).OrderBy(t => t.Start).ToImmutableArray() ?? [];
        var lot = state.Lots.FirstOrDefault(l => l.Code == batch.Lot);
        var planned = plan?.Tasks.Where(t => t.Kind == PlanTaskKind.Drain && t.Batch == batch.Code).Select(t => (DateTimeOffset?)t.Start).Min();
        var off = batch.Drained ?? Later(planned ?? batch.InSoak + rules.SoakLeast, state.Now);
        var ready = off + rules.Drain;
        var usable = DrainedSeed.Usable(state, FarmTime.Day(state, ready));
        var dry = book.Batch(batch.Code)?.Remaining ?? batch.Dry;
        var times = new Times(batch.InSoak, off, ready, ready + usable, rules);
        var stage = Stage(batch, times, state.Now);
        return new BatchLine(batch)
        {
            Stage = stage,
            Spans = Spans(batch, times, state.Now),
            Age = stage switch { BatchStage.Due => batch.InSoak - state.Now, BatchStage.InSoak or BatchStage.SoakLong => state.Now - batch.InSoak, _ => state.Now - off },
            Last = stage switch { BatchStage.Due => (BatchLimit.Soak, batch.InSoak), BatchStage.InSoak or BatchStage.SoakLong => (BatchLimit.Drain, batch.InSoak + rules.SoakMost), _ => (BatchLimit.Use, times.UseBy) },
            Ready = ready,
            UseBy = times.UseBy,
            Dry = dry,
            Soaked = Soaking.Weigh(dry, Factor(state, batch, lot)),
            Fields = flights.IsEmpty ? batch.MeantFor : [.. flights.Select(f => f.Field).Distinct(StringComparer.Ordinal)],
            Sow = flights.IsEmpty ? null : flights[0].Start,
            Lost = plan?.LostBatches.Contains(batch.Code, StringComparer.Ordinal) == true,
            Working = Show(batch, times, usable),
        };
    }

    private static double Factor(SeasonState state, SoakBatch batch, SeedLot? lot) => FlightSheets.Factor(state, batch, lot).Factor;

    private static BatchStage Stage(SoakBatch batch, Times times, DateTimeOffset now)
    {
        if (batch.InSoak > now) return BatchStage.Due;
        if (batch.Drained is null) return now <= times.InSoak + times.Rules.SoakMost ? BatchStage.InSoak : BatchStage.SoakLong;
        return now > times.UseBy ? BatchStage.PastUse : now >= times.Ready ? BatchStage.Usable : BatchStage.Draining;
    }

    private static ImmutableArray<ClockSpan> Spans(SoakBatch batch, Times times, DateTimeOffset now)
    {
        var most = times.InSoak + times.Rules.SoakMost;
        (ClockPart Part, DateTimeOffset From, DateTimeOffset Until)[] parts =
        [
            (ClockPart.InSoak, times.InSoak, Earlier(times.Off, most)), (ClockPart.SoakLong, most, times.Off), (ClockPart.Draining, times.Off, times.Ready),
            (ClockPart.Usable, times.Ready, times.UseBy), (ClockPart.PastUse, times.UseBy, Later(now, times.UseBy) + Beyond),
        ];
        var known = batch.Drained is null ? now : DateTimeOffset.MaxValue;
        return [.. parts.Where(p => p.From < p.Until).Select(p => new ClockSpan(p.Part, p.From, p.Until) { Expected = p.From >= known || batch.InSoak > now })];
    }

    private static Working Show(SoakBatch batch, Times times, TimeSpan usable) => Working.Empty
        .Given("s", "in soak", Datum.Moment(times.InSoak), string.Empty, "batch " + batch.Code, times.InSoak)
        .Given("o", "off the water", Datum.Moment(times.Off), string.Empty, batch.Drained is null ? "plan" : "batch " + batch.Code, batch.Drained)
        .Given("d", "time to drain", times.Rules.Drain.TotalHours, "h", times.Rules.Name)
        .Given("m", "usual time under water, at most", times.Rules.SoakMost.TotalHours, "h", times.Rules.Name)
        .Given("u", "usable once drained, by that day's warmth", usable.TotalHours, "h", "forecast or the plain rule")
        .Step("b", "drain by", Datum.Moment(times.InSoak + times.Rules.SoakMost), string.Empty, "s + m", Sources.Arithmetic)
        .Step("r", "fit to sow from", Datum.Moment(times.Ready), string.Empty, "o + d", Sources.Arithmetic)
        .Step("e", "use by", Datum.Moment(times.UseBy), string.Empty, "r + u", Sources.FarmDefault.At("usable time by the warmth of the day"));

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;

    private sealed record Times(DateTimeOffset InSoak, DateTimeOffset Off, DateTimeOffset Ready, DateTimeOffset UseBy, SoakPlace Rules);
}
