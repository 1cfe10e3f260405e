namespace Watersown.Database;

/// <summary>A clock that a test sets by hand.</summary>
internal sealed class HandClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 5, 8, 11, 50, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
}
