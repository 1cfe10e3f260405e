using System.Globalization;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// Ten past ten at night the lift pump gives up. From the grower's own sum: the depth less 1.2 in of high spots, over 0.28 in a
/// day. R1 stands at 4.0 in, R2 at 3.5, R3 and R4 at 2.5; R5 is half filled.
/// </summary>
public sealed class PumpDiesTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task The_pump_dies_and_one_tap_says_how_long_each_field_has_and_that_only_the_pump_service_is_woken()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-05-08T22:10");
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone with { Night = true });
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("water");
        await phone.Page.GetByRole(AriaRole.Article, new() { Name = "SP-1" }).GetByRole(AriaRole.Button, new() { Name = "SP-1 stopped", Exact = true }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "SP-1 stopped", Level = 1 }).WaitForAsync();
        await phone.SaysAsync("1 to send");

        // (2.5 - 1.2) / 0.28, (3.5 - 1.2) / 0.28, (4.0 - 1.2) / 0.28.
        await phone.Row("Tulehead").GetByText("4.6", new() { Exact = true }).WaitForAsync();
        await phone.Row("Lower Sink").GetByText("4.6", new() { Exact = true }).WaitForAsync();
        await phone.Row("Big Elbow").GetByText("8.2", new() { Exact = true }).WaitForAsync();
        await phone.Row("Pumphouse").GetByText("10.0", new() { Exact = true }).WaitForAsync();

        // R5 stops and its head check keeps ageing; its flight is off, and its soak, 24 h under water and 24 h drained before the
        // flight, at the warehouse's hour of six, can be called off until then. When it was to fly stands in the plan.
        var flight = await SowingAsync(host, "R5");
        var last = flight.AddHours(-48);
        var soak = new DateOnly(last.Year, last.Month, last.Day).AddDays(last.TimeOfDay < TimeSpan.FromHours(6) ? -1 : 0);
        var sink = phone.Field("Upper Sink");
        await sink.GetByText("stops with 2 of 4 checks wet").WaitForAsync();
        await sink.GetByText("keeps ageing").WaitForAsync();
        await sink.GetByText(flight.ToString("HH:mm", CultureInfo.InvariantCulture) + ": count on it being OFF").WaitForAsync();
        await sink.GetByText("Flight of " + flight.ToString("ddd", CultureInfo.InvariantCulture)).WaitForAsync();
        await sink.GetByText("Call off or move its soak before " + soak.ToString("ddd", CultureInfo.InvariantCulture)).WaitForAsync();

        await phone.Main.GetByText("Nobody else has to be woken").WaitForAsync();
        Assert.Equal(1, await phone.Main.GetByText("Now", new() { Exact = true }).CountAsync());

        // A dry wind takes 0.44 in a day: (2.5 - 1.2) / 0.44 = 2.95.
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Reckon with another loss" }).ClickAsync();
        foreach (var key in (string[])["0", ".", "4", "4"]) await phone.Main.GetByRole(AriaRole.Button, new() { Name = key, Exact = true }).Last.ClickAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep 0.44" }).ClickAsync();
        await phone.Row("Tulehead").GetByText("3.0", new() { Exact = true }).WaitForAsync();

        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
        await phone.SetAwayAsync(false);
        await phone.SaysAsync("all sent");
        Assert.Single(await host.MarksAsync());
    }

    private static async Task<DateTimeOffset> SowingAsync(RunningHost host, string field) =>
        (await host.DeskAsync()).GetProperty("plan").GetProperty("tasks").EnumerateArray().First(t => t.GetProperty("field").GetString() == field && t.GetProperty("task").GetString() == "sow").GetProperty("start").GetDateTimeOffset();
}
