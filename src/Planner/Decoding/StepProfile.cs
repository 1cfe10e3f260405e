namespace Watersown.Planner.Decoding;

/// <summary>How much of a shared thing is taken at every step, held as the steps where it changes.</summary>
internal sealed class StepProfile
{
    private readonly List<int> at = [int.MinValue];
    private readonly List<int> taken = [0];

    /// <summary>Steps at which the amount changes.</summary>
    public IReadOnlyList<int> Changes => at;

    public void Clear()
    {
        at.Clear();
        taken.Clear();
        at.Add(int.MinValue);
        taken.Add(0);
    }

    public void Take(int from, int until, int amount)
    {
        if (from >= until || amount == 0) return;
        var first = Cut(from);
        var last = Cut(until);
        for (var i = first; i < last; i++) taken[i] += amount;
    }

    /// <summary>Most taken at any step of a span.</summary>
    public int Peak(int from, int until)
    {
        var i = Find(from);
        var peak = taken[i];
        for (i++; i < at.Count && at[i] < until; i++) peak = Math.Max(peak, taken[i]);
        return peak;
    }

    /// <summary>First start at or after <paramref name="from"/> at which <paramref name="amount"/> fits under <paramref name="cap"/> for so many steps.</summary>
    public int FirstFit(int from, int steps, int amount, int cap)
    {
        var start = from;
        for (var i = Find(start); i < at.Count && at[i] < start + steps; i++)
        {
            if (taken[i] + amount <= cap) continue;
            if (i + 1 >= at.Count) return int.MaxValue;
            start = at[i + 1];
        }

        return start;
    }

    private int Cut(int step)
    {
        var i = Find(step);
        if (at[i] == step) return i;
        at.Insert(i + 1, step);
        taken.Insert(i + 1, taken[i]);
        return i + 1;
    }

    private int Find(int step)
    {
        int low = 0, high = at.Count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (at[middle] <= step) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
