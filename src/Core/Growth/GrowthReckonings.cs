using System.Diagnostics;
using Watersown.Reckon;

namespace Watersown.Growth;

/// <summary>The calculations about growth that can be asked for by name.</summary>
public static class GrowthReckonings
{
    private const string Scale = "degrees of one scale";

    private static readonly ImmutableArray<(string Word, WarmthMethod Method)> Methods =
    [
        ("simple", WarmthMethod.Simple),
        ("simple-floored", WarmthMethod.SimpleFloored),
        ("single-triangle", WarmthMethod.SingleTriangle),
        ("double-triangle", WarmthMethod.DoubleTriangle),
        ("single-sine", WarmthMethod.SingleSine),
        ("double-sine", WarmthMethod.DoubleSine),
    ];

    private static readonly ImmutableArray<(string Word, Cutoff Cutoff)> Cutoffs =
    [
        ("horizontal", Cutoff.Horizontal),
        ("intermediate", Cutoff.Intermediate),
        ("vertical", Cutoff.Vertical),
    ];

    public static ImmutableArray<Reckoning> All { get; } = [OneDay, StageReckoning.Sum];

    private static Reckoning OneDay => new(
        "degree-days",
        "How many degree-days did this day bring?",
        [
            new("method", KeyKind.Text, string.Empty, "how the day's temperature is drawn") { Choices = [.. Methods.Select(m => m.Word)] },
            Degrees("low", "lower threshold, below which nothing grows"),
            Degrees("high", "upper threshold; null where there is none") with { Nullable = true, Optional = true },
            new("cutoff", KeyKind.Text, string.Empty, "what happens above the upper threshold; horizontal where none is given") { Choices = [.. Cutoffs.Select(c => c.Word)], Optional = true },
            Degrees("tmin", "lowest of the day"),
            Degrees("tmax", "highest of the day"),
            Degrees("next_tmin", "lowest of the next morning; needed by the double methods") with { Nullable = true, Optional = true },
        ],
        [new("degree_days", KeyKind.Number, "degree-days of the same scale", "warmth of the day that counts")],
        Sources.Zalom1983,
        "method=single-sine low=55 high=90 cutoff=horizontal tmin=50 tmax=82",
        Count)
    {
        Limits = "All temperatures on one scale, °F or °C; the answer is in degree-days of that scale. 'simple' takes the mean of the day first and compares "
            + "the mean with the thresholds (method 1 of McMaster and Wilhelm); 'simple-floored' brings the lowest and the highest to the thresholds first, "
            + "then takes the mean (method 2). They differ on every day that crosses a threshold: state which one a count used. "
            + "Intermediate cutoff is never less than nothing. Forecasts of growth from degree-days are out by about a week.",
    };

    private static ReckoningKey Degrees(string key, string meaning) => new(key, KeyKind.Number, "degrees", meaning) { Least = -130, Most = 150 };

    private static Outcome<Reckoned> Count(ReckoningInput given)
    {
        var rule = new WarmthRule(Methods.First(m => m.Word == given.Text("method")).Method, Degree(given.Number("low")))
        {
            Upper = given.NumberOrNone("high") is { } high ? Degree(high) : null,
            Cutoff = given.Has("cutoff") ? Cutoffs.First(c => c.Word == given.Text("cutoff")).Cutoff : Cutoff.Horizontal,
        };
        var problems = Faults(given, rule);
        if (!problems.IsEmpty) return Outcome<Reckoned>.Refuse(problems);
        var (low, top) = (Degree(given.Number("tmin")), Degree(given.Number("tmax")));
        Temperature? next = given.NumberOrNone("next_tmin") is { } morning ? Degree(morning) : null;
        var counted = Warmth.OfDay(low, top, next, rule).Celsius;
        var working = Inputs(given, rule).Step("DD", "degree-days of the day", counted, Scale.Replace("degrees", "degree-days", StringComparison.Ordinal), Formula(rule), Basis(rule));
        return Outcome<Reckoned>.Of(new Reckoned([("degree_days", counted)], working) { Cautions = Cautions(given, rule) });
    }

    // Whatever the scale, its degrees are carried as they came: every method is the same on each scale of even steps.
    private static Temperature Degree(double value) => Temperature.FromCelsius(value);

    private static ImmutableArray<Problem> Faults(ReckoningInput given, WarmthRule rule)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (given.Number("tmin") > given.Number("tmax"))
            problems.Add(GrowthProblems.HighBelowLow.At("tmax", ("high", Say(given, "tmax")), ("low", Say(given, "tmin"))));
        if (rule.Upper is { } upper && upper <= rule.Lower)
            problems.Add(GrowthProblems.ThresholdsCross.At("high", ("high", Say(given, "high")), ("low", Say(given, "low"))));
        if (rule.NeedsNextMorning && !given.Has("next_tmin"))
            problems.Add(GrowthProblems.NextMorningMissing.At("next_tmin", ("method", given.Text("method"))));
        return problems.ToImmutable();
    }

    private static string Say(ReckoningInput given, string key) => Wording.Say.Figure(given.Number(key));

    private static Working Inputs(ReckoningInput given, WarmthRule rule)
    {
        var working = Working.Empty
            .Given("method", "how the day is drawn", given.Text("method"), string.Empty, "typed")
            .Given("L", "lower threshold", given.Number("low"), Scale, "typed")
            .Given("mn", "lowest of the day", given.Number("tmin"), Scale, "typed")
            .Given("mx", "highest of the day", given.Number("tmax"), Scale, "typed");
        if (rule.NeedsNextMorning) working = working.Given("mn2", "lowest of the next morning", given.Number("next_tmin"), Scale, "typed");
        if (rule.Upper is null) return working;
        return working
            .Given("U", "upper threshold", given.Number("high"), Scale, "typed")
            .Given("cutoff", "what happens above it", Cutoffs.First(c => c.Cutoff == rule.Cutoff).Word, string.Empty, given.Has("cutoff") ? "typed" : "usual");
    }

    private static string Formula(WarmthRule rule)
    {
        var above = rule.Method switch
        {
            WarmthMethod.Simple => "F(T) = max(0, (mx + mn)/2 - T)",
            WarmthMethod.SimpleFloored => "F(T) = (max(0, mx - T) + max(0, mn - T)) / 2",
            WarmthMethod.SingleTriangle or WarmthMethod.DoubleTriangle => "F(T) = (mx - T)^2 / (2 (mx - mn)) where T lies between mn and mx",
            WarmthMethod.SingleSine or WarmthMethod.DoubleSine => "F(T) = ((M - T)(pi/2 - a) + W cos a) / pi, a = asin((T - M)/W), M = (mx + mn)/2, W = (mx - mn)/2 where T lies between mn and mx",
            _ => throw new UnreachableException(),
        };
        var cut = rule.Upper is null ? "F(L)" : rule.Cutoff switch
        {
            Cutoff.Horizontal => "F(L) - F(U)",
            Cutoff.Intermediate => "max(0, F(L) - 2 F(U))",
            Cutoff.Vertical => "F(L) - F(U) - (U - L) × share of the day above U",
            _ => throw new UnreachableException(),
        };
        return cut + "; " + above + (rule.NeedsNextMorning ? "; half from (mn, mx), half from (mn2, mx)" : string.Empty);
    }

    private static Citation Basis(WarmthRule rule) => rule switch
    {
        { Upper: not null, Cutoff: not Cutoff.Horizontal } => Sources.DayCourseGeometry,
        { Method: WarmthMethod.Simple } => Sources.McMasterWilhelm1997.At("method 1"),
        { Method: WarmthMethod.SimpleFloored } => Sources.McMasterWilhelm1997.At("method 2"),
        _ => Sources.Zalom1983.At("table 7"),
    };

    private static ImmutableArray<string> Cautions(ReckoningInput given, WarmthRule rule)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        cautions.Add("Store the method and thresholds with the number: counts by different rules cannot be compared.");
        if (rule.NeedsNextMorning && given.Number("next_tmin") > given.Number("tmax"))
            cautions.Add("The next morning is warmer than this day's highest: check both readings. The second half was drawn between the two as given.");
        return cautions.ToImmutable();
    }
}
