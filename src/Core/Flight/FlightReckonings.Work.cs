using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Work rate with everything counted.</summary>
public static partial class FlightReckonings
{
    private static Reckoning WorkDone => new(
        "work-rate",
        "How much land is sown in an hour with loading, ferry and turns counted?",
        [
            Above("rate_wet_kg_ha", "kg soaked/ha", "rate as loaded: soaked", 3000),
            new("load_kg", KeyKind.Number, "kg soaked", "soaked seed in a load") { Least = 5, Most = 50_000 },
            FromZero("turnaround_s", "s", "loading, taxi, take-off and landing for each load", 36_000),
            FromZero("ferry_m", "m", "mean distance from strip to field, one way", 500_000),
            Above("ferry_mps", "m/s", "ferry speed", 150),
            FromZero("between_fields_m", "m", "mean distance from field to field", 500_000),
            new("field_ha", KeyKind.Number, "ha", "mean area of a field") { Least = 0.01, Most = 100_000 },
            FromZero("turn_s", "s", "one turn, by the watch", 3600),
            new("swath_m", KeyKind.Number, "m", "distance from one pass to the next") { Least = 0.5, Most = 200 },
            new("pass_m", KeyKind.Number, "m", "mean length of a pass") { Least = 1, Most = 50_000 },
            new("sowing_mps", KeyKind.Number, "m/s", "ground speed while sowing") { Least = 1, Most = 150 },
        ],
        [
            Result("s_per_ha", "s/ha", "time for a hectare"), Result("ha_per_h", "ha/h", "land sown in an hour"), Result("ac_per_h", "ac/h", "land sown in an hour"),
            Result("loading_s_per_ha", "s/ha", "of it loading"), Result("ferry_s_per_ha", "s/ha", "of it ferry"), Result("moving_s_per_ha", "s/ha", "of it field to field"),
            Result("turning_s_per_ha", "s/ha", "of it turns"), Result("sowing_s_per_ha", "s/ha", "of it sowing"),
            Result("whole_pass_loads", string.Empty, "loads for one such field if every load makes whole passes; none where a load does not reach over one"),
            Result("whole_pass_ha_per_h", "ha/h", "work rate then; field-to-field left out"),
            Result("next_load_kg", "kg soaked", "smallest load that would make one more whole pass"),
        ],
        Sources.Baltin1959,
        "rate_wet_kg_ha=210 load_kg=900 turnaround_s=120 ferry_m=3000 ferry_mps=53.6448 between_fields_m=0 field_ha=40 turn_s=30 swath_m=18 pass_m=800 sowing_mps=53.6448",
        ReckonWork)
    { Limits = "A mean over many loads, for one aeroplane that never waits. The formula's source is cited from memory; each of its terms follows from counting." };

    private static Outcome<Reckoned> ReckonWork(ReckoningInput given)
    {
        var round = RoundOf(given);
        var (time, whole) = (WorkRate.Of(round), WorkRate.ByWholePasses(round));
        var working = WorkWorking(round, time);
        if (whole is { } w)
        {
            working = working
                .Step("n", "passes over one field", w.Passes, string.Empty, "F / (L × S), rounded up", Sources.WholePassCount)
                .Step("k", "whole passes on one load", w.PassesPerLoad, string.Empty, "Qf / (L × S × Q), rounded down", Sources.WholePassCount)
                .Step("T", "the field in whole passes", w.Time.TotalSeconds, "s", "n L/Vs + (n − loads) Tw + loads (2 a/Vf + Tr)", Sources.WholePassCount);
        }

        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("s_per_ha", time.Total.TotalSeconds), ("ha_per_h", time.Rate.HectaresPerHour), ("ac_per_h", time.Rate.AcresPerHour),
                ("loading_s_per_ha", time.Loading.TotalSeconds), ("ferry_s_per_ha", time.Ferrying.TotalSeconds), ("moving_s_per_ha", time.Moving.TotalSeconds),
                ("turning_s_per_ha", time.Turning.TotalSeconds), ("sowing_s_per_ha", time.Sowing.TotalSeconds),
                ("whole_pass_loads", Datum.Of(whole?.Loads)), ("whole_pass_ha_per_h", Datum.Of(whole is { } p ? round.Field.Hectares / p.Time.TotalHours : null)),
                ("next_load_kg", Datum.Of(whole is { } q && q.PassesPerLoad < q.Passes ? q.NextLoad.Kilograms : null)),
            ],
            working)
        {
            Cautions = [.. WholePassCaution(round, whole), "Use a turn time taken by watch, never one reckoned from a bank.", PilotDecides],
        });
    }

    private static SowingRound RoundOf(ReckoningInput given) => new()
    {
        Rate = SoakedRate.FromKilogramsPerHectare(given.Number("rate_wet_kg_ha")),
        Load = SoakedSeed.FromKilograms(given.Number("load_kg")),
        Turnaround = TimeSpan.FromSeconds(given.Number("turnaround_s")),
        Ferry = Length.FromMeters(given.Number("ferry_m")),
        FerrySpeed = Speed.FromMetersPerSecond(given.Number("ferry_mps")),
        BetweenFields = Length.FromMeters(given.Number("between_fields_m")),
        Field = Area.FromHectares(given.Number("field_ha")),
        Turn = TimeSpan.FromSeconds(given.Number("turn_s")),
        Swath = Length.FromMeters(given.Number("swath_m")),
        Pass = Length.FromMeters(given.Number("pass_m")),
        Sowing = Speed.FromMetersPerSecond(given.Number("sowing_mps")),
    };

    private static Working WorkWorking(SowingRound round, HectareTime time) => Working.Empty
        .Given("Q", "rate as loaded", round.Rate.KilogramsPerHectare, "kg soaked/ha", "typed")
        .Given("Qf", "soaked seed in a load", round.Load.Kilograms, "kg soaked", "typed")
        .Given("Tr", "loading, taxi, take-off and landing", round.Turnaround.TotalSeconds, "s", "typed")
        .Given("a", "strip to field", round.Ferry.Meters, "m", "typed")
        .Given("Vf", "ferry speed", round.FerrySpeed.MetersPerSecond, "m/s", "typed")
        .Given("C", "field to field", round.BetweenFields.Meters, "m", "typed")
        .Given("F", "area of a field", round.Field.Hectares, "ha", "typed")
        .Given("Tw", "one turn", round.Turn.TotalSeconds, "s", "typed")
        .Given("S", "swath", round.Swath.Meters, "m", "typed")
        .Given("L", "length of a pass", round.Pass.Meters, "m", "typed")
        .Given("Vs", "ground speed while sowing", round.Sowing.MetersPerSecond, "m/s", "typed")
        .Step("t1", "loading", time.Loading.TotalSeconds, "s/ha", "Tr × Q / Qf", Sources.Baltin1959)
        .Step("t2", "ferry", time.Ferrying.TotalSeconds, "s/ha", "2 a × Q / (Vf × Qf)", Sources.Baltin1959)
        .Step("t3", "field to field", time.Moving.TotalSeconds, "s/ha", "C / (Vf × F)", Sources.Baltin1959)
        .Step("t4", "turns", time.Turning.TotalSeconds, "s/ha", "10,000 Tw / (S × L)", Sources.Baltin1959)
        .Step("t5", "sowing", time.Sowing.TotalSeconds, "s/ha", "10,000 / (Vs × S)", Sources.Baltin1959)
        .Step("t", "time for a hectare", time.Total.TotalSeconds, "s/ha", "t1 + t2 + t3 + t4 + t5", Sources.Baltin1959)
        .Step("r", "land sown in an hour", time.Rate.HectaresPerHour, "ha/h", "3,600 / t", Sources.Arithmetic);

    private static ImmutableArray<string> WholePassCaution(SowingRound round, WholePasses? whole)
    {
        if (whole is null) return ["A load of this size does not reach over one pass: the gate must close in mid-pass, and each broken pass costs one more line-up."];
        if (whole.PassesPerLoad >= whole.Passes) return [];
        return
        [
            "A load makes " + Wording.Say.Number(whole.PassesPerLoad) + " whole passes. The next whole pass needs "
            + Wording.Say.Figure(whole.NextLoad.Kilograms) + " kg soaked in the hopper, " + Wording.Say.Figure((whole.NextLoad - round.Load).Kilograms)
            + " kg more, if the pilot's limit reaches that far.",
        ];
    }
}
