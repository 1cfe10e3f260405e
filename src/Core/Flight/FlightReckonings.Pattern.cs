using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Evenness from a tray test.</summary>
public static partial class FlightReckonings
{
    private const int MostTrays = 200;

    private static Reckoning Evenness => new(
        "pattern",
        "How evenly does this tray test say the seed lies, swath by swath?",
        [
            new("tray_g", KeyKind.Numbers, "g", "caught on each tray, left to right along the flight, the line over the middle of the row") { Least = 0, Most = 10_000 },
            new("tray_spacing_m", KeyKind.Number, "m", "from tray to tray") { Least = 0.05, Most = 5 },
            new("tray_area_m2", KeyKind.Number, "m²", "area of one tray") { Least = 0.001, Most = 10 },
            new("swaths_m", KeyKind.Numbers, "m", "swaths to look at") { Least = 0.5, Most = 500 },
            new("cv_limit_pct", KeyKind.Number, "%", "limit for the widest swath") { Least = 0, AboveLeast = true, Most = 200, Optional = true },
            new("speed_mph", KeyKind.Number, "mph", "ground speed of the test, to check against the gate") { Least = 0, AboveLeast = true, Most = 300, Optional = true },
            new("grams_per_1000", KeyKind.Number, "g", "weight of 1,000 soaked grains, to tell chance from unevenness") { Least = 1, Most = 200, Optional = true },
        ],
        [
            new("swaths", KeyKind.Rows, string.Empty, "what each swath gives") { Columns = SwathColumns },
            new("widest_swath_m_at_cv", KeyKind.Group, "m", "widest swath within the limit, in steps of 0.05 m; none without a limit")
            {
                Columns = [Result("one_way", "m", "flown all one way; none where no swath keeps the limit"), Result("back_forth", "m", "flown back and forth; none where no swath keeps the limit")],
            },
            Result("laid_g_per_m", "g/m", "seed laid for each meter flown"),
            Result("flow_lb_per_min", "lb/min", "that at the speed of the test: what should have left the gate; none without a speed"),
            Result("pattern_width_m", "m", "width over which anything was caught"),
        ],
        Sources.OverlapGeometry,
        "tray_g=[0,0.3,0.8,1.6,2.7,3.9,4.8,5.3,5.6,5.7,5.8,5.7,5.6,5.3,4.8,3.9,2.7,1.6,0.8,0.3,0] tray_spacing_m=1 tray_area_m2=0.25 swaths_m=[10,12,14] cv_limit_pct=15",
        ReckonPattern)
    { Limits = "Population standard deviation over mean. Whole ratios of swath to spacing sum the trays; others, and the widest swath, join the trays by straight lines to nothing one spacing outside the ends." };

    private static ImmutableArray<ReckoningKey> SwathColumns =>
    [
        Result("swath_m", "m", "swath"),
        Result("mean_g", "g", "mean on a tray"),
        Result("rate_kg_ha", "kg/ha", "rate, as caught: soaked seed weighs soaked"),
        Result("cv_one_way_pct", "%", "unevenness flown all one way"),
        Result("cv_back_forth_pct", "%", "unevenness flown back and forth"),
        Result("counting_floor_cv_pct", "%", "what chance alone would show on such trays; only where grams_per_1000 is given"),
    ];

    private static Outcome<Reckoned> ReckonPattern(ReckoningInput given)
    {
        var grams = given.Numbers("tray_g");
        if (grams.Length is < SpreadPattern.FewestTrays or > MostTrays || grams.Sum() <= 0) return NoPattern(grams);
        var spacing = Length.FromMeters(given.Number("tray_spacing_m"));
        var tray = Area.FromSquareMeters(given.Number("tray_area_m2"));
        var pattern = SpreadPattern.Of([.. grams.Select(g => SoakedSeed.FromKilograms(g / 1000))], spacing, tray);
        var swaths = given.Numbers("swaths_m").Select(Length.FromMeters).ToImmutableArray();
        var working = Working.Empty
            .Given("p", "trays, left to right", Datum.ListOf(grams), "g", "typed")
            .Given("d", "tray spacing", spacing.Meters, "m", "typed")
            .Given("a", "tray area", tray.SquareMeters, "m²", "typed");
        foreach (var swath in swaths) working = SwathWorking(working, pattern, swath);

        var (widest, limitLines) = Widest(given, pattern);
        var flow = given.NumberOrNone("speed_mph") is { } mph
            ? Datum.Of(MassFlow.FromKilogramsPerSecond(pattern.PerMeter.Kilograms * Speed.FromMilesPerHour(mph).MetersPerSecond).PoundsPerMinute)
            : Datum.None;
        working = working.Then(limitLines)
            .Step("q", "seed laid for each meter flown", pattern.PerMeter.Kilograms * 1000, "g/m", "sum of p × d / a", Sources.OverlapGeometry);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("swaths", Datum.ListOf(swaths.Select(s => SwathRow(pattern, s, given.NumberOrNone("grams_per_1000"))))),
                ("widest_swath_m_at_cv", widest),
                ("laid_g_per_m", pattern.PerMeter.Kilograms * 1000), ("flow_lb_per_min", flow), ("pattern_width_m", pattern.Width.Meters),
            ],
            working)
        { Cautions = PatternCautions(pattern, swaths) });
    }

    private static Outcome<Reckoned> NoPattern(ImmutableArray<double> grams)
    {
        var (value, limit) = grams.Length is < SpreadPattern.FewestTrays or > MostTrays
            ? (Wording.Say.Number(grams.Length) + " trays", "a pattern takes " + Wording.Say.Number(SpreadPattern.FewestTrays) + " to " + Wording.Say.Number(MostTrays) + " trays")
            : ("a row of empty trays", "something must have been caught");
        return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("tray_g", ("value", value), ("limit", limit), ("remedy", "Give the grams of every tray in the row, left to right.")));
    }

    private static Datum SwathRow(SpreadPattern pattern, Length swath, double? gramsPerThousand)
    {
        var (way, back) = (pattern.Over(swath, FlyingMode.OneWay), pattern.Over(swath, FlyingMode.BackAndForth));
        var grams = way.Mean.Kilograms * 1000;
        (string, Datum)[] floor = gramsPerThousand is { } thousand
            ? [("counting_floor_cv_pct", SpreadPattern.CountingFloor(grams / thousand * 1000).Percent)]
            : [];
        return Datum.Row([("swath_m", swath.Meters), ("mean_g", grams), ("rate_kg_ha", way.Rate.KilogramsPerHectare), ("cv_one_way_pct", way.Cv.Percent), ("cv_back_forth_pct", back.Cv.Percent), .. floor]);
    }

    private static Working SwathWorking(Working working, SpreadPattern pattern, Length swath)
    {
        var (way, back) = (pattern.Over(swath, FlyingMode.OneWay), pattern.Over(swath, FlyingMode.BackAndForth));
        return working
            .Given("S", "swath", swath.Meters, "m", "typed")
            .Step("m", "mean on a tray", way.Mean.Kilograms * 1000, "g", "sum of p × d / S", Sources.OverlapGeometry)
            .Step("R", "rate, as caught", way.Rate.KilogramsPerHectare, "kg/ha", "10 m / a", Sources.OverlapGeometry)
            .Step("CV1", "unevenness, all one way", way.Cv.Percent, "%", "100 × SD / m of Σ p(x − k S)", Sources.OverlapGeometry)
            .Step("CV2", "unevenness, back and forth", back.Cv.Percent, "%", "100 × SD / m of Σ p((−1)^k (x − k S))", Sources.OverlapGeometry);
    }

    private static (Datum Widest, Working Lines) Widest(ReckoningInput given, SpreadPattern pattern)
    {
        if (given.NumberOrNone("cv_limit_pct") is not { } limit) return (Datum.None, Working.Empty);
        var cv = Fraction.FromPercent(limit);
        var way = Datum.Of(pattern.WidestWithin(cv, FlyingMode.OneWay)?.Meters);
        var back = Datum.Of(pattern.WidestWithin(cv, FlyingMode.BackAndForth)?.Meters);
        var lines = Working.Empty
            .Given("c", "limit", limit, "%", "typed")
            .Step("S1", "widest swath, all one way", way, "m", "largest S in steps of 0.05 m with CV1 ≤ c, trays joined", Sources.OverlapGeometry)
            .Step("S2", "widest swath, back and forth", back, "m", "largest S in steps of 0.05 m with CV2 ≤ c, trays joined", Sources.OverlapGeometry);
        return (Datum.Row(("one_way", way), ("back_forth", back)), lines);
    }

    private static ImmutableArray<string> PatternCautions(SpreadPattern pattern, ImmutableArray<Length> swaths)
    {
        ImmutableArray<Length> wide = [.. swaths.Where(s => s > pattern.Width * (1 + 1e-9))];
        ImmutableArray<string> gap = wide.IsEmpty
            ? []
            : ["Swath " + string.Join(", ", wide.Select(s => Wording.Say.Figure(s.Meters))) + " m is wider than the " + Wording.Say.Figure(pattern.Width.Meters) + " m that caught anything: bare strips lie between the passes."];
        return
        [
            .. gap,
            "It holds for that aeroplane, spreader, gate, height, speed and seed. Test again when any of them changes; do not use another's.",
            "A field is always sown less evenly than its pattern: wind, steering and the gate come on top.",
            "Nobody stands under a pass or near a turning propeller to see to the trays.",
            PilotDecides,
        ];
    }
}
