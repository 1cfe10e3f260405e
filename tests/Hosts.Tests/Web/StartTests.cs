using System.Net;
using Watersown.Records.Database;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web;

/// <summary>How the desk starts, and when it will not.</summary>
public sealed class StartTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("watersown-start-").FullName;

    private string BookFile => Path.Combine(folder, "farm.book");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("--urls", "http://0.0.0.0:5539")]
    [InlineData("--urls", "http://*:5539")]
    [InlineData("--urls", "http://[::]:5539")]
    [InlineData("--urls", "http://192.168.1.20:5539;http://127.0.0.1:5539")]
    [InlineData("--public-name", "https://desk.example.org")]
    [InlineData("--behind-proxy", null)]
    public async Task It_refuses_to_stand_open_where_others_can_reach_it(string option, string? value)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await DeskStart.RunAsync(["--book", BookFile, option, .. value is null ? Array.Empty<string>() : [value]], output, error, TimeProvider.System);
        Assert.Equal(DeskStart.ProblemsInInput, code);
        Assert.Contains("HOST-003", error.ToString(), StringComparison.Ordinal);
        Assert.Empty(output.ToString());
    }

    [Theory]
    [InlineData("http://127.0.0.1:5080", false)]
    [InlineData("http://localhost:5080", false)]
    [InlineData("http://[::1]:5080", false)]
    [InlineData("http://127.9.9.9:5080", false)]
    [InlineData("http://10.0.0.4:5080", true)]
    [InlineData("http://+:5080", true)]
    [InlineData("http://farm.local:5080", true)]
    public void An_address_is_known_to_be_this_machines_own_or_not(string address, bool reachable) =>
        Assert.Equal(reachable, OptionReading.Read(["--urls", address]).Value.ReachableByOthers);

    [Fact]
    public async Task An_owner_is_let_in_by_the_code_on_the_console_once_and_then_by_the_password()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        var (code, until) = (Secrets.NewCode(), desk.App.Services.GetClock().GetUtcNow() + Secrets.CodeLasts);
        await desk.Book.AddAccountAsync("Odalie", Role.Owner, Secrets.KeepCode(code, until));
        using var stranger = desk.Page();
        Assert.Equal("SIGN-003", await RunningDesk.ProblemsAsync(await SignInAsync(stranger, "Odalie", code: "aaaaa-aaaaa-aaaaa", password: RunningDesk.Password), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("SIGN-003", await RunningDesk.ProblemsAsync(await SignInAsync(stranger, "Odalie", password: code), HttpStatusCode.UnprocessableEntity));
        Assert.Equal("SIGN-004", await RunningDesk.ProblemsAsync(await SignInAsync(stranger, "Odalie", code: code, password: "short"), HttpStatusCode.UnprocessableEntity));
        Assert.Equal(HttpStatusCode.OK, (await SignInAsync(stranger, "Odalie", code: code.ToUpperInvariant(), password: RunningDesk.Password)).StatusCode);
        Assert.Equal("SIGN-003", await RunningDesk.ProblemsAsync(await SignInAsync(stranger, "Odalie", code: code, password: "another password"), HttpStatusCode.UnprocessableEntity));
        Assert.Equal(HttpStatusCode.OK, (await SignInAsync(stranger, "Odalie", password: RunningDesk.Password)).StatusCode);
    }

    [Fact]
    public async Task A_code_that_is_too_old_opens_nothing()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        var code = Secrets.NewCode();
        await desk.Book.AddAccountAsync("Odalie", Role.Owner, Secrets.KeepCode(code, desk.App.Services.GetClock().GetUtcNow() + Secrets.CodeLasts));
        desk.Time.Move(Secrets.CodeLasts + TimeSpan.FromMinutes(1));
        using var stranger = desk.Page();
        Assert.Equal("SIGN-003", await RunningDesk.ProblemsAsync(await SignInAsync(stranger, "Odalie", code: code, password: RunningDesk.Password), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task An_owner_named_at_the_start_is_made_once_and_may_be_reached_by_others()
    {
        await using var book = (await Book.OpenAsync(BookFile)).Value;
        var options = OptionReading.Read(["--book", BookFile, "--urls", "http://0.0.0.0:5539", "--owner", "Odalie"]).Value;
        Assert.True((await DeskStart.ReadyAsync(book, options, new DeskClock(TimeProvider.System))).HasValue);
        Assert.Equal(Role.Owner, (await book.AccountAsync("Odalie"))!.Role);
        Assert.True((await DeskStart.ReadyAsync(book, options with { Owner = null }, new DeskClock(TimeProvider.System))).HasValue);
    }

    [Fact]
    public async Task A_new_book_takes_the_farm_whole_and_the_clock_of_the_story_runs_on()
    {
        await using var book = (await Book.OpenAsync(BookFile)).Value;
        var farm = Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json");
        var (time, options) = (new MovedTime(), OptionReading.Read([farm, "--book", BookFile, "--at", "2026-05-08T04:50"]).Value);
        var clock = new DeskClock(time);
        var ready = await DeskStart.ReadyAsync(book, options, clock);
        Assert.Equal("Odalie Marrowfen", ready.Value.Owner);
        Assert.Equal(1, (await book.LatestFarmAsync())!.Version);
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7)), clock.SetTo);
        time.Move(TimeSpan.FromHours(2));
        Assert.InRange(clock.GetUtcNow() - clock.SetTo!.Value, TimeSpan.FromHours(2), TimeSpan.FromHours(2.1));
        Assert.Equal(1, (await DeskStart.ReadyAsync(book, options, clock)).Value is not null ? (await book.LatestFarmAsync())!.Version : 0);
    }

    [Fact]
    public void Everything_wrong_with_the_options_is_said_at_once()
    {
        var read = OptionReading.Read(["--bok", "--port", "banana", "--urls", "ftp://x", "--at", "tomorrow", "--plan-seconds", "0", "--tiles", "nowhere", "--owner"]);
        Assert.Equal(["HOST-001", "HOST-002", "HOST-002", "HOST-002", "HOST-002", "HOST-002", "HOST-002"], read.Problems.Select(p => p.Kind.Code));
        Assert.All(read.Problems, p => Assert.DoesNotContain("{", Say.Problem(p, Language.Spanish), StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_book_that_is_no_book_is_told_and_nothing_starts()
    {
        await File.WriteAllTextAsync(BookFile, new string('x', 4096));
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(DeskStart.ProblemsInInput, await DeskStart.RunAsync(["--book", BookFile], output, error, TimeProvider.System));
        Assert.Contains("BOOK-001", error.ToString(), StringComparison.Ordinal);
    }

    internal static Task<HttpResponseMessage> SignInAsync(HttpClient client, string name, string? password = null, string? code = null) =>
        client.PostAsync("/sign-in", RunningDesk.Json(System.Text.Json.JsonSerializer.Serialize(new Dictionary<string, string?> { ["name"] = name, ["password"] = password, ["code"] = code ?? string.Empty })));
}
