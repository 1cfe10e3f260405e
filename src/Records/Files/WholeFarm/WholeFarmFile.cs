using System.Diagnostics.CodeAnalysis;
using System.IO.Compression;
using System.Security;
using Watersown.Documents.Farms;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>
/// A whole-farm file, looked through from end to end before anything of it is used: every part is there, is as it was
/// written, and reads. Nothing is ever unpacked to disk.
/// </summary>
public sealed class WholeFarmFile : IDisposable
{
    private const string Closes = "Whoever opens a file closes it; one that is refused holds nothing but the stream, which Look closes.";

    private readonly ZipArchive archive;

    private readonly string place;

    private WholeFarmFile(ZipArchive archive, string place, WholeFarmManifest manifest) => (this.archive, this.place, Manifest) = (archive, place, manifest);

    public WholeFarmManifest Manifest { get; }

    internal ImmutableArray<FarmLine> Farms { get; private set; } = [];

    internal ImmutableArray<PlanLine> Plans { get; private set; } = [];

    internal ImmutableArray<PhotoLine> Photos { get; private set; } = [];

    internal ImmutableArray<AccountLine> Accounts { get; private set; } = [];

    /// <summary>Opens and looks through a file, or says everything that is wrong with it.</summary>
    [SuppressMessage("Reliability", "CA2000", Justification = Closes)]
    public static Outcome<WholeFarmFile> Open(string path)
    {
        try
        {
            return Look(new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read), path);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(FileProblems.NotThere.At(path));
        }
        catch (Exception failure) when (failure is InvalidDataException or EndOfStreamException)
        {
            return Refuse(WholeFarmProblems.NotOne.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException)
        {
            return Refuse(FileProblems.NotReadable.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
    }

    public void Dispose() => archive.Dispose();

    /// <summary>The bytes of a part that is in the manifest.</summary>
    /// <exception cref="InvalidDataException">The file was changed since it was looked through.</exception>
    internal byte[] Read(string part) => ZipParts.Read(archive, PartOf(part)) is { HasValue: true } read ? read.Value : throw Changed(part);

    internal string DigestOf(string part) => PartOf(part).Sha256;

    /// <summary>Every mark, in the order in which they once came in.</summary>
    /// <exception cref="InvalidDataException">The file was changed since it was looked through.</exception>
    internal IEnumerable<IncomingMark> Marks()
    {
        foreach (var mark in ReadMarks()) yield return mark.HasValue ? mark.Value : throw Changed(WholeFarmForm.Marks);
    }

    /// <summary>Keeps the file open where it is good, and closes it otherwise.</summary>
    [SuppressMessage("Reliability", "CA2000", Justification = Closes)]
    private static Outcome<WholeFarmFile> Look(FileStream stream, string path)
    {
        var kept = false;
        try
        {
            if (ZipEnd.Fault(stream, path) is { } fault) return Refuse(fault);
            var looked = Look(new ZipArchive(stream, ZipArchiveMode.Read), path);
            kept = looked.HasValue;
            return looked;
        }
        finally
        {
            if (!kept) stream.Dispose();
        }
    }

    [SuppressMessage("Reliability", "CA2000", Justification = Closes)]
    private static Outcome<WholeFarmFile> Look(ZipArchive archive, string path)
    {
        var names = archive.Entries.Select(e => e.FullName).ToList();
        if (names.Find(PointsOutside) is { } outside) return Refuse(WholeFarmProblems.PointsOutside.At(path, ("value", outside)));
        if (archive.GetEntry(WholeFarmForm.Manifest) is null) return Refuse(WholeFarmProblems.NotOne.At(path, ("value", "there is no " + WholeFarmForm.Manifest + " in it")));
        var read = ZipParts.Read(archive, WholeFarmForm.Manifest, Documents.Json.JsonText.MaxBytes, path).Then(bytes => WholeFarmManifest.Read(bytes));
        if (read.IsRefused) return Refuse(read.Problems);
        var manifest = read.Value;
        var problems = ZipParts.Faults(names, manifest, path);
        if (problems.Count > 0) return Refuse(problems.Take(LineFacts.ProblemsMost));
        foreach (var part in manifest.Parts)
        {
            if (ZipParts.Fault(archive, part) is { } fault) problems.Add(fault);
            if (problems.Count >= LineFacts.ProblemsMost) break;
        }

        if (problems.Count > 0) return Refuse(problems);
        var file = new WholeFarmFile(archive, path, manifest);
        problems.AddRange(file.ReadAll().Take(LineFacts.ProblemsMost));
        return problems.Count > 0 ? Refuse(problems) : Outcome<WholeFarmFile>.Of(file);
    }

    /// <summary>Reads all lists and says what is wrong with them, one after the other, only as far as somebody listens.</summary>
    private IEnumerable<Problem> ReadAll()
    {
        var wrong = new List<Problem>();
        Farms = Good(WholeFarmForm.FarmList, WholeFarmLines.ReadFarm, wrong);
        Plans = Good(WholeFarmForm.PlanList, WholeFarmLines.ReadPlan, wrong);
        Photos = Good(WholeFarmForm.PhotoList, WholeFarmLines.ReadPhoto, wrong);
        Accounts = Good(WholeFarmForm.AccountList, WholeFarmLines.ReadAccount, wrong);
        var broken = false;
        foreach (var problem in wrong.Concat(ReadMarks().SelectMany(m => m.Problems)))
        {
            broken = true;
            yield return problem;
        }

        if (broken) yield break;
        foreach (var problem in WholeFarmSense.Faults(this)) yield return problem;
    }

    /// <summary>The newest farm document, as every desk must be able to read it.</summary>
    internal IEnumerable<Problem> FarmFaults() => Farms.IsEmpty ? [] : FarmReading.Read(Read(WholeFarmForm.Farm), new FarmContext(Farms[^1].Saved)).Refusals.Select(p => p with { Where = WholeFarmForm.Farm + " " + p.Where });

    private IEnumerable<Outcome<IncomingMark>> ReadMarks() => Lines(WholeFarmForm.Marks, WholeFarmLines.ReadMark);

    private IEnumerable<Outcome<T>> Lines<T>(string part, Func<ReadOnlyMemory<byte>, string, Outcome<T>> read)
        where T : notnull
    {
        using var stream = archive.GetEntry(part)!.Open();
        long number = 0;
        foreach (var line in ZipParts.Lines(stream, PartOf(part)))
        {
            number++;
            yield return line is { } there
                ? read(there, part + " line " + LineFacts.Plain(number))
                : Outcome<T>.Refuse(WholeFarmProblems.TooLarge.At(part + " line " + LineFacts.Plain(number), ("value", "the line"), ("limit", LineFacts.Plain(WholeFarmForm.LineBytesMost / 1024) + " KB")));
        }

        if (number != PartOf(part).Count) yield return Outcome<T>.Refuse(WholeFarmProblems.PartDiffers.At(part, ("value", LineFacts.Plain(number) + " lines"), ("limit", LineFacts.Plain(PartOf(part).Count) + " lines")));
    }

    private WholeFarmPart PartOf(string name) => ByName.GetValueOrDefault(name) ?? throw Changed(name);

    private Dictionary<string, WholeFarmPart> ByName => field ??= Manifest.Parts.ToDictionary(p => p.Name, StringComparer.Ordinal);

    private InvalidDataException Changed(string part) => new(place + " was changed while it was read: " + part);

    private ImmutableArray<T> Good<T>(string part, Func<ReadOnlyMemory<byte>, string, Outcome<T>> read, List<Problem> wrong)
        where T : notnull
    {
        var good = ImmutableArray.CreateBuilder<T>();
        foreach (var line in Lines(part, read))
        {
            wrong.AddRange(line.Problems);
            if (line.HasValue) good.Add(line.Value);
            if (wrong.Count >= LineFacts.ProblemsMost) break;
        }

        return good.DrainToImmutable();
    }

    private static bool PointsOutside(string name)
    {
        var plain = name.Replace('\\', '/');
        return plain.StartsWith('/') || plain.Contains(':', StringComparison.Ordinal) || plain.Contains('\0', StringComparison.Ordinal) || plain.Split('/').Contains("..", StringComparer.Ordinal);
    }

    private static Outcome<WholeFarmFile> Refuse(params IEnumerable<Problem> problems) => Outcome<WholeFarmFile>.Refuse(problems);
}
