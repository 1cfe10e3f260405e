using System.IO.Compression;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// A zip out of strange hands: nothing is ever unpacked to disk, every entry is counted while it is unpacked rather than believed,
/// and a name that points outside is refused though nobody would follow it.
/// </summary>
internal sealed class SafeZip
{
    private readonly ImmutableArray<(string Name, ZipArchiveEntry Entry)> entries;
    private readonly string file;
    private long unpacked;

    private SafeZip(string file, ImmutableArray<(string Name, ZipArchiveEntry Entry)> entries) => (this.file, this.entries) = (file, entries);

    public IEnumerable<string> Names => entries.Select(e => e.Name);

    /// <summary>Opens the zip for as long as it is looked at.</summary>
    public static Outcome<T> Look<T>(string file, ReadOnlyMemory<byte> bytes, Func<SafeZip, Outcome<T>> look)
        where T : notnull
    {
        try
        {
            using var archive = new ZipArchive(new MemoryStream(bytes.ToArray(), writable: false), ZipArchiveMode.Read);
            var named = archive.Entries.Select(e => (Name: e.FullName.Replace('\\', '/'), Entry: e)).ToList();
            return Fault(file, named) is { } fault
                ? Outcome<T>.Refuse(fault)
                : look(new SafeZip(file, [.. named.Where(e => IsFile(e.Name))]));
        }
        catch (InvalidDataException)
        {
            return Outcome<T>.Refuse(MapFileProblems.BadZip.At(file, ("value", "its list of files cannot be read")));
        }
    }

    /// <summary>Names that end so, large or small.</summary>
    public ImmutableArray<string> Ending(string extension) =>
        [.. Names.Where(n => n.EndsWith(extension, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)];

    /// <summary>The bytes of an entry, by a name out of <see cref="Names"/>.</summary>
    public Outcome<ReadOnlyMemory<byte>> Read(string name)
    {
        var entry = entries.First(e => e.Name == name).Entry;
        if (entry.IsEncrypted) return Outcome<ReadOnlyMemory<byte>>.Refuse(MapFileProblems.Encrypted.At(file, ("value", MapText.Short(name))));
        try
        {
            using var packed = entry.Open();
            using var kept = new MemoryStream();
            var piece = new byte[81_920];
            var most = Math.Min(MapFileLimits.MaxUnpacked - unpacked, Math.Max(1 << 20, entry.CompressedLength * MapFileLimits.MaxRatio));
            for (int count; (count = packed.Read(piece, 0, piece.Length)) > 0;)
            {
                kept.Write(piece, 0, count);
                if (kept.Length > most)
                    return Outcome<ReadOnlyMemory<byte>>.Refuse(MapFileProblems.ZipTooLarge.At(file, ("value", MapText.Short(name)), ("limit", Wording.Say.Number(most / 1024.0 / 1024.0, 0) + " MB")));
            }

            unpacked += kept.Length;
            return Outcome<ReadOnlyMemory<byte>>.Of(kept.ToArray());
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException or NotSupportedException)
        {
            return Outcome<ReadOnlyMemory<byte>>.Refuse(MapFileProblems.BadZip.At(file, ("value", "'" + MapText.Short(name) + "' cannot be unpacked")));
        }
    }

    private static Problem? Fault(string file, List<(string Name, ZipArchiveEntry Entry)> named)
    {
        if (named.Count > MapFileLimits.MaxZipEntries)
            return MapFileProblems.TooManyEntries.At(file, ("value", Wording.Say.Number(named.Count)), ("limit", Wording.Say.Number(MapFileLimits.MaxZipEntries)));
        var outside = named.Find(e => PointsOutside(e.Name)).Name;
        return outside is null ? null : MapFileProblems.ZipPath.At(file, ("value", MapText.Short(outside)));
    }

    private static bool PointsOutside(string name) =>
        name.StartsWith('/') || name.Contains(':', StringComparison.Ordinal) || name.Contains('\0', StringComparison.Ordinal) || name.Split('/').Contains("..", StringComparer.Ordinal);

    // Folders, and the shadows that some machines put beside every file.
    private static bool IsFile(string name)
    {
        var last = name.Split('/')[^1];
        return last.Length > 0 && !last.StartsWith("._", StringComparison.Ordinal) && !name.StartsWith("__MACOSX/", StringComparison.Ordinal);
    }
}
