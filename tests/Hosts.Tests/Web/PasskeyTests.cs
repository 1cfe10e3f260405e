using System.Net;
using System.Text.Json;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>Passkeys against a key made of software by the published form.</summary>
public sealed class PasskeyTests
{
    [Fact]
    public async Task A_key_that_was_added_signs_its_person_in()
    {
        await using var desk = await DeskAsync();
        using var phone = await desk.AsAsync(Role.Crew, "Tamsin");
        using var key = new SoftKey("https://desk.example.org", "desk.example.org");
        Assert.Equal(HttpStatusCode.NoContent, (await AddAsync(phone, key)).StatusCode);
        Assert.Contains("the phone", await phone.GetStringAsync("/api/passkeys"), StringComparison.Ordinal);
        using var stranger = desk.Page();
        using var entered = await EnterAsync(stranger, key);
        using var you = await RunningDesk.JsonAsync(entered);
        Assert.Equal("Tamsin", you.RootElement.GetProperty("name").GetString());
        Assert.True(entered.Headers.Contains("Set-Cookie"));
        Assert.Equal(HttpStatusCode.NoContent, (await phone.DeleteAsync("/api/passkeys/" + key.Id)).StatusCode);
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await EnterAsync(stranger, key), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_key_of_another_place_a_copied_key_and_a_used_challenge_open_nothing()
    {
        await using var desk = await DeskAsync();
        using var phone = await desk.AsAsync(Role.Crew, "Tamsin");
        using var elsewhere = new SoftKey("https://evil.example", "desk.example.org");
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await AddAsync(phone, elsewhere), HttpStatusCode.UnprocessableEntity));
        using var otherName = new SoftKey("https://desk.example.org", "evil.example");
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await AddAsync(phone, otherName), HttpStatusCode.UnprocessableEntity));
        using var key = new SoftKey("https://desk.example.org", "desk.example.org");
        await AddAsync(phone, key);
        using var stranger = desk.Page();
        using var asked = await RunningDesk.JsonAsync(await stranger.PostAsync("/sign-in/passkey/options", RunningDesk.Json("{}")));
        var answer = RunningDesk.Json(JsonSerializer.Serialize(new { ceremony = asked.RootElement.GetProperty("ceremony").GetString(), response = key.Get(asked.RootElement.GetProperty("options")) }));
        Assert.Equal(HttpStatusCode.OK, (await stranger.PostAsync("/sign-in/passkey", answer)).StatusCode);
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await stranger.PostAsync("/sign-in/passkey", answer), HttpStatusCode.UnprocessableEntity));
        key.CountBack();
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await EnterAsync(stranger, key), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_challenge_is_for_who_asked_for_it_and_for_a_few_minutes()
    {
        await using var desk = await DeskAsync();
        using var one = await desk.AsAsync(Role.Crew, "Tamsin");
        using var other = await desk.AsAsync(Role.Crew, "Lucero");
        using var key = new SoftKey("https://desk.example.org", "desk.example.org");
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await AddAsync(one, key, other), HttpStatusCode.UnprocessableEntity));
        using var asked = await RunningDesk.JsonAsync(await one.PostAsync("/api/passkeys/options", RunningDesk.Json("{}")));
        desk.Time.Move(TimeSpan.FromMinutes(6));
        Assert.Equal("SIGN-006", await RunningDesk.ProblemsAsync(await one.PostAsync("/api/passkeys", Answer(asked.RootElement, key)), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task Nobody_takes_away_anothers_key()
    {
        await using var desk = await DeskAsync();
        using var one = await desk.AsAsync(Role.Crew, "Tamsin");
        using var other = await desk.AsAsync(Role.Owner, "Odalie");
        using var key = new SoftKey("https://desk.example.org", "desk.example.org");
        await AddAsync(one, key);
        Assert.Equal(HttpStatusCode.NotFound, (await other.DeleteAsync("/api/passkeys/" + key.Id)).StatusCode);
    }

    private static Task<RunningDesk> DeskAsync() => RunningDesk.ReachableAsync(o => o with { PublicName = new Uri("https://desk.example.org") });

    private static async Task<HttpResponseMessage> AddAsync(HttpClient asker, SoftKey key, HttpClient? sender = null)
    {
        using var asked = await RunningDesk.JsonAsync(await asker.PostAsync("/api/passkeys/options", RunningDesk.Json("{}")));
        return await (sender ?? asker).PostAsync("/api/passkeys", Answer(asked.RootElement, key));
    }

    private static StringContent Answer(JsonElement asked, SoftKey key) =>
        RunningDesk.Json(JsonSerializer.Serialize(new { ceremony = asked.GetProperty("ceremony").GetString(), label = "the phone", response = key.Create(asked.GetProperty("options")) }));

    private static async Task<HttpResponseMessage> EnterAsync(HttpClient stranger, SoftKey key)
    {
        using var asked = await RunningDesk.JsonAsync(await stranger.PostAsync("/sign-in/passkey/options", RunningDesk.Json("{}")));
        return await stranger.PostAsync("/sign-in/passkey", RunningDesk.Json(JsonSerializer.Serialize(new { ceremony = asked.RootElement.GetProperty("ceremony").GetString(), response = key.Get(asked.RootElement.GetProperty("options")) })));
    }
}
