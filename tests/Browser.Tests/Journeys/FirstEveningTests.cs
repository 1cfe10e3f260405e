using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// The first evening with half the farm already sown: a pasted list becomes a farm, one tap a field says how far each has come, and
/// there is a board to use, with no boundary drawn.
/// </summary>
public sealed class FirstEveningTests(Chromium chromium, Marrowfen marrowfen)
{
    // As a grower keeps it: headings misspelled, tabs between, no codes, no gross acres, no places. Sums by hand: 2,900 ac, 442,930 lb.
    private const string List = """
        Feild	Acers	Cheks	lb/ac
        Gander North	142	7	150
        Gander South	128	6	150
        Tin Barn	96	5	155
        Two Gates	118	6	150
        Schoolhouse	74	4	150
        Split Oak	156	8	150
        Dogleg	61	5	155
        Old Orchard	88	4	160
        Pumphouse	134	5	145
        Big Elbow	178	7	145
        Tulehead	121	5	145
        Lower Sink	103	4	150
        Upper Sink	97	4	150
        Long Check	146	3	150
        Borrow Pit	52	3	160
        Wheelwright	112	6	150
        Crooked Box	83	5	155
        Willow Run	137	6	150
        Rag Corner	46	4	165
        Salt Corner	91	5	170
        Moth House	125	6	150
        Far Sixty	64	3	160
        Home Forty	38	3	180
        Sill	108	5	150
        Dry Tank	93	5	160
        Crane	117	5	150
        Bootlace	71	9	165
        Widow's Eighty	121	4	160
        """;

    [Fact]
    public async Task A_pasted_list_becomes_a_board_the_same_evening()
    {
        await using var host = await marrowfen.OpenEmptyAsync();
        await using var phone = await Device.NewAsync(chromium, host, Holding.Telephone);
        await phone.OpenAsync(string.Empty);
        await phone.Main.GetByRole(AriaRole.Link, new() { Name = "First evening" }).ClickAsync();
        await phone.Main.GetByLabel("List of fields").FillAsync(List);
        await Press(phone, "Read the list");
        await phone.Main.GetByText("28 fields, 2,900 ac, 442,930 lb dry").WaitForAsync();

        await Press(phone, "Make the farm of it");
        await phone.Main.GetByText("28 of 28 still open").WaitForAsync();
        await Field(phone, "Gander North").GetByRole(AriaRole.Button, new() { Name = "sown" }).ClickAsync();
        await phone.Main.GetByText("27 of 28 still open").WaitForAsync();
        await Field(phone, "Tin Barn").GetByRole(AriaRole.Button, new() { Name = "soaking" }).ClickAsync();
        await Field(phone, "Tin Barn").GetByText("soaking").First.WaitForAsync();
        await Field(phone, "Tin Barn").GetByRole(AriaRole.Button, new() { Name = "full" }).ClickAsync();
        await phone.Main.GetByText("26 of 28 still open").WaitForAsync();

        await phone.GoAsync("land");
        var rows = phone.Main.GetByRole(AriaRole.Row);
        await rows.Filter(new() { HasText = "Gander North" }).GetByText("sown", new() { Exact = true }).WaitForAsync();
        await rows.Filter(new() { HasText = "Tin Barn" }).GetByText("full", new() { Exact = true }).WaitForAsync();
        Assert.Contains("442,930", await rows.Filter(new() { HasText = "All fields" }).InnerTextAsync(), StringComparison.Ordinal);
        await phone.Page.GetByText("all sent").WaitForAsync();
        // Beside the taps the book has the plans that followed by themselves.
        Assert.True((await host.MarksAsync()).Length >= 3);
    }

    [Fact]
    public async Task Commas_and_missing_headings_are_understood_and_what_is_wrong_is_said()
    {
        await using var host = await marrowfen.OpenEmptyAsync();
        await using var phone = await Device.NewAsync(chromium, host, Holding.Telephone);
        await phone.OpenAsync("land/first");
        await phone.Main.GetByLabel("List of fields").FillAsync("Tin Barn, 96\nTwo Gates, 118\n");
        await Press(phone, "Read the list");
        // 214 acres at the usual 150 lb.
        await phone.Main.GetByText("2 fields, 214 ac, 32,100 lb dry").WaitForAsync();
        await phone.Main.GetByLabel("List of fields").FillAsync("Tin Barn, many\n");
        await Press(phone, "Read the list");
        await phone.Main.GetByText("LIST-").First.WaitForAsync();
    }

    private static Task Press(Device device, string name) => device.Main.GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();

    private static ILocator Field(Device device, string name) => device.Main.GetByRole(AriaRole.Listitem).Filter(new() { HasText = name });
}
