using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// 25 September: two combines of 45 ac a day, a dryer of 15 sets, 95 cwt an acre expected, every sampled field at 20 %. By hand: 95 × 86 ÷ 80 =
/// 102.1 cwt green; 90 ac would fill 18.4 sets of 500 cwt; 15 sets take 73 ac.
/// </summary>
public sealed class HarvestBunchingTests(Chromium chromium, Marrowfen marrowfen)
{
    private static readonly string[] Sampled = ["N1", "N2", "R1", "R2", "R3", "S1"];

    [Fact]
    public async Task The_dryer_decides_the_pace_and_another_dryer_brings_the_end_forward_without_signal()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-09-25T06:00");
        await host.SendAsync(Sampled.Select((f, i) => Mark(i, "moisture", $$"""{"field":"{{f}}","moisture_pct":20}""")));
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("harvest");
        await phone.Main.GetByText("Say how many combines there are").WaitForAsync();
        await KeyAsync(phone, "How many combines", "2");
        await KeyAsync(phone, "Land each cuts in a day", "45");
        await KeyAsync(phone, "Sets the dryer takes in a day", "15");
        await KeyAsync(phone, "Grain you expect, at 14 %", "95");
        foreach (var said in (string[])["it has room for 73.4 ac a day; the combines could cut 90 ac", "could fill 18.4 sets a day; the dryer takes 15"]) await phone.Main.GetByText(said).WaitForAsync();
        await phone.Main.GetByLabel("Whose dryer (empty: the usual one)").FillAsync("the cooperative");
        await KeyAsync(phone, "Sets a day", "3");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Put it down" }).ClickAsync();
        await phone.Main.GetByText("Without the other dryer:").WaitForAsync();
        await phone.SaysAsync("5 to send");
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    [Fact]
    public async Task Four_numbers_of_a_ticket_make_grain_at_fourteen_percent()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-09-25T15:00");
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("harvest/tickets");
        await phone.Main.GetByLabel("Number on the ticket").FillAsync("40117");
        await phone.Main.GetByRole(AriaRole.Region, new() { Name = "A ticket" }).GetByLabel("Field", new() { Exact = true }).SelectOptionAsync("R1");
        await KeyAsync(phone, "Truck and grain", "77000");
        await KeyAsync(phone, "Truck alone", "27000");
        await KeyAsync(phone, "Moisture", "20");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep the ticket 40117" }).ClickAsync();
        // 50,000 lb × 80 ÷ 86 = 46,512 lb.
        await phone.Main.GetByText("46,512 lb at 14 %").WaitForAsync();
        await phone.Main.GetByText("465 cwt").First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    private static async Task KeyAsync(Device phone, string what, string number)
    {
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = what }).First.ClickAsync();
        var pad = phone.Main.GetByRole(AriaRole.Group, new() { Name = what }).First;
        foreach (var key in number) await pad.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { Name = "Keep " + number }).ClickAsync();
    }

    private static System.Text.Json.JsonElement Mark(int number, string kind, string fact) => System.Text.Json.JsonElement.Parse(
        $$"""{"id":"{{number.ToString("x32", System.Globalization.CultureInfo.InvariantCulture)}}","kind":"{{kind}}","happened":"2026-09-25T05:55:00-07:00","entered":"2026-09-25T05:55:00-07:00","by":"Odalie Marrowfen","device":"a phone","sure":"measured","fact":{{fact}}}""");
}
