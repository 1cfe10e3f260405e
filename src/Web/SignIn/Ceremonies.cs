using System.Collections.Concurrent;

namespace Watersown.Web.SignIn;

/// <summary>Challenges that were handed out to browsers and are waited for: each once, for a few minutes, and not too many.</summary>
/// <param name="time">The clock.</param>
internal sealed class Ceremonies(TimeProvider time)
{
    private const int Most = 1_000;

    private static readonly TimeSpan lasts = TimeSpan.FromMinutes(5);

    private readonly ConcurrentDictionary<string, (string Options, string Account, long Since)> waiting = new(StringComparer.Ordinal);

    /// <summary>Keeps what was asked; its name goes to the browser. Nothing where too many wait already.</summary>
    public string? Begin(string options, string account)
    {
        foreach (var (key, old) in waiting)
        {
            if (time.GetElapsedTime(old.Since) > lasts) waiting.TryRemove(key, out _);
        }

        if (waiting.Count >= Most) return null;
        var name = Secrets.NewName();
        waiting[name] = (options, account, time.GetTimestamp());
        return name;
    }

    /// <summary>What was asked under a name, once.</summary>
    public (string Options, string Account)? End(string name) =>
        waiting.TryRemove(name, out var kept) && time.GetElapsedTime(kept.Since) <= lasts ? (kept.Options, kept.Account) : null;
}
