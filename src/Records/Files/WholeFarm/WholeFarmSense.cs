using Watersown.Documents.Json;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Whether the parts of a whole-farm file fit each other; what the book itself would refuse must be told before anything is written.</summary>
internal static class WholeFarmSense
{
    public static IEnumerable<Problem> Faults(WholeFarmFile file)
    {
        var due = new HashSet<string>(WholeFarmForm.Lists, StringComparer.Ordinal);
        var parts = file.Manifest.Parts.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var fault in Numbers(file)) yield return fault;
        due.UnionWith(file.Farms.Select(f => WholeFarmForm.FarmOf(f.Version, file.Farms.Length)));
        due.UnionWith(file.Plans.Select(p => WholeFarmForm.PlanOf(p.Number)));
        due.UnionWith(file.Photos.Select(p => WholeFarmForm.PhotoOf(p.Id, p.MediaType)));
        foreach (var name in due.Except(parts, StringComparer.Ordinal)) yield return WholeFarmProblems.PartMissing.At(name, ("value", name));
        foreach (var name in parts.Except(due, StringComparer.Ordinal)) yield return WholeFarmProblems.PartUnknown.At(name, ("value", name));
        if (!due.SetEquals(parts)) yield break;
        foreach (var fault in Contents(file)) yield return fault;
    }

    /// <summary>Versions and plans are numbered without a gap, and a plan names what the file has.</summary>
    private static IEnumerable<Problem> Numbers(WholeFarmFile file)
    {
        for (var i = 0; i < file.Farms.Length; i++)
        {
            if (file.Farms[i].Version != i + 1) yield return Lacks(WholeFarmForm.FarmList, i, "version", LineFacts.Plain(i + 1));
        }

        for (var i = 0; i < file.Plans.Length; i++)
        {
            var plan = file.Plans[i];
            if (plan.Number != file.Plans[0].Number + i) yield return Lacks(WholeFarmForm.PlanList, i, "number", LineFacts.Plain(file.Plans[0].Number + i));
            if (plan.FarmVersion > file.Farms.Length) yield return Lacks(WholeFarmForm.PlanList, i, "farm_version", "a version that the file has");
            if (plan.MarksUpto > file.Manifest.Marks) yield return Lacks(WholeFarmForm.PlanList, i, "marks_upto", "a number of marks that the file has");
        }

        foreach (var name in Twice(file.Photos.Select(p => p.Id))) yield return Lacks(WholeFarmForm.PhotoList, null, "id", "each name once, and " + name + " stands there twice");
        foreach (var name in Twice(file.Accounts.Select(a => a.Name))) yield return Lacks(WholeFarmForm.AccountList, null, "name", "each name once, and " + name + " stands there twice");
    }

    private static IEnumerable<Problem> Contents(WholeFarmFile file)
    {
        foreach (var fault in file.FarmFaults()) yield return fault;
        foreach (var name in file.Plans.Select(p => WholeFarmForm.PlanOf(p.Number)).Concat(file.Farms.SkipLast(1).Select(f => WholeFarmForm.FarmOf(f.Version, file.Farms.Length))))
        {
            var text = JsonText.Read(file.Read(name));
            foreach (var problem in text.Problems) yield return problem with { Where = name + " " + problem.Where };
            if (text.HasValue) text.Value.Dispose();
        }

        foreach (var photo in file.Photos)
        {
            if (Book.AttachmentFault(photo.Id, photo.MediaType, file.Read(WholeFarmForm.PhotoOf(photo.Id, photo.MediaType))) is { } fault) yield return fault;
        }
    }

    private static IEnumerable<string> Twice(IEnumerable<string> names) => names.GroupBy(n => n, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key);

    private static Problem Lacks(string part, int? line, string key, string wanted) =>
        WholeFarmProblems.Lacks.At(line is { } i ? part + " line " + LineFacts.Plain(i + 1) : part, ("value", key), ("limit", wanted));
}
