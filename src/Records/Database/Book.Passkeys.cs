using Dapper;

namespace Watersown.Records.Database;

/// <summary>A passkey that opens an account.</summary>
/// <param name="Id">The credential's name as the browser gives it.</param>
/// <param name="Account">Whose it is.</param>
/// <param name="SignCount">As the key last said.</param>
/// <param name="Document">The rest as the host's passkey library wants it back: public key, flags, label. JSON.</param>
/// <param name="Created">When it was added.</param>
/// <param name="Used">When it last opened the account.</param>
public sealed record Passkey(string Id, string Account, long SignCount, string Document, DateTimeOffset Created, DateTimeOffset? Used);

public sealed partial class Book
{
    private const string PasskeyColumns = "SELECT id, account, sign_count, document, created, used FROM passkeys ";

    public Task<Outcome<Passkey>> AddPasskeyAsync(string id, string account, long signCount, string document, CancellationToken stop = default) => WriteAsync(async connection =>
    {
        if (await AccountAsync(connection, account) is not { IsOpen: true }) return Outcome<Passkey>.Refuse(BookProblems.NoSuchAccount.At("account", ("value", account)));
        var passkey = new Passkey(id, account, signCount, document, time.GetUtcNow(), null);
        var added = await connection.ExecuteAsync(
            "INSERT INTO passkeys (id, account, created, sign_count, document) VALUES (@Id, @Account, @Created, @SignCount, @Document) ON CONFLICT DO NOTHING",
            new { passkey.Id, passkey.Account, passkey.Created, passkey.SignCount, passkey.Document });
        return added == 1 ? Outcome<Passkey>.Of(passkey) : Outcome<Passkey>.Refuse(BookProblems.PasskeyTaken.At("passkey"));
    }, stop);

    public Task<Passkey?> PasskeyAsync(string id, CancellationToken stop = default) => ReadAsync(connection =>
        connection.QuerySingleOrDefaultAsync<Passkey>(PasskeyColumns + "WHERE id = @id", new { id }), stop);

    public Task<ImmutableArray<Passkey>> PasskeysAsync(string account, CancellationToken stop = default) => ReadAsync<ImmutableArray<Passkey>>(async connection =>
        [.. await connection.QueryAsync<Passkey>(PasskeyColumns + "WHERE account = @account ORDER BY created, id", new { account })], stop);

    /// <summary>Keeps what the key said when it opened the account.</summary>
    public Task<bool> UsePasskeyAsync(string id, long signCount, string document, CancellationToken stop = default) => WriteAsync(async connection =>
        await connection.ExecuteAsync("UPDATE passkeys SET sign_count = @signCount, document = @document, used = @now WHERE id = @id", new { id, signCount, document, now = time.GetUtcNow() }) == 1, stop);

    /// <summary>Takes a passkey away; false where there was none.</summary>
    public Task<bool> RemovePasskeyAsync(string id, CancellationToken stop = default) => WriteAsync(async connection =>
        await connection.ExecuteAsync("DELETE FROM passkeys WHERE id = @id", new { id }) == 1, stop);
}
