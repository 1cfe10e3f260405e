using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class PeopleTests
{
    private static readonly TimeSpan month = TimeSpan.FromDays(30);

    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Accounts_have_one_name_each_and_are_never_taken_out(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        Assert.True((await book.AddAccountAsync("ada", Role.Owner, "hash")).HasValue);
        Assert.Equal(BookProblems.NameTaken, Assert.Single((await book.AddAccountAsync("ada", Role.Crew, null)).Problems).Kind);
        foreach (var odd in new[] { "", "  ", new string('a', 101), "a\nb" })
            Assert.Equal(BookProblems.NameNotFit, Assert.Single((await book.AddAccountAsync(odd, Role.Crew, null)).Problems).Kind);
        await book.AddAccountAsync("ben", Role.Crew, null);
        Assert.Equal(Role.Reader, (await book.SetRoleAsync("ben", Role.Reader)).Value.Role);
        Assert.False((await book.EndAccountAsync("ben")).Value.IsOpen);
        Assert.Equal(BookProblems.NoSuchAccount, Assert.Single((await book.SetRoleAsync("ben", Role.Owner)).Problems).Kind);
        Assert.Equal([("ada", Role.Owner, true, "hash"), ("ben", Role.Reader, false, null)], (await book.AccountsAsync()).Select(a => (a.Name, a.Role, a.IsOpen, a.PasswordHash)));
        Assert.Null(await book.AccountAsync("Ada"));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_is_never_left_without_an_owner(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AddAccountAsync("ada", Role.Owner, "hash");
        Assert.Equal(BookProblems.LastOwner, Assert.Single((await book.EndAccountAsync("ada")).Problems).Kind);
        Assert.Equal(BookProblems.LastOwner, Assert.Single((await book.SetRoleAsync("ada", Role.Family)).Problems).Kind);
        await book.AddAccountAsync("ben", Role.Owner, null);
        Assert.True((await book.EndAccountAsync("ada")).HasValue);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_session_lives_until_it_is_ended_expires_or_the_password_changes(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await book.AddAccountAsync("ada", Role.Owner, "hash");
        Assert.Equal(BookProblems.NoSuchAccount, Assert.Single((await book.StartSessionAsync("eve", "-", month)).Problems).Kind);
        var (ended, expired, changed, live) = (await StartAsync(book), await StartAsync(book, TimeSpan.FromMinutes(1)), await StartAsync(book), string.Empty);
        Assert.Equal("ada", (await book.SessionAsync(ended.Token))!.Account);
        Assert.Null(await book.SessionAsync(ended.Session.Id));
        Assert.True(await book.EndSessionAsync(ended.Session.Id));
        Assert.False(await book.EndSessionAsync(ended.Session.Id));
        Assert.Null(await book.SessionAsync(ended.Token));
        clock.Now += TimeSpan.FromMinutes(6);
        Assert.Null(await book.SessionAsync(expired.Token));
        Assert.NotNull(await book.SessionAsync(changed.Token));
        Assert.Equal(clock.Now, (await book.SessionAsync(changed.Token))!.Seen);
        await book.SetPasswordAsync("ada", "other");
        Assert.Null(await book.SessionAsync(changed.Token));
        live = (await StartAsync(book)).Token;
        Assert.Single(await book.SessionsAsync());
        Assert.Single(await book.SessionsAsync("ada"));
        Assert.Empty(await book.SessionsAsync("ben"));
        Assert.Equal(1, await book.EndSessionsAsync("ada"));
        Assert.Null(await book.SessionAsync(live));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_closed_account_opens_nothing(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AddAccountAsync("owner", Role.Owner, "hash");
        await book.AddAccountAsync("ada", Role.Owner, "hash");
        var session = await StartAsync(book);
        await book.AddPasskeyAsync("key", "ada", 1, "{}");
        await book.EndAccountAsync("ada");
        Assert.Null(await book.SessionAsync(session.Token));
        Assert.Null(await book.PasskeyAsync("key"));
        Assert.Equal(BookProblems.NoSuchAccount, Assert.Single((await book.AddPasskeyAsync("key", "ada", 1, "{}")).Problems).Kind);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_passkey_belongs_to_one_account_and_remembers_its_use(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AddAccountAsync("ada", Role.Owner, null);
        Assert.True((await book.AddPasskeyAsync("key", "ada", 1, "{\"public\":1}")).HasValue);
        Assert.Equal(BookProblems.PasskeyTaken, Assert.Single((await book.AddPasskeyAsync("key", "ada", 1, "{}")).Problems).Kind);
        Assert.True(await book.UsePasskeyAsync("key", 9, "{\"public\":2}"));
        var kept = Assert.Single(await book.PasskeysAsync("ada"));
        Assert.Equal((9L, "{\"public\":2}"), (kept.SignCount, kept.Document));
        Assert.NotNull(kept.Used);
        Assert.True(await book.RemovePasskeyAsync("key"));
        Assert.False(await book.RemovePasskeyAsync("key"));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_link_is_known_by_its_token_only_and_can_be_withdrawn(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        var made = await book.MakeLinkAsync("flight 2026-05-09", "the pilot", "ada", TimeSpan.FromDays(2));
        Assert.Equal(made.Link, await book.LinkAsync(made.Token));
        Assert.Null(await book.LinkAsync(made.Link.Id));
        Assert.Null(await book.LinkAsync(made.Token[..^1]));
        Assert.True(made.Link.IsLiveAt(clock.Now));
        Assert.False(made.Link.IsLiveAt(clock.Now + TimeSpan.FromDays(2)));
        Assert.True(await book.WithdrawLinkAsync(made.Link.Id));
        Assert.False(await book.WithdrawLinkAsync(made.Link.Id));
        Assert.False((await book.LinkAsync(made.Token))!.IsLiveAt(clock.Now));
        Assert.Single(await book.LinksAsync());
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Signing_in_is_recorded_whatever_name_was_tried(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.NoteSignInAsync("ada", "phone", "signed-in");
        await book.NoteSignInAsync("<script>\0" + new string('x', 500), "203.0.113.9", "refused");
        var lines = await book.SignInsAsync(10);
        Assert.Equal(["refused", "signed-in"], lines.Select(l => l.What));
        Assert.Equal(BookLimits.NameLettersMost, lines[0].Account.Length);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_secret_is_nowhere_in_the_book(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AddAccountAsync("ada", Role.Owner, "hash");
        var (session, link) = (await StartAsync(book), await book.MakeLinkAsync("-", "-", "-", month));
        Assert.Equal(43, session.Token.Length);
        Assert.NotEqual(session.Token, link.Token);
        var kept = string.Join('\n', (await book.SessionsAsync()).Select(s => s.ToString()).Concat((await book.LinksAsync()).Select(l => l.ToString())));
        Assert.DoesNotContain(session.Token, kept, StringComparison.Ordinal);
        Assert.DoesNotContain(link.Token, kept, StringComparison.Ordinal);
    }

    private static async Task<NewSession> StartAsync(Book book, TimeSpan? lifetime = null) => (await book.StartSessionAsync("ada", "phone", lifetime ?? month)).Value;
}
