using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Turns, and how seed falls.</summary>
public static partial class FlightReckonings
{
    private static Reckoning TurnRadius => new(
        "turn",
        "How wide is a level turn that somebody describes by its bank?",
        [
            GroundSpeed("airspeed in the turn"),
            new("bank_deg", KeyKind.Number, "°", "bank that was described") { Least = 0, AboveLeast = true, Most = 80 },
            SwathFeet with { Optional = true },
            new("turn_out_deg", KeyKind.Number, "°", "how far a turn out and back is described to turn out; asked with a swath") { Least = 0, AboveLeast = true, Most = 80, Optional = true },
        ],
        [
            Result("radius_m", "m", "radius"), Result("radius_ft", "ft", "radius"), Result("half_circle_s", "s", "half a circle in still air"), Result("load_factor", string.Empty, "weight felt over weight"),
            Result("next_pass_m", "m", "way flown to the next pass, all at that radius; none without a swath"), Result("next_pass_s", "s", "time for it in still air; none without a swath"),
            Result("racetrack_offset_passes", string.Empty, "passes to skip so that a plain half circle will do; none without a swath"),
            Result("out_and_back_m", "m", "way flown to the next pass by turning out and back round; none without both or where the arcs do not reach"), Result("out_and_back_s", "s", "time for it in still air; none likewise"),
        ],
        Sources.AviationFormulary.At("turn performance"),
        "speed_mph=120 bank_deg=45 swath_ft=59.055",
        ReckonTurn)
    { Limits = "Level, steady, still air. Turns of the trade climb, slow and widen: 20 to 45 s by the watch, 30 s a fair mean (" + Sources.AgAviationTurns2015.Reference + ")." };

    private static Reckoning SeedThrow => new(
        "throw",
        "How far ahead does the seed land, and how far does it drift?",
        [
            new("height_m", KeyKind.Number, "m", "height above the water") { Least = 0, AboveLeast = true, Most = 200 },
            new("airspeed_mps", KeyKind.Number, "m/s", "airspeed along the track") { Least = 0, AboveLeast = true, Most = 150 },
            new("terminal_mps", KeyKind.Number, "m/s", "speed at which the seed falls in still air") { Least = 0.5, Most = 30 },
            new("wind_along_mps", KeyKind.Number, "m/s", "wind along the track, from behind positive") { Least = -40, Most = 40 },
            new("wind_across_mps", KeyKind.Number, "m/s", "wind across the track, from left to right positive") { Least = -40, Most = 40 },
            new("gate_lag_s", KeyKind.Number, "s", "from command to seed leaving the gate") { Least = 0, Most = 10, Optional = true },
        ],
        [
            Result("throw_m", "m", "over the ground, along the track"), Result("drift_m", "m", "over the ground, with the wind across"), Result("fall_s", "s", "time in the air"),
            Result("gate_lead_m", "m", "how far before the edge the gate is commanded; none without a lag"),
            Result("fixed_gate_rate", string.Empty, "rate laid down over rate set, if the gate stays put and the airspeed is held"),
        ],
        Sources.QuadraticDrag,
        "height_m=12.192 airspeed_mps=53.6448 terminal_mps=6.5 wind_along_mps=0 wind_across_mps=3",
        ReckonThrow)
    { Limits = "Seed alone, with drag as the square of its speed through the air: the spreader throws it sideways and slows it, wing and propeller stir it. No published falling speed of soaked, sprouted rice was found: 6.5 m/s is an estimate, 5.8 to 8.5 the range (dry paddy: " + Sources.PaddyTerminalSpeed.Reference + ")." };

    private static Outcome<Reckoned> ReckonTurn(ReckoningInput given)
    {
        var (speed, bank) = (SpeedOf(given), given.Number("bank_deg"));
        var radius = Turns.Radius(speed, bank);
        var half = radius * Math.PI / speed;
        var working = Working.Empty
            .Given("V", "airspeed in the turn", speed.MilesPerHour, "mph", "typed")
            .Given("φ", "bank that was described", bank, "°", "typed")
            .Step("R", "radius", radius.Feet, "ft", "V² / (g tan φ), g 9.80665 m/s²", Sources.AviationFormulary.At("turn performance"))
            .Step("t", "half a circle in still air", half.TotalSeconds, "s", "π R / V", Sources.Arithmetic)
            .Step("n", "weight felt over weight", Turns.LoadFactor(bank), string.Empty, "1 / cos φ", Sources.AviationFormulary.At("turn performance"));
        Length? swath = given.Has("swath_ft") ? SwathOf(given) : null;
        Length? way = swath is { } s ? Turns.ToNextPass(radius, s) : null;
        int? offset = swath is { } spacing ? Turns.RacetrackOffset(radius, spacing) : null;
        if (way is { } flown)
        {
            working = working
                .Given("S", "swath", swath!.Value.Feet, "ft", "typed")
                .Step("b", "way to the next pass", flown.Meters, "m", "R (3 π − 4 asin((2 R + S) / (4 R))); π R + S − 2 R from S = 2 R on", Sources.TurnGeometry)
                .Step("k", "passes to skip for a plain half circle", offset!.Value, string.Empty, "2 R / S, rounded up", Sources.TurnGeometry);
        }

        Length? outAndBack = swath is { } wide && given.NumberOrNone("turn_out_deg") is { } lean && wide.Meters <= 2 * radius.Meters * Math.Cos(lean * Math.PI / 180) ? Turns.OutAndBack(radius, wide, lean) : null;
        if (outAndBack is { } round)
        {
            working = working
                .Given("θ", "turned out", given.Number("turn_out_deg"), "°", "typed")
                .Step("p", "way to the next pass, out and back round", round.Meters, "m", "d = (2 R cos θ − S) / sin θ; R (π + 2 θ) + d + 2 R sin θ + d cos θ", Sources.TurnGeometry);
        }

        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("radius_m", radius.Meters), ("radius_ft", radius.Feet), ("half_circle_s", half.TotalSeconds), ("load_factor", Turns.LoadFactor(bank)),
                ("next_pass_m", Datum.Of(way?.Meters)), ("next_pass_s", Datum.Of(way is { } w ? (w / speed).TotalSeconds : null)), ("racetrack_offset_passes", Datum.Of(offset)),
                ("out_and_back_m", Datum.Of(outAndBack?.Meters)), ("out_and_back_s", Datum.Of(outAndBack is { } o ? (o / speed).TotalSeconds : null)),
            ],
            working)
        {
            Cautions =
            [
                "Geometry, never advice: no bank, speed or way of turning is proposed here, and a steeper turn stalls at a higher speed.",
                "Plan with a turn time taken by watch.",
                PilotDecides,
            ],
        });
    }

    private static Outcome<Reckoned> ReckonThrow(ReckoningInput given)
    {
        var release = new SeedRelease(Length.FromMeters(given.Number("height_m")), Speed.FromMetersPerSecond(given.Number("airspeed_mps")), Speed.FromMetersPerSecond(given.Number("terminal_mps")))
        {
            WindAlong = Speed.FromMetersPerSecond(given.Number("wind_along_mps")),
            WindAcross = Speed.FromMetersPerSecond(given.Number("wind_across_mps")),
        };
        if (release.Ground <= Speed.Zero)
        {
            return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("wind_along_mps",
                ("value", Wording.Say.Figure(release.WindAlong.MetersPerSecond) + " m/s"),
                ("limit", "at an airspeed of " + Wording.Say.Figure(release.Airspeed.MetersPerSecond) + " m/s the aeroplane would not move over the ground"),
                ("remedy", "Give the wind along the track, from ahead negative, well below the airspeed.")));
        }

        var landing = Throw.Of(release);
        TimeSpan? lag = given.NumberOrNone("gate_lag_s") is { } seconds ? TimeSpan.FromSeconds(seconds) : null;
        Length? lead = lag is { } l ? Throw.GateLead(release, l) : null;
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("throw_m", landing.Along.Meters), ("drift_m", landing.Drift.Meters), ("fall_s", landing.Fall.TotalSeconds),
                ("gate_lead_m", Datum.Of(lead?.Meters)), ("fixed_gate_rate", Throw.FixedGateRate(release)),
            ],
            ThrowWorking(release, landing, lag, lead))
        {
            Cautions =
            [
                "Test that aeroplane: spreader, wing and propeller move the seed too, and only a measurement on the ground fixes the lead.",
                "The falling speed is an estimate unless somebody timed this seed.",
                "Opposite passes need different leads when the wind is along them.",
                PilotDecides,
            ],
        });
    }

    private static Working ThrowWorking(SeedRelease release, Landing landing, TimeSpan? lag, Length? lead)
    {
        var working = Working.Empty
            .Given("h", "height above the water", release.Height.Meters, "m", "typed")
            .Given("Va", "airspeed", release.Airspeed.MetersPerSecond, "m/s", "typed")
            .Given("vt", "falling speed in still air", release.Terminal.MetersPerSecond, "m/s", "typed")
            .Given("w", "wind along", release.WindAlong.MetersPerSecond, "m/s", "typed")
            .Given("c", "wind across", release.WindAcross.MetersPerSecond, "m/s", "typed")
            .Step("Vg", "ground speed", release.Ground.MetersPerSecond, "m/s", "Va + w", Sources.Arithmetic)
            .Step("t", "time in the air", landing.Fall.TotalSeconds, "s", "dv/dt = g − (g / vt²) |v − wind| (v − wind), from (Vg, 0, 0) down to h", Sources.QuadraticDrag)
            .Step("x0", "throw through the air", (landing.Along - (release.WindAlong * landing.Fall)).Meters, "m", "way along in the same fall, the air at rest", Sources.QuadraticDrag)
            .Step("x", "throw over the ground", landing.Along.Meters, "m", "x0 + w × t", Sources.QuadraticDrag)
            .Step("y0", "way across through the air", (landing.Drift - (release.WindAcross * landing.Fall)).Meters, "m", "against the wind across, which takes the seed up by and by", Sources.QuadraticDrag)
            .Step("y", "drift over the ground", landing.Drift.Meters, "m", "y0 + c × t", Sources.QuadraticDrag);
        if (lag is { } given && lead is { } before)
        {
            working = working
                .Given("τ", "gate lag", given.TotalSeconds, "s", "typed")
                .Step("e", "gate lead before the edge", before.Meters, "m", "Vg × τ + x", Sources.Arithmetic);
        }

        return working.Step("r", "rate laid down over rate set, gate and airspeed held", Throw.FixedGateRate(release), string.Empty, "Va / Vg", Sources.Arithmetic);
    }
}
