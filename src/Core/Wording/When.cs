using System.Globalization;

namespace Watersown.Wording;

/// <summary>Days and hours in words, as the farm's clock shows them.</summary>
public static class When
{
    private static readonly CultureInfo English = CultureInfo.InvariantCulture;

    // Fixed here, so that no machine's own language data can change a sheet.
    private static readonly string[] DiasCortos = ["dom", "lun", "mar", "mié", "jue", "vie", "sáb"];
    private static readonly string[] MesesCortos = ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"];

    /// <summary><c>Sun 10 May 07:00</c>.</summary>
    public static string Moment(DateTimeOffset moment, Language language = Language.English) =>
        Day(new DateOnly(moment.Year, moment.Month, moment.Day), language) + " " + Hour(moment);

    /// <summary><c>Sun 10 May</c>.</summary>
    public static string Day(DateOnly day, Language language = Language.English) => language == Language.Spanish
        ? string.Create(English, $"{DiasCortos[(int)day.DayOfWeek]} {day.Day} {MesesCortos[day.Month - 1]}")
        : day.ToString("ddd d MMM", English);

    /// <summary><c>07:00</c>.</summary>
    public static string Hour(DateTimeOffset moment) => moment.ToString("HH:mm", English);

    /// <summary>A span in the unit a person would use: <c>45 min</c>, <c>6.5 h</c>, <c>2.3 d</c>.</summary>
    public static string Span(TimeSpan span) => span.TotalMinutes < 90
        ? string.Create(English, $"{span.TotalMinutes:0} min")
        : span.TotalHours < 48 ? string.Create(English, $"{span.TotalHours:0.#} h") : string.Create(English, $"{span.TotalDays:0.#} d");
}
