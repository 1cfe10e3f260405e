namespace Watersown.Records.Database;

/// <summary>
/// Says to other programs that a book's file is in use. Every open book holds a file beside it together with others; who
/// changes the file as a whole needs it alone. The system lets go of it when a program ends, however it ends.
/// </summary>
internal static class BookHold
{
    public const string Ending = "-open";

    /// <summary>Held with others. Nothing where somebody has the book alone, and nothing where the place lets nobody hold anything.</summary>
    public static (FileStream? File, bool InUse) Shared(string path)
    {
        var file = path + Ending;
        try
        {
            return (new FileStream(file, FileMode.OpenOrCreate, FileAccess.Read, FileShare.Read), false);
        }
        catch (Exception refused) when (refused is UnauthorizedAccessException or DirectoryNotFoundException or NotSupportedException or ArgumentException)
        {
            // Whether a book can be there is for the engine to say.
            return (null, false);
        }
        catch (IOException)
        {
            return (null, File.Exists(file));
        }
    }

    /// <summary>Held alone; none where somebody has the book open.</summary>
    public static FileStream? Alone(string path)
    {
        try
        {
            return new FileStream(path + Ending, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException) when (File.Exists(path + Ending))
        {
            return null;
        }
    }
}
