using System.Data.Common;
using Dapper;
using Watersown.Records.Files.WholeFarm;

namespace Watersown.Records.Database;

/// <summary>What a book took of a whole-farm file; what it had already is not counted.</summary>
/// <param name="Farms">Versions of the farm document.</param>
/// <param name="Marks">Marks.</param>
/// <param name="Plans">Issued plans.</param>
/// <param name="Photos">Photos.</param>
/// <param name="Accounts">People, who need a code or a password anew.</param>
public sealed record Joined(int Farms, int Marks, int Plans, int Photos, int Accounts);

public sealed partial class Book
{
    private const int JoinedAtOnce = 1_000;

    /// <summary>
    /// Takes in all of a whole-farm file that the book does not have: all or nothing, in one transaction. Marks, photos and
    /// people are joined by their names; farm and plans go on from the book's own where the file's do, and stay out otherwise.
    /// </summary>
    /// <param name="file">Looked through already.</param>
    /// <param name="stop">Gives up, and writes nothing.</param>
    public async Task<Outcome<Joined>> JoinAsync(WholeFarmFile file, CancellationToken stop = default)
    {
        try
        {
            return await WriteAsync(connection => JoinAsync(connection, file, stop), stop);
        }
        catch (InvalidDataException changed)
        {
            return Outcome<Joined>.Refuse(WholeFarmProblems.NotOne.At(string.Empty, ("value", changed.Message)));
        }
    }

    private async Task<Outcome<Joined>> JoinAsync(DbConnection connection, WholeFarmFile file, CancellationToken stop)
    {
        var problems = new List<Problem>();
        var farms = await JoinFarmsAsync(connection, file);
        if (farms is null) problems.Add(WholeFarmProblems.FarmDiffers.At(WholeFarmForm.Farm));
        var (marks, upto) = await JoinMarksAsync(connection, file, problems, stop);
        var plans = await JoinPlansAsync(connection, file, farms is not null, upto, problems);
        var photos = await JoinPhotosAsync(connection, file, problems, stop);
        var accounts = await JoinAccountsAsync(connection, file);
        return Outcome<Joined>.Of(new Joined(farms ?? 0, marks, plans, photos, accounts), problems);
    }

    /// <summary>How many versions were added; nothing where the two were changed apart from each other.</summary>
    private static async Task<int?> JoinFarmsAsync(DbConnection connection, WholeFarmFile file)
    {
        var own = (await connection.QueryAsync<string>("SELECT sha256 FROM farms ORDER BY version")).AsList();
        var names = file.Farms.Select(f => WholeFarmForm.FarmOf(f.Version, file.Farms.Length)).ToList();
        if (!GoesOn(own, [.. names.Select(file.DigestOf)])) return null;
        foreach (var farm in file.Farms.Skip(own.Count))
            await InsertFarmAsync(connection, new FarmVersion(farm.Version, farm.Saved, farm.Who, farm.Why, file.Read(names[(int)farm.Version - 1])));
        return Math.Max(0, names.Count - own.Count);
    }

    /// <summary>How many marks were added, and for each number of the file's marks that a plan names the number in the book.</summary>
    private async Task<(int Added, Dictionary<long, long> Upto)> JoinMarksAsync(DbConnection connection, WholeFarmFile file, List<Problem> problems, CancellationToken stop)
    {
        var (before, differing, number, last) = (await UptoAsync(connection), 0, 0L, 0L);
        var named = file.Plans.Select(p => p.MarksUpto).ToHashSet();
        var upto = new Dictionary<long, long> { [0] = 0 };
        foreach (var marks in file.Marks().Chunk(JoinedAtOnce))
        {
            stop.ThrowIfCancellationRequested();
            var answer = await AppendAsync(connection, marks);
            var seqs = answer.Kept.DistinctBy(k => k.Id, StringComparer.Ordinal).ToDictionary(k => k.Id, k => k.Seq, StringComparer.Ordinal);
            differing += answer.Refused.Length;
            foreach (var mark in marks)
            {
                last = Math.Max(last, seqs.GetValueOrDefault(mark.Mark.Id));
                if (named.Contains(++number)) upto[number] = last;
            }
        }

        if (differing > 0) problems.Add(WholeFarmProblems.MarksDiffer.At(WholeFarmForm.Marks, ("value", Plain(differing))));
        return ((int)(await UptoAsync(connection) - before), upto);
    }

    private static async Task<int> JoinPlansAsync(DbConnection connection, WholeFarmFile file, bool sameFarm, Dictionary<long, long> upto, List<Problem> problems)
    {
        var own = (await connection.QueryAsync<(long Number, string Sha256)>("SELECT number, sha256 FROM plans ORDER BY number")).Select(p => Plain(p.Number) + " " + p.Sha256).ToList();
        List<string> theirs = [.. file.Plans.Select(p => Plain(p.Number) + " " + file.DigestOf(WholeFarmForm.PlanOf(p.Number)))];
        if (!sameFarm || !GoesOn(own, theirs))
        {
            var left = theirs.Except(own, StringComparer.Ordinal).Count();
            if (left > 0) problems.Add(WholeFarmProblems.PlansDiffer.At(WholeFarmForm.PlanList, ("value", Plain(left))));
            return 0;
        }

        foreach (var plan in file.Plans.Skip(own.Count))
        {
            var part = WholeFarmForm.PlanOf(plan.Number);
            await InsertPlanAsync(connection, new IssuedPlan(plan.Number, plan.Made, plan.Who, plan.Why, plan.FarmVersion, upto[plan.MarksUpto], file.Read(part)), file.DigestOf(part));
        }

        return Math.Max(0, theirs.Count - own.Count);
    }

    private static async Task<int> JoinPhotosAsync(DbConnection connection, WholeFarmFile file, List<Problem> problems, CancellationToken stop)
    {
        var own = (await connection.QueryAsync<(string Id, string Sha256)>("SELECT id, sha256 FROM attachments")).ToDictionary(a => a.Id, a => a.Sha256, StringComparer.Ordinal);
        var (added, differing) = (0, 0);
        foreach (var photo in file.Photos)
        {
            stop.ThrowIfCancellationRequested();
            var part = WholeFarmForm.PhotoOf(photo.Id, photo.MediaType);
            if (own.TryGetValue(photo.Id, out var there))
            {
                differing += there == file.DigestOf(part) ? 0 : 1;
                continue;
            }

            await AddAttachmentAsync(connection, photo.Id, photo.MediaType, file.Read(part), photo.Sender, photo.Received);
            added++;
        }

        if (differing > 0) problems.Add(WholeFarmProblems.PhotosDiffer.At(WholeFarmForm.PhotoList, ("value", Plain(differing))));
        return added;
    }

    /// <summary>People come without what they sign in with: an owner gives each a code.</summary>
    private static async Task<int> JoinAccountsAsync(DbConnection connection, WholeFarmFile file)
    {
        var added = 0;
        foreach (var account in file.Accounts)
        {
            added += await connection.ExecuteAsync(
                "INSERT INTO accounts (name, role, created, password_hash, ended) VALUES (@Name, @role, @Created, NULL, @ended) ON CONFLICT (name) DO NOTHING",
                new { account.Name, role = account.Role.ToString(), account.Created, ended = account.Ended is { } ended ? MomentColumn.Write(ended) : null });
        }

        return added;
    }

    /// <summary>One list begins with all of the other.</summary>
    private static bool GoesOn(List<string> own, List<string> theirs) => own.Take(theirs.Count).SequenceEqual(theirs.Take(own.Count), StringComparer.Ordinal);
}
