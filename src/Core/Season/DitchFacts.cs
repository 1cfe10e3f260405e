namespace Watersown.Season;

/// <summary>The ditch of a source led into that of another, or parted from it.</summary>
/// <param name="Source">Source code.</param>
/// <param name="Other">Code of the other source.</param>
/// <param name="Joined">Led together; parted where not.</param>
public sealed record DitchesJoined(string Source, string Other, bool Joined) : MarkFact
{
    public override string? AboutSource => Source;
}

/// <summary>What some sources may give together, or that they no longer have such a cap.</summary>
/// <param name="Name">The farm's name for the cap; what is said later of the same name takes its place.</param>
/// <param name="Sources">Codes of the sources under it.</param>
public sealed record CapShared(string Name, FactList<string> Sources) : MarkFact
{
    /// <summary>The most they may give together; none where there is no such cap any more.</summary>
    public FlowRate? Cap { get; init; }
}

/// <summary>What a tailwater return waits for: so many acres of certain fields full.</summary>
/// <param name="Source">Source code.</param>
/// <param name="Fields">Codes of the fields whose water it is.</param>
public sealed record TailwaterWaits(string Source, FactList<string> Fields) : MarkFact
{
    /// <summary>How many acres of them must be full; it waits for none where not told.</summary>
    public Area? Full { get; init; }

    public override string? AboutSource => Source;
}
