using Watersown.Schedule.Sheets;

namespace Watersown.Records.Files.Sheets;

/// <summary>
/// A folder that holds exactly one printing. Files are written beside it first and take its place all at once, so that a
/// failure leaves the old sheets whole, and no sheet of an older plan lies among new ones.
/// </summary>
internal static class SheetFolder
{
    /// <summary>Names the files of a printing, so that the next one knows which it may replace.</summary>
    public const string Marker = ".watersown-sheets";

    /// <summary>What keeps the folder from being replaced; nothing where it may be.</summary>
    public static Problem? Fault(string folder)
    {
        if (File.Exists(folder)) return SheetsProblems.FolderIsAFile.At(folder);
        if (!Directory.Exists(folder)) return null;
        var marker = Path.Combine(folder, Marker);
        HashSet<string> ours = File.Exists(marker) ? [.. File.ReadAllLines(marker), Marker] : [];
        var other = Directory.EnumerateFileSystemEntries(folder).Select(p => Path.GetFileName(p)).Where(n => !ours.Contains(n)).Order(StringComparer.Ordinal).FirstOrDefault();
        return other is null ? null : SheetsProblems.FolderHasOtherFiles.At(folder, ("value", other));
    }

    /// <summary>Replaces the folder by one that holds these files.</summary>
    public static void Replace(string folder, ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var place = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var parent = Path.GetDirectoryName(place) ?? throw new IOException("The root of a disk cannot be replaced.");
        Directory.CreateDirectory(parent);
        var beside = Path.Combine(parent, "." + Path.GetFileName(place) + "-" + Path.GetRandomFileName());
        try
        {
            Directory.CreateDirectory(beside);
            foreach (var (name, bytes) in files) File.WriteAllBytes(Path.Combine(beside, name), bytes.Span);
            File.WriteAllLines(Path.Combine(beside, Marker), files.Select(f => f.Name));
            Swap(beside, place);
        }
        finally
        {
            if (Directory.Exists(beside)) Directory.Delete(beside, recursive: true);
        }
    }

    private static void Swap(string beside, string place)
    {
        if (!Directory.Exists(place))
        {
            Directory.Move(beside, place);
            return;
        }

        var old = beside + "-old";
        Directory.Move(place, old);
        try
        {
            Directory.Move(beside, place);
        }
        catch
        {
            Directory.Move(old, place);
            throw;
        }

        Directory.Delete(old, recursive: true);
    }
}
