using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>Who sends a text message, and what it can leave unsaid.</summary>
/// <param name="State">The season as it stands: its fields, sources and batches.</param>
/// <param name="Now">The moment it came in.</param>
/// <param name="Person">Who sends it.</param>
public sealed record TextContext(SeasonState State, DateTimeOffset Now, string Person)
{
    /// <summary>The sender's language, where the words do not tell.</summary>
    public Language Language { get; init; }

    /// <summary>The field it is about where it names none.</summary>
    public string? Field { get; init; }

    public string? Trailer { get; init; }

    public string? Batch { get; init; }

    /// <summary>The message it answers.</summary>
    public string? Message { get; init; }
}

/// <summary>What a text message was understood to say.</summary>
public sealed record TextReading
{
    public required ImmutableArray<MarkFact> Facts { get; init; }

    /// <summary>The language it was written in.</summary>
    public required Language Language { get; init; }

    /// <summary>What was understood, one line a fact; sent in, it is understood to say the same.</summary>
    public required string Echo { get; init; }

    /// <summary>What has to be asked back.</summary>
    public ImmutableArray<string> Questions { get; init; } = [];

    /// <summary>Words that meant nothing.</summary>
    public ImmutableArray<string> NotUnderstood { get; init; } = [];

    /// <summary>The whole answer to the sender.</summary>
    public required string Reply { get; init; }
}
