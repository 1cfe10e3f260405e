using System.Globalization;
using System.Security;

namespace Watersown.Records;

/// <summary>Reads a whole file, or says why not. The failures of the disk become problems here and nowhere else.</summary>
public static class FileText
{
    /// <summary>The bytes of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="most">Most bytes that are read.</param>
    public static Outcome<ReadOnlyMemory<byte>> Read(string path, int most)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            // A pipe or device has no length of its own: read until it ends or is too much.
            using var kept = new MemoryStream();
            var piece = new byte[81_920];
            for (int count; (count = stream.Read(piece, 0, piece.Length)) > 0;)
            {
                kept.Write(piece, 0, count);
                if (kept.Length > most) return Refuse(FileProblems.TooLarge.At(path, ("value", "the file"), ("limit", (most / 1024 / 1024).ToString(CultureInfo.InvariantCulture) + " MB")));
            }

            return Outcome<ReadOnlyMemory<byte>>.Of(kept.ToArray());
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(FileProblems.NotThere.At(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException)
        {
            return Refuse(FileProblems.NotReadable.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
    }

    private static Outcome<ReadOnlyMemory<byte>> Refuse(Problem problem) => Outcome<ReadOnlyMemory<byte>>.Refuse(problem);
}
