using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>What wind does to a check: lean, waves, and the pull on loose seed.</summary>
internal static class WindReckoning
{
    public static Reckoning Reckoning => new(
        "wind-on-water",
        "What does this wind do to a check: how far does its water lean, how high are its waves, and do they move loose seed?",
        [
            new("wind_mph", KeyKind.Number, "mph", "steady wind ten meters up, as forecasts tell it") { Least = 0, Most = 100 },
            new("fetch_ft", KeyKind.Number, "ft", "water from levee to levee along the wind") { Least = 1, Most = 20_000 },
            new("depth_in", KeyKind.Number, "in", "mean depth") { Least = 0.25, Most = 36 },
            new("lower_to_in", KeyKind.Number, "in", "depth with the boards lowered, to see what it would change") { Least = 0.25, Most = 36, Optional = true },
            new("seed_mm", KeyKind.Number, "mm", "sphere of a soaked seed's volume; 3.5 where left out") { Least = 1, Most = 10, Optional = true },
            new("seed_heaviness", KeyKind.Number, string.Empty, "a soaked seed's weight over that of as much water; 1.15 where left out") { Least = 1.01, Most = 2, Optional = true },
            new("shelter", KeyKind.Number, string.Empty, "what the soil adds to the seed's hold: 1 smooth, 1.2 cloddy, 1.5 grooved; 1 where left out") { Least = 1, Most = 3, Optional = true },
        ],
        [
            new("pull", KeyKind.Number, string.Empty, "speed of the water over the soil for that which moves seed"),
            new("band", KeyKind.Text, string.Empty, "a word for it: calm, watch, likely, severe"),
            new("bare_ft", KeyKind.Number, "ft", "soil laid bare at the upwind levee"),
            new("upwind_in", KeyKind.Number, "in", "depth left at the upwind levee"),
            new("downwind_in", KeyKind.Number, "in", "depth at the downwind levee"),
            new("wave_in", KeyKind.Number, "in", "height of the waves"),
            new("wave_other_law_in", KeyKind.Number, "in", "the same by another law"),
            new("bed_speed_mps", KeyKind.Number, "m/s", "speed of the water over the soil"),
            new("moving_speed_mps", KeyKind.Number, "m/s", "speed that just moves the seed") { NullMeans = "no waves" },
            new("lowered_pull", KeyKind.Number, string.Empty, "pull with the boards lowered") { NullMeans = "no lower depth given" },
            new("lowered_bare_ft", KeyKind.Number, "ft", "bare soil with the boards lowered") { NullMeans = "no lower depth given" },
        ],
        Sources.YoungVerhagen1996.At("eqs 25 to 27"),
        "wind_mph=15 fetch_ft=1320 depth_in=4 lower_to_in=2",
        Work)
    {
        Limits = "The laws were fitted to water a meter deep and more and to kilometers of fetch: here they only rank. Growers report shallower water calmer than they say. "
            + "Bands (watch 0.7, likely 1.0, severe 1.3) and seed are assumptions; set yours by what moved on your own fields.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var seed = new SeedGrain(Length.FromMeters((given.NumberOrNone("seed_mm") ?? (SeedDrift.Grain.Meters * 1000)) / 1000), given.NumberOrNone("seed_heaviness") ?? SeedDrift.Heaviness, given.NumberOrNone("shelter") ?? 1);
        var (wind, fetch) = (Speed.FromMilesPerHour(given.Number("wind_mph")), Length.FromFeet(given.Number("fetch_ft")));
        var now = Answer.Of(wind, fetch, WaterDepth.FromInches(given.Number("depth_in")), seed);
        var lowered = given.NumberOrNone("lower_to_in") is { } lower ? Answer.Of(wind, fetch, WaterDepth.FromInches(lower), seed) : null;
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("pull", now.Pull),
                ("band", Word(SeedDrift.BandOf(now.Pull))),
                ("bare_ft", now.Lean.Bare.Feet),
                ("upwind_in", now.Lean.Upwind.Inches),
                ("downwind_in", now.Lean.Downwind.Inches),
                ("wave_in", now.Waves.Height.Meters / 0.0254),
                ("wave_other_law_in", now.OtherHeight.Meters / 0.0254),
                ("bed_speed_mps", now.Waves.AtBed.MetersPerSecond),
                ("moving_speed_mps", Datum.Of(now.Moving?.MetersPerSecond)),
                ("lowered_pull", Datum.Of(lowered?.Pull)),
                ("lowered_bare_ft", Datum.Of(lowered?.Lean.Bare.Feet)),
            ],
            Show(given, seed, now, lowered))
        { Cautions = [.. Cautions(now, lowered)] });
    }

    private static Working Show(ReckoningInput given, SeedGrain seed, Answer now, Answer? lowered)
    {
        var working = Working.Empty
            .Given("U", "wind ten meters up", given.Number("wind_mph"), "mph", "typed")
            .Given("F", "water along it", given.Number("fetch_ft"), "ft", "typed")
            .Given("h", "depth", given.Number("depth_in"), "in", "typed")
            .Given("d", "sphere of a seed's volume", seed.Grain.Meters * 1000, "mm", given.Has("seed_mm") ? "typed" : "assumed")
            .Given("s", "its weight over that of as much water", seed.Heaviness, string.Empty, given.Has("seed_heaviness") ? "typed" : "assumed")
            .Given("c", "shelter of the soil", seed.Shelter, string.Empty, given.Has("shelter") ? "typed" : "smooth")
            .Step("h0", "depth left at the upwind levee", now.Lean.Upwind.Inches, "in", "((h0² + 2 m F)^1.5 − h0³) / (3 m F) = h, m = ρa CD U² / (ρ g), CD = 0.001 (1.1 + 0.035 U)", Sources.CoastalEngineeringManual.At("part II-2"))
            .Step("x", "soil laid bare there", now.Lean.Bare.Feet, "ft", "F − (3 h F / (2 √(2 m)))^(2/3) where h < (2/3) √(2 m F), else 0", Sources.CoastalEngineeringManual.At("part II-2"))
            .Step("H", "height of the waves", now.Waves.Height.Meters, "m", "4 √E, E = 0.00364 [tanh A tanh(B / tanh A)]^1.74 U⁴ / g², A = 0.493 (g h / U²)^0.75, B = 0.00313 (g F / U²)^0.57, at most 0.6 h", Sources.YoungVerhagen1996)
            .Step("H2", "the same by another law", now.OtherHeight.Meters, "m", "0.283 UA²/g tanh a tanh(0.00565 √(g F)/UA / tanh a), a = 0.530 (g h / UA²)^0.75, UA = 0.71 U^1.23", Sources.ShoreProtectionManual.At("eq. 3-39"))
            .Step("T", "their period", now.Waves.Period.TotalSeconds, "s", "U / (0.133 g) [tanh A tanh(B / tanh A)]^0.37, A = 0.331 (g h / U²)^1.01, B = 0.0005215 (g F / U²)^0.73", Sources.YoungVerhagen1996)
            .Step("Uw", "speed of the water over the soil", now.Waves.AtBed.MetersPerSecond, "m/s", "π H / (T sinh k h), (2π / T)² = g k tanh k h", Sources.Soulsby1997.At("eq. 54"))
            .Step("Ucr", "speed that just moves the seed", Datum.Of(now.Moving?.MetersPerSecond), "m/s", "c [1.09 g (s − 1)]^(4/7) d^(3/7) T^(1/7)", Sources.KomarMiller1974)
            .Step("M", "pull on the seed", now.Pull, string.Empty, "Uw / Ucr", Sources.FarmDefault);
        return lowered is null ? working : working
            .Given("h'", "depth with the boards lowered", given.Number("lower_to_in"), "in", "typed")
            .Step("M'", "pull then", lowered.Pull, string.Empty, "the same with h'", Sources.FarmDefault)
            .Step("x'", "bare soil then", lowered.Lean.Bare.Feet, "ft", "the same with h'", Sources.CoastalEngineeringManual.At("part II-2"));
    }

    private static string Word(DriftBand band) => band switch
    {
        DriftBand.Calm => "calm",
        DriftBand.Watch => "watch",
        DriftBand.Likely => "likely",
        DriftBand.Severe => "severe",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static IEnumerable<string> Cautions(Answer now, Answer? lowered)
    {
        if (now.Lean.Bare > Length.Zero) yield return "The upwind end goes bare: seed there dries, whatever the waves do.";
        if (lowered?.Lean.Bare > now.Lean.Bare) yield return "Lower boards lay more soil bare upwind.";
        if (lowered?.Pull > now.Pull) yield return "Here wave theory says that lower water pulls harder, growers saw it calmer: no figure settles it, so look.";
        yield return "A ranking, never a promise. Floating seed goes downwind, the water over the soil runs back upwind: where seed ends up is not told.";
    }

    private sealed record SeedGrain(Length Grain, double Heaviness, double Shelter);

    private sealed record Answer(LeaningWater Lean, WaterWaves Waves, Length OtherHeight, Speed? Moving)
    {
        public double Pull => Moving is { } moving ? Waves.AtBed / moving : 0;

        public static Answer Of(Speed wind, Length fetch, WaterDepth depth, SeedGrain seed)
        {
            var waves = Water.Waves.Of(wind, fetch, depth);
            Speed? moving = waves.Period > TimeSpan.Zero ? SeedDrift.Threshold(seed.Grain, seed.Heaviness, waves.Period) * seed.Shelter : null;
            return new Answer(WindSetup.Of(wind, fetch, depth), waves, Water.Waves.HeightByShoreManual(wind, fetch, depth), moving);
        }
    }
}
