using System.Globalization;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Season;

/// <summary>Looks for names and moments in the words that people were told.</summary>
internal static class SaidWords
{
    /// <summary>Words older than this say nothing of this morning: noon of the day before.</summary>
    public static DateTimeOffset Since(SeasonBook book) => FarmTime.Midnight(book.State, FarmTime.Day(book.State, book.Now)).AddHours(-12);

    /// <summary>What a role is called in a mark, whatever the farm calls it.</summary>
    public static string Role(CrewRole role) => role.ToString().ToLower(CultureInfo.InvariantCulture);

    /// <summary>A text holds a word as a word of its own: N1 is not in N12.</summary>
    public static bool Holds(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            var end = at + word.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end]))) return true;
        }

        return false;
    }

    /// <summary>Somebody of a role was told, in one message, of all these names and of the moment.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="role">What that person does.</param>
    /// <param name="names">Codes of fields or sources.</param>
    /// <param name="moment">The moment as a text says it, in the language of the telling.</param>
    public static bool Told(SeasonBook book, CrewRole role, IEnumerable<string> names, Func<Telling, string> moment)
    {
        ImmutableArray<string> moments = [moment(new Telling(book.State, Wording.Language.English)), moment(new Telling(book.State, Wording.Language.Spanish))];
        return book.Messages.Where(m => m.At >= Since(book) && m.Last.State != ToldState.NotReached)
            .SelectMany(m => m.Story).Select(m => m.Fact).OfType<Told>()
            .Any(t => t.Text is { } text && string.Equals(t.Role, Role(role), StringComparison.OrdinalIgnoreCase)
                && names.All(n => text.Split('\n').Any(line => Holds(line, n) && moments.Any(m => line.Contains(m, StringComparison.Ordinal)))));
    }
}
