using Microsoft.Playwright;

namespace Watersown.Journeys;

/// <summary>The desk in a pickup with no signal: it opens, takes marks, keeps them, and sends each of them once.</summary>
public sealed class NoSignalTests(Chromium chromium, Marrowfen marrowfen)
{
    [Fact]
    public async Task After_one_visit_every_page_opens_with_no_signal()
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.SetAwayAsync(true);
        foreach (var screen in Screens.OfTheDesk) await phone.OpenAsync(screen);
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task The_last_Morning_page_stands_there_before_the_desk_is_awake()
    {
        await using var phone = await Device.VisitedAsync(chromium, marrowfen.Quiet, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.GoAsync("");
        await phone.Page.WaitForFunctionAsync("() => localStorage.getItem('watersown.morning') !== null");
        await phone.SetAwayAsync(true);
        await phone.OpenAsync("");
        var kept = await phone.Page.EvaluateAsync<double?>("performance.getEntriesByName('watersown-kept')[0]?.startTime");
        Assert.NotNull(kept);
        Assert.True(kept < await phone.Page.EvaluateAsync<double>("performance.now()"));
        Assert.Contains("{age}", await phone.Page.EvaluateAsync<string>("JSON.parse(localStorage.getItem('watersown.morning')).words.kept"), StringComparison.Ordinal);
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task A_mark_made_with_no_signal_is_counted_as_unsent_outlives_the_page_and_is_sent_once()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.KeptWholeAsync();
        await phone.GoAsync("water");
        await phone.SetAwayAsync(true);
        await phone.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "Check 5 wet", Exact = true }).ClickAsync();
        await phone.SaysAsync("1 to send");
        await phone.Field("Two Gates").GetByText("5 of 6 wet").WaitForAsync();
        await phone.ReloadAsync();
        await phone.SaysAsync("1 to send");
        await phone.Field("Two Gates").GetByText("5 of 6 wet").WaitForAsync();
        Assert.Empty(await host.MarksAsync());

        await phone.SetAwayAsync(false);
        await phone.SaysAsync("all sent");
        await phone.ReloadAsync();
        await phone.SaysAsync("all sent");
        var mark = Assert.Single(await host.MarksAsync());
        Assert.Equal("N4", mark.GetProperty("fact").GetProperty("field").GetString());
        Usable.Nothing(phone.Complaints);
    }

    [Fact]
    public async Task A_mark_whose_reply_was_lost_is_sent_again_and_is_in_the_book_once()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var phone = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await phone.GoAsync("water");
        var tries = 0;
        var lost = new TaskCompletionSource();
        await phone.Page.RouteAsync("**/api/marks", async route =>
        {
            // The book takes it; the phone never hears so.
            var reply = await route.FetchAsync();
            if (Interlocked.Increment(ref tries) > 1)
            {
                await route.FulfillAsync(new() { Response = reply });
                return;
            }

            await route.AbortAsync();
            lost.SetResult();
        });
        await phone.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "Check 5 wet", Exact = true }).ClickAsync();
        await lost.Task.WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Single(await host.MarksAsync());
        await phone.SaysAsync("1 to send");
        await phone.SaysAsync("all sent");
        Assert.Equal(2, tries);
        Assert.Single(await host.MarksAsync());
    }

    [Fact]
    public async Task Two_phones_that_saw_different_things_with_no_signal_come_to_one_account()
    {
        await using var host = await marrowfen.OpenAsync();
        await using var one = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        await using var two = await Device.VisitedAsync(chromium, host, Holding.Telephone);
        foreach (var phone in (Device[])[one, two])
        {
            await phone.GoAsync("water");
            await phone.SetAwayAsync(true);
        }

        await one.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "Check 5 wet", Exact = true }).ClickAsync();
        await one.SaysAsync("1 to send");
        // The other stood at the same check an hour before, and at the next one.
        await two.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "Check 5: dry" }).ClickAsync();
        await two.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "−1 h", Exact = true }).ClickAsync();
        await two.Field("Two Gates").GetByRole(AriaRole.Button, new() { Name = "dry", Exact = true }).ClickAsync();
        await two.SaysAsync("1 to send");
        await two.Field("Willow Run").GetByRole(AriaRole.Button, new() { Name = "Check 4 wet", Exact = true }).ClickAsync();
        await two.SaysAsync("2 to send");

        await two.SetAwayAsync(false);
        await two.SaysAsync("all sent");
        await one.SetAwayAsync(false);
        await one.SaysAsync("all sent");
        await two.ReloadAsync();
        foreach (var phone in (Device[])[one, two])
        {
            await phone.Field("Two Gates").GetByText("5 of 6 wet").WaitForAsync();
            await phone.Field("Willow Run").GetByText("4 of 6 wet").WaitForAsync();
        }

        var marks = await host.MarksAsync();
        Assert.Equal(3, marks.Length);
        Assert.Equal(3, marks.Select(m => m.GetProperty("id").GetString()).Distinct(StringComparer.Ordinal).Count());
    }
}
