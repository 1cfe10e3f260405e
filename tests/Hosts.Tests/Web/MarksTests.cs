using System.Net;
using System.Text;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Sends of marks: good ones are kept whatever else is in the send, nothing twice, nobody for another.</summary>
public sealed class MarksTests
{
    [Fact]
    public async Task Good_marks_are_kept_and_each_bad_one_is_told_with_all_that_is_wrong()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var (good, bad) = (RunningDesk.NewId(), RunningDesk.NewId());
        using var answer = await RunningDesk.JsonAsync(await page.PostAsync("/api/marks", RunningDesk.Send(
            RunningDesk.Mark(good), "17", "null", "{}", RunningDesk.Mark("not-a-name"), RunningDesk.Mark(bad, kind: "depth", fact: """{"field":"N4","depth_in":400}"""))));
        Assert.Equal([good], answer.RootElement.GetProperty("kept").EnumerateArray().Select(k => k.GetString()));
        var refused = answer.RootElement.GetProperty("refused").EnumerateArray().ToList();
        Assert.Equal(5, refused.Count);
        Assert.Contains(refused, r => r.GetProperty("id").GetString() == bad);
        Assert.All(refused, r => Assert.NotEqual(0, r.GetProperty("problems").GetArrayLength()));
        Assert.Equal(1, answer.RootElement.GetProperty("upto").GetInt64());
    }

    [Fact]
    public async Task A_send_whose_answer_was_lost_is_sent_again_and_kept_once()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var marks = Enumerable.Range(0, 20).Select(_ => RunningDesk.Mark(RunningDesk.NewId())).ToList();
        for (var i = 0; i < 3; i++)
        {
            using var answer = await RunningDesk.JsonAsync(await page.PostAsync("/api/marks", RunningDesk.Send(marks)));
            Assert.Equal(20, answer.RootElement.GetProperty("kept").GetArrayLength());
        }

        Assert.Equal(20, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task A_mark_of_a_newer_device_is_kept_as_it_is_and_given_back()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var id = RunningDesk.NewId();
        await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(id, kind: "heron-seen", fact: """{"legs":2}""")));
        using var changes = await RunningDesk.JsonAsync(await page.GetAsync("/api/changes?after=0"));
        var mark = changes.RootElement.GetProperty("marks")[0];
        Assert.Equal(id, mark.GetProperty("id").GetString());
        Assert.Equal(2, mark.GetProperty("fact").GetProperty("legs").GetInt32());
    }

    [Fact]
    public async Task Crew_speak_for_themselves_and_the_grower_for_whoever_told()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var crew = await desk.AsAsync(Role.Crew, "Tamsin Wexcombe");
        using var owner = await desk.AsAsync(Role.Owner);
        await crew.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId(), by: "Odalie Marrowfen")));
        await owner.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId(), by: "Joss Tarrowby")));
        var kept = await desk.Book.MarksAfterAsync(0, 10);
        Assert.Equal(["Tamsin Wexcombe", "Joss Tarrowby"], kept.Select(m => m.Mark.By));
        Assert.Equal(["Tamsin Wexcombe", "the owner"], kept.Select(m => m.Sender));
    }

    [Fact]
    public async Task Crew_take_back_their_own_marks_and_nobody_elses()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var crew = await desk.AsAsync(Role.Crew, "Tamsin Wexcombe");
        using var owner = await desk.AsAsync(Role.Owner);
        var (mine, theirs) = (RunningDesk.NewId(), RunningDesk.NewId());
        await crew.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(mine, by: "Tamsin Wexcombe")));
        await owner.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(theirs)));
        Assert.Equal("SEND-001", await RefusalsAsync(crew, RunningDesk.Mark(RunningDesk.NewId(), kind: "withdrawn", fact: "{}", replaces: theirs)));
        Assert.Equal(string.Empty, await RefusalsAsync(crew, RunningDesk.Mark(RunningDesk.NewId(), kind: "withdrawn", fact: "{}", replaces: mine)));
        Assert.Equal("SIGN-002", await RefusalsAsync(crew, RunningDesk.Mark(RunningDesk.NewId(), kind: "pin", fact: """{"field":"S2","task":"sow","start":"2026-05-09T06:30:00-07:00"}""")));
    }

    [Fact]
    public async Task More_than_a_megabyte_or_five_hundred_marks_are_refused_whole()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var large = RunningDesk.Mark(RunningDesk.NewId(), fact: $$"""{"text":"{{new string('g', 1_100_000)}}"}""");
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/marks", RunningDesk.Send(large)), HttpStatusCode.RequestEntityTooLarge));
        var many = Enumerable.Range(0, 501).Select(_ => RunningDesk.Mark(RunningDesk.NewId()));
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await page.PostAsync("/api/marks", RunningDesk.Send(many)), HttpStatusCode.RequestEntityTooLarge));
        // One that does not say how long it is.
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/marks") { Content = new StreamContent(new MemoryStream(Encoding.UTF8.GetBytes(new string(' ', 2_000_000)))) };
        request.Headers.TransferEncodingChunked = true;
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await page.SendAsync(request), HttpStatusCode.RequestEntityTooLarge));
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{\"marks\":{}}")]
    [InlineData("{\"marks\":[{\"id\":\"\\ud800\"}]}")]
    [InlineData("\u0000")]
    public async Task What_is_no_send_is_refused_with_problems_and_keeps_nothing(string body)
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.NotEmpty(await RunningDesk.ProblemsAsync(await page.PostAsync("/api/marks", RunningDesk.Json(body)), HttpStatusCode.UnprocessableEntity));
        using var deep = await page.PostAsync("/api/marks", RunningDesk.Json("{\"marks\":" + new string('[', 5_000) + new string(']', 5_000) + "}"));
        Assert.NotEmpty(await RunningDesk.ProblemsAsync(deep, HttpStatusCode.UnprocessableEntity));
        Assert.Equal(0, await desk.Book.UptoAsync());
    }

    [Fact]
    public async Task A_session_that_sends_without_end_is_told_to_wait()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var crew = await desk.AsAsync(Role.Crew);
        HttpResponseMessage last = null!;
        for (var i = 0; i < 601; i++) last = await crew.PostAsync("/api/marks", RunningDesk.Send());
        Assert.Equal("HOST-009", await RunningDesk.ProblemsAsync(last, HttpStatusCode.TooManyRequests));
        Assert.NotNull(last.Headers.RetryAfter);
    }

    [Fact]
    public async Task Who_waits_for_changes_hears_of_a_mark_at_once()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var phone = desk.Page();
        using var other = desk.Page();
        var waiting = phone.GetAsync("/api/changes?after=0&wait=25");
        await Task.Delay(200);
        Assert.False(waiting.IsCompleted);
        await other.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())));
        using var heard = await RunningDesk.JsonAsync(await waiting.WaitAsync(TimeSpan.FromSeconds(5)));
        Assert.Equal(1, heard.RootElement.GetProperty("upto").GetInt64());
        Assert.Equal("HOST-013", await RunningDesk.ProblemsAsync(await phone.GetAsync("/api/changes?after=-1"), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task The_desk_is_whole_farm_plan_marks_and_who_one_is()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())));
        using var whole = await RunningDesk.JsonAsync(await page.GetAsync("/api/desk"));
        var root = whole.RootElement;
        Assert.Equal("Marrowfen Farm", root.GetProperty("farm").GetProperty("name").GetString());
        Assert.Equal(14, root.GetProperty("plan").GetProperty("number").GetInt32());
        Assert.Equal(1, root.GetProperty("marks").GetArrayLength());
        Assert.Equal("owner", root.GetProperty("you").GetProperty("role").GetString());
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7)), root.GetProperty("demo_from").GetDateTimeOffset());
    }

    [Fact]
    public async Task A_farm_changed_by_somebody_else_meanwhile_is_not_overwritten()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var farm = await page.GetStringAsync("/api/farm");
        var edited = farm.Replace("\"Tin Barn\"", "\"Tin Barn <script>alert(1)</script>\"", StringComparison.Ordinal);
        Assert.Equal("SEND-004", await RunningDesk.ProblemsAsync(await page.PutAsync("/api/farm", RunningDesk.Json(edited)), HttpStatusCode.UnprocessableEntity));
        Assert.Equal(HttpStatusCode.OK, (await page.PutAsync("/api/farm?version=1", RunningDesk.Json(edited))).StatusCode);
        Assert.Equal("BOOK-020", await RunningDesk.ProblemsAsync(await page.PutAsync("/api/farm?version=1", RunningDesk.Json(farm)), HttpStatusCode.Conflict));
        Assert.NotEmpty(await RunningDesk.ProblemsAsync(await page.PutAsync("/api/farm?version=2", RunningDesk.Json("{\"watersown_farm\":1}")), HttpStatusCode.UnprocessableEntity));
        using var changes = await RunningDesk.JsonAsync(await page.GetAsync("/api/changes?after=0"));
        Assert.Equal(2, changes.RootElement.GetProperty("farm_version").GetInt64());
        Assert.Equal("SEND-003", await RunningDesk.ProblemsAsync(await page.GetAsync("/api/plans/15"), HttpStatusCode.NotFound));
    }

    [Fact]
    public async Task A_plan_that_was_asked_for_is_numbered_and_those_who_wait_hear_of_it()
    {
        await using var desk = await RunningDesk.HereAsync(o => o with { PlanBudget = TimeSpan.FromSeconds(1) });
        using var page = desk.Page();
        Assert.Equal(HttpStatusCode.Accepted, (await page.PostAsync("/api/plan", RunningDesk.Json("{}"))).StatusCode);
        for (var i = 0; ; i++)
        {
            using var changes = await RunningDesk.JsonAsync(await page.GetAsync("/api/changes?after=0&plan=14&wait=5"));
            if (changes.RootElement.GetProperty("plan_number").GetInt64() == 15) break;
            Assert.True(i < 12, "no plan came");
        }

        using var plan = await RunningDesk.JsonAsync(await page.GetAsync("/api/plans/15"));
        Assert.Equal(15, plan.RootElement.GetProperty("number").GetInt32());
        Assert.Contains((await desk.Book.MarksAfterAsync(0, 10)), m => m.Mark.Kind == "plan-issued");
        using var old = await RunningDesk.JsonAsync(await page.GetAsync("/api/plans/14"));
        Assert.Equal(14, old.RootElement.GetProperty("number").GetInt32());
    }

    [Fact]
    public async Task A_mark_that_can_change_a_plan_brings_a_new_one_by_itself()
    {
        await using var desk = await RunningDesk.HereAsync(o => o with { PlansItself = true, PlanBudget = TimeSpan.FromSeconds(1), PlanQuiet = TimeSpan.FromMilliseconds(100) });
        using var page = desk.Page();
        await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId())));
        await Task.Delay(500);
        using var quiet = await RunningDesk.JsonAsync(await page.GetAsync("/api/plan/progress"));
        Assert.False(quiet.RootElement.GetProperty("running").GetBoolean());
        await page.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(RunningDesk.NewId(), kind: "field-stage", fact: """{"field":"R5","stage":"full"}""")));
        for (var i = 0; await desk.Book.PlanAsync(15) is null; i++)
        {
            Assert.True(i < 150, "no plan came");
            await Task.Delay(100);
        }
    }

    private static async Task<string> RefusalsAsync(HttpClient client, string mark)
    {
        using var answer = await RunningDesk.JsonAsync(await client.PostAsync("/api/marks", RunningDesk.Send(mark)));
        return string.Join(' ', answer.RootElement.GetProperty("refused").EnumerateArray().SelectMany(r => r.GetProperty("problems").EnumerateArray()).Select(p => p.GetProperty("code").GetString()));
    }
}
