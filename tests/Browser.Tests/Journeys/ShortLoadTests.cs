using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>
/// Sunday, half past five: the ticket of R4's trailer says 18,100 lb wet where 15,450 × 1.25 = 19,312.5 were expected. By hand: 18,100 ÷ 1.25 =
/// 14,480 dry, 15,450 − 14,480 = 970 short; over 103 ac 140.6 lb/ac, −6.3 %; or 14,480 ÷ 150 = 96.5 ac; 18,100 ÷ 7 = 2,586 a load.
/// </summary>
public sealed class ShortLoadTests(Chromium chromium, Marrowfen marrowfen)
{
    private const string Saturday = """
        [
          {"id":"00000000000000000000000000000a01","kind":"batch-drained","happened":"2026-05-08T06:30:00-07:00","entered":"2026-05-08T06:30:00-07:00","by":"Perrin Aldegate","device":"a phone","sure":"told","fact":{"batch":"B-08"}},
          {"id":"00000000000000000000000000000a02","kind":"sown","happened":"2026-05-09T07:23:00-07:00","entered":"2026-05-09T07:23:00-07:00","by":"Joss Tarrowby","device":"a phone","sure":"told","fact":{"field":"S2","batch":"B-08","dry_lb":12865}},
          {"id":"00000000000000000000000000000a03","kind":"batch-in-soak","happened":"2026-05-08T06:00:00-07:00","entered":"2026-05-08T06:40:00-07:00","by":"Perrin Aldegate","device":"a phone","sure":"told","fact":{"batch":"B-10","lot":"E-1 lot 2","variety":"E-1","dry_lb":15450,"meant_for":["R4"]}},
          {"id":"00000000000000000000000000000a04","kind":"trailer","happened":"2026-05-10T05:10:00-07:00","entered":"2026-05-10T05:10:00-07:00","by":"Bly Hartshaw","device":"a phone","sure":"measured","fact":{"trailer":"4","batch":"B-10","field":"R4"}}
        ]
        """;

    [Fact]
    public async Task A_short_ticket_says_what_is_missing_and_two_ways_to_fly_it_and_proposes_no_other_batch()
    {
        await using var host = await marrowfen.OpenAsync(at: "2026-05-10T05:30");
        await host.SendAsync(System.Text.Json.JsonElement.Parse(Saturday).EnumerateArray());
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("seed/load/4");
        await phone.Main.GetByRole(AriaRole.Button, new() { Name = "Scale weight", Exact = true }).ClickAsync();
        var pad = phone.Main.GetByRole(AriaRole.Group, new() { Name = "Scale ticket" });
        foreach (var key in "18100") await pad.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).ClickAsync();
        await pad.GetByRole(AriaRole.Button, new() { Name = "Keep 18100" }).ClickAsync();

        foreach (var said in (string[])
        [
            "18,100 lb wet on the scale, 19,313 expected", "970 lb dry SHORT", "14,480 lb dry", "Spread over all 103 ac: 140.6 lb/ac dry (−6.3 %)", "Stop at 96.5 ac, at 150", "7 loads × 2,586 lb wet",
            "B-08 has 2,015 lb dry", "Another batch, 47 h", "Not proposed", "More than scale and wet factor can be off",
        ]) await phone.Main.GetByText(said).First.WaitForAsync();
        Usable.Nothing([.. await Usable.AllAsync(phone.Page), .. phone.Complaints]);
    }
}
