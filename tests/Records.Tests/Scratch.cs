using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Wording;
namespace Watersown;

public sealed class Scratch
{
    [Fact]
    public void Out()
    {
        var plan = PlannedMorning.Plan();
        Directory.CreateDirectory("/tmp/sheets");
        var watch = System.Diagnostics.Stopwatch.StartNew();
        foreach (var lang in new[] { Language.English, Language.Spanish })
        {
            var day = new DateOnly(2026, 5, 8);
            var pages = FlightSheets.Of(plan).Select(s => FlightPage.Of(plan, s, lang)).Append(SeedPage.Of(plan, SeedSheets.Of(plan, day), lang))
                .Append(WaterPage.Of(plan, WaterSheets.Of(plan, day, "Lucero Quintabar"), lang)).Append(DayPage.Of(plan, Watersown.Schedule.DaySheets.Of(plan, day), lang));
            foreach (var page in pages)
            {
                var fitted = Fitter.Fit(page);
                var stem = "/tmp/sheets/" + page.Key + "-" + lang;
                File.WriteAllBytes(stem + ".pdf", PdfSheet.Write(fitted, plan.MadeAt));
                File.WriteAllText(stem + ".html", HtmlSheet.Write(fitted));
            }
        }
        File.WriteAllLines("/tmp/sheets/texts.txt", Watersown.Schedule.Messages.Of(plan, new DateOnly(2026, 5, 8)).Select(m => $"{m.Role,-11} {m.Septets,3} {m.Text}"));
        File.WriteAllText("/tmp/sheets/time.txt", watch.ElapsedMilliseconds + " ms");
    }
}
public sealed class Scratch2
{
    [Fact]
    public void Heights()
    {
        var plan = PlannedMorning.Plan();
        var sheet = FlightSheets.Of(plan).First(s => s.Field.Code == "R5");
        var page = FlightPage.Of(plan, sheet, Language.English);
        var o = new System.Text.StringBuilder();
        o.AppendLine("room " + Paper.Room + " head " + HeadLayout.Lay(page, "").Height);
        foreach (var a in page.Arrangements) { o.AppendLine("--"); foreach (var b in a) o.AppendLine(b.GetType().Name + " " + BlockLayout.Lay(b is Block.Side s ? s with { Left = [.. s.Left.Select(x => x is Block.Picture p ? p with { Most = p.Least } : x)] } : b, Paper.Inner).Height); }
        File.WriteAllText("/tmp/heights.txt", o.ToString());
    }
}
