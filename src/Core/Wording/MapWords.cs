namespace Watersown.Wording;

/// <summary>Words of the map, and of what may be near a field.</summary>
public sealed partial record MapWords
{
    public required string Title { get; init; }

    public required string NorthUp { get; init; }

    public required string North { get; init; }

    public required string FromBoundary { get; init; }

    public required string FromAcres { get; init; }

    public required string FromAcresNorth { get; init; }

    public required string RunWished { get; init; }

    public required string RunOpen { get; init; }

    public required string Passes { get; init; }

    public required string Strip { get; init; }

    public required string Leaks { get; init; }

    public required string Sown { get; init; }

    public required string Full { get; init; }

    public required string Filling { get; init; }

    public required string DryGround { get; init; }

    public required string NotTold { get; init; }

    public required string HasHole { get; init; }

    public required string LeveesUnknown { get; init; }

    public required string NoMap { get; init; }

    public required string NoHazards { get; init; }

    public required string Beyond { get; init; }

    public required string Wire { get; init; }

    public required string Tower { get; init; }

    public required string Pole { get; init; }

    public required string Trees { get; init; }

    public required string House { get; init; }

    public required string School { get; init; }

    public required string Livestock { get; init; }

    public required string Bees { get; init; }

    public required string SensitiveCrop { get; init; }

    public required string WaterIntake { get; init; }

    public required string Pond { get; init; }

    public required string Road { get; init; }

    public required string Other { get; init; }

    public required string NotSown { get; init; }
}
