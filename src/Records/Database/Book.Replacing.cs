using System.Data.Common;
using Dapper;
using Watersown.Records.Files.WholeFarm;

namespace Watersown.Records.Database;

public sealed partial class Book
{
    /// <summary>Whether another program is connected to the database of a server. One that just ended is given a moment to be gone.</summary>
    internal async Task<bool> OthersAsync(CancellationToken stop)
    {
        for (var look = 0; ; look++)
        {
            var others = await ReadAsync(connection => connection.ExecuteScalarAsync<long>(
                "SELECT COUNT(*) FROM pg_stat_activity WHERE datname = current_database() AND COALESCE(backend_type, 'client backend') = 'client backend' AND pid <> pg_backend_pid()"), stop);
            if (others == 0) return false;
            if (look == 10) return true;
            await Task.Delay(200, stop);
        }
    }

    /// <summary>Puts a whole-farm file in the place of a server's book, in one step; what was there goes aside whole.</summary>
    /// <param name="file">Looked through already.</param>
    /// <param name="aside">Where the old book goes: a schema of this name.</param>
    /// <param name="stop">Gives up, and leaves everything as it was.</param>
    /// <returns>What was taken, and where the old book stands; nowhere where there was none.</returns>
    internal async Task<(Outcome<Joined> Joined, string? Kept)> ReplaceAsync(WholeFarmFile file, string aside, CancellationToken stop)
    {
        try
        {
            return await WriteAsync(async connection =>
            {
                var empty = (await CountsAsync(connection)).IsEmpty;
                if (empty) await RenameAsync(connection);
                else await PutAsideAsync(connection, aside);
                return (await JoinAsync(connection, file, stop), empty ? null : aside);
            }, stop);
        }
        catch (InvalidDataException changed)
        {
            return (Outcome<Joined>.Refuse(WholeFarmProblems.NotOne.At(string.Empty, ("value", changed.Message))), null);
        }
    }

    private async Task PutAsideAsync(DbConnection connection, string aside)
    {
        await connection.ExecuteAsync("CREATE SCHEMA " + aside);
        foreach (var table in await connection.QueryAsync<string>("SELECT tablename FROM pg_tables WHERE schemaname = current_schema()"))
            await connection.ExecuteAsync("ALTER TABLE \"" + table + "\" SET SCHEMA " + aside);
        await Migrations.BringAsync(dialect, connection, Called("Host="), time);
    }
}
