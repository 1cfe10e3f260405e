using System.Data.Common;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>Somebody signed in on a device.</summary>
/// <param name="Id">Name of the session: the digest of its token, which opens nothing.</param>
/// <param name="Account">Who.</param>
/// <param name="Device">Where, in words.</param>
/// <param name="Created">Since when.</param>
/// <param name="Seen">When last heard of, to a few minutes.</param>
/// <param name="Expires">When it ends by itself.</param>
/// <param name="Ended">When somebody ended it.</param>
public sealed record Session(string Id, string Account, string Device, DateTimeOffset Created, DateTimeOffset Seen, DateTimeOffset Expires, DateTimeOffset? Ended);

/// <summary>A session that was just begun, with the token that is handed out once.</summary>
public sealed record NewSession(Session Session, string Token);

public sealed partial class Book
{
    private const string SessionColumns = "SELECT id, account, device, created, seen, expires, ended FROM sessions ";

    /// <summary>How stale <see cref="Session.Seen"/> may become: a trip to the disk for every page would slow all down.</summary>
    private static readonly TimeSpan seenEvery = TimeSpan.FromMinutes(5);

    public Task<Outcome<NewSession>> StartSessionAsync(string account, string device, TimeSpan lifetime, CancellationToken stop = default) => WriteAsync(async connection =>
    {
        if (await AccountAsync(connection, account) is not { IsOpen: true }) return Outcome<NewSession>.Refuse(BookProblems.NoSuchAccount.At("account", ("value", account)));
        var (token, now) = (Tokens.New(), time.GetUtcNow());
        var session = new Session(Tokens.IdOf(token), account, Cut(device), now, now, now + lifetime, null);
        await connection.ExecuteAsync(
            "INSERT INTO sessions (id, account, device, created, seen, expires) VALUES (@Id, @Account, @Device, @Created, @Seen, @Expires)",
            new { session.Id, session.Account, session.Device, session.Created, session.Seen, session.Expires });
        return Outcome<NewSession>.Of(new NewSession(session, token));
    }, stop);

    /// <summary>The session of a token, while it is live and its account open; notes that it was heard of.</summary>
    public async Task<Session?> SessionAsync(string token, CancellationToken stop = default)
    {
        var (id, now) = (Tokens.IdOf(token), time.GetUtcNow());
        var session = await ReadAsync(connection => connection.QuerySingleOrDefaultAsync<Session>(
            SessionColumns + "WHERE id = @id AND ended IS NULL AND expires > @now AND EXISTS (SELECT 1 FROM accounts WHERE name = account AND accounts.ended IS NULL)", new { id, now }), stop);
        if (session is not null && now - session.Seen >= seenEvery)
            await WriteAsync(connection => connection.ExecuteAsync("UPDATE sessions SET seen = @now WHERE id = @id", new { id, now }), stop);
        return session;
    }

    /// <summary>Live sessions, of one account or of all, newest first.</summary>
    public Task<ImmutableArray<Session>> SessionsAsync(string? account = null, CancellationToken stop = default) => ReadAsync<ImmutableArray<Session>>(async connection =>
        [.. await connection.QueryAsync<Session>(
            SessionColumns + "WHERE ended IS NULL AND expires > @now AND (@everybody = 1 OR account = @account) ORDER BY created DESC, id",
            new { now = time.GetUtcNow(), account = account ?? string.Empty, everybody = account is null ? 1L : 0L })], stop);

    /// <summary>Ends a session by its name; false where there is no live one.</summary>
    public Task<bool> EndSessionAsync(string id, CancellationToken stop = default) => WriteAsync(async connection =>
        await connection.ExecuteAsync("UPDATE sessions SET ended = @now WHERE id = @id AND ended IS NULL", new { id, now = time.GetUtcNow() }) == 1, stop);

    /// <summary>Ends every session of an account; how many there were.</summary>
    public Task<int> EndSessionsAsync(string account, CancellationToken stop = default) => WriteAsync(connection => EndSessionsAsync(connection, account), stop);

    private Task<int> EndSessionsAsync(DbConnection connection, string account) =>
        connection.ExecuteAsync("UPDATE sessions SET ended = @now WHERE account = @account AND ended IS NULL", new { account, now = time.GetUtcNow() });

    /// <summary>A device calls itself by a text of any length and letters; it is for people to recognize only.</summary>
    private static string Cut(string text)
    {
        var seen = new string([.. text.Where(c => !char.IsControl(c) && !char.IsSurrogate(c)).Take(BookLimits.NameLettersMost)]).Trim();
        return seen.Length == 0 ? "-" : seen;
    }
}
