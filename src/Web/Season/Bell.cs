namespace Watersown.Web.Season;

/// <summary>Rings when the book has something new, for those who wait to hear of it.</summary>
internal sealed class Bell
{
    private const int WaitersMost = 500;

    private TaskCompletionSource next = New();

    private int waiting;

    public void Ring() => Interlocked.Exchange(ref next, New()).TrySetResult();

    /// <summary>What is waited for, taken before looking whether there is anything, so that no ring is missed.</summary>
    public Task Next => Volatile.Read(ref next).Task;

    /// <summary>Until it rings or the time is up. Where too many wait, not at all: they ask again.</summary>
    public async Task WaitAsync(Task ring, TimeSpan most, CancellationToken stop)
    {
        try
        {
            if (Interlocked.Increment(ref waiting) <= WaitersMost) await ring.WaitAsync(most, stop);
        }
        catch (TimeoutException)
        {
            // Nothing new: that is told, too.
        }
        finally
        {
            Interlocked.Decrement(ref waiting);
        }
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
