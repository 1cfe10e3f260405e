namespace Watersown.Flight.Patterns;

/// <summary>How a tray test was worked out.</summary>
internal static class TrayWorking
{
    public static Working Of(TrayAnswer answer)
    {
        var test = answer.Test;
        var working = Working.Empty
            .Given("p", "trays, left to right, mean of the passes", Datum.ListOf(test.MeanRow.Select(t => Math.Round(t.Kilograms * 1000, 6))), "g", "tray test")
            .Given("k", "passes", test.Passes.Length, string.Empty, "tray test")
            .Given("d", "tray spacing", test.Spacing.Meters, "m", "tray test")
            .Given("a", "tray area", test.Tray.SquareMeters, "m²", "tray test")
            .Given("o", "middle of the row right of the line", test.Offset.Meters, "m", "tray test")
            .Given("c", "limit", answer.Ask.Limit.Percent, "%", "asked; 20 to 25 % is common practice, no source")
            .Given("e", "steering error", answer.Ask.Steering.Meters, "m", "asked; about 1 m is common practice, no source")
            .Step("S1", "widest swath, all one way", Meters(answer.OneWay.Widest), "m", "largest S in steps of 0.05 m with CV1(S) ≤ c, trays joined", Sources.OverlapGeometry)
            .Step("S1e", "the same with steering error", Meters(answer.OneWay.Steady), "m", "largest S with CV1 ≤ c from S − e to S + e", Sources.OverlapGeometry)
            .Step("S2", "widest swath, back and forth", Meters(answer.BackAndForth.Widest), "m", "largest S in steps of 0.05 m with CV2(S) ≤ c, trays joined", Sources.OverlapGeometry)
            .Step("S2e", "the same with steering error", Meters(answer.BackAndForth.Steady), "m", "largest S with CV2 ≤ c from S − e to S + e", Sources.OverlapGeometry)
            .Step("x", "middle of the pattern right of the line", answer.Middle.Meters, "m", "Σ p x / Σ p", Sources.OverlapGeometry)
            .Step("Sh", "quick rule", Meters(answer.HalfMean), "m", "left and right distance to where half of the middle lies, together", Sources.OhioB817)
            .Step("q", "seed laid for each meter flown", answer.Pattern.PerMeter.Kilograms * 1000, "g/m", "Σ p × d / a", Sources.OverlapGeometry);
        if (test.ThousandGrains is { } grains) working = working.Given("w", "weight of 1,000 soaked grains", grains.Kilograms * 1000, "g", "tray test").Constant("f", "chance taken out of each CV", "CV² − (2/3 − d/S) / (N k)", string.Empty, Sources.CountingStatistics);
        if (answer.Offset is { } offset)
        {
            working = working
                .Step("cB", "back and forth as the lines lie", offset.Before.Percent, "%", "CV2(S) at S of all one way", Sources.OverlapGeometry)
                .Step("L", "lines moved left", offset.ToLeft.Meters, "m", "the L with the least CV2 of p(x + L), steps of 0.05 m", Sources.OverlapGeometry)
                .Step("cA", "back and forth then", offset.After.Percent, "%", "CV2(S) of p(x + L)", Sources.OverlapGeometry);
        }

        if (answer.Laid is { } laid) working = working.Given("V", "ground speed", test.Speed!.Value.MilesPerHour, "mph", "tray test").Step("F", "flow by the trays", laid.PoundsPerMinute, "lb/min", "q × V", Sources.OverlapGeometry);
        if (answer.Closure is { } closure) working = working.Given("G", "flow by the gate", test.Gate!.Value.PoundsPerMinute, "lb/min", "scale and watch").Step("r", "trays over gate", closure.Share, string.Empty, "F / G", Sources.Arithmetic);
        return working.Step("Δ", "largest difference to the Fourier form", answer.FourierDifference.Percent, "points of CV", "CV² = 2 Σ |P(k/S) / P(0)|²", Sources.OverlapGeometry);
    }

    private static Datum Meters(Length? length) => Datum.Of(length?.Meters);
}
