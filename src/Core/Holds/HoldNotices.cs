namespace Watersown.Holds;

/// <summary>How the farm counts, and the days of its own county office, as typed.</summary>
public sealed record HoldSettings
{
    /// <summary>Nobody has typed any: the day of application counts as none, which holds a day longer.</summary>
    public static HoldSettings Untold { get; } = new();

    /// <summary>The day of application is day 1, or day 0.</summary>
    public ApplicationDay Counting { get; init; }

    /// <summary>The office takes notices only while it is open, Monday to Friday, from this hour on; at any hour where not told.</summary>
    public TimeOnly? OfficeFrom { get; init; }

    /// <summary>Until this hour.</summary>
    public TimeOnly? OfficeUntil { get; init; }

    /// <summary>Day of the next month by which the farm's own use is reported.</summary>
    public int? OwnReportDay { get; init; }

    /// <summary>Days within which a hired business reports.</summary>
    public int? HiredReportDays { get; init; }
}

/// <summary>What is to be told to the county about one treatment: reminders, as the farm typed them.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="State">Booked or applied.</param>
public sealed record HoldNotice(Treatment Treatment, TreatmentState State)
{
    /// <summary>By when its notice must be filed, for one that is booked.</summary>
    public DateTimeOffset? FileBy { get; init; }

    /// <summary>By which day its use is to be reported, for one that was applied.</summary>
    public DateOnly? ReportBy { get; init; }
}

/// <summary>Reminders of notices and reports. The office's own answer goes before them.</summary>
public static class HoldNotices
{
    /// <summary>The reminders of some treatments, in order of their days.</summary>
    /// <param name="treatments">Treatments with how far they have come.</param>
    /// <param name="settings">The farm's.</param>
    /// <param name="offset">Of the farm's clock from UTC.</param>
    [Source(nameof(Sources.CalendarCount), "start − hours, moved back into office hours; next month's day, or days after")]
    public static ImmutableArray<HoldNotice> Of(IEnumerable<(Treatment Treatment, TreatmentState State)> treatments, HoldSettings settings, TimeSpan offset) =>
    [
        .. treatments.Where(t => t.State != TreatmentState.CalledOff).Select(t => new HoldNotice(t.Treatment, t.State)
        {
            FileBy = t.State == TreatmentState.Booked && t.Treatment.Rule.NoticeHours is { } hours ? FileBy(Start(t.Treatment, offset).AddHours(-hours), settings) : null,
            ReportBy = t.State == TreatmentState.Applied ? ReportBy(t.Treatment, settings) : null,
        })
        .Where(n => n.FileBy is not null || n.ReportBy is not null)
        .OrderBy(n => n.FileBy ?? Midnight(n.ReportBy!.Value, offset)).ThenBy(n => n.Treatment.Field, StringComparer.Ordinal),
    ];

    /// <summary>The last moment at or before another at which the office takes notices.</summary>
    [Source(nameof(Sources.CalendarCount))]
    public static DateTimeOffset FileBy(DateTimeOffset latest, HoldSettings settings)
    {
        if (settings is not { OfficeFrom: { } from, OfficeUntil: { } until } || until <= from) return latest;
        var day = latest - latest.TimeOfDay;
        if (IsOpen(day) && latest.TimeOfDay >= from.ToTimeSpan()) return latest.TimeOfDay <= until.ToTimeSpan() ? latest : day + until.ToTimeSpan();
        var before = day.AddDays(-1);
        while (!IsOpen(before)) before = before.AddDays(-1);
        return before + until.ToTimeSpan();
    }

    private static DateOnly? ReportBy(Treatment treatment, HoldSettings settings)
    {
        if (treatment.Work.Hired) return settings.HiredReportDays is { } days ? treatment.Until.AddDays(days) : null;
        if (settings.OwnReportDay is not { } of) return null;
        var next = new DateOnly(treatment.Until.Year, treatment.Until.Month, 1).AddMonths(1);
        return next.AddDays(Math.Min(of, next.AddMonths(1).AddDays(-1).Day) - 1);
    }

    // Where no hour is told, the beginning of its first day: sooner is never too late.
    private static DateTimeOffset Start(Treatment treatment, TimeSpan offset) =>
        treatment.Work.Begun ?? Midnight(treatment.From, offset);

    private static DateTimeOffset Midnight(DateOnly day, TimeSpan offset) => new(day.Year, day.Month, day.Day, 0, 0, 0, offset);

    private static bool IsOpen(DateTimeOffset day) => day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday);
}
