using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Writes the season as iCalendar, every moment in UTC so that no reader needs rules of a time zone.</summary>
[Source(nameof(Sources.Rfc5545))]
internal static class CalendarFile
{
    public static byte[] Write(SeasonPlan plan, Language language)
    {
        var calendar = new Ical.Net.Calendar { ProductId = "-//Watersown//Season//EN", Method = CalendarMethods.Publish };
        calendar.AddProperty("X-WR-CALNAME", SeasonCalendar.NameOf(plan, language));
        foreach (var entry in SeasonCalendar.Of(plan, language)) calendar.Events.Add(Event(entry, plan));
        var text = new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar came out empty.");
        return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text);
    }

    private static CalendarEvent Event(CalendarEntry entry, SeasonPlan plan)
    {
        var item = new CalendarEvent
        {
            Uid = entry.Uid,
            DtStamp = Moment(plan.MadeAt),
            LastModified = Moment(plan.MadeAt),
            Sequence = plan.Number,
            Start = Moment(entry.Start),
            End = Moment(entry.End),
            Summary = entry.Title,
            Description = entry.Text,
            Categories = [entry.Category],
            Transparency = TransparencyType.Transparent,
        };
        if (entry.Rings is { } before) item.Alarms.Add(Alarm(entry, before));
        return item;
    }

    // Told from the start of the entry, the plain way that every calendar knows.
    private static Alarm Alarm(CalendarEntry entry, TimeSpan before) => new()
    {
        Action = AlarmAction.Display,
        Description = entry.Title,
        Trigger = new Trigger { Duration = Duration.FromTimeSpanExact((entry.End - entry.Start) - before) },
    };

    private static CalDateTime Moment(DateTimeOffset moment)
    {
        var utc = moment.ToUniversalTime();
        return new CalDateTime(new DateOnly(utc.Year, utc.Month, utc.Day), new TimeOnly(utc.Hour, utc.Minute, utc.Second), CalDateTime.UtcTzId);
    }
}
