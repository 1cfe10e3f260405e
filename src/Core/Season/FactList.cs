using System.Collections;
using System.Runtime.CompilerServices;

namespace Watersown.Season;

/// <summary>A list inside a fact. Two are equal when they hold equal things in the same order, so that two facts are, too.</summary>
[CollectionBuilder(typeof(FactList), nameof(FactList.Of))]
public sealed class FactList<T> : IReadOnlyList<T>, IEquatable<FactList<T>>
{
    private readonly ImmutableArray<T> items;

    internal FactList(ImmutableArray<T> items) => this.items = items;

    public static FactList<T> Empty { get; } = new([]);

    public int Count => items.Length;

    public bool IsEmpty => items.IsEmpty;

    public T this[int index] => items[index];

    public ImmutableArray<T> AsArray() => items;

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public bool Equals(FactList<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as FactList<T>);

    public override int GetHashCode() => items.Aggregate(items.Length, HashCode.Combine);

    public override string ToString() => "[" + string.Join(", ", items) + "]";
}

/// <summary>Makes lists of facts.</summary>
public static class FactList
{
    public static FactList<T> Of<T>(ReadOnlySpan<T> items) => items.IsEmpty ? FactList<T>.Empty : new FactList<T>([.. items]);
}
