namespace Watersown.Wording;

/// <summary>Words for wind over fields whose seed is loose.</summary>
public sealed partial record TroubleWords
{
    public required string WindTitle { get; init; }

    public required string WindLead { get; init; }

    public required string WindWindow { get; init; }

    public required string WindWindowUsual { get; init; }

    public required string WindNone { get; init; }

    public required string WindCalm { get; init; }

    public required string WindStrongest { get; init; }

    public required string WindOf { get; init; }

    public required string WindFetch { get; init; }

    public required string WindFetchGuess { get; init; }

    public required string WindDepth { get; init; }

    public required string WindDepthGuess { get; init; }

    public required string WindLean { get; init; }

    public required string WindTilt { get; init; }

    public required string WindBare { get; init; }

    public required string WindWaves { get; init; }

    public required string WindPull { get; init; }

    public required string WindPullOf { get; init; }

    public required string WindCalmPull { get; init; }

    public required string WindWatchPull { get; init; }

    public required string WindLikelyPull { get; init; }

    public required string WindSeverePull { get; init; }

    public required string WindLower { get; init; }

    public required string WindLowerChange { get; init; }

    public required string WindLowerBare { get; init; }

    public required string WindLowerDisagree { get; init; }

    public required string WindLowerHold { get; init; }

    public required string WindSown { get; init; }

    public required string WindFirst { get; init; }

    public required string WindPercent { get; init; }

    public required string WindComing { get; init; }

    public required string WindSeen { get; init; }
}
