namespace Watersown.Holds;

/// <summary>How the day of application is counted.</summary>
public enum ApplicationDay
{
    /// <summary>It is day 0: the day after is day 1.</summary>
    CountsAsZero = 0,

    /// <summary>It is day 1 itself.</summary>
    CountsAsOne = 1,
}

/// <summary>Days in which water may not leave, by the rule that the farm typed.</summary>
/// <param name="LastHeldDay">Last day held, itself included; none where no day is held.</param>
/// <param name="EarliestRelease">First day after the hold by that rule. Not a leave to let water go.</param>
public sealed record HoldPeriod(DateOnly? LastHeldDay, DateOnly EarliestRelease);

/// <summary>Counts holds. It ships no rule about any product: days and convention come from the label and the permit.</summary>
public static class HoldDates
{
    /// <summary>
    /// The hold of one application. With the day of application as day 1, the last held day is applied + days − 1; as
    /// day 0 it is applied + days. A rule of 0 days holds nothing either way.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Days below zero, or a last day beyond the calendar.</exception>
    [Source(nameof(Sources.CalendarCount))]
    public static HoldPeriod Of(DateOnly applied, int days, ApplicationDay counting)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(days);
        if (days == 0) return new HoldPeriod(LastHeldDay: null, applied);
        var last = applied.AddDays(counting == ApplicationDay.CountsAsOne ? days - 1 : days);
        return new HoldPeriod(last, last.AddDays(1));
    }
}
