using System.IO.Compression;
using System.Net;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>The whole farm taken from one desk and brought to another.</summary>
public sealed class WholeFarmTests
{
    [Fact]
    public async Task What_is_taken_from_one_desk_comes_into_another()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await using var other = await RunningDesk.ReachableAsync();
        using var owner = await desk.AsAsync(Role.Owner);
        using var there = await other.AsAsync(Role.Owner);
        var ids = Enumerable.Range(0, 5).Select(_ => RunningDesk.NewId()).ToList();
        using (var sent = await owner.PostAsync("/api/marks", RunningDesk.Send(ids.Select(id => RunningDesk.Mark(id))))) Assert.Equal(HttpStatusCode.OK, sent.StatusCode);
        await desk.Book.SetAsync("farm-name", "Marrowfen \"of\" Ñandú\r\n");
        using var given = await owner.GetAsync("/api/whole-farm");
        Assert.Equal(("application/zip", "attachment; filename=marrowfen-of-nandu-2026-05-08.zip"), (given.Content.Headers.ContentType!.MediaType, given.Content.Headers.ContentDisposition!.ToString().Replace("\"", string.Empty, StringComparison.Ordinal)));
        var bytes = await given.Content.ReadAsByteArrayAsync();
        await using (var archive = new ZipArchive(new MemoryStream(bytes))) Assert.NotNull(archive.GetEntry("farm.json"));
        var waiting = there.GetAsync("/api/changes?after=0&wait=30&plan=14&farm=1");
        using (var answer = await RunningDesk.JsonAsync(await there.PostAsync("/api/whole-farm", new ByteArrayContent(bytes))))
        {
            Assert.Equal((0, 5, 0), (answer.RootElement.GetProperty("farms").GetInt32(), answer.RootElement.GetProperty("marks").GetInt32(), answer.RootElement.GetProperty("photos").GetInt32()));
            Assert.Equal(0, answer.RootElement.GetProperty("problems").GetArrayLength());
        }

        // Phones that wait are told of them.
        using var changes = await RunningDesk.JsonAsync(await waiting);
        Assert.Equal(ids.Order(StringComparer.Ordinal), changes.RootElement.GetProperty("marks").EnumerateArray().Select(m => m.GetProperty("id").GetString()!).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task What_is_no_whole_farm_is_told_and_nothing_is_taken()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal("WHOLE-001", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/whole-farm", new ByteArrayContent("PK\u0003\u0004 no"u8.ToArray())), HttpStatusCode.UnprocessableEntity));
        using var answer = await page.PostAsync("/api/whole-farm", new ByteArrayContent([]));
        Assert.DoesNotContain(Path.GetTempPath(), await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task What_says_it_is_larger_than_a_farm_is_not_read()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var content = new StreamContent(Stream.Null);
        content.Headers.ContentLength = 513L * 1024 * 1024;
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/whole-farm") { Content = content };
        request.Headers.ExpectContinue = true;
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await page.SendAsync(request), HttpStatusCode.RequestEntityTooLarge));
    }
}
