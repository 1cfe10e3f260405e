using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// Three rules, one box, with no signal: Q needs lower water from 10 to 20 June; P, which holds 30 days, is to be booked for 20 May. By the calendar, the day of application
/// counted as day 1: held through 18 June, not before 19 June, and of Q's days the 19th and 20th are left. The page says so before P is kept.
/// </summary>
public sealed class ThreeRulesTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task The_day_a_hold_is_booked_the_page_says_what_it_leaves_of_another_window_and_undo_takes_it_back()
    {
        await using var desk = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, desk, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("crop/holds");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "day 1", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep these settings", Exact = true }).ClickAsync();
        await phone.Main.GetByText("The day of application counts as day 1.").First.WaitForAsync();

        await TypeAsync(phone, "Q", "2026-06-10", "2026-06-20", string.Empty);
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "lowered", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Book Q on N4", Exact = true }).ClickAsync();
        await phone.Main.GetByText(Pattern("^Q: Wed 10 Jun to Sat 20 Jun")).WaitForAsync();

        await TypeAsync(phone, "P", "2026-05-20", "2026-05-20", "30");
        var said = phone.Main.GetByRole(AriaRole.Status);
        await said.GetByText(Pattern("would hold through Thu 18 Jun, not before Fri 19 Jun")).WaitForAsync();
        await said.GetByText(Pattern("Days left: Fri 19 Jun to Sat 20 Jun")).WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "its rule has it so", Exact = true }).ClickAsync();
        await said.GetByText(Pattern("moving it within the field, as the rule entered for P has it: Wed 10 Jun to Sat 20 Jun")).WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Book P on N4", Exact = true }).ClickAsync();
        await phone.Main.GetByText("By the rules you entered, not before Fri 19 Jun; confirm with the county office.").WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Img, new() { NameRegex = Pattern("^Holds and wanted days") }).WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await phone.Main.GetByText("No hold lies over a day on which lower water is wanted.").WaitForAsync();
    }

    [Fact]
    public async Task A_field_whose_treatment_holds_lets_no_water_out_on_the_irrigator_s_page()
    {
        await using var desk = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, desk, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("crop/holds");
        await TypeAsync(phone, "P", "2026-05-08", "2026-05-08", "6");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "P on N4: applied", Exact = true }).ClickAsync();
        await phone.Main.GetByText("NO WATER OUT", new() { Exact = true }).WaitForAsync();
        await phone.GoAsync("water/route");
        await phone.Main.GetByRole(AriaRole.Note).GetByText("N4 Two Gates", new() { Exact = true }).WaitForAsync();
        Usable.Nothing(phone.Complaints);
    }

    private static async Task TypeAsync(Device phone, string product, string from, string until, string days)
    {
        await phone.Main.Locator("#treat-field").SelectOptionAsync("N4");
        await phone.Main.GetByLabel("Product, as the label names it").FillAsync(product);
        await phone.Main.Locator("#treat-from").FillAsync(from);
        await phone.Main.Locator("#treat-until").FillAsync(until);
        await phone.Main.GetByLabel("Days of hold", new() { Exact = true }).FillAsync(days);
    }

    private static Regex Pattern(string words) => new(words, RegexOptions.None, TimeSpan.FromSeconds(1));
}
