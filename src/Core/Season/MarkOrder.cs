namespace Watersown.Season;

/// <summary>Orders of marks that are the same on every device.</summary>
internal static class MarkOrder
{
    /// <summary>As it happened.</summary>
    public static IComparer<Mark> Happened { get; } = Comparer<Mark>.Create((a, b) => First(a.Happened.CompareTo(b.Happened), a.Entered.CompareTo(b.Entered), a.Id.CompareTo(b.Id)));

    /// <summary>As it was put down.</summary>
    public static IComparer<Mark> Entered { get; } = Comparer<Mark>.Create((a, b) => First(a.Entered.CompareTo(b.Entered), a.Id.CompareTo(b.Id)));

    /// <summary>
    /// Two marks of one name are one mark, unless a device is broken. Then one is kept, by their contents and not by which
    /// came first, so that joining stays the same in any order.
    /// </summary>
    public static Mark Kept(Mark one, Mark other)
    {
        if (one.Equals(other)) return other;
        var order = First(one.Entered.CompareTo(other.Entered), one.Happened.CompareTo(other.Happened), string.CompareOrdinal(one.ToString(), other.ToString()));
        return order < 0 ? one : other;
    }

    private static int First(params ReadOnlySpan<int> orders)
    {
        foreach (var order in orders)
        {
            if (order != 0) return order;
        }

        return 0;
    }
}
