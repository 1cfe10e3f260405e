using System.Globalization;
using Watersown.Reckon;

namespace Watersown.Stand;

/// <summary>The calculations about the stand that can be asked for by name.</summary>
public static class StandReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [Count, Rings, OverseedReckoning.Sum];

    private static Reckoning Count => new(
        "stand-count",
        "What stand do these ring counts show, and how sure is it?",
        [
            new("zones", KeyKind.Rows, string.Empty, "parts of the field that stand alike, with their rings")
            {
                Columns =
                [
                    new("acres", KeyKind.Number, "ac", "land of the zone") { Least = 0, AboveLeast = true, Most = 100_000 },
                    new("counts", KeyKind.Numbers, "plants", "plants in each ring") { Least = 0, Most = 100_000 },
                    new("name", KeyKind.Text, string.Empty, "the farm's name for the zone") { Optional = true },
                ],
            },
            new("ring_ft2", KeyKind.Number, "ft²", "land inside the ring") { Least = 0.01, Most = 10_000 },
        ],
        [
            new("mean_ft2", KeyKind.Number, "plants/ft²", "stand of the field, weighted by land"),
            new("low_ft2", KeyKind.Number, "plants/ft²", "lower end of the 95 % range; null where the rings cannot say"),
            new("high_ft2", KeyKind.Number, "plants/ft²", "upper end of the 95 % range; null where the rings cannot say"),
            new("zones", KeyKind.Rows, string.Empty, "the same for each zone, in the order given"),
        ],
        Sources.Cochran1977.At("chapter 5"),
        """zones=[{"name":"upwind","acres":30,"counts":[7,5,9,6,8,7]},{"name":"lee","acres":82,"counts":[21,18,24,20,23,20]}] ring_ft2=1""",
        Assess)
    {
        Limits = "Weighted by acres, never by the number of rings. 95 % range by Student's t; for the field with Satterthwaite's degrees of freedom, because zones seldom vary alike. "
            + "A zone with one ring has no range, and then the field has none either. The lower end is not let below zero. Throw the ring at random; a range says nothing about places where no ring fell.",
    };

    private static Reckoning Rings => new(
        "sample-size",
        "How many rings are enough?",
        [
            new("counts", KeyKind.Numbers, "plants", "a first few rings") { Least = 0, Most = 100_000 },
            new("precision_pct", KeyKind.Number, "%", "how near the mean is wanted, as a share of it") { Least = 0.1, Most = 100 },
            new("confidence_pct", KeyKind.Number, "%", "how often it shall be that near") { Least = 50, AboveLeast = true, Most = 99.99 },
            new("tails", KeyKind.WholeNumber, string.Empty, "2 to be neither above nor below (usual), 1 for one side only") { Least = 1, Most = 2, Optional = true },
        ],
        [new("samples", KeyKind.WholeNumber, "rings", "rings needed in all, those counted already included")],
        Sources.MissouriSampleSize.At("n = (t CV / E)^2"),
        "counts=[21,14,26,18,9,23,17,12,20,25] precision_pct=10 confidence_pct=90",
        HowMany)
    {
        Limits = "Two-tailed unless tails=1 is given: the mean shall lie within the precision on both sides. Rules that test adequacy on one side use one tail (90 % with one tail is 80 % with two). "
            + "t is taken at the degrees of freedom of the rings given. Patchy stands need more than this says: count zone by zone.",
    };

    private static Outcome<Reckoned> Assess(ReckoningInput given)
    {
        var ring = Area.FromSquareFeet(given.Number("ring_ft2"));
        ImmutableArray<StandZone> zones =
        [
            .. given.Each("zones").Select((z, i) => new StandZone(
                z.Has("name") ? z.Text("name") : "zone " + (i + 1).ToString(CultureInfo.InvariantCulture), Area.FromAcres(z.Number("acres")), z.Numbers("counts"))),
        ];
        var report = StandCounts.Assess(zones, ring);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                .. Results(report.Whole),
                ("zones", Datum.ListOf(zones.Zip(report.Zones, (zone, stand) => Datum.Row(
                    [.. Results(stand), ("name", zone.Name), ("acres", zone.Land.Acres), ("rings", zone.Counts.Length)])))),
            ],
            StandWorking.Show(ring, zones, report))
        { Cautions = Cautions(zones, report) });
    }

    private static ImmutableArray<(string Key, Datum Value)> Results(StandEstimate stand) =>
    [
        ("mean_ft2", stand.Mean.PerSquareFoot),
        ("low_ft2", Datum.Of(stand.Low?.PerSquareFoot)),
        ("high_ft2", Datum.Of(stand.High?.PerSquareFoot)),
    ];

    private static ImmutableArray<string> Cautions(ImmutableArray<StandZone> zones, StandReport report)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < zones.Length; i++)
        {
            var stand = report.Zones[i].Mean;
            if (zones[i].Counts.Length == 1)
                cautions.Add(zones[i].Name + " has one ring: it has no range, and neither has the field. Count at least one more there.");
            else if (zones[i].Counts.Length < 6)
                cautions.Add(zones[i].Name + " has fewer than 6 rings: its range is wide and may be unlucky.");
            if (zones.Length > 1 && ThinZones.IsThin(report.Zones[i], report.Whole))
                cautions.Add(zones[i].Name + " (" + Wording.Say.Figure(zones[i].Land.Acres) + " ac) stands at " + Wording.Say.Figure(stand.PerSquareFoot)
                    + " plants/ft²: judge it by itself. The field's mean of " + Wording.Say.Figure(report.Whole.Mean.PerSquareFoot) + " hides it.");
        }

        cautions.Add("An estimate from rings: walk the field, and ask your adviser before sowing again.");
        return cautions.ToImmutable();
    }

    private static Outcome<Reckoned> HowMany(ReckoningInput given)
    {
        var rings = RingStatistics.Of(given.Numbers("counts"));
        if (rings.Variance is not { } variance)
            return Outcome<Reckoned>.Refuse(StandProblems.TooFewCounts.At("counts", ("value", Wording.Say.Number(rings.Count))));
        if (rings.Mean <= 0) return Outcome<Reckoned>.Refuse(StandProblems.NothingCounted.At("counts"));
        var tails = given.NumberOrNone("tails") ?? 2;
        var chance = 1 - ((1 - (given.Number("confidence_pct") / 100)) / tails);
        var t = StudentT.Quantile(chance, rings.Count - 1);
        var exact = SampleSize.Exact(rings.Mean, Math.Sqrt(variance), Fraction.FromPercent(given.Number("precision_pct")), t);
        var samples = SampleSize.Whole(exact);
        var working = Working.Empty
            .Given("c", "plants in each ring", Datum.ListOf(given.Numbers("counts")), string.Empty, "typed")
            .Given("E", "precision", given.Number("precision_pct"), "% of the mean", "typed")
            .Given("P", "confidence", given.Number("confidence_pct"), "%, " + (tails > 1 ? "two-tailed" : "one-tailed"), "typed")
            .Step("m", "mean", rings.Mean, "plants in a ring", "Σ c / n0", Sources.Arithmetic)
            .Step("s", "standard deviation", Math.Sqrt(variance), "plants in a ring", "√ (Σ (c - m)² / (n0 - 1))", Sources.Arithmetic)
            .Step("t", "Student's t", t, string.Empty, "t(1 - (1 - P/100) / tails, n0 - 1)", Sources.AbramowitzStegun1964.At("26.7"))
            .Step("n", "rings before rounding up", exact, "rings", "(t s / (E/100 m))²", Sources.MissouriSampleSize)
            .Step("N", "rings needed in all", (double)samples, "rings", "next whole number, at least 2", Sources.MississippiAdequacy);
        return Outcome<Reckoned>.Of(new Reckoned([("samples", (double)samples)], working) { Cautions = Enough(rings, samples) });
    }

    private static ImmutableArray<string> Enough(RingStatistics rings, long samples)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (rings.Variance == 0) cautions.Add("All rings counted the same: that is luck or a habit, not a uniform field. Count more before trusting it.");
        else if (rings.Variance > 2 * rings.Mean) cautions.Add("The counts vary more than chance alone would make them: the stand is patchy. Count zone by zone.");
        cautions.Add(samples > rings.Count
            ? Wording.Say.Number(samples - rings.Count) + " more than the " + Wording.Say.Number(rings.Count) + " counted. Work it out again with all of them."
            : "The rings counted are enough for this precision.");
        return cautions.ToImmutable();
    }
}
