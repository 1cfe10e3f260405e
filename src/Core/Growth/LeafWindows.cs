namespace Watersown.Growth;

/// <summary>Days between two leaves, as a person typed them from a label or a paper.</summary>
/// <param name="Opens">First leaf is out.</param>
/// <param name="Closes">The leaf after the last is out: the window is shut that morning.</param>
public sealed record LeafWindow(StageDate Opens, StageDate Closes)
{
    public int Days => Math.Max(0, Closes.Day.DayNumber - Opens.Day.DayNumber);

    /// <summary>Days that are inside even if both ends are off by their error; none or fewer where that cannot be said.</summary>
    public int SureDays => Closes.Earliest.DayNumber - Opens.Latest.DayNumber;
}

/// <summary>Leaf windows as days.</summary>
public static class LeafWindows
{
    /// <summary>From the day a leaf is out until the morning on which the leaf after the last shows.</summary>
    /// <param name="calendar">The crop's stages.</param>
    /// <param name="from">First leaf.</param>
    /// <param name="to">Last leaf.</param>
    [Source(nameof(Sources.CalendarCount), "from the first leaf until the leaf after the last")]
    public static LeafWindow? Of(StageCalendar calendar, int from, int to) =>
        calendar.Of(StagePoint.OfLeaf(Math.Min(from, to))) is { } opens && calendar.Of(StagePoint.OfLeaf(Math.Max(from, to) + 1)) is { } closes ? new LeafWindow(opens, closes) : null;
}
