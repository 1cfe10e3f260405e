namespace Watersown.Wording;

/// <summary>Words of the Morning page.</summary>
public sealed partial record MorningWords
{
    public required string Title { get; init; }
}
