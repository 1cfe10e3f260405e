using System.Diagnostics.CodeAnalysis;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;

namespace Watersown.Web.Season;

/// <summary>How the copies of the book stand.</summary>
/// <param name="Last">The newest; each was opened and held against its digests when it was made.</param>
/// <param name="Count">How many there are.</param>
/// <param name="FailedAt">When making one last failed; none where it went well since.</param>
/// <param name="Failure">Why.</param>
internal sealed record CopiesView(BookCopy? Last, int Count, DateTimeOffset? FailedAt, Problem? Failure);

/// <summary>
/// Copies the book once a day in the small hours, or soon after the start where the last copy is older; takes old copies away
/// only after a new one was made and checked. What fails is told on the desk, and tried again within the hour.
/// </summary>
internal sealed partial class DailyCopies(Book book, DeskOptions options, DeskClock clock, Bell bell, ILogger<DailyCopies> log) : BackgroundService
{
    /// <summary>By the machine's clock: nobody marks, and the morning's first question finds a fresh copy.</summary>
    private static readonly TimeSpan hour = new(3, 10, 0);

    private static readonly TimeSpan look = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan afterFailure = TimeSpan.FromMinutes(55);

    private readonly SemaphoreSlim one = new(1, 1);

    private readonly CopyFolder? folder = options.Copies is { } path ? CopyFolder.Of(options.Book, path) : null;

    private volatile CopiesView view = new(null, 0, null, null);

    /// <summary>Copies are made.</summary>
    public bool IsOn => folder is not null;

    public CopiesView View => view;

    /// <summary>Makes a copy now.</summary>
    public async Task<Outcome<CheckedCopy>?> MakeAsync(CancellationToken stop)
    {
        if (folder is null) return null;
        await one.WaitAsync(stop);
        try
        {
            var made = await TryAsync(folder, stop);
            var now = clock.GetUtcNow();
            if (made.HasValue) Prune(folder, now);
            else Failed(log, folder.Path, Wording.Say.Problem(made.Problems[0], Wording.Language.English));
            view = Looked(folder) with { FailedAt = made.HasValue ? null : now, Failure = made.HasValue ? null : made.Problems[0] };
            bell.Ring();
            return made;
        }
        finally
        {
            one.Release();
        }
    }

    /// <summary>Makes one where it is time.</summary>
    public Task LookAsync(CancellationToken stop)
    {
        if (folder is null) return Task.CompletedTask;
        var (now, last) = (clock.GetUtcNow(), folder.List().FirstOrDefault()?.Made);
        if (view.FailedAt is { } failed && now - failed < afterFailure) return Task.CompletedTask;
        if (last is not { } made || IsDue(made, now)) return MakeAsync(stop);
        if (view.Last is null) view = Looked(folder);
        return Task.CompletedTask;
    }

    public override void Dispose()
    {
        one.Dispose();
        base.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (folder is null) return;
        using var hand = new PeriodicTimer(look, clock);
        try
        {
            do await TryLookAsync(stoppingToken);
            while (await hand.WaitForNextTickAsync(stoppingToken));
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The desk is being closed; what was begun leaves nothing behind.
        }
    }

    // The folder may be gone or unreadable: told on the desk, and looked at again; the desk itself goes on.
    [SuppressMessage("Design", "CA1031", Justification = "A look that failed is told and logged; the desk goes on, and tries again.")]
    private async Task TryLookAsync(CancellationToken stop)
    {
        try
        {
            await LookAsync(stop);
        }
        catch (Exception failure) when (!stop.IsCancellationRequested)
        {
            Failed(log, folder!.Path, failure.Message);
            view = view with { FailedAt = clock.GetUtcNow(), Failure = NotMade(folder, failure) };
            bell.Ring();
        }
        catch (ObjectDisposedException)
        {
            // The desk is being closed.
        }
    }

    private bool IsDue(DateTimeOffset last, DateTimeOffset now)
    {
        if (now - last >= TimeSpan.FromDays(1)) return true;
        var here = now.ToOffset(clock.LocalTimeZone.GetUtcOffset(now));
        var due = new DateTimeOffset(here.Date, here.Offset) + hour;
        return now >= due && last < due;
    }

    [SuppressMessage("Design", "CA1031", Justification = "A copy that failed is told and logged; the desk goes on, and tries again.")]
    private async Task<Outcome<CheckedCopy>> TryAsync(CopyFolder to, CancellationToken stop)
    {
        try
        {
            return await to.MakeAsync(book, clock, stop);
        }
        catch (Exception failure) when (!stop.IsCancellationRequested)
        {
            return Outcome<CheckedCopy>.Refuse(NotMade(to, failure));
        }
    }

    private static Problem NotMade(CopyFolder to, Exception failure) => CopyProblems.NotMade.At(to.Path, ("value", failure.Message.TrimEnd('.')));

    private void Prune(CopyFolder from, DateTimeOffset now)
    {
        try
        {
            from.Prune(TimeSpan.FromDays(options.CopyDays), now);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            NotPruned(log, from.Path, failure.Message);
        }
    }

    private static CopiesView Looked(CopyFolder folder)
    {
        var copies = folder.List();
        return new CopiesView(copies.FirstOrDefault(), copies.Length, null, null);
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "No copy of the book was made in {Folder}: {Why}")]
    private static partial void Failed(ILogger log, string folder, string why);

    [LoggerMessage(Level = LogLevel.Warning, Message = "Old copies in {Folder} were not taken away: {Why}")]
    private static partial void NotPruned(ILogger log, string folder, string why);
}
