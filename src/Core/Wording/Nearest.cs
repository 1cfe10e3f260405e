namespace Watersown.Wording;

/// <summary>Finds the word somebody most likely meant.</summary>
public static class Nearest
{
    /// <summary>The known word with the fewest changed letters; none where none is near.</summary>
    /// <param name="word">As typed.</param>
    /// <param name="known">Words in order of preference; the first of equals wins.</param>
    public static string? Of(string word, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var candidate in known)
        {
            var distance = Distance(word, candidate);
            if (distance >= least) continue;
            (best, least) = (candidate, distance);
        }

        return best is not null && least <= Math.Max(1, Math.Max(word.Length, best.Length) / 2) ? best : null;
    }

    /// <summary>Letters to put in, take out, change, or swap with their neighbor, to get from one word to the other; case is not counted.</summary>
    /// <remarks>Only the first 64 letters count, so that a hostile word cannot hold up the desk.</remarks>
    [PlainNumber("count of letters")]
    public static int Distance(string left, string right)
    {
        string a = Short(left), b = Short(right);
        var before = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var now = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                now[j] = Math.Min(Math.Min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) now[j] = Math.Min(now[j], before[j - 2] + 1);
            }

            (before, last, now) = (last, now, before);
        }

        return last[b.Length];
    }

    private static string Short(string word) => (word.Length > 64 ? word[..64] : word).ToUpperInvariant();
}
