namespace Watersown.Web;

/// <summary>The desk's clock: the machine's own, unless it was set to a moment when the desk started and has run on since.</summary>
/// <param name="machine">The machine's own clock, which drives it.</param>
public sealed class DeskClock(TimeProvider machine) : TimeProvider
{
    private DateTimeOffset? from;
    private long started;

    /// <summary>The moment that it was set to; none where it shows the machine's time.</summary>
    public DateTimeOffset? SetTo => from;

    /// <summary>Shows a moment of a story from now on.</summary>
    public void StartAt(DateTimeOffset moment)
    {
        started = machine.GetTimestamp();
        from = moment;
    }

    public override DateTimeOffset GetUtcNow() => from is { } moment ? moment.ToUniversalTime() + machine.GetElapsedTime(started) : machine.GetUtcNow();

    public override long GetTimestamp() => machine.GetTimestamp();

    public override long TimestampFrequency => machine.TimestampFrequency;

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => machine.CreateTimer(callback, state, dueTime, period);
}
