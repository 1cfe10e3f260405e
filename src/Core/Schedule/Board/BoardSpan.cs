namespace Watersown.Schedule.Board;

/// <summary>How much of the season the board shows at once.</summary>
public enum BoardZoom
{
    Day,
    ThreeDays,
    Week,
    Season,
}

/// <summary>A stroke of the board's scale.</summary>
/// <param name="At">Moment.</param>
/// <param name="Heavy">The first moment of a day.</param>
public sealed record BoardTick(DateTimeOffset At, bool Heavy);

/// <summary>From when until when the board reaches: whole days of the farm.</summary>
/// <param name="Zoom">How much.</param>
/// <param name="From">First moment.</param>
/// <param name="Until">Last moment.</param>
public sealed record BoardSpan(BoardZoom Zoom, DateTimeOffset From, DateTimeOffset Until)
{
    public TimeSpan Length => Until - From;

    public bool Has(DateTimeOffset moment) => moment >= From && moment <= Until;

    public bool Meets(DateTimeOffset from, DateTimeOffset until) => from < Until && until > From;

    /// <summary>The span that begins with a day.</summary>
    /// <param name="plan">For a season: until the plan's last step.</param>
    /// <param name="zoom">How much.</param>
    /// <param name="first">First day.</param>
    public static BoardSpan Of(SeasonPlan plan, BoardZoom zoom, DateOnly first)
    {
        var days = zoom switch
        {
            BoardZoom.Day => 1,
            BoardZoom.ThreeDays => 3,
            BoardZoom.Week => 7,
            _ => Math.Max(7, LastDay(plan).DayNumber - first.DayNumber + 2),
        };
        return new BoardSpan(zoom, FarmTime.Midnight(plan.State, first), FarmTime.Midnight(plan.State, first.AddDays(days)));
    }

    public DateOnly First => DateOnly.FromDayNumber((int)(From.Ticks / TimeSpan.TicksPerDay));

    /// <summary>As long a span earlier or later; a season moves by a week.</summary>
    /// <param name="times">How often; earlier below zero.</param>
    public BoardSpan Moved(int times)
    {
        var by = TimeSpan.FromDays(Zoom == BoardZoom.Season ? 7 : Math.Round(Length.TotalDays)) * times;
        return this with { From = From + by, Until = Until + by };
    }

    /// <summary>The days the board shows.</summary>
    public ImmutableArray<DateOnly> Days =>
        [.. Enumerable.Range(0, (int)Math.Round(Length.TotalDays)).Select(i => DateOnly.FromDayNumber((int)(From.Ticks / TimeSpan.TicksPerDay) + i))];

    /// <summary>Hours between two strokes of the scale; none where days are enough.</summary>
    public int? HoursApart => Zoom switch
    {
        BoardZoom.Day => 1,
        BoardZoom.ThreeDays => 3,
        BoardZoom.Week => 12,
        _ => null,
    };

    /// <summary>The strokes of the scale, in order.</summary>
    public ImmutableArray<BoardTick> Ticks()
    {
        var ticks = ImmutableArray.CreateBuilder<BoardTick>();
        var apart = TimeSpan.FromHours(HoursApart ?? 24);
        for (var at = From; at <= Until; at += apart) ticks.Add(new BoardTick(at, at.TimeOfDay == TimeSpan.Zero));
        return ticks.ToImmutable();
    }

    private static DateOnly LastDay(SeasonPlan plan) =>
        plan.Tasks.IsEmpty ? FarmTime.Day(plan.State, plan.MadeAt) : FarmTime.Day(plan.State, plan.Tasks.Max(t => t.End));
}
