namespace Watersown.Flight.Flown;

/// <summary>Why a place of a track was not used.</summary>
public enum DropReason
{
    /// <summary>The line's sum does not agree with the line.</summary>
    BadChecksum,

    /// <summary>The receiver itself said that it had no position.</summary>
    NoPosition,

    /// <summary>What should be a place cannot be read as one.</summary>
    Unreadable,

    /// <summary>Beyond a pole, beyond 180°, no number, or exactly 0, 0.</summary>
    OffTheEarth,

    /// <summary>No time where those before had one.</summary>
    NoTime,

    /// <summary>The time of the one before.</summary>
    SameTime,

    /// <summary>A time before the one before.</summary>
    TimeBack,

    /// <summary>Farther away than an aeroplane gets in the time.</summary>
    Jump,
}

/// <summary>How many were dropped for one reason.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Count">How many.</param>
/// <param name="First">The first of them: its line in a file of lines, else the how manieth place.</param>
public sealed record Dropped(DropReason Reason, long Count, long First);

/// <summary>Counts what is dropped, by reason.</summary>
public sealed class DropTally
{
    private static readonly int reasons = Enum.GetValues<DropReason>().Length;

    private readonly long[] counts = new long[reasons];
    private readonly long[] firsts = new long[reasons];

    public ImmutableArray<Dropped> All =>
        [.. Enum.GetValues<DropReason>().Where(r => counts[(int)r] > 0).Select(r => new Dropped(r, counts[(int)r], firsts[(int)r]))];

    /// <summary>One more.</summary>
    /// <param name="reason">Why.</param>
    /// <param name="at">Its line or number.</param>
    public void Add(DropReason reason, long at)
    {
        if (counts[(int)reason]++ == 0) firsts[(int)reason] = at;
    }
}
