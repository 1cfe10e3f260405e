using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>Trailer 5 with E-2 seed stands at the strip while R4, an E-1 field, is next. Nobody has a signal.</summary>
public sealed class WrongTrailerTests(Chromium chromium, Marrowfen marrowfen)
{
    // Whose seed each trailer carries, and which each field is for: from the farm's own list, not from the desk.
    private static readonly (string Trailer, string Variety)[] Trailers = [("1", "E-1"), ("2", "E-1"), ("3", "E-1"), ("5", "E-2")];

    private static readonly (string Field, string Variety)[] Fields = [("R4", "E-1"), ("N4", "E-2"), ("S2", "E-1"), ("N3", "E-1"), ("S3", "E-2")];

    [Fact]
    public async Task The_wrong_trailer_stops_the_whole_screen_offers_its_own_field_and_is_let_through_only_with_a_name_and_a_reason()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("flight/R4");
        await phone.KeyTrailerAsync("5");
        var stop = phone.Page.GetByRole(AriaRole.Alertdialog);
        await stop.GetByRole(AriaRole.Heading, new() { Name = "STOP", Exact = true }).WaitForAsync();
        await stop.GetByText("E-2 seed for an E-1 field", new() { Exact = true }).WaitForAsync();
        var box = (await stop.BoundingBoxAsync())!;
        Assert.Equal((0, 0), (Math.Round(box.X), Math.Round(box.Y)));
        Assert.True(box.Width >= phone.Holding.Width && box.Height >= phone.Holding.Height, "the stop does not cover the screen");
        await stop.GetByRole(AriaRole.Button, new() { Name = "Take it to Two Gates" }).WaitForAsync();
        Usable.Nothing(await Usable.ScanAsync(phone.Page));

        await stop.GetByText("Load it all the same").ClickAsync();
        await stop.GetByText("A name and a reason are needed").WaitForAsync();
        Assert.Equal(0, await stop.GetByRole(AriaRole.Button, new() { Name = "Override the stop" }).CountAsync());
        await stop.GetByRole(AriaRole.Button, new() { Name = "Odalie Marrowfen" }).ClickAsync();
        Assert.Equal(0, await stop.GetByRole(AriaRole.Button, new() { Name = "Override the stop" }).CountAsync());
        await stop.GetByRole(AriaRole.Button, new() { Name = "The plan was changed by voice" }).ClickAsync();
        await stop.GetByRole(AriaRole.Button, new() { Name = "Override the stop" }).ClickAsync();
        await phone.Main.GetByText("Stop overridden by Odalie Marrowfen: The plan was changed by voice").WaitForAsync();
        await phone.SaysAsync("1 to send");
    }

    [Fact]
    public async Task Every_trailer_at_every_field_passes_with_its_own_variety_stops_with_another_and_is_asked_about_when_unknown()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        foreach (var (field, wanted) in Fields)
        {
            await phone.GoAsync("flight/" + field);
            foreach (var (trailer, variety) in Trailers)
            {
                await phone.KeyTrailerAsync(trailer);
                if (variety == wanted)
                {
                    await phone.Main.GetByText($"Trailer {trailer}: {variety} seed for an {wanted} field. It fits.").WaitForAsync();
                    continue;
                }

                var stop = phone.Page.GetByRole(AriaRole.Alertdialog);
                await stop.GetByText($"{variety} seed for an {wanted} field", new() { Exact = true }).WaitForAsync();
                await stop.GetByRole(AriaRole.Button, new() { Name = "Key another trailer" }).ClickAsync();
            }

            // A tag nobody has told of is no pass.
            await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Another number" }).ClickAsync();
            var pad = phone.Main.GetByRole(AriaRole.Group, new() { Name = "Number on the trailer" });
            await pad.GetByRole(AriaRole.Button, new() { Name = "6", Exact = true }).ClickAsync();
            await pad.GetByRole(AriaRole.Button, new() { Name = "Keep 6" }).ClickAsync();
            await phone.Main.GetByText("To be confirmed").First.WaitForAsync();
            Assert.Equal(0, await phone.Main.GetByText("It fits.").CountAsync());
        }
    }

    [Fact]
    public async Task At_the_warehouse_too_the_wrong_trailer_is_stopped_before_anything_is_marked()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("seed/trailer");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "R4 Lower Sink" }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Trailer 5", Exact = true }).ClickAsync();
        var stop = phone.Page.GetByRole(AriaRole.Alertdialog);
        await stop.GetByRole(AriaRole.Button, new() { Name = "Take it to Two Gates" }).WaitForAsync();
        Assert.Empty(await host.MarksAsync());
        await stop.GetByRole(AriaRole.Button, new() { Name = "Key another trailer" }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Trailer 1", Exact = true }).ClickAsync();
        await phone.Main.GetByText("It fits.").WaitForAsync();
        await phone.SaysAsync("1 to send");
        Usable.Nothing(phone.Complaints);
    }
}
