namespace Watersown.Journeys;

/// <summary>
/// Every screen, scanned and without an error on the console: on phone and desktop, by day and by night, in English and in
/// Spanish, so that each two of them meet.
/// </summary>
public abstract class EveryScreenTests(Chromium chromium, Marrowfen marrowfen, Holding holding)
{
    [Fact]
    public async Task Every_screen_can_be_read_by_everybody()
    {
        await using var device = await Device.VisitedAsync(chromium, marrowfen.Quiet, holding);
        var found = new List<string>();
        foreach (var screen in Screens.OfTheDesk)
        {
            await device.GoAsync(screen);
            found.AddRange((await Usable.ScanAsync(device.Page)).Select(f => screen + ": " + f));
        }

        Usable.Nothing([.. found, .. device.Complaints]);
    }
}

public sealed class EveryScreenOnAPhoneByDayTests(Chromium chromium, Marrowfen marrowfen) : EveryScreenTests(chromium, marrowfen, new Holding(Phone: true));

public sealed class EveryScreenOnAPhoneByNightInSpanishTests(Chromium chromium, Marrowfen marrowfen) : EveryScreenTests(chromium, marrowfen, new Holding(Phone: true, Night: true, Spanish: true));

public sealed class EveryScreenOnADesktopByDayInSpanishTests(Chromium chromium, Marrowfen marrowfen) : EveryScreenTests(chromium, marrowfen, new Holding(Phone: false, Spanish: true));

public sealed class EveryScreenOnADesktopByNightTests(Chromium chromium, Marrowfen marrowfen) : EveryScreenTests(chromium, marrowfen, new Holding(Phone: false, Night: true));
