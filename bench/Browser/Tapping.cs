using Microsoft.Playwright;
using Watersown.Journeys;

namespace Watersown.Bench;

/// <summary>From the finger to the words that say that a mark is kept, which come only when it is on the disk.</summary>
internal static class Tapping
{
    private const int Runs = 20;

    // Presses the button that marks the next check, and waits for the status line to change.
    private const string Press = """
        button => new Promise(done => {
          const line = document.querySelector('.kept');
          const from = performance.now();
          const watch = new MutationObserver(() => { watch.disconnect(); requestAnimationFrame(() => done(performance.now() - from)); });
          watch.observe(line, { childList: true, subtree: true, characterData: true });
          button.click();
        })
        """;

    // The least that any page must do: write one line to the same kind of shelf, surely, and draw it.
    private const string Bare = """
        () => new Promise((done, fail) => {
          const ask = indexedDB.open('bench', 1);
          ask.onupgradeneeded = () => ask.result.createObjectStore('marks');
          ask.onerror = () => fail(ask.error);
          ask.onsuccess = () => {
            const from = performance.now();
            const step = ask.result.transaction(['marks'], 'readwrite', { durability: 'strict' });
            step.objectStore('marks').put({ text: 'x'.repeat(300) }, crypto.randomUUID());
            step.oncomplete = () => { ask.result.close(); requestAnimationFrame(() => done(performance.now() - from)); };
          };
        })
        """;

    public static async Task<ImmutableArray<(string What, string Measured, string Baseline)>> MeasureAsync(IBrowser browser, RunningHost host)
    {
        await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, BaseURL = host.Address.ToString() });
        var page = await context.NewPageAsync();
        await page.GotoAsync("water/route");
        var field = page.GetByRole(AriaRole.Article, new() { Name = "Two Gates" });
        await field.WaitForAsync(new() { Timeout = 60_000 });
        await context.SetOfflineAsync(true);
        var (taps, bare) = (new List<double>(), new List<double>());
        for (var run = 0; run <= Runs; run++)
        {
            // Depths in turn, so that each tap says something new.
            var depth = field.GetByRole(AriaRole.Group, new() { Name = "Depth" }).GetByRole(AriaRole.Button, new() { Name = run % 2 == 0 ? "3" : "4", Exact = true });
            var taken = await depth.EvaluateAsync<double>(Press);
            var least = await page.EvaluateAsync<double>(Bare);
            // The first tap of a page wakes code that later ones find awake; it is told apart.
            if (run == 0) continue;
            taps.Add(taken);
            bare.Add(least);
        }

        return [("tap to a mark that is kept and said so, no signal", Numbers.Milliseconds(taps), "one line written to the same shelf and drawn: " + Numbers.Milliseconds(bare))];
    }
}
