using Microsoft.Playwright;
using Watersown.Journeys;

namespace Watersown.Bench;

/// <summary>Opening the desk again, as on every morning after the first.</summary>
internal static class Opening
{
    private const int Runs = 9;

    public static async Task<ImmutableArray<(string What, string Measured, string Baseline)>> MeasureAsync(IBrowser browser, RunningHost host, PlainPage plain)
    {
        await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, BaseURL = host.Address.ToString() });
        var page = await context.NewPageAsync();
        await page.GotoAsync("");
        await AwakeAsync(page);
        await page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        // The Morning page is kept a moment after it was drawn.
        await page.WaitForFunctionAsync("() => localStorage.getItem('watersown.morning') !== null");
        var (kept, awake, empty) = (new List<double>(), new List<double>(), new List<double>());
        for (var run = 0; run < Runs; run++)
        {
            await page.GotoAsync("about:blank");
            await page.GotoAsync("", new() { WaitUntil = WaitUntilState.Commit });
            await AwakeAsync(page);
            awake.Add(await page.EvaluateAsync<double>("performance.now()"));
            kept.Add(await page.EvaluateAsync<double>("performance.getEntriesByName('watersown-kept')[0]?.startTime ?? NaN"));
            await page.GotoAsync("about:blank");
            await page.GotoAsync(plain.Address.ToString());
            empty.Add(await page.EvaluateAsync<double>("performance.timing.domContentLoadedEventEnd - performance.timing.navigationStart"));
        }

        var baseline = "an empty page of one heading: " + Numbers.Milliseconds(empty);
        return [("warm open to the last Morning page, readable with its age", Numbers.Milliseconds(kept), baseline), ("warm open to the living Morning page", Numbers.Milliseconds(awake), baseline)];
    }

    private static Task AwakeAsync(IPage page) => page.GetByRole(AriaRole.Main).GetByRole(AriaRole.Heading, new() { Level = 1 }).First.WaitForAsync(new() { Timeout = 60_000 });
}
