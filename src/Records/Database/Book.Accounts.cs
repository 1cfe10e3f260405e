using System.Data.Common;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>What somebody who signs in may do; what that means is the host's to say.</summary>
public enum Role
{
    Owner,
    Family,

    /// <summary>Marks only.</summary>
    Crew,

    /// <summary>Reads, writes nothing.</summary>
    Reader,
}

/// <summary>Somebody who may sign in.</summary>
/// <param name="Name">As they sign in; capitals count.</param>
/// <param name="Role">What they may do.</param>
/// <param name="PasswordHash">As the host made it; none where only passkeys open the account.</param>
/// <param name="Created">When.</param>
/// <param name="Ended">When it was closed; closed accounts are kept, because marks name them.</param>
public sealed record Account(string Name, Role Role, string? PasswordHash, DateTimeOffset Created, DateTimeOffset? Ended)
{
    public bool IsOpen => Ended is null;
}

public sealed partial class Book
{
    private const string AccountColumns = "SELECT name, role, password_hash, created, ended FROM accounts ";

    public Task<Outcome<Account>> AddAccountAsync(string name, Role role, string? passwordHash, CancellationToken stop = default) => WriteAsync(async connection =>
    {
        if (!BookLimits.IsName(name)) return Outcome<Account>.Refuse(BookProblems.NameNotFit.At("name", ("value", Plain(name.Length)), ("limit", Plain(BookLimits.NameLettersMost))));
        if (await AccountAsync(connection, name) is not null) return Outcome<Account>.Refuse(BookProblems.NameTaken.At("name", ("value", name)));
        var account = new Account(name, role, passwordHash, time.GetUtcNow(), null);
        await connection.ExecuteAsync(
            "INSERT INTO accounts (name, role, created, password_hash) VALUES (@name, @role, @Created, @passwordHash)", new { name, role = role.ToString(), account.Created, passwordHash });
        return Outcome<Account>.Of(account);
    }, stop);

    public Task<Account?> AccountAsync(string name, CancellationToken stop = default) => ReadAsync(connection => AccountAsync(connection, name), stop);

    /// <summary>All accounts, closed ones too, by name.</summary>
    public Task<ImmutableArray<Account>> AccountsAsync(CancellationToken stop = default) => ReadAsync(AccountsAsync, stop);

    /// <summary>A new password ends every session of the account.</summary>
    public Task<Outcome<Account>> SetPasswordAsync(string name, string? passwordHash, CancellationToken stop = default) => ChangeAsync(name, async (connection, account) =>
    {
        await connection.ExecuteAsync("UPDATE accounts SET password_hash = @passwordHash WHERE name = @name", new { name, passwordHash });
        await EndSessionsAsync(connection, name);
        return account with { PasswordHash = passwordHash };
    }, stop: stop);

    public Task<Outcome<Account>> SetRoleAsync(string name, Role role, CancellationToken stop = default) => ChangeAsync(name, async (connection, account) =>
    {
        await connection.ExecuteAsync("UPDATE accounts SET role = @role WHERE name = @name", new { name, role = role.ToString() });
        return account with { Role = role };
    }, keepsOwner: role == Role.Owner, stop);

    /// <summary>Closes an account and ends its sessions; it is kept, because marks name it.</summary>
    public Task<Outcome<Account>> EndAccountAsync(string name, CancellationToken stop = default) => ChangeAsync(name, async (connection, account) =>
    {
        var now = time.GetUtcNow();
        await connection.ExecuteAsync("UPDATE accounts SET ended = @now, password_hash = NULL WHERE name = @name", new { name, now });
        await connection.ExecuteAsync("DELETE FROM passkeys WHERE account = @name", new { name });
        await EndSessionsAsync(connection, name);
        return account with { Ended = now, PasswordHash = null };
    }, keepsOwner: false, stop);

    internal static async Task<ImmutableArray<Account>> AccountsAsync(DbConnection connection) =>
        [.. (await connection.QueryAsync<AccountRow>(AccountColumns)).Select(r => r.Read()).OrderBy(a => a.Name, StringComparer.Ordinal)];

    /// <summary>Changes an open account, unless the book would be left without an owner.</summary>
    private Task<Outcome<Account>> ChangeAsync(string name, Func<DbConnection, Account, Task<Account>> change, bool keepsOwner = true, CancellationToken stop = default) => WriteAsync(async connection =>
    {
        if (await AccountAsync(connection, name) is not { IsOpen: true } account) return Outcome<Account>.Refuse(BookProblems.NoSuchAccount.At("name", ("value", name)));
        if (!keepsOwner && account.Role == Role.Owner && await OwnersAsync(connection) == 1) return Outcome<Account>.Refuse(BookProblems.LastOwner.At("name", ("value", name)));
        return Outcome<Account>.Of(await change(connection, account));
    }, stop);

    private static Task<long> OwnersAsync(DbConnection connection) =>
        connection.ExecuteScalarAsync<long>("SELECT COUNT(*) FROM accounts WHERE role = @owner AND ended IS NULL", new { owner = nameof(Role.Owner) });

    private static async Task<Account?> AccountAsync(DbConnection connection, string name) =>
        (await connection.QuerySingleOrDefaultAsync<AccountRow>(AccountColumns + "WHERE name = @name", new { name }))?.Read();

    private sealed record AccountRow(string Name, string Role, string? PasswordHash, DateTimeOffset Created, DateTimeOffset? Ended)
    {
        public Account Read() => new(Name, Enum.Parse<Role>(Role), PasswordHash, Created, Ended);
    }
}
