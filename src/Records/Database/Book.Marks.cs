using System.Data.Common;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>A mark that is on disk, and its place in the book.</summary>
public sealed record KeptId(string Id, long Seq);

/// <summary>A mark that was not taken, and why.</summary>
public sealed record RefusedMark(string Id, ImmutableArray<Problem> Problems);

/// <summary>The answer to a send of marks.</summary>
/// <param name="Kept">On disk, now or from an earlier send of the same.</param>
/// <param name="Refused">Not taken.</param>
/// <param name="Upto">Number of the last mark of the book.</param>
public sealed record Appended(ImmutableArray<KeptId> Kept, ImmutableArray<RefusedMark> Refused, long Upto);

/// <summary>A mark of the book.</summary>
/// <param name="Seq">Its place: 1, 2, 3 without a gap, in the order in which they came in.</param>
/// <param name="Received">When it came in.</param>
/// <param name="Sender">Who was signed in, or which link it came by; none on one's own machine.</param>
/// <param name="Mark">What it is.</param>
public sealed record KeptMark(long Seq, DateTimeOffset Received, string? Sender, StoredMark Mark);

public sealed partial class Book
{
    /// <summary>Few enough that either engine takes them as parameters of one question.</summary>
    private const int IdsAtOnce = 500;

    /// <summary>
    /// Puts marks into the book, each once: a mark that is there already with the same content is kept again under the same
    /// number, and one with other content is refused. When this returns, what is kept is on disk.
    /// </summary>
    /// <param name="marks">In the order in which they were put down.</param>
    /// <param name="sender">Who was signed in, or which link they came by.</param>
    /// <param name="stop">Stops waiting; the marks may be kept all the same.</param>
    public Task<Appended> AppendMarksAsync(IReadOnlyList<StoredMark> marks, string? sender = null, CancellationToken stop = default) =>
        queue.AppendAsync(marks, sender, stop);

    /// <summary>Marks that came in after a number, in that order.</summary>
    /// <param name="after">0 for all.</param>
    /// <param name="limit">Most that are wanted.</param>
    /// <param name="stop">Gives up.</param>
    public Task<ImmutableArray<KeptMark>> MarksAfterAsync(long after, int limit, CancellationToken stop = default) =>
        ReadAsync(connection => MarksAfterAsync(connection, after, limit), stop);

    /// <summary>Number of the last mark; 0 while there is none.</summary>
    public Task<long> UptoAsync(CancellationToken stop = default) => ReadAsync(UptoAsync, stop);

    internal static Task<long> UptoAsync(DbConnection connection) => connection.ExecuteScalarAsync<long>("SELECT COALESCE(MAX(seq), 0) FROM marks");

    internal static async Task<ImmutableArray<KeptMark>> MarksAfterAsync(DbConnection connection, long after, int limit)
    {
        var rows = await connection.QueryAsync<MarkRow>(
            "SELECT seq, id, happened, entered, received, told_by, device, kind, replaces, sender, body FROM marks WHERE seq > @after ORDER BY seq LIMIT @limit", new { after, limit });
        return [.. rows.Select(r => new KeptMark(r.Seq, r.Received, r.Sender, StoredMark.Kept(r.Id, r.Happened, r.Entered, r.ToldBy, r.Device, r.Kind, r.Replaces, r.Body)))];
    }

    /// <summary>The same inside a transaction that is open already.</summary>
    internal async Task<Appended> AppendAsync(DbConnection connection, IReadOnlyList<StoredMark> marks, string? sender, DateTimeOffset now)
    {
        var upto = await UptoAsync(connection);
        var known = await KnownAsync(connection, marks);
        var (kept, refused, fresh) = (ImmutableArray.CreateBuilder<KeptId>(marks.Count), ImmutableArray.CreateBuilder<RefusedMark>(), new List<object>());
        foreach (var mark in marks)
        {
            var sha256 = mark.Sha256;
            if (!known.TryGetValue(mark.Id, out var there))
            {
                known[mark.Id] = there = new MarkKey(mark.Id, ++upto, sha256);
                fresh.Add(Row(mark, there, sender, now));
            }

            if (there.Sha256 == sha256) kept.Add(new KeptId(mark.Id, there.Seq));
            else refused.Add(new RefusedMark(mark.Id, [BookProblems.MarkDiffers.At(mark.Id)]));
        }

        await connection.ExecuteAsync(
            "INSERT INTO marks (seq, id, happened, entered, received, told_by, device, kind, replaces, sender, sha256, body) "
            + "VALUES (@Seq, @Id, @Happened, @Entered, @now, @By, @Device, @Kind, @Replaces, @sender, @Sha256, @Body)", fresh);
        return new Appended(kept.DrainToImmutable(), refused.DrainToImmutable(), upto);
    }

    private static object Row(StoredMark mark, MarkKey key, string? sender, DateTimeOffset now) =>
        new { key.Seq, mark.Id, mark.Happened, mark.Entered, now, mark.By, mark.Device, mark.Kind, mark.Replaces, sender, key.Sha256, mark.Body };

    private async Task<Dictionary<string, MarkKey>> KnownAsync(DbConnection connection, IReadOnlyList<StoredMark> marks)
    {
        var known = new Dictionary<string, MarkKey>(StringComparer.Ordinal);
        foreach (var ids in marks.Select(m => m.Id).Chunk(IdsAtOnce))
        {
            foreach (var key in await connection.QueryAsync<MarkKey>("SELECT id, seq, sha256 FROM marks WHERE " + dialect.IdAmong, new { ids })) known[key.Id] = key;
        }

        return known;
    }

    private Task<IReadOnlyList<Appended>> WriteSendsAsync(IReadOnlyList<MarkQueue.Send> sends) => WriteAsync<IReadOnlyList<Appended>>(async connection =>
    {
        var (answers, now) = (new List<Appended>(sends.Count), time.GetUtcNow());
        foreach (var send in sends) answers.Add(await AppendAsync(connection, send.Marks, send.Sender, now));
        return answers;
    });

    private sealed record MarkKey(string Id, long Seq, string Sha256);

    private sealed record MarkRow(long Seq, string Id, string Happened, string Entered, DateTimeOffset Received, string ToldBy, string Device, string Kind, string? Replaces, string? Sender, string Body);
}
