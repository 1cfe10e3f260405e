using System.Net;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Text messages, handed over by a service or pasted on the desk.</summary>
public sealed class TextTests
{
    [Fact]
    public async Task A_text_from_a_known_number_is_kept_as_marks_of_its_person_and_said_back()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var service = desk.Stranger();
        var secret = await SecretAsync(page);
        using var answer = await SendAsync(service, secret, "+1 555-555-0102", "N4 ck5 wet 2in", id: "SM1");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/plain", answer.Content.Headers.ContentType!.MediaType);
        var reply = await answer.Content.ReadAsStringAsync();
        Assert.Contains("N4", reply, StringComparison.Ordinal);
        var kept = await desk.Book.MarksAfterAsync(0, 10);
        Assert.Equal(["check-water", "depth"], kept.Select(m => m.Mark.Kind).Order(StringComparer.Ordinal));
        Assert.All(kept, m => Assert.Equal("Tamsin Wexcombe", m.Mark.By));
        await SendAsync(service, secret, "+1 555-555-0102", "N4 ck5 wet 2in", id: "SM1");
        Assert.Equal(2, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task A_text_in_spanish_is_answered_in_spanish()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var service = desk.Stranger();
        using var answer = await SendAsync(service, await SecretAsync(page), "555-555-0103", "N4 cuadro 5 mojado 2 pulg");
        Assert.Contains("cuadro 5", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal("Lucero Quintabar", (await desk.Book.MarksAfterAsync(0, 1)).Single().Mark.By);
    }

    [Fact]
    public async Task Without_the_secret_nothing_is_read_and_guessing_is_stopped()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var service = desk.Stranger();
        Assert.Equal("TEXT-001", await RunningDesk.ProblemsAsync(await SendAsync(service, string.Empty, "5555550102", "N4 5 wet"), HttpStatusCode.Forbidden));
        var old = await SecretAsync(page);
        var secret = await SecretAsync(page);
        Assert.Equal("TEXT-001", await RunningDesk.ProblemsAsync(await SendAsync(service, old, "5555550102", "N4 5 wet"), HttpStatusCode.Forbidden));
        for (var i = 0; i < 8; i++) await SendAsync(service, "guess", "5555550102", "N4 5 wet");
        Assert.Equal(HttpStatusCode.TooManyRequests, (await SendAsync(service, secret, "5555550102", "N4 5 wet")).StatusCode);
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task An_unknown_number_and_an_empty_or_endless_text_are_refused()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var service = desk.Stranger();
        var secret = await SecretAsync(page);
        Assert.Equal("TEXT-002", await RunningDesk.ProblemsAsync(await SendAsync(service, secret, "555-555-9999", "N4 5 wet"), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("TEXT-002", await RunningDesk.ProblemsAsync(await SendAsync(service, secret, string.Empty, "N4 5 wet"), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("TEXT-003", await RunningDesk.ProblemsAsync(await SendAsync(service, secret, "5555550102", " "), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("TEXT-003", await RunningDesk.ProblemsAsync(await SendAsync(service, secret, "5555550102", new string('N', 3_000)), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_pasted_text_can_be_looked_at_before_it_is_kept_and_crew_paste_for_themselves()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var crew = await desk.AsAsync(Role.Crew, "Tamsin Wexcombe");
        using var looked = await RunningDesk.JsonAsync(await crew.PostAsync("/api/text", RunningDesk.Json("""{"text":"N4 ck5 wet","keep":"no"}""")));
        Assert.Equal(1, looked.RootElement.GetProperty("facts").GetInt32());
        Assert.Equal(0, await desk.Book.UptoAsync());
        using var kept = await RunningDesk.JsonAsync(await crew.PostAsync("/api/text", RunningDesk.Json("""{"text":"N4 ck5 wet","person":"Odalie Marrowfen"}""")));
        Assert.Equal("Tamsin Wexcombe", kept.RootElement.GetProperty("by").GetString());
        using var owner = await desk.AsAsync(Role.Owner);
        await owner.PostAsync("/api/text", RunningDesk.Json("""{"text":"N4 ck6 wet","person":"Lucero Quintabar"}"""));
        Assert.Equal(["Tamsin Wexcombe", "Lucero Quintabar"], (await desk.Book.MarksAfterAsync(0, 10)).Select(m => m.Mark.By));
    }

    private static async Task<string> SecretAsync(HttpClient page)
    {
        using var made = await RunningDesk.JsonAsync(await page.PostAsync("/api/text-secret", RunningDesk.Json("{}")));
        return made.RootElement.GetProperty("secret").GetString()!;
    }

    private static Task<HttpResponseMessage> SendAsync(HttpClient service, string secret, string from, string body, string id = "") =>
        service.PostAsync("/text", new FormUrlEncodedContent([new("secret", secret), new("from", from), new("body", body), new("id", id)]));
}
