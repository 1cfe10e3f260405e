namespace Watersown.Flight.Laying;

/// <summary>How the figures of a layout were worked out.</summary>
public static class LayoutWorking
{
    /// <summary>Heading, passes, time, the bound, and the loads where there are some.</summary>
    public static Working Of(FieldLayout layout)
    {
        var pace = layout.Pace;
        var working = Working.Empty
            .Given("S", "swath", pace.Swath.Feet, "ft", "flying service")
            .Given("V", "ground speed while sowing", pace.Speed.MilesPerHour, "mph", "flying service")
            .Given("Tt", "one turn", pace.Turn.TotalSeconds, "s", "flying service")
            .Given("A", "land sown", layout.Cells.Aggregate(Area.Zero, (sum, c) => sum + c.Area).Acres, "ac", "edge of the field");
        if (pace.Wind is { } wind)
        {
            working = working
                .Given("w", "wind", wind.Speed.MilesPerHour, "mph", "as told")
                .Given("φ", "wind from", wind.From.Degrees, "° from true north", "as told");
            if (wind.MostAcross is { } most) working = working.Given("wm", "most wind across a pass", most.MilesPerHour, "mph", "a wish");
        }

        foreach (var cell in layout.Cells)
        {
            var letter = layout.Cells.Length > 1 ? cell.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) : string.Empty;
            working = working
                .Step("θ" + letter, "heading", cell.Plan.Heading.Degrees, "° from true north", layout.ForFerry > TimeSpan.Zero ? "a side of the outline: the ferry of its loads saves more than its passes cost" : "least of L / V + (n − 1) Tt over each quarter of a degree, each side of the outline and each heading where n changes; a run wished for stands", Sources.WidthTheorem)
                .Step("n" + letter, "passes", cell.Plan.All.Length, string.Empty, "width across θ / S, rounded up", Sources.WholePassCount)
                .Step("S" + letter + "′", "evened out", cell.Plan.Spacing.Feet, "ft", "width across θ / n", Sources.WholePassCount);
        }

        if (pace.Reach is { } reach) working = working.Step("R", "radius of the turn that was timed", reach.Radius.Feet, "ft", "R such that R (3 π − 4 asin((2 R + S) / (4 R))) = V × Tt", Sources.TurnGeometry);
        working = working
            .Step("L", "flown, end to end of every pass", layout.Flown.Miles, "mi", "lines at (i − 1/2) S′, each from the first land of its strip to the last", Sources.Definition)
            .Step("T", "passes and turns", layout.Passing.TotalMinutes, "min", pace.Wind is null ? "L / V + (n − 1) Tt, and the ground between where the next pass is not beside" : "L √(V² − wc²) / (V² − w²) + (n − 1) Tt, wc wind across, each pass as if flown one way as often as the other", Sources.WholePassCount)
            .Step("nb", "fewest passes that could do", layout.Bound.Passes, string.Empty, layout.Bound.Convex ? "least width / S, rounded up" : "(least width of the outline, or of a part cut off by straight lines − strips just wide enough to lie over its bays and holes) / S, or A / (S × longest way across), rounded up", Sources.Bang1951)
            .Step("Tb", "no straight passes are quicker", layout.Bound.Time.TotalMinutes, "min", pace.Wind is null ? "A / (S V) + (nb − 1) Tt" : "A / (S √(V² − w²)) + (nb − 1) Tt", Sources.Bang1951);
        return layout.Loads is { } loads ? Loads(working, layout, loads) : working;
    }

    private static Working Loads(Working working, FieldLayout layout, LoadChoice loads)
    {
        working = working
            .Step("k", "loads", loads.Chosen.Loads.Length, string.Empty, loads.Chosen == loads.Whole ? "whole passes, order and shares such that ferry, turnaround and turns take least of all looked at; never more than in the order laid" : "stopped at quarters of passes where that takes less, lined up once more there", Sources.ShortestPath)
            .Step("F", "ferry, there and back", loads.Chosen.Ferry.TotalMinutes, "min", "Σ strip to first pass and last pass to strip, each begun at the better end", Sources.ShortestPath)
            .Step("F0", "ferry of loads filled up in the order laid", loads.FilledUp.Ferry.TotalMinutes, "min", "each as many whole passes as go in, turned at every break as at a turn", Sources.CommonPractice)
            .Step("Fb", "no whole passes ferry less", loads.LeastFerry.TotalMinutes, "min", "2 × (all seed / most in a load, rounded up) ends of passes, those nearest to the strip", Sources.Arithmetic)
            .Step("Tj", "the whole job", layout.Job!.Value.TotalMinutes, "min", "L / V + turns within loads + F + k × turnaround", Sources.Arithmetic);
        return loads.ForOneFewer is { } limit && loads.OneFewerSaves is { } saved
            ? working
                .Step("Q1", "limit that saves a load", limit.Pounds, "lb soaked", "smallest at which one load fewer holds all passes", Sources.WholePassCount)
                .Step("ΔT", "what it would save", saved.TotalMinutes, "min", "the same split at that limit", Sources.ShortestPath)
            : working;
    }
}
