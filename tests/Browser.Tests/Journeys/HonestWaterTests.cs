using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// When fields are really full, asked at a gate with no signal. By the grower's own sums: Two Gates at 14 cfs of NT-1 Saturday 14:41, at 20 cfs
/// 00:37; Willow Run at 10 cfs of ST-2 Monday 06:50; the wells' block never on W-2 alone, short by 0.04 cfs on both, 23.7 days with 4.0 more.
/// </summary>
public sealed class HonestWaterTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task A_flow_that_is_tried_tells_its_finish_and_a_well_that_can_never_win_tells_by_how_much()
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("water/source/NT-1");
        await SaysAsync(phone, "Two Gates", "full Sat 14:[45]");
        await TryAsync(phone, "20");
        await SaysAsync(phone, "Two Gates", "full Sat 00:[345]");

        await phone.GoAsync("water/source/ST-2");
        await TryAsync(phone, "10");
        await SaysAsync(phone, "Willow Run", "full Mon (06:[45]|07:0)");

        await phone.GoAsync("water/source/W-2");
        await phone.Main.GetByText("it stops near 263").First.WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "with W-1" }).ClickAsync();
        await phone.Main.GetByText("SHORT by 0.04 cfs").First.WaitForAsync();
        await TryAsync(phone, "11.4");
        await phone.Main.GetByText("full in 23.7 days").First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    [Fact]
    public async Task The_picture_of_a_filling_field_moves_with_the_hour_and_its_table_says_the_same()
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone);
        await phone.GoAsync("water/fill/N4");
        var last = phone.Row("6");
        await last.GetByText("0 %", new() { Exact = true }).WaitForAsync();
        var slide = phone.Main.GetByRole(AriaRole.Slider);
        await slide.FillAsync(await slide.GetAttributeAsync("max") ?? "0");
        await last.GetByText("100 %", new() { Exact = true }).WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Img, new() { NameRegex = Pattern("6: 100 % covered") }).WaitForAsync();
        await slide.PressAsync("Home");
        await last.GetByText("0 %", new() { Exact = true }).WaitForAsync();
        Usable.Nothing(phone.Complaints);
    }

    private static async Task TryAsync(Device phone, string number)
    {
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Try another flow", Exact = true }).ClickAsync();
        var pad = phone.Main.Locator(".number-pad");
        foreach (var sign in number) await pad.GetByRole(AriaRole.Button, new() { Name = sign.ToString(), Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { NameRegex = Pattern("^Keep ") }).ClickAsync();
    }

    private static Task SaysAsync(Device phone, string field, string words) => phone.Field(field).GetByText(Pattern(words)).First.WaitForAsync();

    private static Regex Pattern(string words) => new(words, RegexOptions.None, TimeSpan.FromSeconds(1));
}
