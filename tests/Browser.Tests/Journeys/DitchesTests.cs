using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// How water is led, asked and changed at a gate with no signal. By the grower's own sums: the small well alone never fills its block and stops near
/// 263 ac; both wells joined are short by 0.04 cfs; with 4.0 of tailwater 23.7 days.
/// </summary>
public sealed class DitchesTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task Two_wells_are_joined_by_taps_held_against_each_other_and_parted_by_undo()
    {
        await using var desk = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, desk, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("water/ditches");
        await phone.Main.GetByRole(AriaRole.Img, new() { NameRegex = Pattern("^Sources and the fields") }).WaitForAsync();
        await phone.Main.GetByText("it stops near 263").First.WaitForAsync();
        await phone.Main.GetByText("SHORT by 0.04 cfs").First.WaitForAsync();
        await phone.Main.GetByText("full in 23.7 days").First.WaitForAsync();
        await phone.Main.GetByText(Pattern("^TR-1 waits for 400 ac")).WaitForAsync();

        await phone.Main.GetByText("Join or part two ditches").ClickAsync();
        await phone.Main.GetByRole(AriaRole.Group, new() { Name = "Ditch of", Exact = true }).GetByRole(AriaRole.Button, new() { Name = "W-1", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Group, new() { Name = "and ditch of", Exact = true }).GetByRole(AriaRole.Button, new() { Name = "W-2", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Join W-1 and W-2", Exact = true }).ClickAsync();
        var said = phone.Main.GetByText("W-1 and W-2 are joined: 7.4 cfs together reach the fields of both.");
        await said.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.Page.GetByRole(AriaRole.Button, new() { NameRegex = Pattern("^Undo") }).First.ClickAsync();
        await said.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    [Fact]
    public async Task A_curtailment_told_by_taps_moves_what_the_source_gives_and_is_taken_back_by_undo()
    {
        await using var desk = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, desk, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.GoAsync("water/source/NT-1");
        await phone.Main.GetByText("Curtailed, or no longer").ClickAsync();
        await phone.Main.GetByRole(AriaRole.Group, new() { Name = "From", Exact = true }).GetByRole(AriaRole.Button, new() { Name = "now", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "What is left of it", Exact = true }).ClickAsync();
        var pad = phone.Main.Locator(".number-pad");
        await pad.GetByRole(AriaRole.Button, new() { Name = "9", Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { NameRegex = Pattern("^Keep ") }).ClickAsync();
        var told = phone.Main.GetByText(Pattern("^Curtailed to 9(\\.0+)? cfs from .* until further notice")).First;
        await told.WaitForAsync();
        await phone.Main.GetByText(Pattern("gives 9")).First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.Page.GetByRole(AriaRole.Button, new() { NameRegex = Pattern("^Undo") }).First.ClickAsync();
        await told.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    private static Regex Pattern(string words) => new(words, RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1));
}
