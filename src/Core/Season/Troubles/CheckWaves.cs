using Watersown.Water;
using Watersown.Weather;

namespace Watersown.Season.Troubles;

/// <summary>What one wind does over one check, by wave theory and the balance of leaning water.</summary>
/// <param name="Check">Number of the check; none where the field is one.</param>
/// <param name="Fetch">Water along the wind.</param>
/// <param name="Depth">Depth told of the check or the field, or the sowing depth.</param>
public sealed record CheckWaves(int? Check, Length Fetch, WaterDepth Depth)
{
    public required WaterWaves Waves { get; init; }

    /// <summary>Speed of the water over the soil for that which moves seed.</summary>
    [PlainNumber("speed over the speed that moves seed; its order means more than its size")]
    public required double Pull { get; init; }

    public required LeaningWater Lean { get; init; }

    public DriftBand Band => SeedDrift.BandOf(Pull);

    /// <summary>The waves of one check under one wind.</summary>
    [Source(nameof(Sources.YoungVerhagen1996))]
    [Source(nameof(Sources.KomarMiller1974))]
    public static CheckWaves Of(CheckFetch check, WaterDepth depth, Speed wind)
    {
        var waves = Water.Waves.Of(wind, check.Fetch, depth);
        return new CheckWaves(check.Check, check.Fetch, depth) { Waves = waves, Pull = SeedDrift.Pull(waves), Lean = WindSetup.Of(wind, check.Fetch, depth) };
    }

    /// <summary>The way to the pull, with how little is known of it.</summary>
    internal Working Show(Wind wind)
    {
        var other = Water.Waves.HeightByShoreManual(wind.Sustained, Fetch, Depth);
        return Working.Empty
            .Given("U", "strongest wind" + (Check is { } n ? ", worst check " + Wording.Say.Number(n) : string.Empty), wind.Sustained.MetersPerSecond, "m/s", wind.Issued is null ? "seen" : "forecast", wind.At)
            .Given("F", "water along it", Fetch.Meters, "m", "field")
            .Given("h", "depth there", Depth.Meters, "m", "stick, else the sowing depth")
            .Step("H", "height of the waves", Waves.Height.Meters, "m", "4 √E, E = 0.00364 [tanh A tanh(B / tanh A)]^1.74 U⁴ / g², A = 0.493 (g h / U²)^0.75, B = 0.00313 (g F / U²)^0.57, at most 0.6 h", Sources.YoungVerhagen1996)
            .Step("H2", "the same by another law", other.Meters, "m", "0.283 UA²/g tanh a tanh(0.00565 √(g F)/UA / tanh a), a = 0.530 (g h / UA²)^0.75, UA = 0.71 U^1.23", Sources.ShoreProtectionManual)
            .Step("T", "their period", Waves.Period.TotalSeconds, "s", "U / (0.133 g) [tanh A tanh(B / tanh A)]^0.37, A = 0.331 (g h / U²)^1.01, B = 0.0005215 (g F / U²)^0.73", Sources.YoungVerhagen1996)
            .Step("Uw", "speed of the water over the soil", Waves.AtBed.MetersPerSecond, "m/s", "π H / (T sinh k h), (2π / T)² = g k tanh k h", Sources.Soulsby1997.At("eq. 54"))
            .Step("Ucr", "speed that just moves soaked seed", Moves.MetersPerSecond, "m/s", "[1.09 g (1.15 − 1)]^(4/7) 0.0035^(3/7) T^(1/7)", Sources.KomarMiller1974)
            .Step("M", "pull on seed: from 1 on it may move. Fitted to water a meter deep and more: to rank by", Pull, string.Empty, "Uw / Ucr", Sources.FarmDefault)
            .Step("z", "lean of the water from end to end", Lean.Tilt.Inches, "in", "dh/dx = τ / (ρ g h), τ = ρa CD U², CD = 0.001 (1.1 + 0.035 U)", Sources.CoastalEngineeringManual)
            .Step("x", "soil laid bare at the upwind levee", Lean.Bare.Feet, "ft", "F − (3 h F / (2 √(2 m)))^(2/3), m = τ / (ρ g), where the water does not reach", Sources.CoastalEngineeringManual);
    }

    private Speed Moves => Waves.Period <= TimeSpan.Zero ? Speed.Zero : SeedDrift.Threshold(SeedDrift.Grain, SeedDrift.Heaviness, Waves.Period);
}
