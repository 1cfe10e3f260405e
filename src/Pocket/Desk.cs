using Watersown.Pocket.Keeping;
using Watersown.Pocket.Sending;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Pocket;

/// <summary>
/// The desk on this device: the farm as last heard, the marks, the season that they make, and what is still to be sent. Every
/// page reads it and marks through it. It works from what the device keeps; the host is spoken to when it can be.
/// </summary>
public sealed partial class Desk : IDisposable
{
    private readonly IDevice device;
    private readonly HostLine host;
    private readonly TimeProvider clock;
    private readonly CancellationTokenSource closing = new();

    /// <summary>A desk on a device; nothing is read until it is opened.</summary>
    /// <param name="device">What this device keeps.</param>
    /// <param name="host">The line to the host.</param>
    /// <param name="clock">This device's clock.</param>
    public Desk(IDevice device, HostLine host, TimeProvider clock)
    {
        (this.device, this.host, this.clock) = (device, host, clock);
        device.Heard += Hear;
    }

    /// <summary>Something on the desk changed; pages draw themselves anew.</summary>
    public event Action? Changed;

    /// <summary>How often something has changed, so that a part that was drawn since need not be drawn again.</summary>
    public int Turn { get; private set; }

    /// <summary>The season as ground and marks tell it; none until a farm has been heard of.</summary>
    public SeasonBook? Book { get; private set; }

    /// <summary>The plan last heard, laid on the season as it stands now.</summary>
    public SeasonPlan? Plan { get; private set; }

    /// <summary>What is wrong with the farm as it was heard, where it could not be read.</summary>
    public ImmutableArray<Problem> FarmProblems { get; private set; } = [];

    public DeskSettings Settings { get; private set; } = new();

    public Language Language => Settings.Language ?? ground?.Farm.Language ?? Language.English;

    public Words Words => Words.In(Language);

    /// <summary>Says quantities and moments in this reader's language and units.</summary>
    public Telling Telling => telling ??= new Telling(Book?.State ?? throw new InvalidOperationException("No farm is on the desk."), Language);

    /// <summary>The moment, with the farm's offset. A clock that is plainly wrong is put right by the host's.</summary>
    public DateTimeOffset Now => (clock.GetUtcNow() + skew).ToOffset(ground?.Offset ?? clock.LocalTimeZone.GetUtcOffset(clock.GetUtcNow()));

    /// <summary>What this device's own clock shows at a moment of the farm's.</summary>
    public DateTimeOffset OnDevice(DateTimeOffset moment) => moment - skew;

    /// <summary>Who marks here.</summary>
    public string Me => name ?? Settings.Name ?? Words.Desk.Somebody;

    /// <summary>The host says who marks here.</summary>
    public bool HostNamesMe => name is not null;

    /// <summary>What the host lets this person do; none where no host has said.</summary>
    public string? Role { get; private set; }

    /// <summary>Where map tiles come from, where the farm has set a source; nothing is asked of anybody otherwise.</summary>
    public string? Tiles { get; private set; }

    /// <summary>Name of this device, made at random.</summary>
    public string DeviceName { get; private set; } = string.Empty;

    /// <summary>What is marked here outlives the page.</summary>
    public bool Keeps => device.Keeps;

    /// <summary>A newer version of the desk is on the device and waits.</summary>
    public bool NewerWaits { get; private set; }

    /// <summary>Opens the desk from what the device keeps. Nothing is asked of the host here.</summary>
    public async Task OpenAsync()
    {
        Settings = DeskSettings.Read(await device.PaperAsync(Papers.Settings));
        DeviceName = await device.PaperAsync(Papers.Device) ?? string.Empty;
        if (DeviceName.Length == 0)
        {
            DeviceName = MarkNames.New().Text[..12];
            await device.KeepPapersAsync((Papers.Device, DeviceName));
        }

        await ReadPapersAsync();
        await ReadMarksAsync();
        Fold();
    }

    /// <summary>Starts the minute hand and the line to the host.</summary>
    public void Run()
    {
        _ = TickAsync();
        _ = SendAsync();
    }

    public async Task ChooseAsync(DeskSettings settings)
    {
        Settings = settings;
        await device.KeepPapersAsync((Papers.Settings, settings.Write()));
        await device.TellTabsAsync("settings");
        Fold();
        Tell();
    }

    public void Dispose()
    {
        device.Heard -= Hear;
        closing.Cancel();
        closing.Dispose();
    }

    private void Tell()
    {
        Turn++;
        Changed?.Invoke();
    }

    private async Task TickAsync()
    {
        using var minute = new PeriodicTimer(TimeSpan.FromMinutes(1), clock);
        try
        {
            while (await minute.WaitForNextTickAsync(closing.Token))
            {
                Fold();
                Tell();
            }
        }
        catch (OperationCanceledException)
        {
            // The desk was closed.
        }
    }

    private void Hear(string word)
    {
        if (word == "newer")
        {
            NewerWaits = true;
            Tell();
        }
        else _ = HearAsync(word);
    }

    private async Task HearAsync(string word)
    {
        if (word is "marks" or "papers" or "settled" or "heard-marks") await ReadMarksAsync();
        if (word == "papers") await ReadPapersAsync();
        if (word == "settings") Settings = DeskSettings.Read(await device.PaperAsync(Papers.Settings));
        if (word is not ("online" or "offline")) Fold();
        Tell();
        if (word is "online" or "visible" or "marks") await SendAsync();
    }
}
