namespace Watersown.Season;

/// <summary>
/// All marks that a device has: a set, joined by the marks' names. Joining two in any order, and any number of times, gives
/// the same logbook.
/// </summary>
public sealed class Logbook
{
    private readonly ImmutableDictionary<MarkId, Mark> byId;

    private Logbook(ImmutableDictionary<MarkId, Mark> byId)
    {
        this.byId = byId;
        Marks = [.. byId.Values.Order(MarkOrder.Happened)];
    }

    public static Logbook Empty { get; } = new(ImmutableDictionary<MarkId, Mark>.Empty);

    /// <summary>In order of when they happened, then of when they were entered, then of their names.</summary>
    public ImmutableArray<Mark> Marks { get; }

    public int Count => Marks.Length;

    public Mark? Find(MarkId id) => byId.GetValueOrDefault(id);

    public bool Has(MarkId id) => byId.ContainsKey(id);

    /// <summary>This logbook with more marks. A name that is there already changes nothing.</summary>
    public Logbook With(params IEnumerable<Mark> marks)
    {
        var joined = byId.ToBuilder();
        foreach (var mark in marks) joined[mark.Id] = joined.TryGetValue(mark.Id, out var other) ? MarkOrder.Kept(mark, other) : mark;
        return joined.Count == byId.Count && joined.All(m => ReferenceEquals(byId[m.Key], m.Value)) ? this : new Logbook(joined.ToImmutable());
    }

    /// <summary>Both logbooks together.</summary>
    public Logbook Merge(Logbook other) => With(other.Marks);

    /// <summary>What had been put down by a moment: the answer to "what did I know then".</summary>
    public Logbook KnownAt(DateTimeOffset entered) => Empty.With(Marks.Where(m => m.Entered <= entered));
}
