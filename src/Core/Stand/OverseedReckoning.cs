using System.Globalization;
using Watersown.Reckon;

namespace Watersown.Stand;

/// <summary>Whether sowing thin land again pays, asked for by name.</summary>
internal static class OverseedReckoning
{
    public static Reckoning Sum => new(
        "overseed",
        "Does it pay to sow this thin land again?",
        [
            new("acres", KeyKind.Number, "ac", "thin land only") { Least = 0.01, Most = 100_000 },
            new("stand_now_ft2", KeyKind.Number, "plants/ft²", "stand today") { Least = 0, Most = 1000 },
            new("stand_after_ft2", KeyKind.Number, "plants/ft²", "stand expected after overseeding") { Least = 0, Most = 1000 },
            new("yield_cwt_ac", KeyKind.Number, "cwt/ac", "yield at a full stand") { Least = 0, Most = 1000 },
            new("price_cwt", KeyKind.Number, "$/cwt", "price of grain") { Least = 0, Most = 10_000 },
            new("cost_ac", KeyKind.Number, "$/ac", "seed, soaking, haul and flight") { Least = 0, Most = 100_000 },
            new("days_late", KeyKind.Number, "days", "how much later it ripens") { Least = 0, Most = 366 },
            new("delay_cost_ac_day", KeyKind.Number, "$/ac/day", "what a day's delay costs") { Least = 0, Most = 100_000 },
            new("response", KeyKind.Rows, string.Empty, "pairs of plants/ft² and share of the best yield, by rising stand; the usual one where none is given") { Optional = true },
        ],
        [
            new("gain", KeyKind.Number, "$", "worth of the grain gained less sowing and delay"),
            new("gain_per_ac", KeyKind.Number, "$/ac", "the same for one acre"),
            new("worth_it", KeyKind.YesNo, string.Empty, "true where the gain is above zero"),
        ],
        Sources.ReseedSum,
        "acres=30 stand_now_ft2=7 stand_after_ft2=18 yield_cwt_ac=85 price_cwt=18 cost_ac=95 days_late=12 delay_cost_ac_day=3.6 response=[[3,0.55],[5,0.72],[8,0.86],[10,0.91],[12.5,0.95],[15,0.97],[20,0.99],[25,1]]",
        Reckon)
    {
        Limits = "Straight lines between the pairs, level beyond the first and the last. Trials disagree on the best stand: about 25 plants/ft² in California, 9 to 19 in New South Wales with an even spread. "
            + "Give the thin zone alone, never the field's mean. Ragged ripening is not in the sum except by days_late.",
    };

    private static Outcome<Reckoned> Reckon(ReckoningInput given)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var response = given.Has("response") ? Response(given, problems) : Overseeding.UsualResponse;
        if (given.Number("stand_after_ft2") < given.Number("stand_now_ft2"))
            problems.Add(StandProblems.ThinnerAfter.At("stand_after_ft2", ("after", Wording.Say.Figure(given.Number("stand_after_ft2"))), ("now", Wording.Say.Figure(given.Number("stand_now_ft2")))));
        if (problems.Count > 0) return Outcome<Reckoned>.Refuse(problems.ToImmutable());

        var land = new ThinLand(
            Area.FromAcres(given.Number("acres")),
            PlantDensity.FromPerSquareFoot(given.Number("stand_now_ft2")),
            PlantDensity.FromPerSquareFoot(given.Number("stand_after_ft2")),
            Mass.FromHundredweights(given.Number("yield_cwt_ac") * given.Number("acres")))
        {
            GrainPrice = Dollars(given, "price_cwt"),
            AcreCost = Dollars(given, "cost_ac"),
            DaysLate = given.Number("days_late"),
            AcreDay = Dollars(given, "delay_cost_ac_day"),
        };
        var sum = Overseeding.Reckon(land, response);
        var gain = (double)sum.Gain.Amount;
        return Outcome<Reckoned>.Of(new Reckoned(
            [("gain", gain), ("gain_per_ac", gain / land.Land.Acres), ("worth_it", sum.WorthIt)],
            Explain(given, response, sum))
        { Cautions = Cautions(given, land, sum) });
    }

    private static Money Dollars(ReckoningInput given, string key) => new((decimal)given.Number(key));

    /// <summary>Reads the pairs, finding every fault of shape, range and order at once.</summary>
    private static ImmutableArray<ResponsePoint> Response(ReckoningInput given, ImmutableArray<Problem>.Builder problems)
    {
        var points = ImmutableArray.CreateBuilder<ResponsePoint>();
        var pairs = given.Items("response");
        if (pairs.Length < 2) problems.Add(StandProblems.ResponseEmpty.At("response", ("value", Wording.Say.Number(pairs.Length))));
        double? before = null;
        for (var i = 0; i < pairs.Length; i++)
        {
            var where = string.Create(CultureInfo.InvariantCulture, $"response #{i + 1}");
            if (pairs[i] is not Datum.Sequence { Items: [Datum.Number { Value: var stand }, Datum.Number { Value: var share }] })
            {
                problems.Add(StandProblems.ResponseShape.At(where, ("value", Wording.Say.Datum(pairs[i]))));
                continue;
            }

            var fine = Within(where, stand, 1000, "plants/ft²", problems) & Within(where, share, 1, "a share of the best yield", problems);
            if (before is { } last && stand <= last)
                problems.Add(StandProblems.ResponseOrder.At(where, ("value", Wording.Say.Figure(stand)), ("before", Wording.Say.Figure(last))));
            before = stand;
            if (fine) points.Add(new ResponsePoint(PlantDensity.FromPerSquareFoot(stand), Fraction.FromShare(share)));
        }

        return points.ToImmutable();
    }

    private static bool Within(string where, double value, double most, string what, ImmutableArray<Problem>.Builder problems)
    {
        var fine = value >= 0 && value <= most;
        if (!fine)
            problems.Add(StandProblems.ResponseRange.At(where, ("value", Wording.Say.Figure(value)), ("least", "0"), ("most", Wording.Say.Figure(most)), ("what", what)));
        return fine;
    }

    private static Working Explain(ReckoningInput given, ImmutableArray<ResponsePoint> response, OverseedSum sum)
    {
        var working = Working.Empty;
        foreach (var (symbol, key, meaning, unit) in new[]
        {
            ("A", "acres", "thin land", "ac"), ("p0", "stand_now_ft2", "stand today", "plants/ft²"), ("p1", "stand_after_ft2", "stand after overseeding", "plants/ft²"),
            ("Y", "yield_cwt_ac", "yield at a full stand", "cwt/ac"), ("P", "price_cwt", "price of grain", "$/cwt"), ("C", "cost_ac", "sowing again", "$/ac"),
            ("d", "days_late", "days later", "days"), ("k", "delay_cost_ac_day", "a day's delay", "$/ac/day"),
        })
            working = working.Given(symbol, meaning, given.Number(key), unit, "typed");
        var pairs = Datum.ListOf(response.Select(p => Datum.ListOf([p.Stand.PerSquareFoot, p.Share.Share])));
        working = given.Has("response")
            ? working.Given("f", "yield by stand", pairs, "plants/ft², share", "typed")
            : working.Constant("f", "yield by stand", pairs, "plants/ft², share", Sources.FarmDefault);
        return working
            .Step("f0", "share of the best yield today", sum.ShareNow.Share, string.Empty, "f at p0, straight lines, level beyond the ends", Sources.Arithmetic)
            .Step("f1", "share after overseeding", sum.ShareAfter.Share, string.Empty, "f at p1", Sources.Arithmetic)
            .Step("W", "worth of the grain gained", (double)sum.Worth.Amount, "$", "A × Y × (f1 - f0) × P", Sources.ReseedSum)
            .Step("S", "sowing again", (double)sum.Sowing.Amount, "$", "A × C", Sources.ReseedSum)
            .Step("D", "days lost", (double)sum.Delay.Amount, "$", "A × d × k", Sources.ReseedSum)
            .Step("G", "gain", (double)sum.Gain.Amount, "$", "W - S - D", Sources.ReseedSum);
    }

    private static ImmutableArray<string> Cautions(ReckoningInput given, ThinLand land, OverseedSum sum)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (!given.Has("response")) cautions.Add("The usual response was taken: change it to your farm's own.");
        if (Math.Abs((double)sum.Gain.Amount) < 0.1 * (double)(sum.Sowing + sum.Delay).Amount)
            cautions.Add("The gain is within a tenth of the cost: too near to call from estimates.");
        if (land.DaysLate > 0) cautions.Add("Two ages of rice in one field ripen apart: the dryer sees the wetter of them.");
        cautions.Add("An estimate. Local extension and your adviser know the field; the calendar and the policy have dates of their own.");
        return cautions.ToImmutable();
    }
}
