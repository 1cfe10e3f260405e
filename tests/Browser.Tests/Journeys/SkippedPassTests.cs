using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// The evening after Crooked Box was sown, on a phone with no signal. The flying service sends its track and an invoice for all 87
/// acres within its edge. The example's track leaves out the thirteenth of 29 passes, fifty feet by half a mile: 3 acres; and its gate opened late on one.
/// </summary>
public sealed class SkippedPassTests(Chromium chromium, Marrowfen marrowfen)
{
    private static string Track => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "s2-track.csv");

    [Fact]
    public async Task The_track_shows_the_skip_the_walk_is_booked_and_the_invoice_stands_against_it()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("flight/passes/S2");
        await phone.Main.GetByRole(AriaRole.Heading, new() { Level = 1 }).First.WaitForAsync();
        await phone.OpenAsync("flight/flown/S2");
        await phone.Main.GetByLabel("Track", new() { Exact = true }).SetInputFilesAsync(Track);
        await phone.Main.GetByText("s2-track.csv").First.WaitForAsync();

        // 15.24 m × 804.7 m are 3.03 ac; what the neighbors strayed by is more or less of it.
        var skip = phone.Main.GetByText("1. 3.");
        await skip.First.WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "Seed laid" }).WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep this for" }).ClickAsync();
        await phone.SaysAsync("1 to send");
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "Track, trailer and invoice" }).WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Acres the flying service bills" }).ClickAsync();
        var pad = phone.Main.GetByRole(AriaRole.Group, new() { Name = "Acres the flying service bills" });
        foreach (var digit in "87") await pad.GetByRole(AriaRole.Button, new() { Name = digit.ToString(), Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { Name = "Keep 87" }).ClickAsync();
        await phone.Main.GetByLabel("Number of the invoice").FillAsync("A-117");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep the number" }).ClickAsync();
        await phone.Main.GetByText("Invoice A-117").WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Row, new() { Name = "land billed, land flown" }).GetByText("differ by more than").WaitForAsync();
        await phone.SaysAsync("3 to send");
    }
}
