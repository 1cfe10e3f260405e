using System.Globalization;
using System.Text;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>The texts of a day as plain text, each under the name of the person it is for.</summary>
internal static class TextsFile
{
    public static string Write(SheetSet set)
    {
        var text = new StringBuilder();
        foreach (var person in set.Texts.GroupBy(t => (t.Role, t.Name)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{person.Key.Name} ({Messages.NameOf(person.Key.Role, person.First().Language)})\n");
            foreach (var message in person) text.Append(CultureInfo.InvariantCulture, $"{message.Septets,3}/{ShortText.Most}  {message.Text}\n");
            text.Append('\n');
        }

        return text.ToString();
    }
}
