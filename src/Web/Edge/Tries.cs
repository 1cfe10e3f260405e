namespace Watersown.Web.Edge;

/// <summary>
/// How often one asker may do one thing: so many in a span, counted for each key apart. Holds a bounded number of keys; where
/// more come, the oldest are forgotten, so that an attack with many addresses cannot fill the memory.
/// </summary>
/// <param name="most">How many in a span.</param>
/// <param name="span">The span.</param>
/// <param name="time">The clock.</param>
internal sealed class Tries(int most, TimeSpan span, TimeProvider time)
{
    private const int KeysMost = 20_000;

    private readonly Lock gate = new();

    private readonly Dictionary<string, (long Since, int Count)> counted = new(StringComparer.Ordinal);

    /// <summary>Counts one more; the time to wait where that is too many.</summary>
    public TimeSpan? Count(string key)
    {
        lock (gate)
        {
            var now = time.GetTimestamp();
            var (since, count) = counted.GetValueOrDefault(key, (now, 0));
            if (time.GetElapsedTime(since, now) >= span) (since, count) = (now, 0);
            if (count >= most) return span - time.GetElapsedTime(since, now);
            if (counted.Count >= KeysMost && !counted.ContainsKey(key)) Forget(now);
            counted[key] = (since, count + 1);
            return null;
        }
    }

    /// <summary>The time to wait where there were too many; counts nothing.</summary>
    public TimeSpan? Wait(string key)
    {
        lock (gate)
        {
            if (!counted.TryGetValue(key, out var kept) || kept.Count < most) return null;
            var left = span - time.GetElapsedTime(kept.Since);
            return left > TimeSpan.Zero ? left : null;
        }
    }

    /// <summary>It went well: what was counted against the key is forgotten.</summary>
    public void Clear(string key)
    {
        lock (gate) counted.Remove(key);
    }

    private void Forget(long now)
    {
        foreach (var (key, kept) in counted.ToList())
        {
            if (time.GetElapsedTime(kept.Since, now) >= span) counted.Remove(key);
        }

        foreach (var key in counted.OrderBy(k => k.Value.Since).Take(counted.Count - (KeysMost * 9 / 10)).Select(k => k.Key).ToList()) counted.Remove(key);
    }
}

/// <summary>The limits of one desk.</summary>
internal sealed class RateLimits
{
    public RateLimits(TimeProvider time)
    {
        SignInByAddress = new Tries(30, TimeSpan.FromMinutes(10), time);
        SignInByName = new Tries(10, TimeSpan.FromMinutes(10), time);
        Marks = new Tries(600, TimeSpan.FromMinutes(1), time);
        LinksMade = new Tries(120, TimeSpan.FromMinutes(10), time);
        LinksSeen = new Tries(120, TimeSpan.FromMinutes(1), time);
        LinksGuessed = new Tries(20, TimeSpan.FromMinutes(10), time);
        LinkAnswers = new Tries(60, TimeSpan.FromMinutes(10), time);
        Texts = new Tries(30, TimeSpan.FromMinutes(10), time);
        TextSecrets = new Tries(10, TimeSpan.FromMinutes(10), time);
        Uploads = new Tries(120, TimeSpan.FromMinutes(10), time);
    }

    public Tries SignInByAddress { get; }

    public Tries SignInByName { get; }

    public Tries Marks { get; }

    public Tries LinksMade { get; }

    public Tries LinksSeen { get; }

    public Tries LinksGuessed { get; }

    public Tries LinkAnswers { get; }

    public Tries Texts { get; }

    public Tries TextSecrets { get; }

    public Tries Uploads { get; }

    /// <summary>The address that a request comes from.</summary>
    public static string Address(HttpContext context) => context.Connection.RemoteIpAddress?.ToString() ?? "?";
}
