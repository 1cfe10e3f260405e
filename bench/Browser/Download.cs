using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Watersown.Journeys;

namespace Watersown.Bench;

/// <summary>What the first visit takes over the wire, headers too, as the browser's own network layer counts it.</summary>
internal static class Download
{
    // What is ours in it. The rest is the runtime with what it needs of the base library: what an empty page of it would fetch at least.
    private static readonly string[] Ours = ["Watersown", "NetTopologySuite", "/css/", "/script/", "/icons/", "/map/", "/api/", "manifest", "service-worker", "index"];

    public static async Task<ImmutableArray<(string What, string Measured, string Baseline)>> MeasureAsync(IBrowser browser, RunningHost host)
    {
        await using var context = await browser.NewContextAsync(new() { BaseURL = host.Address.ToString() });
        var page = await context.NewPageAsync();
        var (addresses, sizes) = (new ConcurrentDictionary<string, string>(StringComparer.Ordinal), new ConcurrentDictionary<string, long>(StringComparer.Ordinal));
        var wire = await context.NewCDPSessionAsync(page);
        wire.Event("Network.requestWillBeSent").OnEvent += (_, e) => addresses[Text(e, "requestId")] = e!.Value.GetProperty("request").GetProperty("url").GetString()!;
        wire.Event("Network.loadingFinished").OnEvent += (_, e) => sizes[Text(e, "requestId")] = (long)e!.Value.GetProperty("encodedDataLength").GetDouble();
        await wire.SendAsync("Network.enable");
        await page.GotoAsync("");
        await page.GetByRole(AriaRole.Banner).GetByText("Marrowfen").WaitForAsync(new() { Timeout = 60_000 });
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var all = sizes.Values.Sum();
        var ours = sizes.Where(s => addresses.TryGetValue(s.Key, out var address) && Array.Exists(Ours, address.Contains)).Sum(s => s.Value);
        var farm = sizes.Where(s => addresses.TryGetValue(s.Key, out var address) && address.Contains("/api/", StringComparison.Ordinal)).Sum(s => s.Value);
        return [(string.Create(CultureInfo.InvariantCulture, $"first visit over the wire, compressed ({sizes.Count} files; farm and plan {Numbers.Megabytes(farm)} of it)"), Numbers.Megabytes(all), "the runtime and base library in it: " + Numbers.Megabytes(all - ours))];
    }

    private static string Text(JsonElement? e, string name) => e!.Value.GetProperty(name).GetString()!;
}
