using Watersown.Holds;

namespace Watersown.Season.Boards;

/// <summary>What a bar of the calendar stands for.</summary>
public enum HoldBarKind
{
    /// <summary>Days on which an applied treatment holds water.</summary>
    Held,

    /// <summary>Days that a booked one would hold.</summary>
    Booked,

    /// <summary>Days on which the water is wanted lower or gone.</summary>
    Wanted,

    /// <summary>Those of them on which nothing holds.</summary>
    Free,
}

/// <summary>A bar of the calendar.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Days">Its days.</param>
public sealed record HoldBar(HoldBarKind Kind, DaySpan Days)
{
    public FieldHold? Hold { get; init; }

    public WantedWater? Want { get; init; }

    [PlainNumber("points of paper, to the right")]
    public required double Left { get; init; }

    [PlainNumber("points of paper")]
    public required double Width { get; init; }
}

/// <summary>One line of the calendar: a hold, or a wish with the days that are left of it.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Bars">What is drawn on it.</param>
public sealed record HoldRow(string Field, ImmutableArray<HoldBar> Bars)
{
    [PlainNumber("points of paper, downward")]
    public required double Top { get; init; }
}

/// <summary>Holds and wishes over the days, field by field.</summary>
public sealed record HoldCalendar
{
    private const double Row = 34, Head = 22;

    [PlainNumber("points of paper")]
    public static double Width => 360;

    public required DaySpan Days { get; init; }

    public required ImmutableArray<HoldRow> Rows { get; init; }

    /// <summary>Mondays; over more than five weeks the 1st, 10th and 20th; over more than ten the first of each month.</summary>
    public required ImmutableArray<DateOnly> Ticks { get; init; }

    [PlainNumber("points of paper")]
    public double Height => Head + (Rows.Length * Row) + 4;

    /// <summary>The calendar of a book; none where it tells of nothing.</summary>
    /// <param name="book">The book.</param>
    /// <param name="today">Always shown.</param>
    public static HoldCalendar? Of(HoldBook book, DateOnly today)
    {
        var collisions = book.Collisions;
        ImmutableArray<WantedWater> wants = [.. HoldCollisions.Needs(book.All).Concat(book.Wishes)];
        ImmutableArray<(string Field, HoldBarKind Kind, DaySpan Days, FieldHold? Hold, WantedWater? Want)> lines =
        [
            .. book.Ledger.SelectMany(f => f.Holds).Select(h => (h.Treatment.Field, h.State == TreatmentState.Applied ? HoldBarKind.Held : HoldBarKind.Booked, h.Held, (FieldHold?)h, (WantedWater?)null)),
            .. wants.Select(w => (w.Field, HoldBarKind.Wanted, w.Window, (FieldHold?)null, (WantedWater?)w)),
        ];
        if (lines.IsEmpty) return null;
        var days = new DaySpan(Earlier(today, lines.Min(l => l.Days.From)).AddDays(-1), Later(today, lines.Max(l => l.Days.Until)).AddDays(2));
        var at = new Ruler(days);
        var sorted = lines.OrderBy(l => l.Field, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Kind).ThenBy(l => l.Days.From);
        return new HoldCalendar
        {
            Days = days,
            Ticks = Marks(days),
            Rows = [.. sorted.Select((l, i) => new HoldRow(l.Field, Bars(l.Kind, l.Days, l.Hold, l.Want, collisions, at)) { Top = Head + (i * Row) })],
        };
    }

    /// <summary>Where a day begins.</summary>
    [return: PlainNumber("points of paper, to the right")]
    public double At(DateOnly day) => new Ruler(Days).Left(day);

    private static ImmutableArray<HoldBar> Bars(HoldBarKind kind, DaySpan days, FieldHold? hold, WantedWater? want, ImmutableArray<HoldCollision> collisions, Ruler at)
    {
        HoldBar Bar(HoldBarKind of, DaySpan span) => new(of, span) { Hold = hold, Want = want, Left = at.Left(span.From), Width = at.Left(span.Until.AddDays(1)) - at.Left(span.From) };
        if (want is null) return [Bar(kind, days)];
        var free = collisions.FirstOrDefault(c => c.Want == want)?.Free ?? [days];
        return [Bar(HoldBarKind.Wanted, days), .. free.Select(f => Bar(HoldBarKind.Free, f))];
    }

    private static ImmutableArray<DateOnly> Marks(DaySpan days)
    {
        var all = Enumerable.Range(0, days.Days).Select(d => days.From.AddDays(d));
        return days.Days switch
        {
            > 70 => [.. all.Where(d => d.Day == 1)],
            > 35 => [.. all.Where(d => d.Day is 1 or 10 or 20)],
            _ => [.. all.Where(d => d.DayOfWeek == DayOfWeek.Monday)],
        };
    }

    private static DateOnly Earlier(DateOnly a, DateOnly b) => a < b ? a : b;

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;

    private readonly record struct Ruler(DaySpan Days)
    {
        public double Left(DateOnly day) => Math.Round((day.DayNumber - Days.From.DayNumber) * Width / Days.Days, 2);
    }
}
