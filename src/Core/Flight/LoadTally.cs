namespace Watersown.Flight;

/// <summary>The remainder rule: whole weights that a loader can tick and that add up to the field's weight exactly.</summary>
public static class LoadTally
{
    /// <summary>
    /// Splits a whole weight into so many whole loads, none more than one unit above another; what does not divide goes one
    /// unit each into the last loads.
    /// </summary>
    /// <param name="total">Whole weight; not below zero.</param>
    /// <param name="loads">Number of loads; at least one.</param>
    [Source(nameof(Sources.Arithmetic), "equal whole shares, remainder one each into the last")]
    public static ImmutableArray<int> Shares(int total, int loads)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(total);
        ArgumentOutOfRangeException.ThrowIfLessThan(loads, 1);
        var (each, over) = Math.DivRem(total, loads);
        return [.. Enumerable.Range(0, loads).Select(i => i < loads - over ? each : each + 1)];
    }

    /// <summary>Running totals: what is out after each load; the last is the whole.</summary>
    [Source(nameof(Sources.Arithmetic), "whole × so far / all")]
    public static ImmutableArray<int> SoFar(int total, ImmutableArray<int> shares)
    {
        long all = Math.Max(1, shares.Sum(s => (long)s)), gone = 0;
        var running = ImmutableArray.CreateBuilder<int>(shares.Length);
        foreach (var share in shares)
        {
            gone += share;
            running.Add((int)(((total * gone * 2) + all) / (all * 2))); // nearest whole, halves up
        }

        return running.ToImmutable();
    }
}
