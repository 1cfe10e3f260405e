using System.Globalization;
using System.Text;

namespace Watersown.Wording;

/// <summary>
/// Puts facts into words. The only place that rounds, and the only place that chooses a language: hosts say which.
/// </summary>
public static class Say
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>A problem in one line: code, place, sentence.</summary>
    public static string Problem(Problem problem, Language language)
    {
        var sentence = Sentence(problem, language);
        return problem.Where.Length == 0
            ? string.Create(Plain, $"{problem.Kind.Code} · {sentence}")
            : string.Create(Plain, $"{problem.Kind.Code} · {problem.Where}: {sentence}");
    }

    /// <summary>The sentence of a problem alone, where its code and place stand beside it.</summary>
    public static string Sentence(Problem problem, Language language) =>
        Fill(language == Language.Spanish ? problem.Kind.Spanish : problem.Kind.English, problem.Facts, language);

    /// <summary>Enough of somebody's text to know it by: a whole one would bury the sentence. Never half a letter.</summary>
    public static string Short(string text, int most = 40)
    {
        if (text.Length <= most) return text;
        return text[..(char.IsHighSurrogate(text[most - 1]) ? most - 1 : most)] + "…";
    }

    /// <summary>Puts facts into the braces of a sentence, once each: braces that a fact brings along stay as they are.</summary>
    private static string Fill(string template, ImmutableDictionary<string, string> facts, Language language)
    {
        var text = new StringBuilder();
        var from = 0;
        for (var open = template.IndexOf('{', StringComparison.Ordinal); open >= 0; open = template.IndexOf('{', from))
        {
            var close = template.IndexOf('}', open);
            if (close < 0) break;
            var name = template[(open + 1)..close];
            var known = facts.TryGetValue(language == Language.Spanish ? name + ":es" : name, out var fact) || facts.TryGetValue(name, out fact);
            text.Append(template, from, open - from).Append(known ? fact : template[open..(close + 1)]);
            from = close + 1;
        }

        return text.Append(template, from, template.Length - from).ToString();
    }

    /// <summary>A number with thousands marks and at most so many decimals, never in exponent form: <c>17,700</c>.</summary>
    public static string Number([PlainNumber("any figure, its unit is said beside it")] double value, int decimals = 0)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        if (rounded == 0) rounded = 0; // no minus zero
        return rounded.ToString("N" + decimals.ToString(Plain), Plain);
    }

    /// <summary>A difference with its sign before it: <c>−6.3</c>, <c>+2.0</c>.</summary>
    public static string Signed([PlainNumber("any figure, its unit is said beside it")] double value, int decimals = 0)
    {
        var size = Number(Math.Abs(value), decimals);
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero) switch { < 0 => "−" + size, > 0 => "+" + size, _ => size };
    }

    /// <summary>A number with the digits that a reader can use: whole above 1,000, one decimal above 100, up to four figures below.</summary>
    public static string Figure([PlainNumber("any figure, its unit is said beside it")] double value)
    {
        var size = Math.Abs(value);
        var decimals = size switch { 0 => 0, >= 1000 => 0, >= 100 => 1, >= 10 => 2, >= 1 => 3, >= 0.1 => 4, >= 0.01 => 5, _ => 7 };
        var text = Number(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>A value for people.</summary>
    public static string Datum(Datum value) => value switch
    {
        Watersown.Datum.Number n => Figure(n.Value),
        Watersown.Datum.Text t => t.Value,
        Watersown.Datum.Flag f => f.Value ? "yes" : "no",
        Watersown.Datum.Nothing => "none",
        Watersown.Datum.Sequence s => "[" + string.Join(", ", s.Items.Select(Datum)) + "]",
        Watersown.Datum.Table t => "{ " + string.Join(", ", t.Cells.Select(c => c.Key + " " + Datum(c.Value))) + " }",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>
    /// A working as lines of text: inputs with their origin and age, then each step with its formula and source.
    /// </summary>
    /// <param name="working">What to show.</param>
    /// <param name="now">The moment of reading, against which ages are told; without it no age is shown.</param>
    public static string Working(Working working, DateTimeOffset? now = null)
    {
        var text = new StringBuilder();
        foreach (var line in working.Lines)
        {
            text.Append(Plain, $"  {line.Symbol,-8} {line.Meaning}: {Datum(line.Value)}");
            if (line.Unit.Length > 0 && line.Value is not Watersown.Datum.Nothing) text.Append(Plain, $" {line.Unit}");
            if (line.Formula is { } formula) text.Append(Plain, $"\n           = {formula}");
            if (line.From is { } from) text.Append(Plain, $"  ({from}{Age(line.At, now)})");
            if (line.Source is { } source) text.Append(Plain, $"\n           {source}");
            text.Append('\n');
        }

        return text.ToString();
    }

    /// <summary>How old a fact is: <c>, 3 h old</c>; empty where its time is not known.</summary>
    public static string Age(DateTimeOffset? at, DateTimeOffset? now)
    {
        if (at is not { } then || now is not { } moment) return string.Empty;
        var age = moment - then;
        if (age < TimeSpan.Zero) return ", for later";
        if (age.TotalMinutes < 60) return string.Create(Plain, $", {age.TotalMinutes:0} min old");
        return age.TotalHours < 48
            ? string.Create(Plain, $", {age.TotalHours:0} h old")
            : string.Create(Plain, $", {age.TotalDays:0} days old");
    }
}
