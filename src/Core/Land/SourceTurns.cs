namespace Watersown.Land;

/// <summary>A source that is served in turns: on for so long out of every so long, season in, season out.</summary>
/// <param name="From">A moment at which a turn begins; turns before it and after it follow from it.</param>
/// <param name="On">How long a turn lasts.</param>
/// <param name="Every">From the beginning of a turn to the beginning of the next.</param>
public sealed record SourceTurns(DateTimeOffset From, TimeSpan On, TimeSpan Every)
{
    /// <summary>What comes in a turn; as much as the source can give where not told.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>Of all the time, how much it is on.</summary>
    public Fraction Share => Fraction.FromShare(On / Every);

    /// <summary>It is on at a moment; the moment at which a turn ends is no longer in it.</summary>
    public bool Runs(DateTimeOffset at) => Within(at) < On;

    /// <summary>When it next comes on or goes off after a moment.</summary>
    public DateTimeOffset NextChange(DateTimeOffset at)
    {
        var within = Within(at);
        return at + ((within < On ? On : Every) - within);
    }

    private TimeSpan Within(DateTimeOffset at)
    {
        var ticks = (at - From).Ticks % Every.Ticks;
        return new TimeSpan(ticks < 0 ? ticks + Every.Ticks : ticks);
    }
}

/// <summary>A source held to less than it can give, told ahead.</summary>
/// <param name="From">From when.</param>
public sealed record Curtailment(DateTimeOffset From)
{
    /// <summary>Until when; until further notice where not told.</summary>
    public DateTimeOffset? Until { get; init; }

    /// <summary>What is left of it.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>What is left of the most it can give, where that is told instead.</summary>
    public Fraction? Share { get; init; }

    /// <summary>It holds at a moment.</summary>
    public bool Holds(DateTimeOffset at) => From <= at && (Until is not { } end || at < end);

    /// <summary>The most that is left of what a source can give.</summary>
    public FlowRate Left(FlowRate cap)
    {
        var left = Flow ?? cap * (Share ?? Fraction.One).Share;
        return left < cap ? left : cap;
    }
}
