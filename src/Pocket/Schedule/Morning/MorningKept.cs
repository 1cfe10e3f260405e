using System.Text.Json;

namespace Watersown.Pocket.Schedule.Morning;

/// <summary>What the next opening says over the Morning page that it shows before the desk is awake.</summary>
internal static class MorningKept
{
    /// <summary>The words in the reader's language; the age is filled in when they are shown, which is not known here.</summary>
    public static string Words(Desk desk)
    {
        var says = desk.Words.Desk;
        using var kept = new MemoryStream();
        using (var json = new Utf8JsonWriter(kept))
        {
            json.WriteStartObject();
            json.WriteString("kept", Wording.Template.Fill(desk.Words.Morning.KeptLead, ("when", desk.Telling.NearMoment(desk.Now)), ("age", "{age}")));
            json.WriteString("minutes", says.AgeMinutes);
            json.WriteString("hours", says.AgeHours);
            json.WriteString("days", says.AgeDays);
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(kept.ToArray());
    }
}
