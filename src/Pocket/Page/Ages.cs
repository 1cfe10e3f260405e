using Watersown.Wording;

namespace Watersown.Pocket.Page;

/// <summary>Spans as a person reads them off a watch: hours and minutes, then days.</summary>
public static class Ages
{
    public static string Span(TimeSpan span, Words words)
    {
        var minutes = (long)Math.Round(Math.Abs(span.TotalMinutes));
        return minutes switch
        {
            < 60 => Template.Fill(words.Desk.AgeMinutes, ("n", Wording.Say.Number(minutes))),
            < 72 * 60 => Template.Fill(words.Desk.AgeHours, ("h", Wording.Say.Number(minutes / 60)), ("m", (minutes % 60).ToString("00", System.Globalization.CultureInfo.InvariantCulture))),
            _ => Template.Fill(words.Desk.AgeDays, ("n", Wording.Say.Number(minutes / 1440.0))),
        };
    }

    /// <summary>How old a fact is; how far ahead where it is still to come.</summary>
    public static string Old(DateTimeOffset at, DateTimeOffset now, Words words) =>
        Template.Fill(at > now ? words.Desk.Ahead : words.Desk.Old, ("age", Span(now - at, words)));

    public static string Ago(DateTimeOffset at, DateTimeOffset now, Words words) =>
        Template.Fill(at > now ? words.Desk.Ahead : words.Desk.Ago, ("age", Span(now - at, words)));
}
