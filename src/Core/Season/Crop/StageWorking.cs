using System.Globalization;
using Watersown.Growth;

namespace Watersown.Season.Crop;

/// <summary>The sum behind a field's stages.</summary>
internal static class StageWorking
{
    private const string Degrees = "°F·d";

    public static Working Show(StageCalendar calendar, ClassTargets targets, SeasonBook book, (int Measured, int Filled) past, DateOnly today)
    {
        var rule = calendar.Question.Rule;
        var working = Working.Empty
            .Given("s", "sown; the day counts", Datum.Date(calendar.Question.Sown), string.Empty, "marks or farm")
            .Given("L", "lower threshold, by the mean of the day", rule.Lower.Fahrenheit, "°F", "usual rule")
            .Given("n", "days since measured", past.Measured, "days", "typed or from a file")
            .Given("m", "days since filled in", past.Filled, "days", "neighbors or normals")
            .Given("N", "normals for days to come", book.Weather.Normals.Months.Length, "months", book.Weather.Normals.Source.Length == 0 ? "none" : book.Weather.Normals.Source, book.Weather.NormalsAt)
            .Step("W", "warmth since sowing, this morning", calendar.SumOn(today).Fahrenheit, Degrees, "Σ max(0, (Tmax + Tmin)/2 − L)", Sources.McMasterWilhelm1997.At("method 1"));
        foreach (var seen in calendar.Stages.Where(s => s.Seen))
            working = working.Given("o", "seen: " + Name(seen.Point) + ", the count was set to it", Datum.Date(seen.Day), string.Empty, "mark");
        foreach (var stage in new[] { CropStage.PanicleInitiation, CropStage.Booting, CropStage.Heading, CropStage.Mature })
        {
            var target = targets.Targets.To(stage).Fahrenheit;
            working = targets.Basis == TargetBasis.Farm
                ? working.Given("T", Name(new StagePoint(stage)) + ", warmth asked for", target, Degrees, "typed by the farm")
                : working.Constant("T", Name(new StagePoint(stage)) + ", warmth asked for" + (targets.Basis == TargetBasis.Borrowed ? " (class unknown: early taken)" : string.Empty), target, Degrees, Sources.StageTargetsFitted);
            if (calendar.Of(stage) is not { Seen: false } date) continue;
            working = working
                .Step("d", Name(date.Point), Datum.Date(date.Day), string.Empty, "first morning with W ≥ T", Sources.StageTargetsFitted)
                .Step("e", "± two times out of three", date.Error, "days", "√((6.5 × share of the way)² + (5 °F √(3 × days by normals) / warmth of a day)²)", Sources.Japan1990);
        }

        return working
            .Constant("l1", "first leaf, above 0 °C", LeafPace.First.Celsius, "°C·d", Sources.LeavesUnderWater)
            .Constant("l", "from leaf to leaf, above 0 °C", LeafPace.Leaf.Celsius, "°C·d", Sources.Yoshida1981.At("p. 21"));
    }

    private static string Name(StagePoint point) => point.Stage switch
    {
        CropStage.Leaf => "leaf " + point.Leaf.ToString(CultureInfo.InvariantCulture),
        CropStage.Tillering => "tillering",
        CropStage.PanicleInitiation => "panicle initiation",
        CropStage.Booting => "booting",
        CropStage.Heading => "heading",
        _ => "mature",
    };
}
