using Watersown.Documents.Farms;
using Watersown.Documents.Plan;
using Watersown.Records.Database;
using Watersown.Records.Season;
using Watersown.Schedule;
using Watersown.Season;

namespace Watersown.Web.Season;

/// <summary>The book as this host last read it: the farm, every mark, and which plan is the newest.</summary>
/// <param name="Book">Name of the book: another one where a copy was brought back.</param>
/// <param name="Farm">The farm document.</param>
/// <param name="Ground">The same as a season's ground; none where it cannot be read any more.</param>
/// <param name="Log">Every mark.</param>
/// <param name="Upto">Number of the last mark.</param>
/// <param name="Plan">The newest plan as kept.</param>
internal sealed record KnownSeason(string Book, FarmVersion Farm, SeasonState Ground, Logbook Log, long Upto, IssuedPlan? Plan)
{
    /// <summary>The season at a moment.</summary>
    public SeasonBook BookAt(DateTimeOffset now) => SeasonFold.Fold(Ground, Log, now);
}

/// <summary>
/// Keeps the season in memory beside the book, so that pages and plans need not read it all again. The book stays the truth:
/// new marks are read from it, and everything anew from time to time, for another program may write into it too.
/// </summary>
internal sealed class LiveSeason(Book book, TimeProvider time, Bell bell) : IDisposable
{
    private static readonly TimeSpan lookAgain = TimeSpan.FromSeconds(10);

    private readonly SemaphoreSlim gate = new(1, 1);

    private KnownSeason? known;

    private long looked;

    private bool stale = true;

    /// <summary>Something other than marks was written: look at all of it next time, and let those who wait know.</summary>
    public void Changed()
    {
        Volatile.Write(ref stale, true);
        bell.Ring();
    }

    /// <summary>Marks were written.</summary>
    public void Marked() => bell.Ring();

    /// <summary>The season as the book has it now; none before the book has a farm.</summary>
    public async Task<KnownSeason?> ReadAsync(CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            if (known is null || Volatile.Read(ref stale) || time.GetElapsedTime(looked) > lookAgain) await LookAsync(stop);
            else if (await book.UptoAsync(stop) is var upto && upto != known.Upto) known = upto < known.Upto ? null : await WithMarksAsync(known, stop);
            if (known is null) await LookAsync(stop);
            return known;
        }
        finally
        {
            gate.Release();
        }
    }

    public void Dispose() => gate.Dispose();

    private async Task LookAsync(CancellationToken stop)
    {
        // Set before looking: what is written meanwhile is looked at again.
        Volatile.Write(ref stale, false);
        looked = time.GetTimestamp();
        if (await book.LatestFarmAsync(stop) is not { } farm)
        {
            known = null;
            return;
        }

        var plan = await book.LatestPlanAsync(stop);
        var name = await book.IdentityAsync(stop);
        var same = known is not null && known.Book == name && known.Farm.Version == farm.Version && known.Farm.Document.Span.SequenceEqual(farm.Document.Span) && await book.UptoAsync(stop) >= known.Upto;
        var ground = same ? known!.Ground : FarmReading.Read(farm.Document, new FarmContext(farm.Saved)).Value;
        known = await WithMarksAsync(new KnownSeason(name, farm, ground, same ? known!.Log : Logbook.Empty, same ? known!.Upto : 0, plan), stop);
    }

    private async Task<KnownSeason> WithMarksAsync(KnownSeason before, CancellationToken stop)
    {
        var (log, upto) = await OpenSeason.MarksAsync(book, before.Log, before.Upto, stop);
        return before with { Log = log, Upto = upto };
    }

    /// <summary>A kept plan, laid on the season as it stands now; none where it cannot be read any more.</summary>
    public static SeasonPlan? Open(IssuedPlan? kept, SeasonState state) =>
        kept is not null && PlanReading.Read(kept.Document, state) is { HasValue: true } read ? read.Value : null;
}
