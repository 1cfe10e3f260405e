using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>Saturday 25 July: three nights of 55 °F are told ahead, and R1 to R3 head in ten to fourteen days on a pump with little to spare.</summary>
public sealed class ColdNightsTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task Cold_nights_ahead_show_which_fields_are_tender_and_that_their_water_cannot_stand_in_time()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-07-25T05:00");
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("crop/weather");
        foreach (var night in (string[])["Sat 25 Jul", "Sun 26 Jul", "Mon 27 Jul"])
        {
            await phone.Main.GetByRole(AriaRole.Button, new() { Name = night, Exact = true }).ClickAsync();
            await TypeAsync(phone, "Highest", "88");
            await TypeAsync(phone, "Lowest", "55");
            await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep " + night + ": 88 / 55 °F" }).ClickAsync();
        }

        await phone.OpenAsync("crop");
        var tender = phone.Main.GetByRole(AriaRole.Region, new() { Name = "Nights in which cold makes blank heads" });
        await tender.GetByText("Source SP-1: R1, R2, R3, 433 ac").WaitForAsync();
        Assert.InRange(await tender.GetByText("3 nights told at or below 55 °F in it: Sat 25 Jul, Sun 26 Jul, Mon 27 Jul").CountAsync(), 3, 6);
        await tender.GetByText("Not possible in the 3 days left").First.WaitForAsync();
        await tender.GetByText("With 3 days, the most can be gained in:").First.WaitForAsync();
        await tender.GetByText("Start raising at panicle initiation next time").First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    private static async Task TypeAsync(Device phone, string pad, string number)
    {
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = pad }).First.ClickAsync();
        var keys = phone.Main.GetByRole(AriaRole.Group, new() { Name = pad, Exact = true });
        foreach (var digit in number) await keys.GetByRole(AriaRole.Button, new() { Name = digit.ToString(), Exact = true }).ClickAsync();
        await keys.GetByRole(AriaRole.Button, new() { Name = "Keep " + number + " °F" }).ClickAsync();
    }
}
