using Watersown.Documents.Json;
using Watersown.Season;

namespace Watersown.Documents.Logbooks;

/// <summary>How one kind of fact is written and read: its kind, its keys, and both ways between them and the fact.</summary>
internal sealed record FactForm(string Kind, Type Type, Outline.Thing Outline, Action<JsonPen, MarkFact> Write, Func<JsonFacts, MarkFact> Read)
{
    /// <summary>The form of one sort of fact.</summary>
    /// <param name="kind">As written.</param>
    /// <param name="keys">What may stand in it.</param>
    /// <param name="write">Puts a fact down.</param>
    /// <param name="read">Takes a fact out of what has been held against its keys and was found sound.</param>
    public static FactForm Of<T>(string kind, ImmutableArray<OutlineKey> keys, Action<JsonPen, T> write, Func<JsonFacts, T> read)
        where T : MarkFact => new(kind, typeof(T), new Outline.Thing(kind, keys), (pen, fact) => write(pen, (T)fact), facts => read(facts));

    public static OutlineKey Need(string name, Outline value, string meaning) => new(name, value, meaning) { Required = true };

    public static OutlineKey Need(Limit limit, string meaning) => OutlineKey.Of(limit, meaning) with { Required = true };

    public static OutlineKey May(string name, Outline value, string meaning) => new(name, value, meaning);

    public static OutlineKey May(Limit limit, string meaning) => OutlineKey.Of(limit, meaning);

    /// <summary>Code of a field: any text, because a field may be told of before the farm knows it.</summary>
    public static OutlineKey OfField { get; } = Need("field", new Outline.Text(), "field code");

    public static OutlineKey AnyField { get; } = May("field", new Outline.Text(), "field code");

    public static Outline.Text Text { get; } = new();

    public static Outline.Text LongText { get; } = new(4000);
}
