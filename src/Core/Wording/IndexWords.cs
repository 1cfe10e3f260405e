namespace Watersown.Wording;

/// <summary>Words of the list of everything printed.</summary>
public sealed partial record IndexWords
{
    public required string Title { get; init; }

    public required string ForDay { get; init; }

    public required string Sheets { get; init; }

    public required string Sheet { get; init; }

    public required string What { get; init; }

    public required string Open { get; init; }

    public required string Others { get; init; }

    public required string Texts { get; init; }

    public required string TextsJson { get; init; }

    public required string Calendar { get; init; }
}
