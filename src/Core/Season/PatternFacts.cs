using Watersown.Flight.Patterns;

namespace Watersown.Season;

/// <summary>How an aeroplane spreads was tested with trays.</summary>
/// <param name="Day">The day of the test.</param>
/// <param name="Passes">What each pass left on each tray, left to right seen along the flight.</param>
/// <param name="Spacing">From tray to tray.</param>
/// <param name="Tray">Area of one.</param>
public sealed record PatternTested(DateOnly Day, FactList<FactList<SoakedSeed>> Passes, Length Spacing, Area Tray) : MarkFact
{
    /// <summary>Name of the aeroplane; the farm's only one where not given.</summary>
    public string? Aeroplane { get; init; }

    /// <summary>What was flown.</summary>
    public string? Seed { get; init; }

    /// <summary>How far right of the flight line the middle of the row lay.</summary>
    public Length Offset { get; init; }

    public Speed? Speed { get; init; }

    public MassFlow? Gate { get; init; }

    public SoakedSeed? ThousandGrains { get; init; }

    /// <summary>The fact of a test.</summary>
    public static PatternTested Of(TrayTest test) => new(test.Day, [.. test.Passes.Select(p => (FactList<SoakedSeed>)[.. p])], test.Spacing, test.Tray)
    {
        Aeroplane = test.Aeroplane,
        Seed = test.Seed,
        Offset = test.Offset,
        Speed = test.Speed,
        Gate = test.Gate,
        ThousandGrains = test.ThousandGrains,
    };

    /// <summary>The test of the fact.</summary>
    public TrayTest ToTest() => new()
    {
        Day = Day,
        Passes = [.. Passes.Select(p => p.AsArray())],
        Spacing = Spacing,
        Tray = Tray,
        Aeroplane = Aeroplane,
        Seed = Seed,
        Offset = Offset,
        Speed = Speed,
        Gate = Gate,
        ThousandGrains = ThousandGrains,
    };
}
