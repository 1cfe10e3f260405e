namespace Watersown.Wording;

/// <summary>Words in files that are handed to a flying service or anyone else.</summary>
public sealed partial record HandoutWords
{
    public required string Title { get; init; }

    public required string Fields { get; init; }

    public required string Passes { get; init; }

    public required string Hazards { get; init; }

    public required string Strips { get; init; }

    public required string Flown { get; init; }

    public required string FieldAbout { get; init; }

    public required string FieldAboutNoRate { get; init; }

    public required string PassName { get; init; }

    public required string SoakedSeed { get; init; }

    public required string SowTask { get; init; }

    public required string RunName { get; init; }

    public required string GateInferred { get; init; }

    public required string HazardHeight { get; init; }

    public required string HazardSeen { get; init; }

    public required string HazardUnseen { get; init; }

    /// <summary>What every such file says of itself, in order.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    public required string Readme { get; init; }
}
