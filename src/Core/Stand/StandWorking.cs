using System.Globalization;

namespace Watersown.Stand;

/// <summary>The sum behind a stand.</summary>
public static class StandWorking
{
    /// <summary>Zone by zone, then the field.</summary>
    public static Working Show(Area ring, ImmutableArray<StandZone> zones, StandReport report)
    {
        var working = Working.Empty.Given("a", "land inside the ring", ring.SquareFeet, "ft²", "typed");
        for (var i = 0; i < zones.Length; i++)
        {
            var (zone, stand) = (zones[i], report.Zones[i]);
            var index = (i + 1).ToString(CultureInfo.InvariantCulture);
            working = working
                .Given("A" + index, zone.Name + ", land", zone.Land.Acres, "ac", "typed")
                .Given("c" + index, zone.Name + ", plants in each ring", Datum.ListOf(zone.Counts), string.Empty, "typed")
                .Step("m" + index, zone.Name + ", mean", stand.Mean.PerSquareFoot, "plants/ft²", "Σ c / (n a)", Sources.Arithmetic);
            if (stand.StandardError is { } error)
                working = working.Step("e" + index, zone.Name + ", standard error", error.PerSquareFoot, "plants/ft²", "s / (a √n)", Sources.MissouriSampleSize);
        }

        working = working.Step("m", "stand of the field", report.Whole.Mean.PerSquareFoot, "plants/ft²", "Σ A m / Σ A", Sources.Cochran1977.At("eq. 5.1"));
        if (report.Whole is not { StandardError: { } whole, Freedom: { } freedom, Low: { } low, High: { } high }) return working;
        return working
            .Step("e", "standard error of the field's mean", whole.PerSquareFoot, "plants/ft²", "√ Σ (A e)² / Σ A", Sources.Cochran1977.At("eq. 5.13"))
            .Step("f", "degrees of freedom", freedom, string.Empty, "(Σ (A e)²)² / Σ ((A e)⁴ / (n - 1))", Sources.Satterthwaite1946)
            .Step("t", "Student's t, two-tailed 95 %", StudentT.Quantile((1 + StandCounts.Confidence) / 2, freedom), string.Empty, "t(0.975, f)", Sources.AbramowitzStegun1964.At("26.7"))
            .Step("low", "lower end", low.PerSquareFoot, "plants/ft²", "max(0, m - t e)", Sources.MissouriSampleSize)
            .Step("high", "upper end", high.PerSquareFoot, "plants/ft²", "m + t e", Sources.MissouriSampleSize);
    }
}
