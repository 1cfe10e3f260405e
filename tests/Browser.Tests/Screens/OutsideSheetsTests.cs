namespace Watersown.Journeys;

/// <summary>What people outside see: their sheet behind a link, a link that is none, and the door.</summary>
public sealed class OutsideSheetsTests(Chromium chromium, Marrowfen marrowfen)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Every_sheet_behind_a_link_can_be_read_by_everybody_and_worked_with_keys(bool phone)
    {
        await using var device = await Device.NewAsync(chromium, marrowfen.Quiet, new Holding(phone));
        var found = new List<string>();
        foreach (var (sheet, person, day) in Screens.Outside)
        {
            var page = await device.OpenOutsideAsync(await marrowfen.Quiet.LinkAsync(sheet, person, day));
            found.AddRange((await Usable.AllAsync(page)).Select(f => sheet + " of " + person + ": " + f));
        }

        found.AddRange(device.Complaints);
        Usable.Nothing(found);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_door_of_a_desk_that_others_can_reach_can_be_used_by_everybody(bool spanish)
    {
        await using var host = await marrowfen.OpenAsync(RunningHost.StoryMoment, "--behind-proxy", "--owner", "Odalie Marrowfen");
        await using var device = await Device.NewAsync(chromium, host, Holding.Telephone with { Spanish = spanish });
        var page = await device.OpenOutsideAsync(new Uri(host.Address, "sign-in"));
        Usable.Nothing([.. await Usable.AllAsync(page), .. device.Complaints]);
    }
}
