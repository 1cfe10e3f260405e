using System.IO.Compression;

namespace Watersown.Records.Files.Boundaries;

/// <summary>Zips made for a test.</summary>
internal static class SomeZip
{
    public static byte[] Of(params (string Name, byte[] Bytes)[] entries)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in entries)
            {
                using var entry = archive.CreateEntry(name, CompressionLevel.SmallestSize).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    /// <summary>The files of a zip, by name.</summary>
    public static Dictionary<string, byte[]> Open(string path)
    {
        using var archive = ZipFile.OpenRead(path);
        return archive.Entries.ToDictionary(e => e.Name, e =>
        {
            using var from = e.Open();
            using var to = new MemoryStream();
            from.CopyTo(to);
            return to.ToArray();
        }, StringComparer.Ordinal);
    }
}
