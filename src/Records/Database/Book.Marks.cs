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

/// <summary>A mark on its way in, with when and through whom it comes or once came.</summary>
internal sealed record IncomingMark(StoredMark Mark, DateTimeOffset Received, string? Sender);

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

    /// <summary>The same of marks that came in at different times, inside a transaction that is open already.</summary>
    internal async Task<Appended> AppendAsync(DbConnection connection, IReadOnlyList<IncomingMark> marks)
    {
        var (keys, upto) = await PutAsync(connection, marks);
        return Answer(marks, keys, upto);
    }

    /// <summary>Writes what the book does not have; for each mark, in order, what the book has under its name now.</summary>
    private async Task<(List<MarkKey> Keys, long Upto)> PutAsync(DbConnection connection, IReadOnlyList<IncomingMark> marks)
    {
        var upto = await UptoAsync(connection);
        var known = await KnownAsync(connection, marks);
        var (keys, fresh) = (new List<MarkKey>(marks.Count), new List<(IncomingMark, MarkKey)>());
        foreach (var mark in marks)
        {
            if (!known.TryGetValue(mark.Mark.Id, out var there))
            {
                known[mark.Mark.Id] = there = new MarkKey(mark.Mark.Id, ++upto, mark.Mark.Sha256);
                fresh.Add((mark, there));
            }

            keys.Add(there);
        }

        await MarkRows.InsertAsync(connection, [.. fresh.Select(f => MarkRows.Row(f.Item1, f.Item2.Seq, f.Item2.Sha256))]);
        return (keys, upto);
    }

    private static Appended Answer(IReadOnlyList<IncomingMark> marks, IReadOnlyList<MarkKey> keys, long upto)
    {
        var (kept, refused) = (ImmutableArray.CreateBuilder<KeptId>(marks.Count), ImmutableArray.CreateBuilder<RefusedMark>());
        for (var i = 0; i < marks.Count; i++)
        {
            var id = marks[i].Mark.Id;
            if (keys[i].Sha256 == marks[i].Mark.Sha256) kept.Add(new KeptId(id, keys[i].Seq));
            else refused.Add(new RefusedMark(id, [BookProblems.MarkDiffers.At(id)]));
        }

        return new Appended(kept.DrainToImmutable(), refused.DrainToImmutable(), upto);
    }

    private async Task<Dictionary<string, MarkKey>> KnownAsync(DbConnection connection, IReadOnlyList<IncomingMark> marks)
    {
        var known = new Dictionary<string, MarkKey>(StringComparer.Ordinal);
        foreach (var ids in marks.Select(m => m.Mark.Id).Chunk(IdsAtOnce))
        {
            foreach (var key in await connection.QueryAsync<MarkKey>("SELECT id, seq, sha256 FROM marks WHERE " + dialect.IdAmong, new { ids })) known[key.Id] = key;
        }

        return known;
    }

    /// <summary>All that waited goes to the database together, and each gets its own answer.</summary>
    private Task<IReadOnlyList<Appended>> WriteSendsAsync(IReadOnlyList<MarkQueue.Send> sends) => WriteAsync<IReadOnlyList<Appended>>(async connection =>
    {
        var now = time.GetUtcNow();
        List<IncomingMark> all = [.. sends.SelectMany(s => s.Marks.Select(m => new IncomingMark(m, now, s.Sender)))];
        var (keys, upto) = await PutAsync(connection, all);
        var (answers, from) = (new List<Appended>(sends.Count), 0);
        foreach (var send in sends)
        {
            answers.Add(Answer(all.GetRange(from, send.Marks.Count), keys.GetRange(from, send.Marks.Count), upto));
            from += send.Marks.Count;
        }

        return answers;
    });

    private sealed record MarkKey(string Id, long Seq, string Sha256);

    private sealed record MarkRow(long Seq, string Id, string Happened, string Entered, DateTimeOffset Received, string ToldBy, string Device, string Kind, string? Replaces, string? Sender, string Body);
}
