using System.Net;
using System.Net.Sockets;
using System.Text;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Pages of other places, other names for this machine, and bodies that are no bodies.</summary>
public sealed class WriteGuardTests
{
    [Fact]
    public async Task A_session_without_the_header_or_the_token_writes_nothing()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var phone = await desk.AsAsync(Role.Owner);
        var token = phone.DefaultRequestHeaders.GetValues("X-Watersown-Token").Single();
        foreach (var (header, given) in ((string, string?)[])[("X-Watersown", null), ("X-Watersown", "2"), ("X-Watersown-Token", null), ("X-Watersown-Token", token + "x"), ("X-Watersown-Token", string.Empty)])
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, "/api/marks") { Content = RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())) };
            phone.DefaultRequestHeaders.Remove(header);
            if (given is not null) phone.DefaultRequestHeaders.TryAddWithoutValidation(header, given);
            Assert.Equal("HOST-007", await RunningDesk.ProblemsAsync(await phone.SendAsync(request), HttpStatusCode.Forbidden));
            phone.DefaultRequestHeaders.Remove(header);
            phone.DefaultRequestHeaders.Add(header, header == "X-Watersown" ? "1" : token);
        }

        Assert.Equal(0, await desk.Book.UptoAsync());
        Assert.Equal(HttpStatusCode.OK, (await phone.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())))).StatusCode);
    }

    [Fact]
    public async Task The_token_of_one_session_is_not_that_of_another()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var one = await desk.AsAsync(Role.Owner);
        using var other = await desk.AsAsync(Role.Owner);
        var stolen = one.DefaultRequestHeaders.GetValues("X-Watersown-Token").Single();
        other.DefaultRequestHeaders.Remove("X-Watersown-Token");
        other.DefaultRequestHeaders.Add("X-Watersown-Token", stolen);
        Assert.Equal("HOST-007", await RunningDesk.ProblemsAsync(await other.PostAsync("/api/plan", RunningDesk.Json("{}")), HttpStatusCode.Forbidden));
    }

    [Theory]
    [InlineData("Origin", "https://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "http://127.0.0.1:1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task A_page_of_another_place_writes_nothing_and_signs_nobody_in(string header, string value)
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var phone = await desk.AsAsync(Role.Owner);
        phone.DefaultRequestHeaders.TryAddWithoutValidation(header, value);
        Assert.Equal("HOST-006", await RunningDesk.ProblemsAsync(await phone.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId()))), HttpStatusCode.Forbidden));
        Assert.Equal("HOST-006", await RunningDesk.ProblemsAsync(await StartTests.SignInAsync(phone, "a", "b"), HttpStatusCode.Forbidden));
        Assert.Equal("HOST-006", await RunningDesk.ProblemsAsync(await phone.PostAsync("/sign-in/passkey/options", RunningDesk.Json("{}")), HttpStatusCode.Forbidden));
        Assert.Equal("HOST-006", await RunningDesk.ProblemsAsync(await phone.PostAsync("/sign-in/passkey", RunningDesk.Json("{}")), HttpStatusCode.Forbidden));
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task On_ones_own_machine_a_page_of_another_place_writes_nothing_either()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal(HttpStatusCode.OK, (await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())))).StatusCode);
        page.DefaultRequestHeaders.Add("Origin", "https://evil.example");
        Assert.Equal("HOST-006", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId()))), HttpStatusCode.Forbidden));
        using var form = desk.Stranger();
        Assert.Equal("HOST-007", await RunningDesk.ProblemsAsync(await form.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId()))), HttpStatusCode.Forbidden));
        Assert.Equal(1, await desk.Book.UptoAsync());
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("127.0.0.1.evil.example")]
    public async Task A_name_of_somebody_elses_that_points_here_is_not_answered(string name)
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        page.DefaultRequestHeaders.Host = name;
        Assert.Equal("HOST-004", await RunningDesk.ProblemsAsync(await page.GetAsync("/api/desk"), HttpStatusCode.MisdirectedRequest));
    }

    [Fact]
    public async Task A_desk_for_this_machine_alone_answers_nobody_through_another_server()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        page.DefaultRequestHeaders.Add("X-Forwarded-For", "203.0.113.9");
        Assert.Equal("HOST-005", await RunningDesk.ProblemsAsync(await page.GetAsync("/api/desk"), HttpStatusCode.MisdirectedRequest));
    }

    [Fact]
    public async Task A_short_form_that_is_too_long_or_none_is_refused()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var page = desk.Page();
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await StartTests.SignInAsync(page, "a", new string('x', 20_000)), HttpStatusCode.RequestEntityTooLarge));
        foreach (var body in (string[])["{", "[1]", "\"x\"", "{\"name\":\"\\ud800\"}"])
            Assert.Equal("HOST-012", await RunningDesk.ProblemsAsync(await page.PostAsync("/sign-in", RunningDesk.Json(body)), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("HOST-012", await RunningDesk.ProblemsAsync(await page.PostAsync("/sign-in", new StringContent("name=x", Encoding.UTF8, "text/plain")), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task What_is_at_no_address_is_said_and_shows_nothing_of_the_machine()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal("HOST-010", await RunningDesk.ProblemsAsync(await page.GetAsync("/api/nothing"), HttpStatusCode.NotFound));
    }

    [Fact]
    public async Task A_failure_tells_a_number_and_not_what_failed()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        await desk.Book.DisposeAsync();
        using var answer = await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())));
        Assert.Equal("HOST-011", await RunningDesk.ProblemsAsync(answer, HttpStatusCode.InternalServerError));
        var text = await answer.Content.ReadAsStringAsync();
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Fact]
    public async Task Bytes_that_are_no_request_are_dropped_and_the_desk_goes_on()
    {
        await using var desk = await RunningDesk.HereAsync();
        foreach (var bytes in (string[])["GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n", "\0\0\0\0\r\n\r\n", "POST /api/marks HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: -1\r\n\r\n", "GET /" + new string('a', 20_000) + " HTTP/1.1\r\n\r\n"])
        {
            using var socket = new TcpClient(desk.Address.Host, desk.Address.Port);
            await using var stream = socket.GetStream();
            await stream.WriteAsync(Encoding.Latin1.GetBytes(bytes));
            using var reader = new StreamReader(stream, Encoding.Latin1);
            var answer = await reader.ReadLineAsync();
            Assert.StartsWith("HTTP/1.1 4", answer ?? "HTTP/1.1 4 (closed)", StringComparison.Ordinal);
        }

        using var page = desk.Page();
        Assert.Equal(HttpStatusCode.OK, (await page.GetAsync("/health")).StatusCode);
    }
}
