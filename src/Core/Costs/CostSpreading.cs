namespace Watersown.Costs;

/// <summary>Lays one amount on several fields by their land, to the cent: the parts are the whole.</summary>
public static class CostSpreading
{
    /// <summary>Each field's part; cents that do not divide go to the largest remainders, the first of the list where they are alike.</summary>
    /// <param name="amount">To be laid out.</param>
    /// <param name="land">Net land of each; at least one above nothing.</param>
    /// <exception cref="ArgumentException">No land at all.</exception>
    [Source(nameof(Sources.FarmRecord), "by net land, largest remainders")]
    public static ImmutableArray<Money> By(Money amount, ImmutableArray<Area> land)
    {
        var all = land.Sum(a => a.SquareMeters);
        if (!(all > 0)) throw new ArgumentException("there is no land to lay it on", nameof(land));
        var sign = amount.Amount < 0 ? -1m : 1m;
        var mills = Math.Round(Math.Abs(amount.Amount) * 1000m);
        // A tenth of a cent, as money is kept: what was typed to the cent stays to the cent wherever it divides so.
        var step = mills % 10m == 0 ? 10m : 1m;
        var whole = mills / step;
        var parts = land.Select(a => whole * (decimal)(a.SquareMeters / all)).ToArray();
        var down = parts.Select(Math.Floor).ToArray();
        var left = (int)(whole - down.Sum());
        foreach (var i in Enumerable.Range(0, parts.Length).OrderByDescending(i => parts[i] - down[i]).ThenBy(i => i).Take(left)) down[i]++;
        return [.. down.Select(p => Money.FromDollars(sign * p * step / 1000m))];
    }
}
