using System.Data.Common;
using System.Globalization;
using System.Reflection;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>
/// Brings a book to the newest form: numbered texts of SQL, forward only, each once, all inside one transaction that holds
/// the place to write, so that two programs that open an old book at once do not both change it.
/// </summary>
internal static class Migrations
{
    private const string Folder = "Watersown.Records.Database.migrations.";

    private const string Number = "SELECT COALESCE(MAX(number), 0) FROM schema_versions";

    /// <summary>The forms that this program knows, oldest first.</summary>
    public static ImmutableArray<(long Number, string Name, string Sql)> Known { get; } = Read();

    public static long Newest => Known[^1].Number;

    /// <summary>What is wrong with the book; none when it has the newest form now.</summary>
    public static async Task<Problem?> RunAsync(Dialect dialect, DbConnection connection, string where, TimeProvider time, CancellationToken stop)
    {
        await using var transaction = await dialect.BeginWriteAsync(connection, stop);
        var problem = await BringAsync(dialect, connection, where, time);
        if (problem is null) await transaction.CommitAsync(stop);
        return problem;
    }

    /// <summary>What is wrong with a book that is only looked at.</summary>
    public static async Task<Problem?> LookAsync(Dialect dialect, DbConnection connection, string where, CancellationToken stop)
    {
        await using var transaction = await dialect.BeginReadAsync(connection, stop);
        if (await connection.ExecuteScalarAsync<long>(dialect.CountTables + dialect.AndTableNamed, new { name = "schema_versions" }) == 0) return BookProblems.NotABook.At(where);
        var number = await connection.ExecuteScalarAsync<long>(Number);
        return number > Newest ? BookProblems.NewerSchema.At(where, ("value", Plain(number)), ("limit", Plain(Newest))) : null;
    }

    /// <summary>The same inside a transaction that is open already.</summary>
    public static async Task<Problem?> BringAsync(Dialect dialect, DbConnection connection, string where, TimeProvider time)
    {
        var number = await NumberAsync(dialect, connection);
        if (number is null) return BookProblems.NotABook.At(where);
        if (number > Newest) return BookProblems.NewerSchema.At(where, ("value", Plain(number.Value)), ("limit", Plain(Newest)));
        foreach (var (next, name, sql) in Known.Where(k => k.Number > number))
        {
            await connection.ExecuteAsync(sql);
            await connection.ExecuteAsync(
                "INSERT INTO schema_versions (number, name, applied, program) VALUES (@next, @name, @now, @program)",
                new { next, name, now = time.GetUtcNow(), program = Book.Program });
        }

        // A book that is restored from a copy gets a new name, so that a phone knows that numbers it was told no longer hold.
        if (number == 0)
        {
            await connection.ExecuteAsync("INSERT INTO settings (name, setting) VALUES (@name, @setting)", new { name = Book.IdentitySetting, setting = Tokens.NewId() });
        }

        return null;
    }

    /// <summary>The form that a database has: 0 when it is empty, none when it is something else.</summary>
    private static async Task<long?> NumberAsync(Dialect dialect, DbConnection connection)
    {
        var tables = await connection.ExecuteScalarAsync<long>(dialect.CountTables);
        if (tables > 0)
        {
            var ours = await connection.ExecuteScalarAsync<long>(dialect.CountTables + dialect.AndTableNamed, new { name = "schema_versions" });
            return ours == 0 ? null : await connection.ExecuteScalarAsync<long>(Number);
        }

        await connection.ExecuteAsync("CREATE TABLE schema_versions (number BIGINT NOT NULL PRIMARY KEY, name TEXT NOT NULL, applied TEXT NOT NULL, program TEXT NOT NULL)");
        return 0;
    }

    private static ImmutableArray<(long Number, string Name, string Sql)> Read()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return [.. assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(resource =>
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(resource)!);
            var name = resource[Folder.Length..^".sql".Length];
            return (long.Parse(name[..4], CultureInfo.InvariantCulture), name, reader.ReadToEnd());
        })];
    }

    private static string Plain(long number) => number.ToString(CultureInfo.InvariantCulture);
}
