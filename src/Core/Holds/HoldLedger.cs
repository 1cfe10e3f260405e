namespace Watersown.Holds;

/// <summary>How far a treatment has come.</summary>
public enum TreatmentState
{
    Booked,
    Applied,
    CalledOff,
}

/// <summary>Days from one to another, both of them included.</summary>
public readonly record struct DaySpan(DateOnly From, DateOnly Until)
{
    public int Days => Until.DayNumber - From.DayNumber + 1;

    public bool Has(DateOnly day) => From <= day && day <= Until;

    public bool Meets(DaySpan other) => From <= other.Until && other.From <= Until;
}

/// <summary>The hold of one treatment.</summary>
/// <param name="Treatment">The treatment that it follows from.</param>
/// <param name="State">Booked or applied; one that is only booked holds nothing yet.</param>
/// <param name="Counting">How its days are counted.</param>
public sealed record FieldHold(Treatment Treatment, TreatmentState State, ApplicationDay Counting)
{
    /// <summary>Days in which water is held: of one that is booked, from the first day it may be applied to the end of the hold from the last.</summary>
    public required DaySpan Held { get; init; }

    /// <summary>First day after it.</summary>
    public DateOnly Release => Held.Until.AddDays(1);

    /// <summary>The lines behind its days.</summary>
    public Working Working => Working.Empty
        .Given("A", State == TreatmentState.Applied ? "day of application" : "last day on which it may be applied", Datum.Date(Treatment.Until), string.Empty, State == TreatmentState.Applied ? "told" : "booked")
        .Given("d", "hold", Treatment.Rule.Days!.Value, "days", "typed from label and permit" + (Treatment.Paper.EnteredBy is { } by ? " by " + by : string.Empty))
        .Given("c", "how days are counted", Counting == ApplicationDay.CountsAsOne ? "the day of application is day 1" : "the day of application is day 0", string.Empty, Treatment.Rule.Counting is null ? "setting of the farm" : "typed with it")
        .Step("L", "last day held, itself included", Datum.Date(Held.Until), string.Empty, Counting == ApplicationDay.CountsAsOne ? "A + d − 1" : "A + d", Sources.CalendarCount)
        .Step("R", "first day after the hold", Datum.Date(Release), string.Empty, "L + 1", Sources.CalendarCount);
}

/// <summary>All holds of one field.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Holds">Each by itself, the one that ends last first.</param>
public sealed record FieldHolds(string Field, ImmutableArray<FieldHold> Holds)
{
    /// <summary>Days on which any of them holds, those that meet made one.</summary>
    public ImmutableArray<DaySpan> Spans => HoldDays.Union(Holds.Select(h => h.Held));

    /// <summary>The hold that ends last of those that have not ended: its day stands.</summary>
    public FieldHold? Standing(DateOnly day) => Holds.FirstOrDefault(h => h.Held.Until >= day);

    /// <summary>Something was applied and its hold runs: no water may leave.</summary>
    public bool Runs(DateOnly day) => Holds.Any(h => h.State == TreatmentState.Applied && h.Held.Has(day));
}

/// <summary>Which water is held until when, by the rules that were typed; of several, the latest end stands.</summary>
public static class HoldLedger
{
    /// <summary>Each field with a hold, by its code.</summary>
    /// <param name="treatments">Treatments with how far they have come, in any order.</param>
    /// <param name="counting">How the farm counts the day of application.</param>
    [Source(nameof(Sources.CalendarCount), "applied + days − 1, or applied + days; the latest of several")]
    public static ImmutableArray<FieldHolds> Of(IEnumerable<(Treatment Treatment, TreatmentState State)> treatments, ApplicationDay counting) =>
    [
        .. treatments.Where(t => t.State != TreatmentState.CalledOff).Select(t => Hold(t.Treatment, t.State, counting)).OfType<FieldHold>()
            .GroupBy(h => h.Treatment.Field, StringComparer.OrdinalIgnoreCase)
            .Select(g => new FieldHolds(g.First().Treatment.Field, [.. g.OrderByDescending(h => h.Held.Until).ThenByDescending(h => h.Held.From).ThenBy(h => h.Treatment.Product, StringComparer.Ordinal).ThenBy(h => h.Treatment.Round)]))
            .OrderBy(f => f.Field, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The hold of one treatment; none where it holds no day, or nobody has typed how long.</summary>
    [Source(nameof(Sources.CalendarCount))]
    public static FieldHold? Hold(Treatment treatment, TreatmentState state, ApplicationDay counting)
    {
        var counts = treatment.Rule.Counting ?? counting;
        return treatment.Rule.Days is { } days && HoldDates.Of(treatment.Until, days, counts).LastHeldDay is { } last
            ? new FieldHold(treatment, state, counts) { Held = new DaySpan(treatment.From, last) }
            : null;
    }
}

/// <summary>Sums of days.</summary>
public static class HoldDays
{
    /// <summary>Days that lie in any of some spans, as spans that neither meet nor touch.</summary>
    [Source(nameof(Sources.CalendarCount), "union of days")]
    public static ImmutableArray<DaySpan> Union(IEnumerable<DaySpan> spans)
    {
        var union = ImmutableArray.CreateBuilder<DaySpan>();
        foreach (var span in spans.OrderBy(s => s.From).ThenBy(s => s.Until))
        {
            if (union.Count == 0 || span.From > union[^1].Until.AddDays(1)) union.Add(span);
            else if (span.Until > union[^1].Until) union[^1] = union[^1] with { Until = span.Until };
        }

        return union.ToImmutable();
    }

    /// <summary>Days of a window that lie in none of some spans.</summary>
    [Source(nameof(Sources.CalendarCount), "days of the window not in the union")]
    public static ImmutableArray<DaySpan> Without(DaySpan window, IEnumerable<DaySpan> spans)
    {
        var free = ImmutableArray.CreateBuilder<DaySpan>();
        var from = window.From;
        foreach (var span in Union(spans).Where(s => s.Meets(window)))
        {
            if (span.From > from) free.Add(new DaySpan(from, span.From.AddDays(-1)));
            from = span.Until.AddDays(1);
        }

        if (from <= window.Until) free.Add(new DaySpan(from, window.Until));
        return free.ToImmutable();
    }
}
