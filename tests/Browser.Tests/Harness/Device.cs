using System.Globalization;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>What a person holds, and how it is set.</summary>
public sealed record Holding(bool Phone, bool Night = false, bool Spanish = false)
{
    public static Holding Telephone { get; } = new(Phone: true);

    /// <summary>The browser keeps the desk for later; what it keeps never passes the network, where a test could stop it.</summary>
    public bool KeepsDesk { get; init; } = true;

    public int Width => Phone ? 390 : 1440;

    public int Height => Phone ? 844 : 900;

    public override string ToString() => (Phone ? "phone" : "desktop") + (Night ? " night" : " day") + (Spanish ? " es" : " en");
}

/// <summary>
/// A phone or a computer with its own memory, on which a person works. It notes every error that its console shows; the browser's
/// own complaint that the network is away is none while the person is where there is none.
/// </summary>
public sealed class Device : IAsyncDisposable
{
    private readonly IBrowserContext context;

    private readonly List<string> complaints = [];

    private bool away;

    private Device(IBrowserContext context, IPage page, RunningHost host, Holding holding) => (this.context, Page, Host, Holding) = (context, page, host, holding);

    public IPage Page { get; }

    public RunningHost Host { get; }

    public Holding Holding { get; }

    /// <summary>What the console complained of so far.</summary>
    public ImmutableArray<string> Complaints
    {
        get
        {
            lock (complaints) return [.. complaints];
        }
    }

    public ILocator Main => Page.GetByRole(AriaRole.Main);

    /// <summary>The head of the sheet: farm, clock, what is unsent.</summary>
    public ILocator Mast => Page.GetByRole(AriaRole.Banner);

    /// <summary>What the page shows of one field.</summary>
    public ILocator Field(string name) => Main.GetByRole(AriaRole.Article, new() { Name = name }).First;

    /// <summary>A row of a table by how its heading begins.</summary>
    public ILocator Row(string name) => Main.GetByRole(AriaRole.Row, new() { Name = name }).First;

    /// <summary>Keys a trailer's number before the first load.</summary>
    public Task KeyTrailerAsync(string number) => Main.GetByRole(AriaRole.Region, new() { Name = "Which trailer is this?" }).GetByRole(AriaRole.Button, new() { Name = "Trailer " + number, Exact = true }).ClickAsync();

    /// <summary>Waits until the head of the sheet says so.</summary>
    public Task SaysAsync(string words) => Mast.GetByText(words).WaitForAsync();

    /// <summary>A new device that has never seen the desk.</summary>
    public static async Task<Device> NewAsync(Chromium chromium, RunningHost host, Holding holding)
    {
        var own = await chromium.Browser.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = holding.Width, Height = holding.Height },
            HasTouch = holding.Phone,
            Locale = holding.Spanish ? "es-MX" : "en-US",
            TimezoneId = "America/Los_Angeles",
            BaseURL = host.Address.ToString(),
            ReducedMotion = ReducedMotion.Reduce,
            ServiceWorkers = holding.KeepsDesk ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
        });
        own.SetDefaultTimeout(20_000);
        var device = new Device(own, await own.NewPageAsync(), host, holding);
        device.Page.Console += (_, message) => device.Hear(message.Type, message.Text + " " + message.Location);
        device.Page.PageError += (_, error) => device.Hear("error", error);
        return device;
    }

    /// <summary>A device on which the desk was opened once, and set as the person likes it.</summary>
    public static async Task<Device> VisitedAsync(Chromium chromium, RunningHost host, Holding holding)
    {
        var device = await NewAsync(chromium, host, holding);
        await device.OpenAsync("settings");
        await device.Page.GetByRole(AriaRole.Button, new() { Name = holding.Spanish ? "Español" : "English" }).ClickAsync();
        await device.Page.GetByRole(AriaRole.Button, new() { Name = (holding.Spanish, holding.Night) switch { (false, false) => "Day", (false, true) => "Night", (true, false) => "Día", (true, true) => "Noche" } }).ClickAsync();
        return device;
    }

    /// <summary>Opens an address anew and waits until the desk is awake.</summary>
    public async Task OpenAsync(string address)
    {
        await Page.GotoAsync(address);
        await AwakeAsync();
    }

    /// <summary>Goes to a page of the open desk, as its links do.</summary>
    public async Task GoAsync(string address)
    {
        await Page.EvaluateAsync("address => Blazor.navigateTo(address)", address);
        await Page.WaitForURLAsync(new Uri(Host.Address, address).ToString());
        await AwakeAsync();
    }

    public async Task ReloadAsync()
    {
        await Page.ReloadAsync();
        await AwakeAsync();
    }

    /// <summary>Nothing but the desk itself has a main part; what is kept of the last page has none. The farm's name is there once the farm is.</summary>
    public async Task AwakeAsync()
    {
        await Main.GetByRole(AriaRole.Heading, new() { Level = 1 }).First.WaitForAsync(new() { Timeout = 60_000 });
        if (Host.HasFarm) await Mast.GetByText("Marrowfen").WaitForAsync();
    }

    /// <summary>Waits until the desk is kept whole on this device.</summary>
    public async Task KeptWholeAsync() => await Page.EvaluateAsync("async () => { await navigator.serviceWorker.ready; }");

    /// <summary>Out of coverage, or back in it.</summary>
    public Task SetAwayAsync(bool away)
    {
        this.away = away;
        return context.SetOfflineAsync(away);
    }

    public async Task<IPage> OpenOutsideAsync(Uri address)
    {
        await Page.GotoAsync(address.ToString());
        return Page;
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Holding} at {Page.Url}");

    public async ValueTask DisposeAsync() => await context.DisposeAsync();

    private void Hear(string type, string text)
    {
        if (type != "error" || (away && text.Contains("ERR_INTERNET_DISCONNECTED", StringComparison.Ordinal))) return;
        lock (complaints) complaints.Add(text);
    }
}
