using Watersown.Land;
using Watersown.Weather;

namespace Watersown.Schedule.Board;

/// <summary>A step of the plan, or a last moment to ring somebody, as it falls on a day.</summary>
/// <param name="At">When it begins, or by when it must be said.</param>
/// <param name="Task">The step.</param>
/// <param name="Field">Its field.</param>
public sealed record DayStep(DateTimeOffset At, PlanTask Task, Field Field)
{
    public required string Key { get; init; }

    /// <summary>What counts of it is its last safe moment: an order of water, a call of seed.</summary>
    public bool LastSafe { get; init; }

    public ToldTo? Told { get; init; }

    /// <summary>A person may pin it to another hour.</summary>
    public bool CanBePinned { get; init; }

    /// <summary>A person has pinned it to this hour, and the plan does not have it there yet.</summary>
    public DateTimeOffset? Waits { get; init; }
}

/// <summary>Hours of an aeroplane on a day.</summary>
public sealed record DaySlot(string Aeroplane, DateTimeOffset From, DateTimeOffset Until);

/// <summary>One day of the board.</summary>
/// <param name="Day">Which.</param>
public sealed record BoardDay(DateOnly Day)
{
    public required DateTimeOffset Dawn { get; init; }

    public required DateTimeOffset Dusk { get; init; }

    public required ImmutableArray<DaySlot> Slots { get; init; }

    /// <summary>The strongest wind told for the slots, steady and gust each by itself; none where none is told.</summary>
    public Wind? Strongest { get; init; }

    /// <summary>That wind is over the limit of every pilot.</summary>
    public bool OverLimit { get; init; }

    /// <summary>In order of time.</summary>
    public required ImmutableArray<DayStep> Steps { get; init; }
}

/// <summary>The board read day by day: the same steps, for those who do not read drawings and for narrow screens.</summary>
public static class BoardDays
{
    /// <summary>The days of the board's span; what runs already stands on the first.</summary>
    public static ImmutableArray<BoardDay> Of(ScheduleBoard board, SeasonState state)
    {
        var steps = board.Rows.SelectMany(r => Steps(r, board.Span)).ToLookup(s => FarmTime.Day(state, s.At > board.Span.From ? s.At : board.Span.From));
        return [.. board.Span.Days.Select(d => Day(state, d, [.. steps[d].OrderBy(s => s.At).ThenBy(s => s.Task.Kind).ThenBy(s => s.Field.Code, StringComparer.Ordinal)]))];
    }

    private static IEnumerable<DayStep> Steps(BoardRow row, BoardSpan span)
    {
        foreach (var bar in row.Bars.Where(b => b.Task is not null))
            yield return new DayStep(bar.From, bar.Task!, row.Field) { Key = bar.Key, Told = bar.Told, CanBePinned = bar.CanBePinned, Waits = row.Pins.FirstOrDefault(p => p.Task == TaskWords.Of(bar.Task!.Kind) && p.Start != bar.Task.Start)?.Start };
        foreach (var moment in row.Moments.Where(m => m.At < span.Until))
            yield return new DayStep(moment.At, moment.Task, row.Field) { Key = moment.Key, Told = moment.Told, LastSafe = true };
    }

    private static BoardDay Day(SeasonState state, DateOnly day, ImmutableArray<DayStep> steps)
    {
        ImmutableArray<DaySlot> slots = [.. state.Aeroplanes.SelectMany(a => FlyingWindows.Slots(state, a, day).Select(s => new DaySlot(a.Name, s.From, s.Until)))];
        var (dawn, dusk) = FlyingWindows.Daylight(state, day);
        var strongest = Strongest(state, slots);
        return new BoardDay(day)
        {
            Dawn = dawn,
            Dusk = dusk,
            Slots = slots,
            Strongest = strongest,
            OverLimit = strongest is { } wind && !state.Aeroplanes.IsEmpty && state.Aeroplanes.All(a => FlyingWindows.TooWindy(wind, a)),
            Steps = steps,
        };
    }

    private static Wind? Strongest(SeasonState state, ImmutableArray<DaySlot> slots)
    {
        ImmutableArray<Wind> told = [.. slots.SelectMany(s => FlyingWindows.Told(state, s.From, s.Until))];
        return told.IsEmpty ? null : told.MaxBy(w => w.Sustained)! with { Gust = told.Max(w => w.Gust) };
    }
}
