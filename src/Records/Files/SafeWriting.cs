namespace Watersown.Records.Files;

/// <summary>Writes a file whole or not at all.</summary>
public static class SafeWriting
{
    /// <summary>Puts the bytes beside the file first and moves them into place at the end, so that a full disk leaves the old file as it was.</summary>
    /// <param name="path">The file.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="replace">Whether a file that is there may be replaced.</param>
    public static Outcome<string> Write(string path, ReadOnlySpan<byte> bytes, bool replace)
    {
        if (!replace && Path.Exists(path)) return Outcome<string>.Refuse(FileProblems.Exists.At(path));
        var beside = path + ".part-" + Guid.NewGuid().ToString("N")[..8];
        try
        {
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, path, overwrite: replace);
            return Outcome<string>.Of(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            if (File.Exists(beside)) File.Delete(beside);
            return Outcome<string>.Refuse(FileProblems.NotWritable.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
    }
}
