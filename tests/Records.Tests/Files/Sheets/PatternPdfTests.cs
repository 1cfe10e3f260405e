using UglyToad.PdfPig;
using Watersown.Flight.Patterns;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

public sealed class PatternPdfTests
{
    [Theory]
    [InlineData(Language.English, "44.5 ft", "back and forth")]
    [InlineData(Language.Spanish, "44.5 pies", "ida y vuelta")]
    public void A_pattern_test_is_one_page_with_three_drawings(Language language, string swath, string mode)
    {
        var plan = PrintedPages.Plan;
        var fitted = Fitter.Fit(PatternPage.Of(plan, plan.State.Aeroplanes[0], TrayReading.Of(Test, new TrayAsk { Steering = Length.FromMeters(0.5) }), language));
        using var pdf = PdfDocument.Open(PdfSheet.Write(fitted, PlannedMorning.Now));
        Assert.Equal(1, pdf.NumberOfPages);
        var text = string.Concat(pdf.GetPage(1).Letters.Select(l => l.Value)).Replace(" ", string.Empty, StringComparison.Ordinal);
        Assert.Contains(swath.Replace(" ", string.Empty, StringComparison.Ordinal), text, StringComparison.Ordinal);
        Assert.Contains(mode.Replace(" ", string.Empty, StringComparison.Ordinal), text, StringComparison.Ordinal);
        Assert.Equal(3, PrintedPages.Blocks(fitted).OfType<Block.Picture>().Count());
    }

    // Made up for testing, worked by hand: at 20 % the widest swath is 14.20 m both ways.
    private static TrayTest Test => new()
    {
        Day = new DateOnly(2026, 5, 7),
        Seed = "E-1 soaked",
        Passes = [.. new[] { 0.95, 1, 1.05 }.Select(pass => new[] { 0, 0.3, 0.8, 1.6, 2.7, 3.9, 4.8, 5.3, 5.6, 5.7, 5.8, 5.7, 5.6, 5.3, 4.8, 3.9, 2.7, 1.6, 0.8, 0.3, 0 }.Select(g => SoakedSeed.FromKilograms(pass * g / 1000)).ToImmutableArray())],
        Spacing = Length.FromMeters(1),
        Tray = Area.FromSquareMeters(0.25),
        Speed = Speed.FromMilesPerHour(120),
        Gate = MassFlow.FromPoundsPerMinute(2000),
    };
}
