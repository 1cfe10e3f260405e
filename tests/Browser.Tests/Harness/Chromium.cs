using Microsoft.Playwright;
using Watersown.Journeys;

[assembly: AssemblyFixture(typeof(Chromium))]
[assembly: AssemblyFixture(typeof(Marrowfen))]

namespace Watersown.Journeys;

/// <summary>The one browser of a run: the machine's own Chromium, found by WATERSOWN_CHROMIUM or where Debian puts it. Nothing is downloaded.</summary>
public sealed class Chromium : IAsyncLifetime
{
    // Quiet and the same everywhere: nothing is asked of anybody, and the map is drawn without a graphics card.
    private static readonly string[] Ways =
    [
        "--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage",
        "--enable-unsafe-swiftshader", "--use-gl=angle", "--use-angle=swiftshader",
    ];

    private IPlaywright? driver;

    private IBrowser? browser;

    public static string Path { get; } = Environment.GetEnvironmentVariable("WATERSOWN_CHROMIUM") is { Length: > 0 } told ? told : "/usr/bin/chromium";

    public IBrowser Browser => browser ?? throw new InvalidOperationException("The browser is not open.");

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Path)) throw new FileNotFoundException("The journeys need Chromium. Install it (apt-get install chromium), or name it in WATERSOWN_CHROMIUM.", Path);
        driver = await Playwright.CreateAsync();
        browser = await driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Path, Args = Ways });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        driver?.Dispose();
    }
}
