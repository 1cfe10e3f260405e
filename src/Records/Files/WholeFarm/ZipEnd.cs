using System.Buffers.Binary;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>
/// Looks at the last record of a zip before anybody reads its list of entries: a list of millions of names would fill the
/// memory before a single part was looked at.
/// </summary>
internal static class ZipEnd
{
    private const int RecordBytes = 22;

    private const int CommentMost = 65_535;

    /// <summary>Bytes of the list for as many parts as are taken, with long names.</summary>
    private const long ListBytesMost = WholeFarmForm.PartsMost * 200L;

    /// <summary>What is wrong with the end; none where the list may be read. Leaves the file at its beginning.</summary>
    public static Problem? Fault(Stream file, string place)
    {
        var tail = new byte[Math.Min(file.Length, RecordBytes + CommentMost)];
        file.Seek(-tail.Length, SeekOrigin.End);
        file.ReadExactly(tail);
        file.Seek(0, SeekOrigin.Begin);
        var at = tail.AsSpan().LastIndexOf("PK\u0005\u0006"u8);
        if (at < 0 || at + RecordBytes > tail.Length) return WholeFarmProblems.NotOne.At(place, ("value", "its end is missing"));
        var entries = BinaryPrimitives.ReadUInt16LittleEndian(tail.AsSpan(at + 10));
        var start = BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(at + 16));
        // All ones point at a longer record, which a file of a desk never needs below these limits.
        if (entries > WholeFarmForm.PartsMost) return WholeFarmProblems.TooLarge.At(place, ("value", LineFacts.Plain(entries) + " parts"), ("limit", LineFacts.Plain(WholeFarmForm.PartsMost) + " parts"));
        if (start == uint.MaxValue || file.Length - start > ListBytesMost) return WholeFarmProblems.TooLarge.At(place, ("value", "the list of parts"), ("limit", LineFacts.Plain(ListBytesMost / 1024 / 1024) + " MB"));
        return null;
    }
}
