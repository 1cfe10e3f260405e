using Watersown.Wording;

namespace Watersown.Pocket.Schedule.Replan;

/// <summary>Spans of seed: hours and minutes however long, as drains and soaks are counted.</summary>
internal static class Spans
{
    public static string Of(TimeSpan span, Words words) => Template.Fill(words.Desk.AgeHours,
        ("h", Wording.Say.Number(Math.Floor(span.TotalHours))), ("m", span.Minutes.ToString("00", System.Globalization.CultureInfo.InvariantCulture)));
}
