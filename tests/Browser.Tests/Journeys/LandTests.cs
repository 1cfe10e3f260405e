using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>The map and the table say the same and lead to each other; an edge is drawn, kept and taken back.</summary>
public sealed class LandTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task A_field_chosen_in_the_table_is_chosen_on_the_map_and_the_other_way_round()
    {
        await using var desk = await Device.VisitedAsync(chromium, marrowfen.Quiet, new Holding(Phone: false));
        await desk.GoAsync("land");
        var map = desk.Page.Locator(".map-host");
        await desk.Page.Locator(".map-host[data-state=ready]").WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = 60_000 });
        Assert.Equal("28", await map.GetAttributeAsync("data-fields"));
        Assert.Contains("N4:fill", await map.GetAttributeAsync("data-looks"), StringComparison.Ordinal);
        await desk.Main.GetByRole(AriaRole.Button, new() { Name = "N4, show on the map" }).ClickAsync();
        await desk.Page.Locator(".map-host[data-chosen=N4]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await desk.Main.GetByRole(AriaRole.Link, new() { Name = "Open Two Gates" }).WaitForAsync();
        Usable.Nothing(desk.Complaints);
    }

    [Fact]
    public async Task Without_the_map_library_the_page_is_whole_and_a_tap_on_the_plain_map_chooses()
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone with { KeepsDesk = false });
        await phone.Page.RouteAsync("**/map/maplibre-gl*", route => route.AbortAsync());
        await phone.OpenAsync("land");
        await phone.Page.Locator(".plain-field").Nth(3).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Link, new() { Name = "Open Two Gates" }).ClickAsync();
        await phone.Main.GetByRole(AriaRole.Heading, new() { Name = "Two Gates" }).First.WaitForAsync();
        await phone.Main.GetByText("4 of 6").First.WaitForAsync();
    }

    [Fact]
    public async Task An_edge_is_typed_judged_kept_and_taken_back_by_keyboard()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("field/N4/edge");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Begin anew" }).ClickAsync();
        await phone.Main.GetByText("3 more are needed").WaitForAsync();
        await Add(phone, "39.01,-122.01\n39.02,-122.00\n39.02,-122.01\n39.01,-122.00");
        await phone.Main.GetByText("LAND-108").WaitForAsync();
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Undo the last step" }).ClickAsync();
        // Half a mile by 2,050 ft and a little: 124.5 acres gross, to a few parts in a hundred.
        await Add(phone, "39.01159,-122.00873\n39.01159,-122.00127\n39.01881,-122.00127\n39.01881,-122.00873");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await phone.Main.GetByText("The edge is kept").WaitForAsync();
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        Usable.Nothing(phone.Complaints);
    }

    private static async Task Add(Device device, string corners)
    {
        await device.Main.GetByLabel("Latitude, longitude of the next corner").FillAsync(corners);
        await device.Main.GetByRole(AriaRole.Button, new() { Name = "Add a corner" }).ClickAsync();
    }
}
