using System.Globalization;
using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// Twelve days after the wind somebody throws rings on Wheelwright with one thumb, no signal. Upwind 30 ac: 7, 5, 9, 6, 8, 7;
/// middle 50 ac: 17, 21, 15, 18, 16, 15; lee 32 ac: 41, 38, 44, 40, 43, 40. By land (210 + 850 + 1,312) / 112 = 21.2.
/// </summary>
public sealed class StandAfterWindTests(Chromium chromium, Marrowfen marrowfen)
{
    private static readonly (string Zone, int Acres, int[] Rings)[] counted =
        [("upwind", 30, [7, 5, 9, 6, 8, 7]), ("middle", 50, [17, 21, 15, 18, 16, 15]), ("lee", 32, [41, 38, 44, 40, 43, 40])];

    [Fact]
    public async Task Rings_by_zone_show_that_the_field_looks_fine_and_the_upwind_side_does_not()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-05-18T08:00");
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("crop/S1/stand");
        foreach (var (zone, acres, rings) in counted)
        {
            await phone.Main.GetByRole(AriaRole.Button, new() { Name = zone, Exact = true }).ClickAsync();
            await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Land of this part" }).ClickAsync();
            await TypeAsync(phone, "Land of this part, " + zone, acres);
            foreach (var ring in rings) await TypeAsync(phone, "Plants in this ring, " + zone, ring);
        }

        // A number mistyped is taken back with one tap.
        await TypeAsync(phone, "Plants in this ring, lee", 400);
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Take the last ring back (400)" }).ClickAsync();

        await phone.Main.GetByText("21.2 (").First.WaitForAsync();
        await phone.Main.GetByText("The whole-field mean looks fine. upwind 30 ac does not.").WaitForAsync();
        await phone.Main.GetByText("upwind, 30 ac: from 7.0 to 18.0 plants/ft²").WaitForAsync();
        await phone.Main.GetByText("They do not agree").WaitForAsync();
        Assert.Equal(0, await phone.Main.GetByText("middle, 50 ac: from").CountAsync());
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }

    private static async Task TypeAsync(Device phone, string pad, int number)
    {
        var keys = phone.Main.GetByRole(AriaRole.Group, new() { Name = pad, Exact = true });
        foreach (var digit in number.ToString(CultureInfo.InvariantCulture)) await keys.GetByRole(AriaRole.Button, new() { Name = digit.ToString(), Exact = true }).ClickAsync();
        await keys.GetByRole(AriaRole.Button, new() { Name = "Keep " + number.ToString(CultureInfo.InvariantCulture) }).ClickAsync();
    }
}
