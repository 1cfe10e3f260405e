using System.Globalization;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// Ten to five, the second morning of wind, in a pickup with no signal. By the grower's own sums: B-07 has been drained for 46 h
/// 50 m and will be at 72 h 30 m; B-08 can go to S2 (12,865 of its 14,880 lb, 2,015 stranded: $786) or to N3; head-check ages by
/// A are 10, 8 and 9 days, 428 acre-days² beyond eight days, by B 8, 8 and 11, 747; B sows 13 acres more a day earlier. So A is
/// the cheaper above k = (786 + 13 × delay) ÷ 319.
/// </summary>
public sealed class BlownOutMorningTests(Chromium chromium, Marrowfen marrowfen)
{
    // $0.39 a dry pound as the farm pays it: 2,015 lb are $785.85.
    private const decimal Stranded = 785.85m;

    [Fact]
    public async Task Nobody_flies_and_two_plans_stand_side_by_side_with_what_would_flip_them()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone with { Night = true });
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("");
        await phone.Main.GetByRole(AriaRole.Link, new() { Name = "Can't fly today" }).First.ClickAsync();
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "Can't fly today", Level = 1 }).WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Wind", Exact = true }).ClickAsync();
        await phone.SaysAsync("1 to send");

        await phone.Main.GetByText("72 h 30 m at the first load").First.WaitForAsync();
        await phone.Main.GetByText("28,315 lb dry, $11,043 if it is dumped").WaitForAsync();
        await phone.Main.GetByText("48 h 30 m").First.WaitForAsync();
        await phone.Main.GetByText("60 h 30 m").First.WaitForAsync();

        var (first, second) = (Plan(phone, 0), Plan(phone, 1));
        Assert.Equal(2, await Plans(phone).CountAsync());
        await first.GetByText("costs least").WaitForAsync();
        await HasAsync(first, "428", "2,015", "S2", "10 days", "N3", "9 days", "R4", "8 days", "15,450", "14,880", "Call before", "06:30");
        await HasAsync(second, "747", "S2", "11 days", "N3", "8 days", "R4", "15,450", "12,865", "06:30");
        Assert.DoesNotContain("B-07", await first.InnerTextAsync() + await second.InnerTextAsync(), StringComparison.Ordinal);
        await phone.Main.GetByText("below $2.61").First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    [Theory]
    [InlineData("3.6")]
    [InlineData("18")]
    public async Task The_ranking_flips_exactly_at_the_break_even(string delay)
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, new Holding(Phone: false));
        await phone.GoAsync("morning/replan");
        await SetAsync(phone, "Price of a day's delay", delay);
        var exact = (Stranded + (13 * decimal.Parse(delay, CultureInfo.InvariantCulture))) / 319;
        foreach (var (off, sownFirst) in ((decimal, string)[])[(0.0002m, "S2"), (-0.0002m, "N3"), (0.0002m, "S2")])
        {
            await SetAsync(phone, "Price of water age over 8 days", decimal.Round(exact + off, 5).ToString(CultureInfo.InvariantCulture));
            await Plan(phone, 0).GetByRole(AriaRole.Row, new() { Name = sownFirst + " " }).First.GetByText("B-08").WaitForAsync();
            await Plan(phone, 0).GetByText("costs least").WaitForAsync();
        }
    }

    [Fact]
    public async Task Choosing_a_plan_drafts_messages_for_those_whose_plan_changed_and_sends_none()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("morning/replan");
        await Plan(phone, 0).GetByRole(AriaRole.Button, new() { Name = "Choose plan" }).ClickAsync();
        var tell = phone.Main.GetByRole(AriaRole.Region, new() { Name = "Tell those whose plan changed" });
        foreach (var person in (string[])["Perrin Aldegate", "Fenna Okwold", "Tamsin Wexcombe", "Lucero Quintabar"]) await tell.GetByRole(AriaRole.Heading, new() { Name = person }).WaitForAsync();
        foreach (var link in await tell.GetByRole(AriaRole.Link, new() { Name = "Text it" }).AllAsync())
        {
            var text = Uri.UnescapeDataString((await link.GetAttributeAsync("href"))!.Split("?body=")[1]);
            Assert.InRange(text.Length, 10, 160);
        }

        Usable.Nothing(await Usable.ScanAsync(phone.Page));
        await phone.SaysAsync("all sent");
        Assert.DoesNotContain(await host.MarksAsync(), m => m.GetProperty("kind").GetString() == "told");
    }

    private static ILocator Plans(Device phone) => phone.Main.GetByRole(AriaRole.Article, new() { Name = "Plan " });

    private static ILocator Plan(Device phone, int rank) => Plans(phone).Nth(rank);

    private static async Task SetAsync(Device phone, string price, string dollars)
    {
        var number = phone.Main.GetByRole(AriaRole.Spinbutton, new() { Name = price });
        await number.FillAsync(dollars);
        await number.PressAsync("Tab");
    }

    private static async Task HasAsync(ILocator plan, params string[] words)
    {
        var said = await plan.InnerTextAsync();
        Assert.All(words, w => Assert.Contains(w, said, StringComparison.Ordinal));
    }
}
