namespace Watersown.Schedule.Board;

/// <summary>Lays a plan out over time.</summary>
public static class BoardLayout
{
    /// <summary>The board of a plan for a span.</summary>
    /// <param name="plan">What should happen.</param>
    /// <param name="state">The farm as it stands at the moment of reading.</param>
    /// <param name="span">How much of it.</param>
    /// <param name="told">Steps that somebody was told of.</param>
    public static ScheduleBoard Of(SeasonPlan plan, SeasonState state, BoardSpan span, IEnumerable<ToldTo> told)
    {
        var heard = told.ToLookup(t => (t.Field, t.Kind));
        var lanes = UseLanes.Of(plan, state, span);
        var reasons = new BoardReasons(plan, state);
        return new ScheduleBoard
        {
            Span = span,
            Now = state.Now,
            Rows = Rows(plan, state, span, heard, reasons),
            Flows = FlowLanes.Of(plan, span),
            Lanes = lanes,
            Bands = BoardBands.Of(state, span),
            Wind = WindTrack.Of(state, span),
        };
    }

    private static ImmutableArray<BoardRow> Rows(SeasonPlan plan, SeasonState state, BoardSpan span, ILookup<(string Field, PlanTaskKind Kind), ToldTo> told, BoardReasons reasons)
    {
        var tasks = plan.Tasks.ToLookup(t => t.Field, StringComparer.Ordinal);
        var rows = state.Farm.Fields.Select(field =>
        {
            var own = tasks[field.Code].ToImmutableArray();
            var season = state.Season(field.Code);
            var group = season.Stage == FieldStage.Sown ? BoardGroup.Sown : own.Any(t => t.Kind == PlanTaskKind.Sow) ? BoardGroup.ToSow : BoardGroup.NotInPlan;
            return new BoardRow(field, group)
            {
                Bars = [.. GroundTrack.Of(state, season, own, span).Concat(SeedTrack.Of(own, span)).Select(b => b with { Told = ToldOf(b.Task, told) })],
                Moments = [.. Moments(own).Where(m => span.Has(m.At)).Select(m => m with { Told = ToldOf(m.Task, told) })],
                Reason = reasons.Of(field, season),
                Pins = [.. state.Pins.Where(p => p.Field == field.Code)],
                Conflicts = [.. plan.Conflicts.Where(c => c.Fields.Contains(field.Code, StringComparer.Ordinal))],
            };
        });
        return [.. rows.OrderBy(r => r.Group).ThenBy(r => When(plan, state, r)).ThenBy(r => state.Farm.Fields.IndexOf(r.Field))];
    }

    private static DateTimeOffset When(SeasonPlan plan, SeasonState state, BoardRow row) => row.Group switch
    {
        BoardGroup.ToSow => plan.Task(row.Field.Code, PlanTaskKind.Sow)!.Start,
        BoardGroup.Sown => state.Season(row.Field.Code).SownAt ?? DateTimeOffset.MinValue,
        _ => DateTimeOffset.MinValue,
    };

    private static ToldTo? ToldOf(PlanTask? task, ILookup<(string Field, PlanTaskKind Kind), ToldTo> told) =>
        task is null ? null : told[(task.Field, task.Kind)].LastOrDefault();

    /// <summary>Calls are not bars: what counts of them is the last moment. Water is ordered at the start of its notice, seed called until the calls close.</summary>
    private static IEnumerable<BoardMoment> Moments(ImmutableArray<PlanTask> own) => own
        .Where(t => t.Kind is PlanTaskKind.OrderWater or PlanTaskKind.CallSeed)
        .Select(t => (Task: t, At: t.Kind == PlanTaskKind.OrderWater ? t.Start : t.End))
        .OrderBy(t => t.At)
        .Select((t, i) => new BoardMoment(t.At, t.Task) { Key = t.Task.Field + "/call/" + i.ToString(System.Globalization.CultureInfo.InvariantCulture) });
}
