using System.Globalization;
using System.Text;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>A problem on one line of the error stream, whatever was in the text that somebody gave.</summary>
internal static class ProblemLine
{
    /// <summary>Enough of a wrong value to know it by; a whole boundary would bury the sentence.</summary>
    private const int ValueLengthMost = 60;

    public static string Of(Problem problem, Language language)
    {
        var facts = problem.Facts.ToImmutableDictionary(f => f.Key, f => f.Key == "value" ? Say.Short(f.Value, ValueLengthMost) : f.Value, StringComparer.Ordinal);
        return OneLine(Say.Problem(problem with { Facts = facts, Where = Say.Short(problem.Where, ValueLengthMost) }, language));
    }

    private static string OneLine(string text)
    {
        if (!text.Any(IsUnseen)) return text;
        var line = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (IsUnseen(letter)) line.Append(CultureInfo.InvariantCulture, $"\\u{(int)letter:x4}");
            else line.Append(letter);
        }

        return line.ToString();
    }

    private static bool IsUnseen(char letter) => char.IsControl(letter) || letter is '\u2028' or '\u2029';
}
