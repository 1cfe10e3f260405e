using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Watersown.Documents.Farms;
using Watersown.Documents.Plan;
using Watersown.Records.Database;
using Watersown.Records.Land;
using Watersown.Records.Schedule;
using Watersown.Schedule;

namespace Watersown.Web;

/// <summary>A desk of its own for one test: a real server on a port of this machine, on a real book in a folder of its own.</summary>
internal sealed class RunningDesk : IAsyncDisposable
{
    public const string Password = "four words of the grower";

    private static readonly Lazy<SeasonState> Ground = new(() => OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value);

    private static readonly Lazy<byte[]> Farm = new(() => FarmWriting.Write(Ground.Value).ToArray());

    private static readonly Lazy<string> Plan = new(() => PlanDocument.Write(PlanSeason.Run(Ground.Value, new PlanOptions { Budget = TimeSpan.FromSeconds(1) })));

    private RunningDesk(string folder, Book book, WebApplication app, MovedTime time) => (Folder, Book, App, Time) = (folder, book, app, time);

    /// <summary>Everything of this desk lies here.</summary>
    public string Folder { get; }

    public Book Book { get; }

    public WebApplication App { get; }

    /// <summary>The machine's clock as the desk sees it; a test moves it on.</summary>
    public MovedTime Time { get; }

    public Uri Address => new(App.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    /// <summary>A desk on this machine alone, where nobody signs in.</summary>
    public static Task<RunningDesk> HereAsync(Func<DeskOptions, DeskOptions>? change = null) => StartAsync(o => (change ?? (x => x))(o));

    /// <summary>A desk that others can reach: somebody must sign in.</summary>
    public static Task<RunningDesk> ReachableAsync(Func<DeskOptions, DeskOptions>? change = null) => StartAsync(o => (change ?? (x => x))(o with { BehindProxy = true }));

    private static async Task<RunningDesk> StartAsync(Func<DeskOptions, DeskOptions> change)
    {
        var folder = Directory.CreateTempSubdirectory("watersown-desk-").FullName;
        var time = new MovedTime();
        var clock = new DeskClock(time);
        clock.StartAt(Ground.Value.Now);
        var book = (await Book.OpenAsync(Path.Combine(folder, "farm.book"), clock)).Value;
        await book.SaveFarmAsync(Farm.Value, 0, "test", "first");
        await book.SavePlanAsync(new IssuedPlan(14, Ground.Value.Now, "test", "first", 1, 0, Encoding.UTF8.GetBytes(Plan.Value)));
        var options = change(new DeskOptions { Book = book.File!, Urls = [new Uri("http://127.0.0.1:0")], PlansItself = false, Pages = Path.Combine(folder, "pages"), Owner = "Odalie Marrowfen" });
        var app = DeskHost.Build(book, options, clock);
        await app.StartAsync();
        return new RunningDesk(folder, book, app, time);
    }

    /// <summary>A browser without cookies that follows nothing by itself.</summary>
    public HttpClient Stranger() => new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = Address };

    /// <summary>Somebody of a role, signed in: cookie, header and token as the desk's own pages send them.</summary>
    public async Task<HttpClient> AsAsync(Role role, string? name = null)
    {
        name ??= "the " + role.ToString().ToLowerInvariant();
        if (await Book.AccountAsync(name) is null) await Book.AddAccountAsync(name, role, null);
        var session = (await Book.StartSessionAsync(name, "a test", TimeSpan.FromDays(90))).Value;
        var client = Stranger();
        client.DefaultRequestHeaders.Add("Cookie", "watersown=" + session.Token);
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        using var you = await JsonAsync(await client.GetAsync("/api/you"));
        client.DefaultRequestHeaders.Add("X-Watersown-Token", you.RootElement.GetProperty("token").GetString());
        return client;
    }

    /// <summary>The desk's own pages on this machine.</summary>
    public HttpClient Page()
    {
        var client = Stranger();
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        client.DefaultRequestHeaders.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        return client;
    }

    public static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");

    public static async Task<JsonDocument> JsonAsync(HttpResponseMessage answer) => JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());

    /// <summary>Codes of the problems of an answer, which has a status.</summary>
    public static async Task<string> ProblemsAsync(HttpResponseMessage answer, HttpStatusCode status)
    {
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(status == answer.StatusCode, $"{(int)answer.StatusCode} and not {(int)status}: {text}");
        using var json = JsonDocument.Parse(text);
        return string.Join(' ', json.RootElement.GetProperty("problems").EnumerateArray().Select(p => p.GetProperty("code").GetString()));
    }

    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    /// <summary>A mark as a phone writes it.</summary>
    public static string Mark(string id, string by = "Odalie Marrowfen", string kind = "note", string fact = """{"text":"geese on the levee"}""", string? replaces = null) =>
        $$"""{"id":"{{id}}","kind":"{{kind}}","happened":"2026-05-08T04:40:00-07:00","entered":"2026-05-08T04:41:00-07:00","by":{{JsonSerializer.Serialize(by)}},"device":"a phone","sure":"told",{{(replaces is null ? string.Empty : $"\"replaces\":\"{replaces}\",")}}"fact":{{fact}}}""";

    public static StringContent Send(params IEnumerable<string> marks) => Json("{\"device\":\"a phone\",\"marks\":[" + string.Join(',', marks) + "]}");

    public async ValueTask DisposeAsync()
    {
        await App.StopAsync();
        await App.DisposeAsync();
        await Book.DisposeAsync();
        Directory.Delete(Folder, recursive: true);
    }
}

/// <summary>The machine's clock, which a test can move on.</summary>
internal sealed class MovedTime : TimeProvider
{
    private long moved;

    public void Move(TimeSpan span) => Interlocked.Add(ref moved, span.Ticks);

    public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + TimeSpan.FromTicks(Interlocked.Read(ref moved));

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override long GetTimestamp() => System.GetElapsedTime(0).Ticks + Interlocked.Read(ref moved);
}

internal static class RunningDeskParts
{
    public static TimeProvider GetClock(this IServiceProvider parts) => parts.GetRequiredService<TimeProvider>();
}
