using System.IO.Compression;
using System.Security.Cryptography;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Parts of a zip out of strange hands: each is counted and weighed while it is unpacked rather than believed.</summary>
internal static class ZipParts
{
    private const int PieceBytes = 81_920;

    /// <summary>What the zip's names and the manifest's have not in common.</summary>
    public static List<Problem> Faults(List<string> names, WholeFarmManifest manifest, string place)
    {
        var problems = new List<Problem>();
        var listed = manifest.Parts.Select(p => p.Name).Append(WholeFarmForm.Manifest).ToList();
        var (there, known) = (names.ToHashSet(StringComparer.Ordinal), listed.ToHashSet(StringComparer.Ordinal));
        problems.AddRange(names.Where(n => !known.Contains(n)).Concat(Twice(names)).Concat(Twice(listed)).Distinct(StringComparer.Ordinal).Select(n => WholeFarmProblems.PartUnknown.At(place, ("value", n))));
        problems.AddRange(listed.Concat(WholeFarmForm.Lists).Where(n => !there.Contains(n) || !known.Contains(n)).Distinct(StringComparer.Ordinal).Select(n => WholeFarmProblems.PartMissing.At(place, ("value", n))));
        if (manifest.Parts.Sum(p => (decimal)p.Bytes) > WholeFarmForm.BytesMost) problems.Add(Size(place, "all of it unpacked", WholeFarmForm.BytesMost));
        return problems;
    }

    /// <summary>Whether a part has the size and the digest that the manifest tells.</summary>
    public static Problem? Fault(ZipArchive archive, WholeFarmPart part)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        long size = 0;
        foreach (var piece in Pieces(archive.GetEntry(part.Name)!, part.Bytes))
        {
            if ((size += piece.Length) > part.Bytes) return Differs(part.Name, "more bytes", Bytes(part.Bytes));
            hash.AppendData(piece.Span);
        }

        if (TooDense(archive.GetEntry(part.Name)!, size)) return Size(part.Name, "its unpacked size", WholeFarmForm.RatioMost * archive.GetEntry(part.Name)!.CompressedLength);
        if (size != part.Bytes) return Differs(part.Name, Bytes(size), Bytes(part.Bytes));
        var sha256 = Convert.ToHexStringLower(hash.GetHashAndReset());
        return sha256 == part.Sha256 ? null : Differs(part.Name, "SHA-256 " + sha256[..12] + "…", "SHA-256 " + part.Sha256[..12] + "…");
    }

    /// <summary>The bytes of a part, as the manifest tells them.</summary>
    public static Outcome<byte[]> Read(ZipArchive archive, WholeFarmPart part) => Read(archive, part.Name, part.Bytes, part.Name)
        .Then(bytes => bytes.Length == part.Bytes && Convert.ToHexStringLower(SHA256.HashData(bytes.Span)) == part.Sha256 ? Outcome<byte[]>.Of(bytes.ToArray()) : Outcome<byte[]>.Refuse(Differs(part.Name, "other bytes", Bytes(part.Bytes))));

    /// <summary>The bytes of an entry that nobody told the size of.</summary>
    public static Outcome<ReadOnlyMemory<byte>> Read(ZipArchive archive, string name, long most, string place)
    {
        using var kept = new MemoryStream();
        foreach (var piece in Pieces(archive.GetEntry(name)!, most))
        {
            kept.Write(piece.Span);
            if (kept.Length > most) return Outcome<ReadOnlyMemory<byte>>.Refuse(Size(place, name, most));
        }

        return Outcome<ReadOnlyMemory<byte>>.Of(kept.ToArray());
    }

    /// <summary>Lines of a list; nothing in place of one that is too long, which ends them.</summary>
    public static IEnumerable<ReadOnlyMemory<byte>?> Lines(Stream stream, WholeFarmPart part)
    {
        var held = new byte[WholeFarmForm.LineBytesMost];
        var (count, left) = (0, part.Bytes);
        while (left > 0)
        {
            var read = stream.Read(held, count, (int)Math.Min(held.Length - count, left));
            if (read == 0) break;
            (count, left) = (count + read, left - read);
            var from = 0;
            for (int end; (end = held.AsSpan(from, count - from).IndexOf((byte)'\n')) >= 0; from += end + 1) yield return held.AsMemory(from, end);
            held.AsSpan(from, count - from).CopyTo(held);
            count -= from;
            if (count < held.Length) continue;
            yield return null;
            yield break;
        }

        if (count > 0) yield return held.AsMemory(0, count);
    }

    // One byte more than is due is enough to know that there is more.
    private static IEnumerable<ReadOnlyMemory<byte>> Pieces(ZipArchiveEntry entry, long most)
    {
        using var packed = entry.Open();
        var piece = new byte[PieceBytes];
        for (var left = most + 1; left > 0;)
        {
            var count = packed.Read(piece, 0, (int)Math.Min(piece.Length, left));
            if (count == 0) yield break;
            left -= count;
            yield return piece.AsMemory(0, count);
        }
    }

    private static bool TooDense(ZipArchiveEntry entry, long size) => size > 1024 * 1024 && size > entry.CompressedLength * WholeFarmForm.RatioMost;

    private static IEnumerable<string> Twice(List<string> names) => names.GroupBy(n => n, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key);

    private static Problem Differs(string part, string has, string due) => WholeFarmProblems.PartDiffers.At(part, ("value", has), ("limit", due));

    private static Problem Size(string place, string what, long most) => WholeFarmProblems.TooLarge.At(place, ("value", what), ("limit", LineFacts.Plain(Math.Max(1, most / 1024 / 1024)) + " MB"));

    private static string Bytes(long count) => LineFacts.Plain(count) + " bytes";
}
