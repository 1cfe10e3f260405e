using Dapper;

namespace Watersown.Records.Database;

/// <summary>One line of the record of signing in.</summary>
/// <param name="At">When.</param>
/// <param name="Account">The name that was given, whether it exists or not.</param>
/// <param name="Device">From where, in words.</param>
/// <param name="What">What happened, such as <c>signed-in</c> or <c>refused</c>.</param>
public sealed record SignIn(DateTimeOffset At, string Account, string Device, string What);

public sealed partial class Book
{
    public Task NoteSignInAsync(string account, string device, string what, CancellationToken stop = default) => WriteAsync(connection => connection.ExecuteAsync(
        "INSERT INTO sign_ins (seq, at, account, device, what) VALUES ((SELECT COALESCE(MAX(seq), 0) + 1 FROM sign_ins), @now, @account, @device, @what)",
        new { now = time.GetUtcNow(), account = Cut(account), device = Cut(device), what }), stop);

    /// <summary>The newest lines, newest first.</summary>
    public Task<ImmutableArray<SignIn>> SignInsAsync(int limit, CancellationToken stop = default) => ReadAsync<ImmutableArray<SignIn>>(async connection =>
        [.. await connection.QueryAsync<SignIn>("SELECT at, account, device, what FROM sign_ins ORDER BY seq DESC LIMIT @limit", new { limit })], stop);
}
