using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>The levee between checks 2 and 3 of Gander South is out, sown four days ago. Whoever stands there has a phone and no signal.</summary>
public sealed class LeveeOutTests(Chromium chromium, Marrowfen marrowfen)
{
    // A picture of one grey dot, as a phone would hand it over.
    private const string Dot = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==";

    [Fact]
    public async Task A_levee_out_is_kept_with_its_picture_and_tells_what_lies_bare_what_runs_deep_and_who_does_what()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("water/levee/N2");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Levee out", Exact = true }).ClickAsync();
        await phone.Main.GetByLabel("Picture").SetInputFilesAsync(new FilePayload { Name = "levee.png", MimeType = "image/png", Buffer = Convert.FromBase64String(Dot) });
        await phone.Main.GetByText("picture kept on this device").WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "2 and 3", Exact = true }).Or(phone.Main.GetByRole(AriaRole.Button, new() { Name = "Levee out between checks 2 and 3" })).First.ClickAsync();

        var levee = phone.Field("Levee out between checks 2 and 3");
        await levee.GetByText("Check 2: likely bare").WaitForAsync();
        await levee.GetByText("Check 3: likely deep").WaitForAsync();
        // 128 acres in six checks, 6 ft and 3 in as nobody has measured: half of check 2 is gone in about 14 h at the first rate.
        await levee.GetByText("14").First.WaitForAsync();
        await levee.GetByText("Close the gap from the upper side").First.WaitForAsync();
        await levee.GetByRole(AriaRole.Img, new() { Name = "Picture of the levee, Gander South" }).WaitForAsync();
        await phone.Main.GetByText("levee out: checks 2, 3").WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);

        await phone.SetAwayAsync(false);
        await phone.SaysAsync("all sent");
        var mark = Assert.Single(await host.MarksAsync());
        Assert.Equal("fault", mark.GetProperty("kind").GetString());
        Assert.Equal("Odalie Marrowfen", mark.GetProperty("by").GetString());
        Assert.StartsWith("2026-05-08T04:5", mark.GetProperty("happened").GetString(), StringComparison.Ordinal);
        var photo = mark.GetProperty("fact").GetProperty("photo").GetString()!;
        var answer = await phone.Page.APIRequest.GetAsync("api/attachments/" + photo);
        Assert.True(answer.Ok);
        Assert.Equal("image/jpeg", answer.Headers["content-type"]);
    }

    [Fact]
    public async Task While_a_hold_is_open_nothing_is_offered_that_lets_water_leave_the_field()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("water/levee/N2");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Levee out", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Last levee out, below check 6" }).Or(phone.Main.GetByRole(AriaRole.Button, new() { Name = "6, last" })).First.ClickAsync();
        await phone.Field("Last levee out, below check 6").GetByText("Water leaves the field.").WaitForAsync();
        Assert.DoesNotContain("release", await phone.Main.InnerTextAsync(), StringComparison.OrdinalIgnoreCase);
    }
}
