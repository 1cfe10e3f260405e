using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>
/// Understands what crew write in a text message, in English and Spanish, well or hastily spelt, and says back what was
/// understood. Between two fields that are equally near it asks; it never guesses.
/// </summary>
public static class TextMarks
{
    /// <summary>Most letters that are read.</summary>
    public const int MaxLength = 2000;

    /// <summary>The place of a trailer that was loaded at the soak place.</summary>
    public const string Loaded = "loaded";

    /// <summary>What is counted in leaves.</summary>
    public const string Leaf = "leaf";

    /// <summary>Reads one message.</summary>
    public static TextReading Read(string text, TextContext context)
    {
        if (text.Length > MaxLength) text = text[..MaxLength];
        var subjects = new TextSubjects(context.State);
        var words = TextWord.Split(text);
        var note = Note(text, words, subjects, context);
        if (note is { } found) words = found.Before;
        ImmutableArray<TextClause> clauses = [.. words.Select(w => TextClause.Of(w, subjects))];
        var language = LanguageOf(clauses, note?.Language ?? context.Language);
        var facts = new TextFacts(context, Words.In(language).Echo);
        foreach (var clause in clauses) facts.Take(clause);
        if (note is { } last) facts.Add(new Noted(last.Text, last.Field ?? facts.Field));
        return Answer(facts, language);
    }

    /// <summary>
    /// A fact in the words of a text message that is understood to say the very same; nothing where words of one sentence
    /// cannot carry all of it.
    /// </summary>
    /// <param name="fact">The fact.</param>
    /// <param name="context">Who would send it, and in which language.</param>
    public static string? Write(MarkFact fact, TextContext context)
    {
        if (!TextEcho.Knows(fact)) return null;
        var text = new TextEcho(context.Language).Say(fact);
        var read = Read(text, context);
        return read.Questions.IsEmpty && read.NotUnderstood.IsEmpty && read.Facts is [var only] && only.Equals(fact) ? text : null;
    }

    private static TextReading Answer(TextFacts facts, Language language)
    {
        var words = Words.In(language).Echo;
        var say = new TextEcho(language);
        var echo = string.Join("; ", facts.All.Select(f => say.Say(f)));
        var parts = new List<string>();
        if (!facts.All.IsEmpty) parts.Add(Template.Fill(words.Got, ("what", echo)));
        if (facts.All.IsEmpty && facts.Questions.Count == 0) parts.Add(Template.Fill(words.Nothing, ("example", words.Example)));
        else if (facts.Lost.Count > 0) parts.Add(Template.Fill(words.NotGot, ("what", string.Join(", ", facts.Lost))));
        parts.AddRange(facts.Questions);
        return new TextReading
        {
            Facts = facts.All,
            Language = language,
            Echo = echo,
            Questions = [.. facts.Questions],
            NotUnderstood = [.. facts.Lost],
            Reply = string.Join(' ', parts),
        };
    }

    private static Language LanguageOf(ImmutableArray<TextClause> clauses, Language usual)
    {
        int english = clauses.Sum(c => c.English), spanish = clauses.Sum(c => c.Spanish);
        return english == spanish ? usual : spanish > english ? Language.Spanish : Language.English;
    }

    /// <summary>A note takes everything behind its word as it stands, after a field or at the start of a sentence.</summary>
    private static (string Text, string? Field, ImmutableArray<ImmutableArray<TextWord>> Before, Language? Language)? Note(string text, ImmutableArray<ImmutableArray<TextWord>> clauses, TextSubjects subjects, TextContext context)
    {
        for (var c = 0; c < clauses.Length; c++)
        {
            var clause = clauses[c];
            var (code, skip) = clause.Length > 0 && subjects.Field(clause[0]) is { } field ? (field, 1) : subjects.Name(clause.AsSpan()) is { } name ? (name.Code, name.Length) : (null, 0);
            if (clause.Length <= skip || clause[skip].Plain is not ("note" or "nota")) continue;
            var said = text[(clause[skip].Start + clause[skip].Raw.Length)..].TrimStart(':', ' ', '\t').TrimEnd();
            if (said.Length == 0) return null;
            return (said, code ?? context.Field, clauses[..c], clause[skip].Plain == "nota" ? Language.Spanish : Language.English);
        }

        return null;
    }
}
