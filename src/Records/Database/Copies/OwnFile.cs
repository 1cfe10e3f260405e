namespace Watersown.Records.Database.Copies;

/// <summary>Files that nobody but their owner may read: a copy of a book holds what the book holds.</summary>
internal static class OwnFile
{
    private const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>A new empty file.</summary>
    public static void Make(string path)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = Mode;
        using var file = new FileStream(path, options);
    }

    /// <summary>Takes from others what they might have been let.</summary>
    public static void Close(string path)
    {
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(path, Mode);
    }

    /// <summary>Returns when the bytes are on the disk and not only on their way.</summary>
    public static void ToDisk(string path)
    {
        using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite);
        RandomAccess.FlushToDisk(handle);
    }
}
