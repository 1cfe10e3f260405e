using Watersown.Flight.Patterns;
using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Evenness from a tray test.</summary>
public static partial class FlightReckonings
{
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
            new("passes", KeyKind.WholeNumber, string.Empty, "passes whose rows stand one after another in tray_g") { Least = 1, Most = TrayTest.MostPasses, Optional = true },
            new("center_offset_m", KeyKind.Number, "m", "how far right of the flight line the middle of the row lay; below zero left") { Least = -50, Most = 50, Optional = true },
            new("steering_m", KeyKind.Number, "m", "how far a pass strays from its line; a meter where not given: common practice, no source") { Least = 0, Most = 20, Optional = true },
            new("gate_lb_per_min", KeyKind.Number, "lb/min", "what left the gate in the test, by scale and watch") { Least = 0, AboveLeast = true, Most = 100_000, Optional = true },
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
            new("steady_swath_m", KeyKind.Group, "m", "widest swath that keeps the limit, chance taken out, also with the steering error; none without a limit")
            {
                Columns = [Result("one_way", "m", "flown all one way"), Result("back_forth", "m", "flown back and forth")],
            },
            Result("half_mean_swath_m", "m", "swath by the quick rule: half of what lies on the line"),
            Result("middle_m", "m", "how far right of the line the middle of the pattern lies"),
            Result("move_lines_left_m", "m", "how far left of its place each line is to be flown so that back and forth is most even; none where it gains less than a point, or without a limit"),
            Result("cv_back_forth_moved_pct", "%", "unevenness back and forth then, at the steady swath of one way"),
            Result("trays_over_gate", string.Empty, "flow by the trays over flow by the gate; none where either is not told"),
            Result("fourier_difference_pct", "points of CV", "largest difference between the sums and their Fourier form: a check"),
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
        var passes = given.NumberOrNone("passes") is { } several ? (int)several : 1;
        var (width, ragged) = Math.DivRem(grams.Length, passes);
        if (ragged != 0) return NoRows(grams.Length, passes);
        if (width is < SpreadPattern.FewestTrays or > TrayTest.MostTrays || Rows(grams, width).Any(r => r.Sum() <= 0)) return NoPattern(width);
        var spacing = Length.FromMeters(given.Number("tray_spacing_m"));
        var tray = Area.FromSquareMeters(given.Number("tray_area_m2"));
        var test = TestOf(given, [.. Rows(grams, width).Select(r => r.Select(g => SoakedSeed.FromKilograms(g / 1000)).ToImmutableArray())]);
        var pattern = test.Pattern;
        var answer = TrayReading.Of(test, AskOf(given));
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
            .Step("q", "seed laid for each meter flown", pattern.PerMeter.Kilograms * 1000, "g/m", "sum of p × d / a", Sources.OverlapGeometry)
            .Then(answer.Working);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("swaths", Datum.ListOf(swaths.Select(s => SwathRow(pattern, s, given.NumberOrNone("grams_per_1000"))))),
                ("widest_swath_m_at_cv", widest),
                ("laid_g_per_m", pattern.PerMeter.Kilograms * 1000), ("flow_lb_per_min", flow), ("pattern_width_m", pattern.Width.Meters),
                .. Said(answer, given.NumberOrNone("cv_limit_pct") is not null),
            ],
            working)
        { Cautions = PatternCautions(pattern, swaths) });
    }

    private static IEnumerable<ImmutableArray<double>> Rows(ImmutableArray<double> grams, int width) => grams.Chunk(Math.Max(1, width)).Select(r => r.ToImmutableArray());

    private static TrayTest TestOf(ReckoningInput given, ImmutableArray<ImmutableArray<SoakedSeed>> rows) => new()
    {
        Day = DateOnly.MinValue,
        Passes = rows,
        Spacing = Length.FromMeters(given.Number("tray_spacing_m")),
        Tray = Area.FromSquareMeters(given.Number("tray_area_m2")),
        Offset = Length.FromMeters(given.NumberOrNone("center_offset_m") ?? 0),
        Speed = given.NumberOrNone("speed_mph") is { } mph ? Speed.FromMilesPerHour(mph) : null,
        Gate = given.NumberOrNone("gate_lb_per_min") is { } pounds ? MassFlow.FromPoundsPerMinute(pounds) : null,
        ThousandGrains = given.NumberOrNone("grams_per_1000") is { } thousand ? SoakedSeed.FromKilograms(thousand / 1000) : null,
    };

    private static TrayAsk AskOf(ReckoningInput given) => new()
    {
        Limit = given.NumberOrNone("cv_limit_pct") is { } limit ? Fraction.FromPercent(limit) : TrayAsk.UsualLimit,
        Steering = given.NumberOrNone("steering_m") is { } meters ? Length.FromMeters(meters) : TrayAsk.UsualSteering,
    };

    private static IEnumerable<(string Key, Datum Value)> Said(TrayAnswer answer, bool limited)
    {
        yield return ("steady_swath_m", limited ? Datum.Row(("one_way", Datum.Of(answer.OneWay.Steady?.Meters)), ("back_forth", Datum.Of(answer.BackAndForth.Steady?.Meters))) : Datum.None);
        yield return ("half_mean_swath_m", Datum.Of(answer.HalfMean?.Meters));
        yield return ("middle_m", answer.Middle.Meters);
        yield return ("move_lines_left_m", Datum.Of(limited ? answer.Offset?.ToLeft.Meters : null));
        yield return ("cv_back_forth_moved_pct", Datum.Of(limited ? answer.Offset?.After.Percent : null));
        yield return ("trays_over_gate", Datum.Of(answer.Closure?.Share));
        yield return ("fourier_difference_pct", answer.FourierDifference.Percent);
    }

    private static Outcome<Reckoned> NoRows(int trays, int passes) => Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("tray_g",
        ("value", Wording.Say.Number(trays) + " trays in " + Wording.Say.Number(passes) + " passes"), ("limit", "every pass has as many trays"), ("remedy", "Give every row whole, one after another.")));

    private static Outcome<Reckoned> NoPattern(int width)
    {
        var (value, limit) = width is < SpreadPattern.FewestTrays or > TrayTest.MostTrays
            ? (Wording.Say.Number(width) + " trays", "a pattern takes " + Wording.Say.Number(SpreadPattern.FewestTrays) + " to " + Wording.Say.Number(TrayTest.MostTrays) + " trays")
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
