using System.Net;
using System.Text.RegularExpressions;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Sheets behind a link: who sees what, what a tap tells, and what a link that does not work gives away.</summary>
public sealed partial class LinkTests
{
    [Fact]
    public async Task Guessed_withdrawn_and_expired_links_look_the_same()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (withdrawn, id) = await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10");
        var (expiring, _) = await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10", days: 1);
        Assert.Equal(HttpStatusCode.OK, (await outside.GetAsync(withdrawn)).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await page.DeleteAsync("/api/links/" + id)).StatusCode);
        Assert.Equal("LINK-006", await RunningDesk.ProblemsAsync(await page.DeleteAsync("/api/links/" + id), HttpStatusCode.NotFound));
        desk.Time.Move(TimeSpan.FromHours(25));
        var seen = new List<string>();
        foreach (var path in (string[])[withdrawn, expiring, "/l/" + new string('A', 43), "/l/short", "/l/" + new string('z', 300)])
        {
            using var answer = await outside.GetAsync(path);
            using var told = await outside.PostAsync(path, new FormUrlEncodedContent([new("answer", "flown")]));
            Assert.Equal(HttpStatusCode.NotFound, told.StatusCode);
            seen.Add((int)answer.StatusCode + await answer.Content.ReadAsStringAsync() + string.Join(';', answer.Headers.Where(h => h.Key != "Date").Select(h => h.Key + h.Value.First())));
        }

        Assert.Single(seen.Distinct(StringComparer.Ordinal));
        Assert.DoesNotContain("Marrowfen", seen[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_guesses_links_is_soon_told_to_wait()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var outside = desk.Stranger();
        for (var i = 0; i < 20; i++) Assert.Equal(HttpStatusCode.NotFound, (await outside.GetAsync("/l/" + new string((char)('a' + i), 43))).StatusCode);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await outside.GetAsync("/l/" + new string('z', 43))).StatusCode);
    }

    [Fact]
    public async Task The_address_is_told_once_and_only_its_digest_is_kept()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var (path, id) = await MakeAsync(page, "water", "Lucero Quintabar", "2026-05-08");
        var list = await page.GetStringAsync("/api/links");
        Assert.Contains(id, list, StringComparison.Ordinal);
        Assert.DoesNotContain(path[3..], list, StringComparison.Ordinal);
        Assert.DoesNotContain(path[3..], string.Join(' ', (await desk.Book.LinksAsync()).Select(l => l.ToString())), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flight", "Joss Tarrowby", "2026-05-10", "<html lang=\"en\">")]
    [InlineData("water", "Lucero Quintabar", "2026-05-08", "<html lang=\"es\">")]
    [InlineData("seed", "Perrin Aldegate", "2026-05-08", "<html lang=\"en\">")]
    [InlineData("flight", "Fenna Okwold", "2026-05-10", "<html lang=\"en\">")]
    [InlineData("day", "Odalie Marrowfen", "2026-05-08", "<html lang=\"en\">")]
    public async Task A_page_is_small_and_plain_and_in_its_persons_language(string sheet, string person, string day, string language)
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, sheet, person, day);
        using var answer = await outside.GetAsync(path);
        var html = await answer.Content.ReadAsStringAsync();
        Assert.InRange(html.Length, 3_000, 34_000); // a route is there twice: for the screen, and for paper
        Assert.StartsWith("<!doctype html>\n" + language, html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("http", html.Replace("http://www.w3.org/2000/svg", string.Empty, StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("14", html, StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.DoesNotContain("script-src", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task A_pilots_page_shows_no_water_route_and_an_irrigators_no_flight()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var pilot = await outside.GetStringAsync((await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10")).Path);
        var water = await outside.GetStringAsync((await MakeAsync(page, "water", "Tamsin Wexcombe", "2026-05-08")).Path);
        Assert.DoesNotContain("Tamsin", pilot, StringComparison.Ordinal);
        Assert.DoesNotContain("555-555", pilot + water, StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"flown\"", water, StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"wet\"", pilot, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_shown_is_refused_when_the_link_is_made()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal("LINK-001 LINK-002 LINK-004", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/links", RunningDesk.Json("""{"sheet":"map","person":"Nobody","days":"400"}""")), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("LINK-003", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/links", RunningDesk.Json("""{"sheet":"flight","person":"Tamsin Wexcombe","day":"2026-05-10"}""")), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_book_without_a_farm_has_nothing_to_show_and_says_so()
    {
        var folder = Directory.CreateTempSubdirectory("watersown-empty-").FullName;
        await using (var book = (await Book.OpenAsync(Path.Combine(folder, "empty.book"))).Value)
        await using (var app = DeskHost.Build(book, new DeskOptions { Urls = [new Uri("http://127.0.0.1:0")] }, new DeskClock(TimeProvider.System)))
        {
            await app.StartAsync();
            using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
            client.DefaultRequestHeaders.Add("X-Watersown", "1");
            Assert.Equal("SEND-002", await RunningDesk.ProblemsAsync(await client.GetAsync("/api/desk"), HttpStatusCode.NotFound));
            Assert.Equal("SEND-002", await RunningDesk.ProblemsAsync(await client.GetAsync("/api/farm"), HttpStatusCode.NotFound));
            Assert.Equal("LINK-005", await RunningDesk.ProblemsAsync(await client.PostAsync("/api/links", RunningDesk.Json("""{"sheet":"day","person":"a"}""")), HttpStatusCode.UnprocessableEntity));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_pilot_tells_that_it_is_flown_and_pressing_twice_tells_once()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10");
        var html = await outside.GetStringAsync(path);
        var form = FormWith(html, "value=\"flown\"");
        var given = new Dictionary<string, string> { ["id"] = form.Id, ["about"] = form.About, ["loads"] = "8", ["answer"] = "flown" };
        var answers = await Task.WhenAll(Enumerable.Range(0, 5).Select(_ => outside.PostAsync(path, new FormUrlEncodedContent(given))));
        Assert.All(answers, a => Assert.Equal(HttpStatusCode.SeeOther, a.StatusCode));
        var mark = Assert.Single((await desk.Book.MarksAfterAsync(0, 10)).Where(m => m.Mark.Kind == "sown"));
        Assert.Equal("Joss Tarrowby", mark.Mark.By);
        Assert.StartsWith("link ", mark.Sender, StringComparison.Ordinal);
        var after = await outside.GetStringAsync(answers[0].Headers.Location!.ToString());
        Assert.Contains("role=\"status\"", after, StringComparison.Ordinal);
        Assert.Contains("flown, 8 loads", after, StringComparison.Ordinal);
        // Another button of the same old page is another answer, not the same once more.
        var off = new Dictionary<string, string> { ["id"] = form.Id, ["about"] = form.About, ["answer"] = "off:wind" };
        Assert.Equal(HttpStatusCode.SeeOther, (await outside.PostAsync(path, new FormUrlEncodedContent(off))).StatusCode);
        Assert.Single((await desk.Book.MarksAfterAsync(0, 10)).Where(m => m.Mark.Kind == "stood-down"));
    }

    [Fact]
    public async Task An_answer_can_be_undone_for_ten_minutes_and_not_longer()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "water", "Lucero Quintabar", "2026-05-08");
        foreach (var minutes in (int[])[5, 11])
        {
            var form = FormWith(await outside.GetStringAsync(path), "value=\"wet\"");
            await outside.PostAsync(path, new FormUrlEncodedContent(new Dictionary<string, string> { ["id"] = form.Id, ["about"] = form.About, ["check"] = "1", ["answer"] = "wet", ["ago"] = "1h" }));
            var html = await outside.GetStringAsync(path);
            var undo = UndoButton().Match(html).Groups["mark"].Value;
            Assert.NotEmpty(undo);
            desk.Time.Move(TimeSpan.FromMinutes(minutes));
            using var undone = await outside.PostAsync(path, new FormUrlEncodedContent(new Dictionary<string, string> { ["id"] = RunningDesk.NewId(), ["answer"] = "undo:" + undo }));
            Assert.Equal(minutes == 5 ? HttpStatusCode.SeeOther : HttpStatusCode.UnprocessableEntity, undone.StatusCode);
            if (minutes > 10) Assert.Contains("10 min", await undone.Content.ReadAsStringAsync(), StringComparison.Ordinal); // LINK-009
        }

        var marks = await desk.Book.MarksAfterAsync(0, 10);
        Assert.Single(marks.Where(m => m.Mark.Kind == "withdrawn"));
        Assert.All(marks.Where(m => m.Mark.Kind == "check-water"), m => Assert.Equal(TimeSpan.FromHours(1), m.Mark.Entered - m.Mark.Happened));
    }

    [Fact]
    public async Task Each_person_answers_in_the_terms_of_the_work()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var seed = (await MakeAsync(page, "seed", "Perrin Aldegate", "2026-05-08")).Path;
        var about = FormWith(await outside.GetStringAsync(seed), "value=\"drained\"").About;
        await AnswerAsync(outside, seed, ("about", about), ("answer", "drained"));
        await AnswerAsync(outside, seed, ("about", about), ("answer", "left"), ("trailer", "5"), ("weight", "18,100"));
        var flights = (await MakeAsync(page, "flight", "Fenna Okwold", "2026-05-10")).Path;
        var flight = FormWith(await outside.GetStringAsync(flights), "value=\"agreed\"").About;
        await AnswerAsync(outside, flights, ("about", flight), ("answer", "cannot"));
        var route = (await MakeAsync(page, "water", "Tamsin Wexcombe", "2026-05-08")).Path;
        var field = FormWith(await outside.GetStringAsync(route), "value=\"full\"").About;
        await AnswerAsync(outside, route, ("about", field), ("answer", "depth:3 in"), ("check", "2"));
        var kinds = (await desk.Book.MarksAfterAsync(0, 20)).Select(m => m.Mark.Kind).ToList();
        Assert.Equal(["batch-drained", "trailer", "told", "depth"], kinds);
        Assert.Contains("\"wet_lb\":18100", string.Join(' ', (await desk.Book.MarksAfterAsync(0, 20)).Select(m => m.Mark.Body)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flown", "NOWHERE", "8", "LINK-007")]
    [InlineData("wet", "N3", "1", "LINK-007")]
    [InlineData("flown", "this", "0", "LINK-008")]
    [InlineData("flown", "this", "eight", "LINK-008")]
    [InlineData("load:9999", "this", "1", "LINK-008")]
    [InlineData("off:bad-mood", "this", "1", "LINK-007")]
    [InlineData("undo:00000000000000000000000000000000", "this", "1", "LINK-007")]
    [InlineData("<script>alert(1)</script>", "this", "1", "LINK-007")]
    public async Task What_is_not_on_the_sheet_cannot_be_answered(string answer, string about, string loads, string code)
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10");
        var form = FormWith(await outside.GetStringAsync(path), "value=\"flown\"");
        using var refused = await outside.PostAsync(path, new FormUrlEncodedContent(new Dictionary<string, string> { ["id"] = form.Id, ["about"] = about == "this" ? form.About : about, ["loads"] = loads, ["answer"] = answer }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        var html = await refused.Content.ReadAsStringAsync();
        Assert.Contains(code == "LINK-007" ? "no answer that belongs" : "cannot be taken here", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task Script_in_the_names_of_the_farm_is_shown_as_letters()
    {
        const string Bad = "<img src=x onerror=alert(1)>'\"&";
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var farm = System.Text.Json.Nodes.JsonNode.Parse(await page.GetStringAsync("/api/farm"))!;
        farm["name"] = Bad;
        foreach (var field in farm["fields"]!.AsArray()) field!["name"] = Bad + field["code"];
        foreach (var person in farm["people"]!.AsArray().Where(p => (string?)p!["role"] == "pilot")) person!["name"] = Bad;
        Assert.Equal(HttpStatusCode.OK, (await page.PutAsync("/api/farm?version=1", RunningDesk.Json(farm.ToJsonString()))).StatusCode);
        await PlanAgainAsync(desk, _ => { });
        var (path, _) = await MakeAsync(page, "flight", Bad, "2026-05-10");
        var html = await outside.GetStringAsync(path);
        Assert.Contains("&lt;img src=x onerror=alert(1)&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain("'\"&<", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_newer_plan_tells_what_it_moved_and_leaves_the_rest_alone()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "flight", "Joss Tarrowby", "2026-05-10");
        Assert.DoesNotContain("class=\"moved\"", await outside.GetStringAsync(path), StringComparison.Ordinal);
        var moved = string.Empty;
        await PlanAgainAsync(desk, plan =>
        {
            var flight = plan["tasks"]!.AsArray().First(t => (string?)t!["task"] == "sow" && ((string)t["start"]!).StartsWith("2026-05-10", StringComparison.Ordinal));
            moved = (string)flight!["field"]!;
            foreach (var end in (string[])["start", "end"]) flight[end] = DateTimeOffset.Parse((string)flight[end]!).AddHours(1).ToString("yyyy-MM-ddTHH:mm:sszzz");
        });
        var html = await outside.GetStringAsync(path);
        Assert.Contains("Changed since you got this link (plan no. 14)", html, StringComparison.Ordinal);
        Assert.Matches("<li>" + moved + " sowing: now Sun 10 May \\d\\d:\\d\\d, was Sun 10 May \\d\\d:\\d\\d</li>", html);
        Assert.Single(Regex.Matches(html, ", was Sun 10 May", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Contains("By plan no. 15", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_through_one_link_without_end_are_stopped()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "water", "Lucero Quintabar", "2026-05-08");
        HttpResponseMessage last = null!;
        for (var i = 0; i < 61; i++) last = await outside.PostAsync(path, new FormUrlEncodedContent([new("answer", "nothing")]));
        Assert.Equal(HttpStatusCode.TooManyRequests, last.StatusCode);
    }

    [Fact]
    public async Task A_route_is_one_line_a_field_with_its_answers_behind_it_and_the_answered_one_stays_open()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var outside = desk.Stranger();
        var (path, _) = await MakeAsync(page, "water", "Lucero Quintabar", "2026-05-08");
        var html = await outside.GetStringAsync(path);
        var (route, sheet) = (html.Split("<div class=\"paper-only\">")[0], html.Split("<div class=\"paper-only\">")[1]);
        var stops = Regex.Count(route, "<details", RegexOptions.None, TimeSpan.FromSeconds(1));
        Assert.True(stops > 5, $"{stops} stops");
        Assert.Equal(stops, Regex.Count(route, "<form ", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Contains("Two Gates", sheet, StringComparison.Ordinal); // the sheet is still there to be printed
        Assert.DoesNotContain("<details open", html, StringComparison.Ordinal);
        var field = FormWith(html, "value=\"wet\"");
        using var told = await outside.PostAsync(path, new FormUrlEncodedContent(new Dictionary<string, string> { ["id"] = field.Id, ["about"] = field.About, ["check"] = "1", ["answer"] = "wet" }));
        var after = await outside.GetStringAsync(told.Headers.Location!.OriginalString);
        Assert.Contains("<details open><summary><b>" + field.About + " ", after, StringComparison.Ordinal);
    }

    /// <summary>Issues the plan once more under the next number, with a change.</summary>
    private static async Task PlanAgainAsync(RunningDesk desk, Action<System.Text.Json.Nodes.JsonNode> change)
    {
        var latest = (await desk.Book.LatestPlanAsync())!;
        var farm = (await desk.Book.LatestFarmAsync())!;
        var plan = System.Text.Json.Nodes.JsonNode.Parse(latest.Document.Span)!;
        plan["number"] = latest.Number + 1;
        plan["farm"] = (string?)System.Text.Json.Nodes.JsonNode.Parse(farm.Document.Span)!["name"];
        change(plan);
        var saved = await desk.Book.SavePlanAsync(latest with { Number = latest.Number + 1, FarmVersion = farm.Version, Document = System.Text.Encoding.UTF8.GetBytes(plan.ToJsonString()) });
        Assert.True(saved.HasValue);
        ((Season.LiveSeason)desk.App.Services.GetService(typeof(Season.LiveSeason))!).Changed();
    }

    private static async Task<(string Path, string Id)> MakeAsync(HttpClient page, string sheet, string person, string day, int days = 3)
    {
        using var answer = await page.PostAsync("/api/links", RunningDesk.Json(System.Text.Json.JsonSerializer.Serialize(new Dictionary<string, object> { ["sheet"] = sheet, ["person"] = person, ["day"] = day, ["days"] = days })));
        Assert.True(answer.StatusCode == HttpStatusCode.Created, await answer.Content.ReadAsStringAsync());
        using var made = await RunningDesk.JsonAsync(answer);
        return (new Uri(made.RootElement.GetProperty("url").GetString()!).AbsolutePath, made.RootElement.GetProperty("id").GetString()!);
    }

    private static async Task AnswerAsync(HttpClient outside, string path, params (string Name, string Value)[] given)
    {
        using var answer = await outside.PostAsync(path, new FormUrlEncodedContent([new("id", RunningDesk.NewId()), .. given.Select(g => KeyValuePair.Create(g.Name, g.Value))]));
        Assert.True(answer.StatusCode == HttpStatusCode.SeeOther, await answer.Content.ReadAsStringAsync());
    }

    private static (string Id, string About) FormWith(string html, string button)
    {
        var form = html.Split("<form ").First(f => f.Contains(button, StringComparison.Ordinal));
        return (HiddenId().Match(form).Groups["id"].Value, HiddenAbout().Match(form).Groups["about"].Value);
    }

    [GeneratedRegex("name=\"id\" value=\"(?<id>[0-9a-f]{32})\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HiddenId();

    [GeneratedRegex("name=\"about\" value=\"(?<about>[^\"]*)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HiddenAbout();

    [GeneratedRegex("value=\"undo:(?<mark>[0-9a-f]{32})\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex UndoButton();
}
