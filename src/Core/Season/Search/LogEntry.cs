using Watersown.Wording;

namespace Watersown.Season.Search;

/// <summary>One mark as the logbook is read.</summary>
/// <param name="Line">The mark, and whether it counts.</param>
public sealed record LogEntry(StoryLine Line)
{
    /// <summary>What it says, in the reader's language and units.</summary>
    public required string Said { get; init; }

    /// <summary>Name of the field, source, batch or trailer that it is about; none where it is about none.</summary>
    public string? About { get; init; }

    /// <summary>The mark that it replaces or takes back; none where it does neither, or where that one has not come in yet.</summary>
    public LogEntry? Replaces { get; init; }

    /// <summary>What is not certain about it.</summary>
    public ImmutableArray<Problem> Doubts { get; init; } = [];

    public Mark Mark => Line.Mark;

    public LogKind Kind => LogKinds.Of(Mark.Fact);

    /// <summary>How long after it happened it was put down; none where that is no longer than an hour.</summary>
    public TimeSpan? LateBy => Line.Late ? Mark.Entered - Mark.Happened : null;

    /// <summary>Everything that can be searched for, in plain letters.</summary>
    internal string Found { get; init; } = string.Empty;

    /// <summary>Every one of these words, already in plain letters, stands in it.</summary>
    internal bool HasAll(ImmutableArray<string> words)
    {
        foreach (var word in words)
        {
            if (!Found.Contains(word, StringComparison.Ordinal)) return false;
        }

        return true;
    }

    /// <summary>What is typed into a search, as words in plain letters.</summary>
    internal static ImmutableArray<string> Words(string? typed) =>
        typed is null ? [] : [.. PlainLetters.Fold(typed).Split([' ', '\t', '\n', '\r', ',', ';'], StringSplitOptions.RemoveEmptyEntries)];
}
