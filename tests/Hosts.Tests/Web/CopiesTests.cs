using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;
using Watersown.Web.Season;

namespace Watersown.Web;

/// <summary>The running desk copies its book by itself, says of when the last copy is, and says when it could not.</summary>
public sealed class CopiesTests
{
    [Fact]
    public async Task It_copies_at_the_start_and_once_a_day_and_keeps_the_days_it_was_told()
    {
        await using var desk = await RunningDesk.HereAsync(o => o with { Copies = Path.Combine(Path.GetDirectoryName(o.Book)!, "backups"), CopyDays = 3 });
        var (copies, folder) = (desk.App.Services.GetRequiredService<DailyCopies>(), CopyFolder.Of(desk.Book.File!));
        while (copies.View.Last is null) await Task.Delay(20);
        await copies.LookAsync(CancellationToken.None);
        Assert.Single(folder.List());
        for (var day = 1; day <= 6; day++)
        {
            desk.Time.Move(TimeSpan.FromDays(1));
            await copies.LookAsync(CancellationToken.None);
            await copies.LookAsync(CancellationToken.None);
            Assert.Equal(Math.Min(day + 1, 3), folder.List().Length);
        }

        foreach (var copy in folder.List()) Assert.True((await CopyFolder.LookAsync(copy.Path)).HasValue);
    }

    [Fact]
    public async Task Of_when_the_last_copy_is_stands_in_what_phones_of_the_farm_hear()
    {
        await using var desk = await RunningDesk.ReachableAsync(o => o with { Copies = Path.Combine(Path.GetDirectoryName(o.Book)!, "backups") });
        while (desk.App.Services.GetRequiredService<DailyCopies>().View.Last is null) await Task.Delay(20);
        using var owner = await desk.AsAsync(Role.Owner);
        using var crew = await desk.AsAsync(Role.Crew);
        foreach (var path in new[] { "/api/desk", "/api/changes?after=0" })
        {
            using var told = await RunningDesk.JsonAsync(await owner.GetAsync(path));
            Assert.Equal(1, told.RootElement.GetProperty("copies").GetProperty("count").GetInt32());
            Assert.InRange(told.RootElement.GetProperty("copies").GetProperty("last").GetDateTimeOffset(), desk.App.Services.GetClock().GetUtcNow() - TimeSpan.FromMinutes(3), desk.App.Services.GetClock().GetUtcNow());
            using var other = await RunningDesk.JsonAsync(await crew.GetAsync(path));
            Assert.False(other.RootElement.TryGetProperty("copies", out _));
        }
    }

    [Fact]
    public async Task A_copy_that_failed_is_said_until_one_goes_well()
    {
        await using var desk = await RunningDesk.HereAsync(o =>
        {
            var inTheWay = Path.Combine(Path.GetDirectoryName(o.Book)!, "backups");
            File.WriteAllText(inTheWay, "-");
            return o with { Copies = inTheWay };
        });
        using var page = desk.Page();
        Assert.Equal("COPY-001", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/copies", RunningDesk.Json("{}")), HttpStatusCode.UnprocessableEntity));
        using (var told = await RunningDesk.JsonAsync(await page.GetAsync("/api/changes?after=0")))
        {
            Assert.Contains("no copy of the book was made", told.RootElement.GetProperty("copies").GetProperty("why").GetString(), StringComparison.Ordinal);
            Assert.True(told.RootElement.GetProperty("copies").TryGetProperty("failed", out _));
        }

        File.Delete(Path.Combine(desk.Folder, "backups"));
        using var made = await RunningDesk.JsonAsync(await page.PostAsync("/api/copies", RunningDesk.Json("{}")));
        Assert.Equal((true, 14, 1, false), (made.RootElement.GetProperty("on").GetBoolean(), made.RootElement.GetProperty("days").GetInt32(), made.RootElement.GetProperty("count").GetInt32(), made.RootElement.TryGetProperty("failed", out _)));
    }

    [Fact]
    public async Task A_desk_that_makes_none_says_so()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal("SEND-009", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/copies", RunningDesk.Json("{}")), HttpStatusCode.UnprocessableEntity));
        using var told = await RunningDesk.JsonAsync(await page.GetAsync("/api/copies"));
        Assert.False(told.RootElement.GetProperty("on").GetBoolean());
    }

    [Theory]
    [InlineData("--book x.book", true)]
    [InlineData("--book x.book --copies none", false)]
    [InlineData("--book x.book --at 2026-05-08T04:50", false)]
    [InlineData("--book x.book --at 2026-05-08T04:50 --copies here", true)]
    public void A_farm_is_copied_unless_somebody_wishes_otherwise(string words, bool copies) =>
        Assert.Equal(copies, DeskStart.WithCopies(OptionReading.Read(words.Split(' ')).Value).Copies is not null);
}
