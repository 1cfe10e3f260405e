using System.Globalization;
using Microsoft.Playwright;
using Watersown;
using Watersown.Bench;
using Watersown.Journeys;

// dotnet run -c Release --project bench/Browser                           what a person waits for
// dotnet run -c Release --project bench/Browser -- pictures FOLDER        the pictures of the README
// dotnet run -c Release --project bench/Browser -- flood                  floods reckoned inside the browser, beside this machine
// What a person waits for, in the machine's own Chromium on the example farm, each beside a baseline of the same run.
using var folder = new OwnFolder();
using var driver = await Playwright.CreateAsync();
await using var browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = Environment.GetEnvironmentVariable("WATERSOWN_CHROMIUM") ?? "/usr/bin/chromium", Args = ["--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-dev-shm-usage", "--enable-unsafe-swiftshader", "--use-gl=angle", "--use-angle=swiftshader"] });
if (args is ["flood"])
{
    await FloodInside.MeasureAsync(browser, ReferenceFile.RepositoryRoot, Path.Combine(folder.Path, "flood"));
    return;
}

await using var host = await RunningHost.StartAsync(Path.Combine(folder.Path, "bench.book"), Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"));
await host.PlannedAsync();
using var plain = new PlainPage();
if (args is ["pictures", var into])
{
    await Pictures.TakeAsync(browser, host, Path.GetFullPath(into));
    return;
}

var rows = new List<(string What, string Measured, string Baseline)>();
rows.AddRange(await Download.MeasureAsync(browser, host));
rows.AddRange(await Opening.MeasureAsync(browser, host, plain));
rows.AddRange(await Tapping.MeasureAsync(browser, host));
rows.AddRange(await WhatIf.MeasureAsync(browser, host));
await Console.Out.WriteLineAsync("| what | measured | baseline in the same run |\n|---|---|---|");
foreach (var (what, measured, baseline) in rows) await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"| {what} | {measured} | {baseline} |"));
