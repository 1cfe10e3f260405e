using System.Data.Common;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>How much is in a book.</summary>
/// <param name="Farms">Versions of the farm document.</param>
/// <param name="Marks">Marks.</param>
/// <param name="Plans">Issued plans.</param>
/// <param name="Photos">Photos.</param>
/// <param name="Accounts">People who may or might sign in.</param>
/// <param name="LastMark">When the last mark came in.</param>
public sealed record BookCounts(long Farms, long Marks, long Plans, long Photos, long Accounts, DateTimeOffset? LastMark)
{
    /// <summary>Nothing of a farm is in it.</summary>
    public bool IsEmpty => Farms + Marks + Plans + Photos + Accounts == 0;

    /// <summary>At least as much of everything as another.</summary>
    internal bool Holds(BookCounts other) =>
        Farms >= other.Farms && Marks >= other.Marks && Plans >= other.Plans && Photos >= other.Photos && Accounts >= other.Accounts;
}

public sealed partial class Book
{
    private const int CheckedAtOnce = 2_000;

    public Task<BookCounts> CountsAsync(CancellationToken stop = default) => ReadAsync(CountsAsync, stop);

    /// <summary>Whether the engine finds its file sound: seconds for a large book. None where nothing is wrong.</summary>
    public Task<Problem?> LookOverAsync(CancellationToken stop = default) => CheckAsync(dialect.QuickCheck, everything: false, stop);

    /// <summary>The same with every index, and every mark, farm, plan and photo held against the digest that was kept beside it.</summary>
    public Task<Problem?> CheckAsync(CancellationToken stop = default) => CheckAsync(dialect.WholeCheck, everything: true, stop);

    /// <summary>A copy of the book at one moment, as a file of its own; those who write meanwhile do not wait.</summary>
    internal async Task CopyIntoAsync(string path, CancellationToken stop)
    {
        try
        {
            await using var connection = await dialect.OpenAsync(stop);
            await connection.ExecuteAsync(new CommandDefinition("VACUUM INTO @path", new { path }, commandTimeout: 3600, cancellationToken: stop));
        }
        catch (DbException failure)
        {
            throw new BookFailedException(failure);
        }
    }

    /// <summary>Phones that were told numbers of the book before must ask for everything again.</summary>
    internal Task RenameAsync() => WriteAsync(RenameAsync);

    private static async Task<BookCounts> CountsAsync(DbConnection connection)
    {
        async Task<long> Of(string table) => await connection.ExecuteScalarAsync<long>("SELECT COUNT(*) FROM " + table);
        var last = await connection.ExecuteScalarAsync<string?>("SELECT received FROM marks ORDER BY seq DESC LIMIT 1");
        return new(await Of("farms"), await Of("marks"), await Of("plans"), await Of("attachments"), await Of("accounts"), last is null ? null : MomentColumn.Read(last));
    }

    private async Task<Problem?> CheckAsync(string? question, bool everything, CancellationToken stop)
    {
        try
        {
            return await ReadAsync(async connection =>
            {
                if (question is not null && await connection.QueryFirstAsync<string>(new CommandDefinition(question, commandTimeout: 3600, cancellationToken: stop)) is var said && said != "ok") return Damaged(said);
                return everything ? await DigestsAsync(connection, stop) : null;
            }, stop);
        }
        catch (BookFailedException failure) when (failure.InnerException is DbException cause && dialect.Blames(cause) is { } kind)
        {
            return kind.At(Called(dialect.File ?? "Host="), ("value", Words(cause.Message)));
        }
    }

    private async Task<Problem?> DigestsAsync(DbConnection connection, CancellationToken stop)
    {
        for (long after = 0; ;)
        {
            stop.ThrowIfCancellationRequested();
            var marks = (await connection.QueryAsync<(long Seq, string Id, string Sha256, string Body)>("SELECT seq, id, sha256, body FROM marks WHERE seq > @after ORDER BY seq LIMIT @CheckedAtOnce", new { after, CheckedAtOnce })).AsList();
            if (marks.Count == 0) break;
            foreach (var mark in marks)
            {
                if (mark.Seq != ++after) return Damaged("mark " + Plain(after) + " is missing");
                if (CanonicalJson.Digest(mark.Body) != mark.Sha256) return Damaged("mark " + mark.Id + " is not as it was kept");
            }
        }

        foreach (var (what, key, table) in new[] { ("farm", "version", "farms"), ("plan", "number", "plans") })
        {
            foreach (var number in await connection.QueryAsync<long>("SELECT " + key + " FROM " + table + " ORDER BY " + key))
            {
                var (sha256, document) = await connection.QuerySingleAsync<(string Sha256, string Document)>("SELECT sha256, document FROM " + table + " WHERE " + key + " = @number", new { number });
                if (CanonicalJson.Digest(document) != sha256) return Damaged(what + " " + Plain(number) + " is not as it was kept");
            }
        }

        foreach (var photo in await AttachmentsAsync(connection))
        {
            stop.ThrowIfCancellationRequested();
            if (await ContentAsync(connection, photo.Id) is not { } bytes || CanonicalJson.Digest(bytes) != photo.Sha256) return Damaged("photo " + photo.Id + " is not as it was kept");
        }

        return null;
    }

    private Problem Damaged(string what) => BookProblems.Damaged.At(Called(dialect.File ?? "Host="), ("value", Words(what)));

    /// <summary>The engine tells on several lines and ends its own sentences.</summary>
    private static string Words(string text) => Wording.Say.Short(text.ReplaceLineEndings(" ").Trim().TrimEnd('.'), 200);
}
