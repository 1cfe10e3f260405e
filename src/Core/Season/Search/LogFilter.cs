namespace Watersown.Season.Search;

/// <summary>Which marks are wanted. What is not said is no bar.</summary>
public sealed record LogFilter
{
    /// <summary>Words that all stand in it, in any order; letters with or without their marks.</summary>
    public string? Words { get; init; }

    /// <summary>Field code.</summary>
    public string? Field { get; init; }

    /// <summary>Number of a check of the field.</summary>
    public int? Check { get; init; }

    public LogKind? Kind { get; init; }

    /// <summary>Who said so.</summary>
    public string? By { get; init; }

    /// <summary>Name of the device.</summary>
    public string? Device { get; init; }

    public Sureness? Sure { get; init; }

    /// <summary>Only what the host does not have yet.</summary>
    public bool UnsentOnly { get; init; }

    /// <summary>Only what somebody should look at again.</summary>
    public bool DoubtsOnly { get; init; }

    /// <summary>By when it was put down, and not by when it happened.</summary>
    public bool ByEntered { get; init; }

    /// <summary>How many choices narrow the marks down; the words are not counted.</summary>
    public int Choices => ((ReadOnlySpan<bool>)[Field is not null, Check is not null, Kind is not null, By is not null, Device is not null, Sure is not null, UnsentOnly, DoubtsOnly]).Count(true);

    internal bool Holds(LogEntry entry)
    {
        var mark = entry.Mark;
        return (string.IsNullOrEmpty(Field) || string.Equals(mark.Fact.AboutField, Field, StringComparison.OrdinalIgnoreCase))
            && (Check is null || LogKinds.CheckOf(mark.Fact) == Check)
            && (Kind is null || entry.Kind == Kind)
            && (string.IsNullOrEmpty(By) || mark.By == By)
            && (string.IsNullOrEmpty(Device) || mark.Device == Device)
            && (Sure is null || mark.Sure == Sure)
            && (!DoubtsOnly || !entry.Doubts.IsEmpty);
    }
}
