using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>Something goes wrong where there is no signal: the phone alone says what it means, and keeps what was seen.</summary>
public sealed class TroubleTests(Chromium chromium, Marrowfen marrowfen)
{
    // One dark point: a picture, as small as there is.
    private const string Picture = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

    [Fact]
    public async Task A_pump_that_dies_tells_the_days_of_each_field_the_flight_that_falls_and_whom_to_wake()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await AwayAsync(host, "water");
        await Article(phone, "SP-1").GetByRole(AriaRole.Button, new() { Name = "SP-1 stopped", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "SP-1 stopped", Level = 1 }).WaitForAsync();
        // (4.0 − 1.2) ÷ 0.28, (3.5 − 1.2) ÷ 0.28, (2.5 − 1.2) ÷ 0.28 twice.
        foreach (var (field, days) in new[] { ("Pumphouse", "10.0"), ("Big Elbow", "8.2"), ("Tulehead", "4.6"), ("Lower Sink", "4.6") })
            await phone.Main.GetByRole(AriaRole.Row, new() { Name = field }).GetByText(days, new() { Exact = true }).First.WaitForAsync();
        await Article(phone, "Upper Sink").GetByText("stops with 2 of 4 checks wet").WaitForAsync();
        await Article(phone, "Upper Sink").GetByText("count on it being OFF").WaitForAsync();
        await Article(phone, "Upper Sink").GetByText("Call off or move its soak before").WaitForAsync();
        await phone.Main.GetByText("Nobody else has to be woken.").WaitForAsync();

        // Another loss: (2.5 − 1.2) ÷ 0.44 = 2.95 days.
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Reckon with another loss" }).ClickAsync();
        await KeyAsync(phone, ".44");
        await phone.Main.GetByRole(AriaRole.Row, new() { Name = "Tulehead" }).GetByText("3.0", new() { Exact = true }).First.WaitForAsync();
        Usable.Nothing(await Usable.AllAsync(phone.Page));
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task A_levee_out_keeps_picture_time_and_person_and_says_which_check_is_bare()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await AwayAsync(host, "water/levee/N2");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Levee out", Exact = true }).ClickAsync();
        await phone.Main.GetByLabel("Picture").SetInputFilesAsync(new FilePayload { Name = "levee.png", MimeType = "image/png", Buffer = Convert.FromBase64String(Picture) });
        await phone.Main.GetByText("picture kept on this device").WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "2 and 3", Exact = true }).ClickAsync();
        var levee = Article(phone, "Levee out between checks 2 and 3");
        await levee.GetByText("Check 2: likely bare").WaitForAsync();
        await levee.GetByText("Check 3: likely deep").WaitForAsync();
        await levee.GetByRole(AriaRole.Img, new() { Name = "Picture of the levee, Gander South" }).WaitForAsync();
        await phone.Main.GetByText("levee out: checks 2, 3").WaitForAsync();

        await phone.SetAwayAsync(false);
        await phone.Page.GetByText("all sent").WaitForAsync();
        var mark = Assert.Single(await host.MarksAsync(), m => m.GetProperty("kind").GetString() == "fault");
        Assert.Equal(32, mark.GetProperty("fact").GetProperty("photo").GetString()!.Length);
        Assert.False(string.IsNullOrEmpty(mark.GetProperty("by").GetString()));
        Assert.StartsWith("2026-05-08T", mark.GetProperty("happened").GetString(), StringComparison.Ordinal);
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task The_wrong_trailer_stops_the_load_and_an_unknown_one_is_no_pass()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await AwayAsync(host, "seed/trailer");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "R4 Lower Sink" }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Trailer 5", Exact = true }).ClickAsync();
        var stop = phone.Page.GetByRole(AriaRole.Alertdialog);
        await stop.GetByRole(AriaRole.Heading, new() { Name = "STOP" }).WaitForAsync();
        await stop.GetByText("E-2 seed for an E-1 field").WaitForAsync();
        await stop.GetByRole(AriaRole.Button, new() { Name = "Take it to Two Gates (N4)" }).WaitForAsync();
        await stop.GetByText("Load it all the same").ClickAsync();
        await stop.GetByText("A name and a reason are needed.").WaitForAsync();
        Assert.All(await host.MarksAsync(), m => Assert.Equal("plan-issued", m.GetProperty("kind").GetString()));

        await stop.GetByRole(AriaRole.Button, new() { Name = "Key another trailer" }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Another number" }).ClickAsync();
        await KeyAsync(phone, "9");
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "To be confirmed" }).WaitForAsync();
        await phone.Main.GetByText("Nobody has told of a trailer 9.").WaitForAsync();

        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Trailer 1", Exact = true }).ClickAsync();
        await phone.Main.GetByText("It fits.").WaitForAsync();
        await phone.Page.GetByText("1 to send").WaitForAsync();
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task A_short_ticket_is_read_to_the_pound()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await AwayAsync(host, "seed/load/1");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Scale weight", Exact = true }).ClickAsync();
        await KeyAsync(phone, "18100");
        foreach (var said in new[] { "970 lb dry SHORT", "14,480 lb dry for Lower Sink", "7 loads × 2,586 lb wet", "140.6 lb/ac dry (−6.3 %)", "Stop at 96.5 ac, at 150 lb/ac dry" })
            await phone.Main.GetByText(said).First.WaitForAsync();
        Usable.Nothing(await Usable.AllAsync(phone.Page));
        Usable.Nothing(phone.Complaints);
    }

    private async Task<Device> AwayAsync(RunningHost host, string address)
    {
        var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.GoAsync(address);
        await phone.SetAwayAsync(true);
        return phone;
    }

    private static ILocator Article(Device phone, string name) => phone.Main.GetByRole(AriaRole.Article, new() { Name = name }).First;

    private static async Task KeyAsync(Device phone, string number)
    {
        var pad = phone.Main.Locator(".number-pad");
        foreach (var sign in number) await pad.GetByRole(AriaRole.Button, new() { Name = sign.ToString(), Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { NameRegex = new("^Keep ", RegexOptions.None, TimeSpan.FromSeconds(1)) }).ClickAsync();
    }
}
