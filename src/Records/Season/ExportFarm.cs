using Watersown.Records.Database;
using Watersown.Records.Files;
using Watersown.Records.Files.WholeFarm;

namespace Watersown.Records.Season;

/// <summary>Writes a book's whole farm as one open file.</summary>
public static class ExportFarm
{
    /// <summary>What is in the file, once it is on disk, looked through, and in its place; nothing stays of one that failed.</summary>
    /// <param name="book">The book.</param>
    /// <param name="path">The file.</param>
    /// <param name="time">The clock.</param>
    /// <param name="replace">Whether a file that is there may be replaced.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<Outcome<WholeFarmManifest>> RunAsync(Book book, string path, TimeProvider time, bool replace, CancellationToken stop = default)
    {
        WholeFarmManifest? manifest = null;
        var written = await SafeWriting.WriteAsync(
            path,
            async stream => manifest = await WholeFarmWriting.WriteAsync(book, stream, time.GetUtcNow(), stop),
            Faults,
            replace);
        return written.Map(_ => manifest!);
    }

    private static ImmutableArray<Problem> Faults(string path)
    {
        var looked = WholeFarmFile.Open(path);
        if (looked.HasValue) looked.Value.Dispose();
        return [.. looked.Refusals];
    }
}
