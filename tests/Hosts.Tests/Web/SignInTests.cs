using System.Diagnostics;
using System.Net;
using System.Net.Http.Headers;
using Watersown.Records.Database;
using Watersown.Web.SignIn;

namespace Watersown.Web;

/// <summary>Signing in with a password, what a session is worth, and when it ends.</summary>
public sealed class SignInTests
{
    [Fact]
    public async Task A_password_begins_a_session_whose_cookie_no_script_and_no_other_place_can_use()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await desk.Book.AddAccountAsync("Tamsin", Role.Crew, Passwords.Keep(RunningDesk.Password));
        using var client = desk.Page();
        using var answer = await StartTests.SignInAsync(client, "Tamsin", RunningDesk.Password);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("secure", cookie, StringComparison.OrdinalIgnoreCase);
        using var you = await RunningDesk.JsonAsync(answer);
        Assert.Equal("crew", you.RootElement.GetProperty("role").GetString());
        Assert.Equal("Tamsin", (await desk.Book.SessionsAsync()).Single().Account);
        Assert.DoesNotContain(await desk.Book.SessionsAsync(), s => cookie.Contains(s.Id, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Over_https_the_cookie_is_bound_to_this_desk_alone()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await desk.Book.AddAccountAsync("Tamsin", Role.Crew, Passwords.Keep(RunningDesk.Password));
        using var client = desk.Page();
        client.DefaultRequestHeaders.Add("X-Forwarded-Proto", "https");
        using var answer = await StartTests.SignInAsync(client, "Tamsin", RunningDesk.Password);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.StartsWith("__Host-watersown=", cookie, StringComparison.Ordinal);
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.True(answer.Headers.Contains("Strict-Transport-Security"));
    }

    [Fact]
    public async Task A_form_without_script_signs_in_and_goes_to_the_desk()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await desk.Book.AddAccountAsync("Tamsin", Role.Crew, Passwords.Keep(RunningDesk.Password));
        using var browser = desk.Stranger();
        browser.DefaultRequestHeaders.Accept.Add(new MediaTypeWithQualityHeaderValue("text/html"));
        using var wrong = await browser.PostAsync("/sign-in", new FormUrlEncodedContent(new Dictionary<string, string> { ["name"] = "<script>alert(1)</script>", ["password"] = "no" }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        var page = await wrong.Content.ReadAsStringAsync();
        Assert.Contains("do not go together", page, StringComparison.Ordinal);
        Assert.DoesNotContain("alert(1)", page, StringComparison.Ordinal);
        using var right = await browser.PostAsync("/sign-in", new FormUrlEncodedContent(new Dictionary<string, string> { ["name"] = "Tamsin", ["password"] = RunningDesk.Password }));
        Assert.Equal(HttpStatusCode.SeeOther, right.StatusCode);
        Assert.Equal("/", right.Headers.Location!.ToString());
    }

    [Fact]
    public async Task The_page_speaks_the_readers_language_and_runs_only_our_script()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var browser = desk.Stranger();
        browser.DefaultRequestHeaders.AcceptLanguage.ParseAdd("es-MX,es;q=0.9,en;q=0.5");
        using var answer = await browser.GetAsync("/sign-in");
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains("<html lang=\"es\">", page, StringComparison.Ordinal);
        Assert.Contains("Contraseña", page, StringComparison.Ordinal);
        Assert.Contains("script-src 'self'", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_session_that_was_ended_or_left_opens_nothing()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var phone = await desk.AsAsync(Role.Crew, "Tamsin");
        using var owner = await desk.AsAsync(Role.Owner);
        var session = (await desk.Book.SessionsAsync("Tamsin")).Single();
        using var other = await desk.AsAsync(Role.Crew, "Lucero");
        Assert.Equal("SIGN-007", await RunningDesk.ProblemsAsync(await other.DeleteAsync("/api/sessions/" + session.Id), HttpStatusCode.NotFound));
        Assert.Equal(HttpStatusCode.NoContent, (await owner.DeleteAsync("/api/sessions/" + session.Id)).StatusCode);
        Assert.Equal("SIGN-001", await RunningDesk.ProblemsAsync(await phone.GetAsync("/api/desk"), HttpStatusCode.Unauthorized));
        Assert.Equal(HttpStatusCode.NoContent, (await owner.PostAsync("/sign-out", RunningDesk.Json("{}"))).StatusCode);
        Assert.Equal("SIGN-001", await RunningDesk.ProblemsAsync(await owner.GetAsync("/api/desk"), HttpStatusCode.Unauthorized));
    }

    [Fact]
    public async Task A_session_ends_when_it_is_idle_and_in_any_case_in_the_end()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var idle = await desk.AsAsync(Role.Reader, "Perrin");
        using var used = await desk.AsAsync(Role.Reader, "Fenna");
        desk.Time.Move(Door.Idle - TimeSpan.FromHours(1));
        Assert.Equal(HttpStatusCode.OK, (await used.GetAsync("/api/you")).StatusCode);
        desk.Time.Move(TimeSpan.FromHours(2));
        Assert.Equal(HttpStatusCode.Unauthorized, (await idle.GetAsync("/api/you")).StatusCode);
        for (var days = 30; days < 90; days += 15)
        {
            Assert.Equal(HttpStatusCode.OK, (await used.GetAsync("/api/you")).StatusCode);
            desk.Time.Move(TimeSpan.FromDays(15));
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await used.GetAsync("/api/you")).StatusCode);
    }

    [Fact]
    public async Task Somebody_whose_account_was_closed_is_out_at_once()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var phone = await desk.AsAsync(Role.Crew, "Tamsin");
        using var owner = await desk.AsAsync(Role.Owner, "Odalie");
        Assert.Equal(HttpStatusCode.NoContent, (await owner.DeleteAsync("/api/accounts/Tamsin")).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync("/api/you")).StatusCode);
        Assert.Equal("BOOK-032", await RunningDesk.ProblemsAsync(await owner.DeleteAsync("/api/accounts/Odalie"), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_role_that_changed_holds_for_the_next_request()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var family = await desk.AsAsync(Role.Family, "Bly");
        using var owner = await desk.AsAsync(Role.Owner);
        Assert.Equal(HttpStatusCode.OK, (await family.GetAsync("/api/links")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await owner.PutAsync("/api/accounts/Bly", RunningDesk.Json("""{"role":"reader"}"""))).StatusCode);
        Assert.Equal("SIGN-002", await RunningDesk.ProblemsAsync(await family.GetAsync("/api/links"), HttpStatusCode.Forbidden));
        Assert.Equal("SIGN-005", await RunningDesk.ProblemsAsync(await owner.PutAsync("/api/accounts/Bly", RunningDesk.Json("""{"role":"king"}""")), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task An_account_opens_with_a_code_that_nobody_keeps()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var owner = await desk.AsAsync(Role.Owner);
        using var made = await RunningDesk.JsonAsync(await owner.PostAsync("/api/accounts", RunningDesk.Json("""{"name":"Lucero Quintabar","role":"crew"}""")));
        var code = made.RootElement.GetProperty("code").GetString()!;
        Assert.DoesNotContain(code, (await desk.Book.AccountAsync("Lucero Quintabar"))!.PasswordHash!, StringComparison.Ordinal);
        using var phone = desk.Page();
        Assert.Equal(HttpStatusCode.OK, (await StartTests.SignInAsync(phone, "Lucero Quintabar", RunningDesk.Password, code)).StatusCode);
        using var list = await RunningDesk.JsonAsync(await owner.GetAsync("/api/accounts"));
        Assert.DoesNotContain("pbkdf2", list.RootElement.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ones_own_password_changes_only_for_who_knows_the_old_one()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await desk.Book.AddAccountAsync("Tamsin", Role.Crew, Passwords.Keep(RunningDesk.Password));
        using var phone = await desk.AsAsync(Role.Crew, "Tamsin");
        Assert.Equal("SIGN-003", await RunningDesk.ProblemsAsync(await phone.PutAsync("/api/password", RunningDesk.Json("""{"old":"guess","password":"a new long password"}""")), HttpStatusCode.UnprocessableEntity));
        using var changed = await phone.PutAsync("/api/password", RunningDesk.Json($$"""{"old":"{{RunningDesk.Password}}","password":"a new long password"}"""));
        Assert.Equal(HttpStatusCode.OK, changed.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync("/api/you")).StatusCode);
    }

    [Fact]
    public async Task Guessing_is_stopped_by_name_and_says_how_long_to_wait()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        await desk.Book.AddAccountAsync("Odalie", Role.Owner, null);
        using var guesser = desk.Page();
        for (var i = 0; i < 10; i++) Assert.Equal(HttpStatusCode.UnprocessableEntity, (await StartTests.SignInAsync(guesser, "Odalie", "guess " + i)).StatusCode);
        using var stopped = await StartTests.SignInAsync(guesser, "Odalie", "one more");
        Assert.Equal("HOST-009", await RunningDesk.ProblemsAsync(stopped, HttpStatusCode.TooManyRequests));
        Assert.InRange(stopped.Headers.RetryAfter!.Delta!.Value, TimeSpan.FromMinutes(9), TimeSpan.FromMinutes(10));
        desk.Time.Move(TimeSpan.FromMinutes(11));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await StartTests.SignInAsync(guesser, "Odalie", "again")).StatusCode);
    }

    [Fact]
    public async Task Guessing_many_names_is_stopped_by_address()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var guesser = desk.Page();
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 31; i++) answers.Add((await StartTests.SignInAsync(guesser, "name " + i, string.Empty)).StatusCode);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[^1]);
        Assert.All(answers[..^1], a => Assert.Equal(HttpStatusCode.UnprocessableEntity, a));
    }

    [Fact]
    public void An_unknown_name_takes_as_long_as_a_wrong_password()
    {
        var kept = Passwords.Keep(RunningDesk.Password);
        Passwords.Fits("warm", null);
        var (known, unknown) = (Timed(() => Passwords.Fits("wrong", kept)), Timed(() => Passwords.Fits("wrong", null)));
        Assert.InRange(unknown / known, 0.5, 2);
        Assert.False(Passwords.Fits(RunningDesk.Password, null));
        Assert.True(Passwords.Fits(RunningDesk.Password, kept));
    }

    [Fact]
    public void The_same_letters_typed_in_two_ways_are_one_password() =>
        Assert.True(Passwords.Fits("Quintabar a\u0301rbol verde", Passwords.Keep("Quintabar \u00e1rbol verde")));

    [Fact]
    public void A_kept_password_is_what_the_published_function_gives()
    {
        // PBKDF2 with HMAC-SHA-256, password "password", salt "salt", 4096 rounds: widely published test vector.
        var kept = "pbkdf2-sha256$4096$c2FsdA$" + System.Buffers.Text.Base64Url.EncodeToString(Convert.FromHexString("c5e478d59288c841aa530db6845c4c8d962893a001ce4e11a4963873aa98134a"));
        Assert.True(Passwords.Fits("password", kept));
        Assert.False(Passwords.Fits("passwore", kept));
    }

    private static double Timed(Action work)
    {
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < 3; i++) work();
        return watch.Elapsed.TotalMilliseconds;
    }
}
