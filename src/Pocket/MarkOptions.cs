using Watersown.Season;

namespace Watersown.Pocket;

/// <summary>What goes with a mark besides its fact.</summary>
public sealed record MarkOptions
{
    /// <summary>When it happened; now where not said.</summary>
    public DateTimeOffset? Happened { get; init; }

    public Sureness Sure { get; init; } = Sureness.Measured;

    public string? Note { get; init; }

    /// <summary>Who said so, where it is not the person who holds the device: crew who sent a text.</summary>
    public string? By { get; init; }

    /// <summary>The mark that it stands in for.</summary>
    public MarkId? Replaces { get; init; }

    /// <summary>What the person pressed, in the page's words: shown with the offer to undo.</summary>
    public string? Said { get; init; }

    /// <summary>One of several marks of one press: taking back the last alone would leave half of it, so the page offers the undoing itself.</summary>
    public bool PageUndoes { get; init; }
}
