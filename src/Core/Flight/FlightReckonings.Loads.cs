using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Loads of a field, what a hopper holds, and the hours a field takes.</summary>
public static partial class FlightReckonings
{
    private const double ShortLoad = 0.25;

    private static Reckoning EqualLoads => new(
        "loads",
        "How many loads, and how many pounds in each?",
        [
            Above("net_ac", "ac", "acres sown", 1_000_000),
            Above("rate_dry_lb_ac", "lb dry/ac", "dry seed rate", 1000),
            new("wet_factor", KeyKind.Number, string.Empty, "soaked weight over dry weight; 1 for seed flown dry") { Least = 1, Most = 2 },
            new("load_limit_wet_lb", KeyKind.Number, "lb soaked", "most soaked seed in one load, as the pilot named it") { Least = 10, Most = 100_000 },
        ],
        [
            Result("dry_lb", "lb dry", "dry seed for the field"),
            Result("wet_lb", "lb soaked", "the same, soaked"),
            Result("exact_loads", string.Empty, "loads if part of a load could be flown"),
            new("loads", KeyKind.WholeNumber, string.Empty, "equal loads"),
            Result("wet_lb_per_load", "lb soaked", "soaked seed in each"),
            Result("dry_lb_per_load", "lb dry", "dry seed in each"),
            Result("last_load_fraction", string.Empty, "how full the last load would be if the others were filled full"),
            Result("wet_lb_with_one_fewer", "lb soaked", "soaked seed in each with one load fewer: above the limit; none where there is one load"),
        ],
        Sources.Arithmetic,
        "net_ac=118 rate_dry_lb_ac=150 wet_factor=1.25 load_limit_wet_lb=2800",
        ReckonLoads)
    { Limits = "Both sides of the division are soaked weight. As good as the wet factor: the scale ticket of the lot beats any other." };

    private static Reckoning HopperLoad => new(
        "hopper",
        "How much soaked seed goes in the hopper, by room and by weight?",
        [
            Above("hopper_gal", "gal", "volume of the hopper", 5000),
            new("bulk_wet_lb_ft3", KeyKind.Number, "lb soaked/ft³", "weight of a cubic foot of the soaked seed") { Least = 20, Most = 80 },
            new("fill_pct", KeyKind.Number, "%", "how full it is filled") { Least = 1, Most = 100 },
            new("load_limit_wet_lb", KeyKind.Number, "lb soaked", "most the pilot named") { Least = 10, Most = 100_000, Optional = true },
        ],
        [
            Result("volume_ft3", "ft³", "room in the hopper"),
            Result("by_volume_wet_lb", "lb soaked", "soaked seed that fits"),
            Result("load_wet_lb", "lb soaked", "load to plan with: the smaller"),
            new("binds", KeyKind.Text, string.Empty, "which of the two it is: volume or weight"),
        ],
        Sources.Arithmetic,
        "hopper_gal=500 bulk_wet_lb_ft3=42 fill_pct=100 load_limit_wet_lb=2800",
        ReckonHopper)
    { Limits = "Weigh a bucket of the drained seed: no published bulk weight of soaked rice was found; 38 to 44 lb/ft³ is common practice." };

    private static Reckoning FieldHours => new(
        "flying-time",
        "How long does this field keep the aeroplane?",
        [
            Above("net_ac", "ac", "acres sown", 1_000_000),
            new("loads", KeyKind.WholeNumber, string.Empty, "loads flown") { Least = 1, Most = 100_000 },
            Above("pass_ft", "ft", "mean length of a pass", 100_000),
            SwathFeet,
            FromZero("ferry_mi", "mi", "strip to field, one way", 200),
            Above("speed_mph", "mph", "ground speed while sowing", 300),
            Above("ferry_mph", "mph", "ferry speed", 300),
            FromZero("turn_s", "s", "one turn, by the watch", 600),
            FromZero("reload_s", "s", "at the loader, each load", 7200),
            FromZero("ground_and_air_s", "s", "taxi, take-off and landing, each load", 7200),
        ],
        [Result("hours", "h", "time on the field"), Result("min_per_load", "min", "time for one load"), Result("ac_per_h", "ac/h", "land sown in an hour"), new("passes_per_load", KeyKind.WholeNumber, string.Empty, "passes on one load, a begun one counted whole")],
        Sources.Arithmetic,
        "net_ac=118 loads=8 pass_ft=2640 swath_ft=50 ferry_mi=1.084 speed_mph=120 ferry_mph=130 turn_s=32 reload_s=90 ground_and_air_s=100",
        ReckonHours)
    { Limits = "Waiting for seed, wind, fuel or another aeroplane is not in it." };

    private static Outcome<Reckoned> ReckonLoads(ReckoningInput given)
    {
        var net = Area.FromAcres(given.Number("net_ac"));
        var rate = SeedRate.FromPoundsPerAcre(given.Number("rate_dry_lb_ac"));
        var factor = given.Number("wet_factor");
        var limit = SoakedSeed.FromPounds(given.Number("load_limit_wet_lb"));
        var dry = rate * net;
        var plan = Loads.Equal(dry, factor, limit);
        var wet = Seed.Soaking.Weigh(dry, factor);
        var working = Working.Empty
            .Given("A", "acres sown", net.Acres, "ac", "typed")
            .Given("R", "dry seed rate", rate.PoundsPerAcre, "lb dry/ac", "typed")
            .Given("F", "soaked weight over dry weight", factor, string.Empty, "typed")
            .Given("W", "most in one load", limit.Pounds, "lb soaked", "typed")
            .Step("D", "dry seed for the field", dry.Pounds, "lb dry", "A × R", Sources.Arithmetic)
            .Step("M", "the same, soaked", wet.Pounds, "lb soaked", "D × F", Sources.MassBalance)
            .Step("x", "loads if part of a load could be flown", plan.Exact, string.Empty, "M / W", Sources.Arithmetic)
            .Step("n", "equal loads", plan.Count, string.Empty, "x rounded up", Sources.Arithmetic)
            .Step("Me", "soaked seed in each", plan.Each.Pounds, "lb soaked", "M / n", Sources.Arithmetic)
            .Step("De", "dry seed in each", plan.DryEach.Pounds, "lb dry", "D / n", Sources.Arithmetic)
            .Step("f", "how full the last would be, the others full", plan.LastIfFilled.Share, string.Empty, "x − (n − 1)", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("dry_lb", dry.Pounds), ("wet_lb", wet.Pounds), ("exact_loads", plan.Exact), ("loads", plan.Count),
                ("wet_lb_per_load", plan.Each.Pounds), ("dry_lb_per_load", plan.DryEach.Pounds),
                ("last_load_fraction", plan.LastIfFilled.Share), ("wet_lb_with_one_fewer", Datum.Of(plan.EachWithOneFewer?.Pounds)),
            ],
            working)
        { Cautions = LoadCautions(plan, factor) });
    }

    private static ImmutableArray<string> LoadCautions(LoadPlan plan, double factor)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (factor == 1) cautions.Add("Wet factor 1: the seed is counted as flown dry. Soaked seed weighs about a quarter more and takes more loads.");
        if (plan.EachWithOneFewer is { } fewer && plan.LastIfFilled.Share < ShortLoad)
        {
            cautions.Add("Filled full, the last load would be only " + Wording.Say.Number(plan.LastIfFilled.Percent)
                + " % of a load. One load fewer would mean " + Wording.Say.Number(fewer.Pounds) + " lb soaked in each, above the limit: only the pilot can name another limit.");
        }

        cautions.Add(PilotDecides);
        return cautions.ToImmutable();
    }

    private static Outcome<Reckoned> ReckonHopper(ReckoningInput given)
    {
        var volume = Volume.FromGallons(given.Number("hopper_gal"));
        var fill = Fraction.FromPercent(given.Number("fill_pct"));
        var foot = SoakedSeed.FromPounds(given.Number("bulk_wet_lb_ft3"));
        var fits = Hopper.ByVolume(volume, fill, foot, Volume.FromCubicFeet(1));
        SoakedSeed? limit = given.NumberOrNone("load_limit_wet_lb") is { } named ? SoakedSeed.FromPounds(named) : null;
        var weightBinds = limit is { } most && most < fits;
        var load = weightBinds ? limit!.Value : fits;
        var working = Working.Empty
            .Given("G", "volume of the hopper", volume.Gallons, "gal", "typed")
            .Given("b", "weight of a cubic foot", foot.Pounds, "lb soaked/ft³", "typed")
            .Given("u", "how full", fill.Percent, "%", "typed")
            .Given("W", "most the pilot named", Datum.Of(limit?.Pounds), "lb soaked", limit is null ? "not given" : "typed")
            .Step("v", "room", volume.CubicFeet, "ft³", "G × 231 / 1,728", Sources.Definition)
            .Step("Mv", "soaked seed that fits", fits.Pounds, "lb soaked", "v × u/100 × b", Sources.Arithmetic)
            .Step("M", "load to plan with", load.Pounds, "lb soaked", "the smaller of Mv and W", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("volume_ft3", volume.CubicFeet), ("by_volume_wet_lb", fits.Pounds), ("load_wet_lb", load.Pounds), ("binds", weightBinds ? "weight" : "volume")], working)
        {
            Cautions = ["The aeroplane's manual, the strip, heat, wind and fuel may allow less.", PilotDecides],
        });
    }

    private static Outcome<Reckoned> ReckonHours(ReckoningInput given)
    {
        var job = new FlyingJob(Area.FromAcres(given.Number("net_ac")), given.Whole("loads"), Length.FromFeet(given.Number("pass_ft")), Length.FromMiles(given.Number("ferry_mi")));
        var aeroplane = new Aeroplane("as typed")
        {
            Swath = SwathOf(given),
            Working = SpeedOf(given),
            Ferry = Speed.FromMilesPerHour(given.Number("ferry_mph")),
            Turn = TimeSpan.FromSeconds(given.Number("turn_s")),
            Reload = TimeSpan.FromSeconds(given.Number("reload_s")),
            GroundAndAir = TimeSpan.FromSeconds(given.Number("ground_and_air_s")),
        };
        var time = FlyingTime.Of(job, aeroplane);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("hours", time.TotalHours), ("min_per_load", FlyingTime.PerLoad(job, aeroplane).TotalMinutes),
                ("ac_per_h", job.Net.Acres / time.TotalHours), ("passes_per_load", FlyingTime.PassesPerLoad(job, aeroplane)),
            ],
            FlyingTime.Working(job, aeroplane))
        {
            Cautions = ["Never press a pilot for time: haste and tiredness kill. Seed can be lost; a pilot cannot.", PilotDecides],
        });
    }
}
