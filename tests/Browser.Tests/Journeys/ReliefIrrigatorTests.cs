using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// The regular irrigator is ill. The grower hands a phone to the relief, who reads Spanish, where there is no signal: today's
/// route, the boxes' notes, what must not be let out, the depths to aim at; four taps; and the next day both logs are one.
/// </summary>
public sealed partial class ReliefIrrigatorTests(Chromium chromium, Marrowfen marrowfen)
{
    private const string Relief = "Lucero Quintabar";

    private static readonly string[] Watched = ["Two Gates", "Willow Run", "Upper Sink", "Lower Sink", "Tin Barn"];

    [Fact]
    public async Task The_relief_reads_the_route_in_Spanish_with_no_signal_and_his_four_taps_are_joined_with_the_growers()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var relief = await Device.VisitedAsync(chromium, host, Holding.Telephone with { Spanish = true });
        await using var grower = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await relief.KeptWholeAsync();
        await relief.SetAwayAsync(true);
        await relief.OpenAsync("water/route");
        await ReadTheRouteAsync(relief);

        // Four taps at three fields.
        await relief.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "Cuadro 5 mojado", Exact = true }).ClickAsync();
        await relief.SaysAsync("1 por enviar");
        await relief.Field("Willow Run").GetByRole(AriaRole.Button, new() { Name = "Cuadro 4 mojado", Exact = true }).ClickAsync();
        await relief.SaysAsync("2 por enviar");
        await relief.Field("Lower Sink").GetByRole(AriaRole.Group, new() { Name = "Nivel" }).GetByRole(AriaRole.Button, new() { Name = "3", Exact = true }).ClickAsync();
        await relief.SaysAsync("3 por enviar");
        await relief.Field("Upper Sink").GetByRole(AriaRole.Button, new() { Name = "3: Fuga", Exact = true }).ClickAsync();
        await relief.SaysAsync("4 por enviar");
        await relief.ReloadAsync();
        await relief.SaysAsync("4 por enviar");

        // Meanwhile the grower marks another check of a field that the relief marked too.
        await grower.GoAsync("water");
        await grower.Field("Willow Run").GetByRole(AriaRole.Button, new() { Name = "Check 5: dry" }).ClickAsync();
        await grower.Field("Willow Run").GetByRole(AriaRole.Button, new() { Name = "wet", Exact = true }).ClickAsync();
        var own = Assert.Single(await host.MarksAsync(least: 1));

        await relief.SetAwayAsync(false);
        await relief.SaysAsync("todo enviado");
        var all = await host.MarksAsync(least: 5);
        Assert.Equal(5, all.Select(m => m.GetProperty("id").GetString()).Distinct(StringComparer.Ordinal).Count());
        Assert.Contains(all, m => m.GetRawText() == own.GetRawText());

        // The next day the logs are joined in either order, and give the same ground.
        await using var one = await marrowfen.OpenAsync(at: "2026-05-09T04:50");
        await using var other = await marrowfen.OpenAsync(at: "2026-05-09T04:50");
        await one.SendAsync(all);
        await other.SendAsync(all.Reverse());
        Assert.Equal(await GroundAsync(one), await GroundAsync(other));
        Usable.Nothing([.. relief.Complaints, .. grower.Complaints]);
    }

    [Fact]
    public async Task The_route_prints_in_Spanish_on_two_pages_at_most()
    {
        await using var device = await Device.VisitedAsync(chromium, marrowfen.Quiet, new Holding(Phone: false, Spanish: true));
        await device.GoAsync("water/route");
        await device.Page.GetByRole(AriaRole.Article, new() { Name = "Hoja de agua" }).WaitForAsync();
        var paper = await device.Page.PdfAsync(new() { PreferCSSPageSize = true, PrintBackground = false });
        var sheets = PageOfPaper().Count(Encoding.Latin1.GetString(paper));
        Assert.InRange(sheets, 1, 2);
    }

    // What the route must hold for somebody who has never walked it.
    private static async Task ReadTheRouteAsync(Device relief)
    {
        Assert.Equal("es", await relief.Page.EvaluateAsync<string>("document.documentElement.lang"));
        await relief.Main.GetByRole(AriaRole.Heading, new() { Name = "Recorrido para hoy" }).WaitForAsync();
        await relief.Main.GetByRole(AriaRole.Button, new() { Name = Relief, Pressed = true }).First.WaitForAsync();
        var walk = relief.Main.GetByRole(AriaRole.Region, new() { Name = "Marque lo que ve" });
        // Nobody marked any field no-spill on this morning, and the page says so instead of leaving a gap.
        await walk.GetByText("Ningún campo está marcado para no tirar agua").WaitForAsync();
        foreach (var field in Watched) await relief.Field(field).GetByText("Meta 2").First.WaitForAsync();
        await relief.Field("Crooked Box").GetByText("FUGA").First.WaitForAsync();
        await relief.Field("Two Gates").GetByText("caja 1: entrada al cuadro 1").First.WaitForAsync();
        Usable.Nothing(await Usable.AllAsync(relief.Page));
    }

    // What a phone that has marked nothing shows of the checks: their words, without ages.
    private async Task<string> GroundAsync(RunningHost host)
    {
        await using var fresh = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await fresh.GoAsync("water");
        await fresh.SaysAsync("all sent");
        var said = new StringBuilder();
        foreach (var field in Watched)
        {
            foreach (var check in await fresh.Field(field).GetByRole(AriaRole.Button, new() { NameRegex = Check() }).AllAsync())
                said.Append(field).Append(' ').AppendLine((await check.GetAttributeAsync("aria-label"))!.Split(',')[0]);
        }

        Assert.Contains("Two Gates Check 5: wet", said.ToString(), StringComparison.Ordinal);
        Assert.Contains("Willow Run Check 4: wet", said.ToString(), StringComparison.Ordinal);
        Assert.Contains("Willow Run Check 5: wet", said.ToString(), StringComparison.Ordinal);
        return said.ToString();
    }

    [GeneratedRegex(@"^Check \d+: ", RegexOptions.None, 1000)]
    private static partial Regex Check();

    [GeneratedRegex(@"/Type\s*/Page\b", RegexOptions.None, 1000)]
    private static partial Regex PageOfPaper();
}
