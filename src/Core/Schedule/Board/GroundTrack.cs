using System.Globalization;

namespace Watersown.Schedule.Board;

/// <summary>Ground and water of one field over time: what is known of the past, then the plan's steps and what is true between them.</summary>
internal static class GroundTrack
{
    /// <summary>Bars one after another without a gap over the whole span.</summary>
    public static IEnumerable<BoardBar> Of(SeasonState state, FieldSeason season, ImmutableArray<PlanTask> own, BoardSpan span)
    {
        var tasks = own.Where(t => t.Kind is PlanTaskKind.Ground or PlanTaskKind.Fill or PlanTaskKind.Sow).OrderBy(t => t.Start).ThenBy(t => t.Kind).ToImmutableArray();
        var bars = new List<BoardBar>();
        var firstStep = tasks.IsEmpty ? DateTimeOffset.MaxValue : tasks[0].Start;
        var (cursor, now) = (span.From, Between(season, span.From));
        foreach (var (at, then) in Known(season).Where(k => k.At > span.From && k.At < firstStep && k.At < span.Until))
        {
            Add(bars, season.Code, now, cursor, at, span);
            (cursor, now) = (at, then);
        }

        foreach (var task in tasks)
        {
            Add(bars, season.Code, now, cursor, task.Start, span);
            if (span.Meets(task.Start, task.End)) bars.Add(Step(task, bars.Count(b => b.Task is not null)));
            cursor = task.End > cursor ? task.End : cursor;
            now = After(task, now);
        }

        // What no step of the plan reaches is known up to now, and nobody has said what comes then.
        var open = tasks.IsEmpty && season.Stage is not (FieldStage.Full or FieldStage.Sown);
        if (open && state.Now > cursor)
        {
            Add(bars, season.Code, now, cursor, state.Now, span);
            cursor = state.Now;
        }

        Add(bars, season.Code, open ? BarState.NoWord : now, cursor, span.Until, span);
        return bars;
    }

    private static BoardBar Step(PlanTask task, int before) => new(BarTrack.Ground, 0, State(task), task.Start, task.End)
    {
        Key = task.Field + "/" + (task.Implement is { } work ? Name(work) : task.Kind == PlanTaskKind.Fill ? "fill" : "sow") + "/" + before.ToString(CultureInfo.InvariantCulture),
        Task = task,
    };

    private static string Name(GroundWork work) => "ground-" + ((int)work).ToString(CultureInfo.InvariantCulture);

    private static BarState State(PlanTask task) => task.Kind switch
    {
        PlanTaskKind.Ground => BarState.Working,
        PlanTaskKind.Fill => BarState.Filling,
        _ => BarState.Sowing,
    };

    private static BarState After(PlanTask task, BarState before) => task.Kind switch
    {
        PlanTaskKind.Ground => BarState.DryGround,
        PlanTaskKind.Fill => BarState.Full,
        PlanTaskKind.Sow => BarState.Sown,
        _ => before,
    };

    private static void Add(List<BoardBar> bars, string field, BarState state, DateTimeOffset from, DateTimeOffset until, BoardSpan span)
    {
        var (start, end) = (from > span.From ? from : span.From, until < span.Until ? until : span.Until);
        if (end <= start) return;
        bars.Add(new BoardBar(BarTrack.Ground, 0, state, start, end)
        {
            Key = field + "/state/" + bars.Count.ToString(CultureInfo.InvariantCulture),
            GoesOn = until >= span.Until,
        });
    }

    /// <summary>Moments at which something became true of the field, as far as anybody has said.</summary>
    private static IEnumerable<(DateTimeOffset At, BarState Then)> Known(FieldSeason season) =>
        new (DateTimeOffset? At, BarState Then)[] { (season.FitFrom, BarState.DryGround), (season.FirstWater, BarState.Filling), (season.FullSince, BarState.Full), (season.SownAt, BarState.Sown) }
            .Where(k => k.At is not null).Select(k => (k.At!.Value, k.Then)).OrderBy(k => k.Value).ThenBy(k => k.Then).Select(k => (k.Value, k.Then));

    /// <summary>What was true at a moment before the plan's steps.</summary>
    private static BarState Between(FieldSeason season, DateTimeOffset at)
    {
        var known = Known(season).ToList();
        if (known.Exists(k => k.At <= at)) return known.FindLast(k => k.At <= at).Then;
        return season.Stage switch
        {
            FieldStage.TooWet => BarState.TooWet,
            FieldStage.Flooding when season.FirstWater is null => BarState.Filling,
            FieldStage.Full when season.FullSince is null => BarState.Full,
            FieldStage.Sown when season.SownAt is null => BarState.Sown,
            _ => season.FitFrom > at ? BarState.TooWet : BarState.DryGround,
        };
    }
}
