using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Seed;

namespace Watersown.Season.Ground;

/// <summary>The four clocks that meet on a field.</summary>
public enum ClockLane
{
    Ground,
    Water,
    Seed,
    Air,
}

/// <summary>What goes on during a span of a clock.</summary>
public enum ClockState
{
    Unknown,
    GroundWork,
    Dry,
    Filling,
    Full,
    Soaking,
    Drained,
    Spent,
    Sowing,
    Sown,
}

/// <summary>Something that goes on in one lane for a while.</summary>
/// <param name="Lane">Ground, water, seed or air.</param>
/// <param name="State">What goes on.</param>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Told">It happened, or somebody said so; otherwise the plan has it.</param>
public sealed record ClockSpan(ClockLane Lane, ClockState State, DateTimeOffset From, DateTimeOffset Until, bool Told)
{
    /// <summary>The batch, for seed.</summary>
    public string? Batch { get; init; }
}

/// <summary>The four clocks of one field under each other on one scale of time.</summary>
public sealed record FieldClocks
{
    private static readonly TimeSpan before = TimeSpan.FromDays(3);
    private static readonly TimeSpan least = TimeSpan.FromDays(2);
    private static readonly TimeSpan most = TimeSpan.FromDays(9);

    public required DateTimeOffset From { get; init; }

    public required DateTimeOffset Until { get; init; }

    public required DateTimeOffset Now { get; init; }

    /// <summary>Spans cut to the scale, in order of lane, then of time. A lane of which nothing is known has one span that says so.</summary>
    public required ImmutableArray<ClockSpan> Spans { get; init; }

    /// <summary>When the plan sows it.</summary>
    public DateTimeOffset? Sow { get; init; }

    /// <summary>The spans of one lane.</summary>
    public IEnumerable<ClockSpan> In(ClockLane lane) => Spans.Where(s => s.Lane == lane);

    /// <summary>The clocks of a field.</summary>
    /// <param name="state">How things stand.</param>
    /// <param name="plan">The plan; without one only what was told is drawn.</param>
    /// <param name="code">Field code.</param>
    public static FieldClocks Of(SeasonState state, SeasonPlan? plan, string code)
    {
        var season = state.Season(code);
        ImmutableArray<PlanTask> tasks = [.. (plan?.Tasks ?? []).Where(t => string.Equals(t.Field, code, StringComparison.Ordinal))];
        var sow = tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Sow);
        var from = FarmTime.Midnight(state, FarmTime.Day(state, state.Now - before));
        var last = tasks.Select(t => t.End).Append(state.Now + least).Max() + TimeSpan.FromHours(6);
        if (last > state.Now + most) last = state.Now + most;
        var until = FarmTime.Midnight(state, FarmTime.Day(state, last).AddDays(1));
        var maker = new Maker(state, season, tasks, from, until);
        return new FieldClocks { From = from, Until = until, Now = state.Now, Spans = maker.All(), Sow = sow?.Start };
    }

    private sealed class Maker(SeasonState state, FieldSeason season, ImmutableArray<PlanTask> tasks, DateTimeOffset from, DateTimeOffset until)
    {
        public ImmutableArray<ClockSpan> All() =>
            [.. Lane(ClockLane.Ground, Ground()), .. Lane(ClockLane.Water, Water()), .. Lane(ClockLane.Seed, Seed()), .. Lane(ClockLane.Air, Air())];

        private ImmutableArray<ClockSpan> Lane(ClockLane lane, IEnumerable<ClockSpan> spans)
        {
            ImmutableArray<ClockSpan> cut =
            [
                .. spans.Select(s => s with { From = s.From < from ? from : s.From, Until = s.Until > until ? until : s.Until }).Where(s => s.Until > s.From).OrderBy(s => s.From),
            ];
            return cut.IsEmpty ? [new ClockSpan(lane, ClockState.Unknown, from, until, Told: false)] : cut;
        }

        private IEnumerable<ClockSpan> Ground()
        {
            foreach (var task in tasks.Where(t => t.Kind == PlanTaskKind.Ground)) yield return new ClockSpan(ClockLane.Ground, ClockState.GroundWork, task.Start, task.End, task.Fixed);
            if (season.StageUntold) yield break;
            var done = season.Stage >= FieldStage.Rolled;
            if (done) yield return new ClockSpan(ClockLane.Ground, ClockState.Dry, from, FirstWater ?? until, Told: true);
        }

        private DateTimeOffset? FirstWater => season.FirstWater ?? season.FullSince ?? season.SownAt ?? tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Fill)?.Start;

        private IEnumerable<ClockSpan> Water()
        {
            var fill = tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Fill);
            if (season.Stage is FieldStage.Full or FieldStage.Sown)
            {
                if (season.FirstWater is { } first && season.FullSince is { } whole) yield return new ClockSpan(ClockLane.Water, ClockState.Filling, first, whole, Told: true);
                var full = season.FullSince ?? season.SownAt ?? from;
                yield return new ClockSpan(ClockLane.Water, ClockState.Full, full, state.Now, Told: true);
                yield return new ClockSpan(ClockLane.Water, ClockState.Full, state.Now, until, Told: false);
                yield break;
            }

            if (season.Stage == FieldStage.Flooding) yield return new ClockSpan(ClockLane.Water, ClockState.Filling, season.FirstWater ?? from, state.Now, Told: true);
            if (fill is null) yield break;
            yield return new ClockSpan(ClockLane.Water, ClockState.Filling, fill.Start > state.Now ? fill.Start : state.Now, fill.End, Told: false);
            yield return new ClockSpan(ClockLane.Water, ClockState.Full, fill.End, until, Told: false);
        }

        private IEnumerable<ClockSpan> Seed()
        {
            if (season.Stage == FieldStage.Sown) yield break;
            var meant = state.Batches.Where(b => b.MeantFor.Contains(season.Code, StringComparer.Ordinal)).ToList();
            foreach (var span in meant.SelectMany(Batch)) yield return span;
            foreach (var task in tasks.Where(t => t.Kind is PlanTaskKind.Soak or PlanTaskKind.Drain && !meant.Exists(b => b.Code == t.Batch)))
            {
                yield return new ClockSpan(ClockLane.Seed, task.Kind == PlanTaskKind.Soak ? ClockState.Soaking : ClockState.Drained, task.Start, task.End, task.Fixed) { Batch = task.Batch };
            }
        }

        private IEnumerable<ClockSpan> Batch(SoakBatch batch)
        {
            ClockSpan Span(ClockState what, DateTimeOffset start, DateTimeOffset end, bool told) => new(ClockLane.Seed, what, start, end, told) { Batch = batch.Code };
            if (batch.Drained is { } off)
            {
                yield return Span(ClockState.Soaking, batch.InSoak, off, told: true);
                var spent = SeedTimes.UseBy(state, batch) ?? off;
                yield return Span(ClockState.Drained, off, spent, told: true);
                yield return Span(ClockState.Spent, spent, until, told: true);
                yield break;
            }

            var drain = tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Drain && t.Batch == batch.Code);
            var under = drain?.Start ?? batch.InSoak + state.SoakRules.SoakLeast;
            if (under < state.Now && batch.InSoak < state.Now) under = state.Now;
            yield return Span(ClockState.Soaking, batch.InSoak, under, batch.InSoak <= state.Now);
            if (drain is not null) yield return Span(ClockState.Drained, drain.Start, drain.End, told: false);
        }

        private IEnumerable<ClockSpan> Air()
        {
            if (season.SownAt is { } sown) yield return new ClockSpan(ClockLane.Air, ClockState.Sown, sown, until, Told: true);
            foreach (var task in tasks.Where(t => t.Kind == PlanTaskKind.Sow)) yield return new ClockSpan(ClockLane.Air, ClockState.Sowing, task.Start, task.End, task.Fixed);
        }
    }
}
