using Microsoft.Playwright;
using Watersown.Journeys;

namespace Watersown.Bench;

/// <summary>Takes the pictures of the README: what the desk of the example farm looks like on its story's morning.</summary>
internal static class Pictures
{
    private static readonly (string Address, string Name)[] Screens = [("", "morning"), ("water", "water"), ("water/fill/N4", "fill"), ("schedule", "schedule"), ("field/N4", "field")];

    public static async Task TakeAsync(IBrowser browser, RunningHost host, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var phone in (bool[])[true, false])
        {
            foreach (var night in (bool[])[false, true]) await TakeAsync(browser, host, folder, phone, night);
        }
    }

    private static async Task TakeAsync(IBrowser browser, RunningHost host, string folder, bool phone, bool night)
    {
        await using var context = await browser.NewContextAsync(new()
        {
            ViewportSize = phone ? new() { Width = 390, Height = 844 } : new() { Width = 1440, Height = 900 },
            DeviceScaleFactor = phone ? 2 : 1,
            HasTouch = phone,
            Locale = "en-US",
            TimezoneId = "America/Los_Angeles",
            BaseURL = host.Address.ToString(),
            ReducedMotion = ReducedMotion.Reduce,
        });
        var page = await context.NewPageAsync();
        await page.GotoAsync("settings");
        await page.GetByRole(AriaRole.Banner).GetByText("Marrowfen").WaitForAsync(new() { Timeout = 60_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = night ? "night" : "day", Exact = true }).ClickAsync();
        foreach (var (address, name) in Screens)
        {
            await page.EvaluateAsync("address => Blazor.navigateTo(address)", address);
            await page.WaitForURLAsync(new Uri(host.Address, address).ToString());
            await page.GetByRole(AriaRole.Main).GetByRole(AriaRole.Heading, new() { Level = 1 }).First.WaitForAsync();
            // Parts that ask the host, and the map, are drawn a moment later.
            await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
            await page.EvaluateAsync("() => { document.activeElement?.blur(); scrollTo(0, 0); return new Promise(done => setTimeout(done, 1500)); }");
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{(phone ? "phone" : "desktop")}-{(night ? "night" : "day")}.png") });
        }
    }
}
