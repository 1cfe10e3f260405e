using Watersown.Schedule;

namespace Watersown.Planner.Instances;

/// <summary>The season in whole steps of five minutes from the moment of planning, and its days.</summary>
internal sealed class SeasonClock
{
    public const int Minutes = 5;
    public const int PerHour = 60 / Minutes;
    public const int PerDay = 24 * PerHour;

    private readonly SeasonState state;
    private readonly DateOnly firstDay;

    public SeasonClock(SeasonState state)
    {
        this.state = state;
        firstDay = FarmTime.Day(state, state.Now);
        var sinceMidnight = state.Now - FarmTime.Midnight(state, firstDay);
        Origin = (int)Math.Ceiling(sinceMidnight.TotalMinutes / Minutes);
        Days = state.Horizon.DayNumber - firstDay.DayNumber + 1;
        Horizon = DayEnd(Days - 1);
    }

    /// <summary>Steps from the first midnight to step 0.</summary>
    public int Origin { get; }

    /// <summary>Days of the plan, today included.</summary>
    public int Days { get; }

    /// <summary>The first step after the plan.</summary>
    public int Horizon { get; }

    /// <summary>Step of the midnight that begins a day; below zero today.</summary>
    public int DayStart(int day) => (day * PerDay) - Origin;

    public int DayEnd(int day) => DayStart(day + 1);

    public int DayOf(int step) => (int)Math.Floor((step + Origin) / (double)PerDay);

    public DateOnly Date(int day) => firstDay.AddDays(day);

    /// <summary>Step of an hour of a day.</summary>
    public int At(int day, TimeOnly hour) => DayStart(day) + (int)Math.Round((hour - TimeOnly.MinValue).TotalMinutes / Minutes);

    public DateTimeOffset Moment(int step) => FarmTime.Midnight(state, firstDay).AddMinutes((step + Origin) * (double)Minutes);

    /// <summary>First step at or after a moment.</summary>
    public int Ceiling(DateTimeOffset moment) => (int)Math.Ceiling(((moment - FarmTime.Midnight(state, firstDay)).TotalMinutes / Minutes) - 1e-6) - Origin;

    /// <summary>Last step at or before a moment.</summary>
    public int Floor(DateTimeOffset moment) => (int)Math.Floor(((moment - FarmTime.Midnight(state, firstDay)).TotalMinutes / Minutes) + 1e-6) - Origin;

    /// <summary>Steps that a span takes, rounded up.</summary>
    public static int Steps(TimeSpan span) => (int)Math.Ceiling((span.TotalMinutes / Minutes) - 1e-6);
}

/// <summary>
/// Working hours laid end to end, so that a job which runs over nights stays one plain interval. Step 0 of this axis is the
/// first working step of the first day, past or not.
/// </summary>
internal sealed class WorkAxis(SeasonClock clock, TimeOnly from, TimeOnly until)
{
    private readonly int dayFrom = (int)Math.Round((from - TimeOnly.MinValue).TotalMinutes / SeasonClock.Minutes);

    /// <summary>Working steps in a day.</summary>
    public int PerDay { get; } = Math.Max(1, (int)Math.Round((until - from).TotalMinutes / SeasonClock.Minutes));

    /// <summary>All working steps of the season.</summary>
    public int Length => PerDay * clock.Days;

    /// <summary>First season step minus day and step within the day, for linking: end = 288 × day + offset + step in day.</summary>
    public int Offset => dayFrom - clock.Origin;

    /// <summary>Season step at which work of an axis step begins.</summary>
    public int Start(int axis) => (SeasonClock.PerDay * (axis / PerDay)) + Offset + (axis % PerDay);

    /// <summary>Season step at which work up to an axis step has ended.</summary>
    public int End(int axis) => axis == 0 ? Offset : Start(axis - 1) + 1;

    /// <summary>First axis step that begins at or after a season step.</summary>
    public int AtOrAfter(int step)
    {
        var day = clock.DayOf(step);
        var within = step + clock.Origin - (day * SeasonClock.PerDay) - dayFrom;
        if (within >= PerDay) return Math.Min(Length, (day + 1) * PerDay);
        return Math.Clamp((day * PerDay) + Math.Max(0, within), 0, Length);
    }
}
