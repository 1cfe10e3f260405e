using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Documents.Logbooks;

/// <summary>
/// From JSON to marks. A mark of a kind, or with a word, that this desk does not know is kept as it is; one that cannot be true is refused
/// with all that is wrong, and the others of the list stand.
/// </summary>
public static class MarkReading
{
    /// <summary>Most marks that are read at once.</summary>
    public const int MaxMarks = 100_000;

    private static readonly Outline.Text name = new();

    private static readonly Outline.Thing header = new("mark",
    [
        FactForm.Need("id", name, "name of the mark"),
        FactForm.Need("kind", name, "what sort of fact it tells"),
        FactForm.Need("happened", new Outline.Instant(), "when it was true"),
        FactForm.Need("entered", new Outline.Instant(), "when it was put down"),
        FactForm.Need("by", name, "who says so"),
        FactForm.Need("device", name, "the device it was put down on"),
        FactForm.Need("sure", new Outline.Word(MarkWords.Sureness.All), "how somebody knows"),
        FactForm.May("replaces", name, "name of the mark it stands in for"),
        FactForm.May("note", FactForm.LongText, "words beside it"),
    ]);

    /// <summary>One mark.</summary>
    public static Outcome<Mark> Read(ReadOnlyMemory<byte> bytes)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<Mark>.Refuse(text.Problems);
        using var document = text.Value;
        return Read(document.RootElement, string.Empty);
    }

    /// <summary>A list of marks. What could be read stands beside what is wrong with the rest.</summary>
    public static Outcome<ImmutableArray<Mark>> ReadList(ReadOnlyMemory<byte> bytes)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<ImmutableArray<Mark>>.Refuse(text.Problems);
        using var document = text.Value;
        return ReadList(document.RootElement, "marks");
    }

    /// <summary>A list of marks inside another document.</summary>
    /// <param name="list">The list.</param>
    /// <param name="path">Its place, for problems.</param>
    public static Outcome<ImmutableArray<Mark>> ReadList(JsonElement list, string path)
    {
        if (list.ValueKind != JsonValueKind.Array)
            return Outcome<ImmutableArray<Mark>>.Refuse(JsonProblems.WrongSort.At(path, ("value", OutlineWords.Shown(list)), ("wanted", "a list in [ ]"), ("wanted:es", "una lista entre [ ]")));
        if (list.GetArrayLength() > MaxMarks)
            return Outcome<ImmutableArray<Mark>>.Refuse(JsonProblems.TooMany.At(path, ("value", Wording.Say.Number(list.GetArrayLength())), ("limit", Wording.Say.Number(MaxMarks))));
        ImmutableArray<Outcome<Mark>> read = [.. list.EnumerateArray().Select((e, i) => Read(e, Place.Of(path, i, string.Empty)))];
        return Outcome<ImmutableArray<Mark>>.Of([.. read.Where(m => m.HasValue).Select(m => m.Value)], read.SelectMany(m => m.Problems));
    }

    /// <summary>One mark inside another document.</summary>
    /// <param name="element">The mark.</param>
    /// <param name="path">Its place, for problems; empty for a mark that stands alone.</param>
    public static Outcome<Mark> Read(JsonElement element, string path)
    {
        var kind = KindOf(element);
        var form = FactForms.Find(kind);
        var (facts, problems) = Check(element, form);
        if (kind.Length > 0 && form is null) problems = problems.Add(LogbookProblems.UnknownKind.At("kind", ("value", Say.Short(kind))));
        // A newer desk may know a word for something that this one does not: the mark is kept as it is, and counts for nothing here.
        var newer = form is not null && problems.Any(IsNewerWord) && problems.Where(p => p.Kind.Weight == ProblemWeight.Refuse).All(IsNewerWord);
        if (newer) problems = [.. problems.Select(p => IsNewerWord(p) ? LogbookProblems.UnknownWord.At(p.Where, ("value", p.Facts["value"])) : p)];
        problems = [.. problems.Select(p => p with { Where = path.Length == 0 ? p.Where : path + "." + p.Where })];
        return problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse)
            ? Outcome<Mark>.Refuse(problems)
            : Outcome<Mark>.Of(Take(facts, form, kind, understood: form is not null && !newer), problems);
    }

    /// <summary>
    /// Only who says it, when, and which mark it stands in for; what it says is left as written, whatever it is. For whoever
    /// keeps marks and does not read them.
    /// </summary>
    public static Outcome<Mark> ReadHead(JsonElement element)
    {
        var (facts, problems) = Check(element, null);
        return problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse) ? Outcome<Mark>.Refuse(problems) : Outcome<Mark>.Of(Take(facts, null, KindOf(element), understood: false));
    }

    private static string KindOf(JsonElement element) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty("kind", out var said) && said.ValueKind == JsonValueKind.String ? said.GetString()! : string.Empty;

    private static (JsonFacts Facts, ImmutableArray<Problem> Problems) Check(JsonElement element, FactForm? form)
    {
        var fact = FactForm.Need("fact", form?.Outline ?? new Outline.Thing("fact", []), "what it says");
        var facts = new JsonFacts(element);
        return (facts, [.. OutlineCheck.Check(element, header with { Keys = [.. header.Keys, fact] }).Where(p => form is not null || !IsInside(p.Where)), .. Names(facts, form)]);
    }

    private static bool IsNewerWord(Problem problem) => problem.Kind == JsonProblems.NotAWord && IsInside(problem.Where);

    /// <summary>Nothing is known of the inside of a fact of an unknown kind.</summary>
    private static bool IsInside(string where) => where.StartsWith("fact.", StringComparison.Ordinal);

    private static IEnumerable<Problem> Names(JsonFacts facts, FactForm? form)
    {
        if (Misnamed(facts, "id", "id") is { } id) yield return id;
        if (Misnamed(facts, "replaces", "replaces") is { } replaces) yield return replaces;
        if (form?.Type == typeof(Withdrawn) && !facts.Has("replaces")) yield return LogbookProblems.NothingReplaced.At("replaces");
        if (form?.Type == typeof(FaultMended) && facts.Thing("fact") is { } inside && Misnamed(inside, "fault", "fact.fault") is { } fault) yield return fault;
    }

    private static Problem? Misnamed(JsonFacts facts, string key, string where) =>
        facts.Text(key) is { } text && !MarkId.Holds(text) ? LogbookProblems.NotAName.At(where, ("value", Say.Short(text))) : null;

    private static Mark Take(JsonFacts facts, FactForm? form, string kind, bool understood)
    {
        var fact = facts.Thing("fact")!.Value;
        return new Mark
        {
            Id = new MarkId(facts.Text("id")!),
            Happened = facts.Instant("happened")!.Value,
            Entered = facts.Instant("entered")!.Value,
            By = facts.Text("by")!,
            Device = facts.Text("device")!,
            Sure = MarkWords.Sureness.Find(facts.Text("sure"))!.Value,
            Replaces = facts.Text("replaces") is { } other ? new MarkId(other) : null,
            Note = facts.Text("note"),
            Fact = understood ? form!.Read(fact) : new UnknownFact(kind, fact.Element.GetRawText()) { Field = form is null ? null : fact.Text("field") },
        };
    }
}
