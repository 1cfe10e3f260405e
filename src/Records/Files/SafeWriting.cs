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

    /// <summary>The same for what is written piece by piece; it is on disk before it is looked at and takes the file's place.</summary>
    /// <param name="path">The file.</param>
    /// <param name="write">Writes all of it.</param>
    /// <param name="faults">Looks at what was written, by its path, and tells what is wrong with it.</param>
    /// <param name="replace">Whether a file that is there may be replaced.</param>
    public static async Task<Outcome<string>> WriteAsync(string path, Func<Stream, Task> write, Func<string, ImmutableArray<Problem>> faults, bool replace)
    {
        if (!replace && Path.Exists(path)) return Outcome<string>.Refuse(FileProblems.Exists.At(path));
        var beside = path + ".part-" + Guid.NewGuid().ToString("N")[..8];
        try
        {
            await using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None))
            {
                await write(stream);
                await stream.FlushAsync();
                RandomAccess.FlushToDisk(stream.SafeFileHandle);
            }

            if (faults(beside) is { IsEmpty: false } wrong) return Outcome<string>.Refuse(wrong);
            File.Move(beside, path, overwrite: replace);
            return Outcome<string>.Of(path);
        }
        catch (Exception failure) when (failure is (IOException and not Database.BookFailedException) or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Outcome<string>.Refuse(FileProblems.NotWritable.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
        finally
        {
            if (File.Exists(beside)) File.Delete(beside);
        }
    }
}
