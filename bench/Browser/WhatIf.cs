using Microsoft.Playwright;
using Watersown.Journeys;

namespace Watersown.Bench;

/// <summary>The blown-out morning on the phone itself, with no signal: until its plans stand there, and until another price has ranked them anew.</summary>
internal static class WhatIf
{
    private const int Runs = 15;

    // Goes to the page as its link does, and waits until a plan stands there and is drawn.
    private const string Ask = """
        () => new Promise(done => {
          const from = performance.now();
          const there = () => document.querySelector('main article') && [...document.querySelectorAll('main article')].some(a => /Plan /.test(a.textContent));
          const watch = new MutationObserver(() => { if (there()) { watch.disconnect(); requestAnimationFrame(() => done(performance.now() - from)); } });
          watch.observe(document.body, { childList: true, subtree: true, characterData: true });
          Blazor.navigateTo('morning/replan');
        })
        """;

    // Moves the slide of a price, and waits until the plans have changed and are drawn.
    private const string Slide = """
        slide => new Promise(done => {
          const plans = document.querySelector('main');
          const from = performance.now();
          const watch = new MutationObserver(() => { watch.disconnect(); requestAnimationFrame(() => done(performance.now() - from)); });
          watch.observe(plans, { childList: true, subtree: true, characterData: true, attributes: true });
          slide.value = String(Number(slide.max) * (Number(slide.value) > Number(slide.max) / 2 ? 0.3 : 0.7));
          slide.dispatchEvent(new Event('input', { bubbles: true }));
        })
        """;

    // The least that any page must do: change one line, and draw it.
    private const string Bare = """
        () => new Promise(done => {
          const line = document.querySelector('main h1');
          const from = performance.now();
          line.dataset.turn = String(from);
          requestAnimationFrame(() => done(performance.now() - from));
        })
        """;

    public static async Task<ImmutableArray<(string What, string Measured, string Baseline)>> MeasureAsync(IBrowser browser, RunningHost host)
    {
        await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, BaseURL = host.Address.ToString() });
        var page = await context.NewPageAsync();
        await page.GotoAsync("settings");
        await page.GetByRole(AriaRole.Banner).GetByText("Marrowfen").WaitForAsync(new() { Timeout = 60_000 });
        await page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");
        await context.SetOfflineAsync(true);
        var (asked, slid, bare) = (new List<double>(), new List<double>(), new List<double>());
        var first = await page.EvaluateAsync<double>(Ask);
        for (var run = 0; run < Runs; run++)
        {
            await page.EvaluateAsync("() => Blazor.navigateTo('settings')");
            await page.GetByRole(AriaRole.Heading, new() { Name = "Settings", Level = 1 }).WaitForAsync();
            asked.Add(await page.EvaluateAsync<double>(Ask));
            var slide = page.Locator("main input[type=range]").Last;
            slid.Add(await slide.EvaluateAsync<double>(Slide));
            bare.Add(await page.EvaluateAsync<double>(Bare));
        }

        var baseline = "one line changed and drawn: " + Numbers.Milliseconds(bare);
        return
        [
            (FormattableString.Invariant($"blown-out morning, no signal: from the tap to plans side by side (the first of a visit: {first:0} ms)"), Numbers.Milliseconds(asked), baseline),
            ("another price: until the plans are ranked anew", Numbers.Milliseconds(slid), baseline),
        ];
    }
}
