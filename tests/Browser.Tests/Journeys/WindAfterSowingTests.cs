using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>Wheelwright was sown on Wednesday from 05:50 to 07:05; from 09:40 the wind stood at 20, gusting 31, from the north. It is Thursday morning.</summary>
public sealed class WindAfterSowingTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task The_morning_after_the_wind_the_field_sown_last_before_it_is_looked_at_first()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-05-07T05:30");
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("water");
        var ranked = phone.Main.GetByRole(AriaRole.Region, new() { Name = "Wind after sowing: look at these first" }).GetByRole(AriaRole.Heading, new() { Level = 3 });
        await ranked.First.WaitForAsync();
        var fields = await ranked.AllInnerTextsAsync();
        Assert.StartsWith("Wheelwright", fields[0], StringComparison.Ordinal);
        // Sown within three days of Thursday morning: N2 on Monday, R3 on Tuesday, S1 on Wednesday; no other.
        Assert.Equal(["Gander South", "Tulehead", "Wheelwright"], fields.Select(f => string.Join(' ', f.Split('\n', ' ').TakeWhile(w => !w.Any(char.IsDigit)))).Order(StringComparer.Ordinal));
        await phone.Main.GetByText("wind over loose seed").First.WaitForAsync();
        Usable.Nothing(phone.Complaints);
    }
}
