using System.Data.Common;
using Dapper;

namespace Watersown.Records.Database;

public sealed partial class Book
{
    /// <summary>
    /// The book's own name, made by chance. It changes when the book is restored from a copy, because numbers of marks
    /// that a phone was told before then no longer hold: a phone that sees a new name asks for everything again. Joining only
    /// adds marks behind the last, so that the name stays.
    /// </summary>
    public Task<string> IdentityAsync(CancellationToken stop = default) => ReadAsync(IdentityAsync, stop);

    public Task<string?> SettingAsync(string name, CancellationToken stop = default) => ReadAsync(connection => SettingAsync(connection, name), stop);

    /// <summary>Sets, or with nothing takes away.</summary>
    public Task SetAsync(string name, string? setting, CancellationToken stop = default) => WriteAsync(connection => SetAsync(connection, name, setting), stop);

    internal static async Task<string> IdentityAsync(DbConnection connection) => (await SettingAsync(connection, IdentitySetting))!;

    internal static Task<int> RenameAsync(DbConnection connection) => SetAsync(connection, IdentitySetting, Tokens.NewId());

    private static Task<string?> SettingAsync(DbConnection connection, string name) => connection.QuerySingleOrDefaultAsync<string>("SELECT setting FROM settings WHERE name = @name", new { name });

    private static Task<int> SetAsync(DbConnection connection, string name, string? setting) => setting is null
        ? connection.ExecuteAsync("DELETE FROM settings WHERE name = @name", new { name })
        : connection.ExecuteAsync("INSERT INTO settings (name, setting) VALUES (@name, @setting) ON CONFLICT (name) DO UPDATE SET setting = excluded.setting", new { name, setting });
}
