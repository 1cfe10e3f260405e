using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>One part of a whole-farm file.</summary>
/// <param name="Name">Its name in the zip.</param>
/// <param name="Count">Lines of a list; 1 of a document.</param>
/// <param name="Bytes">Unpacked.</param>
/// <param name="Sha256">Digest of these bytes, lower-case hexadecimal.</param>
public sealed record WholeFarmPart(string Name, long Count, long Bytes, string Sha256);

/// <summary>What a whole-farm file holds, by its own word.</summary>
/// <param name="Written">When.</param>
/// <param name="Program">Version of the program that wrote it.</param>
/// <param name="Book">Name of the book that it was written from.</param>
/// <param name="Parts">In the order in which they stand.</param>
public sealed record WholeFarmManifest(DateTimeOffset Written, string Program, string Book, ImmutableArray<WholeFarmPart> Parts)
{
    /// <summary>Versions of the farm document.</summary>
    public long Farms => CountOf(WholeFarmForm.FarmList);

    public long Marks => CountOf(WholeFarmForm.Marks);

    public long Plans => CountOf(WholeFarmForm.PlanList);

    public long Photos => CountOf(WholeFarmForm.PhotoList);

    public long Accounts => CountOf(WholeFarmForm.AccountList);

    internal long CountOf(string part) => Parts.FirstOrDefault(p => p.Name == part)?.Count ?? 0;

    internal void Write(Stream to)
    {
        using var json = new Utf8JsonWriter(to, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteString("format", WholeFarmForm.Name);
        json.WriteNumber("version", WholeFarmForm.Version);
        json.WriteString("written", MomentColumn.Write(Written));
        json.WriteString("program", Program);
        json.WriteString("book", Book);
        json.WriteStartArray("parts");
        foreach (var part in Parts)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Name);
            json.WriteNumber("count", part.Count);
            json.WriteNumber("bytes", part.Bytes);
            json.WriteString("sha256", part.Sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    internal static Outcome<WholeFarmManifest> Read(ReadOnlyMemory<byte> bytes)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<WholeFarmManifest>.Refuse(text.Problems);
        using var document = text.Value;
        var line = new LineFacts(document.RootElement, WholeFarmForm.Manifest);
        if (line.Text("format", t => t == WholeFarmForm.Name, "\"" + WholeFarmForm.Name + "\"") is null) return Outcome<WholeFarmManifest>.Refuse(line.Problems);
        var version = line.Number("version", 1, int.MaxValue);
        if (version > WholeFarmForm.Version) return Outcome<WholeFarmManifest>.Refuse(WholeFarmProblems.NewerForm.At(WholeFarmForm.Manifest, ("value", LineFacts.Plain(version)), ("limit", LineFacts.Plain(WholeFarmForm.Version))));
        var (written, program, book) = (line.Moment("written"), line.Text("program", t => t.Length <= 200, "a short text"), line.Text("book", BookLimits.IsMarkId, "32 lower-case hexadecimal digits"));
        var parts = ImmutableArray.CreateBuilder<WholeFarmPart>();
        foreach (var (part, place) in line.List("parts"))
        {
            var one = new LineFacts(part, place);
            var name = one.Text("name", t => t.Length is > 0 and <= 100, "the name of a part");
            var (count, size) = (one.Number("count", 0, WholeFarmForm.BytesMost), one.Number("bytes", 0, name is null ? 0 : WholeFarmForm.BytesMostOf(name)));
            var sha256 = one.Text("sha256", t => t.Length == 64 && t.All(char.IsAsciiHexDigitLower), "64 lower-case hexadecimal digits");
            line.Problems.AddRange(one.Problems);
            if (line.Problems.Count > LineFacts.ProblemsMost) break;
            parts.Add(new WholeFarmPart(name ?? string.Empty, count, size, sha256 ?? string.Empty));
        }

        return line.Problems.Count > 0
            ? Outcome<WholeFarmManifest>.Refuse(line.Problems)
            : Outcome<WholeFarmManifest>.Of(new WholeFarmManifest(written, program!, book!, parts.DrainToImmutable()));
    }
}
