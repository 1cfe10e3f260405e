using Watersown.Records.Database;
using Watersown.Records.Files.WholeFarm;

namespace Watersown.Records.Season;

/// <summary>Takes a whole-farm file into a book: all of it that the book does not have, or nothing.</summary>
public static class ImportFarm
{
    /// <summary>What was taken, with what was left out and why.</summary>
    /// <param name="path">The file; looked through before the book is touched.</param>
    /// <param name="open">Opens the book, once the file is known to be good.</param>
    /// <param name="stop">Gives up, and writes nothing.</param>
    public static async Task<Outcome<Joined>> RunAsync(string path, Func<Task<Outcome<Book>>> open, CancellationToken stop = default)
    {
        var looked = WholeFarmFile.Open(path);
        if (looked.IsRefused) return Outcome<Joined>.Refuse(looked.Problems);
        using var file = looked.Value;
        var opened = await open();
        if (opened.IsRefused) return Outcome<Joined>.Refuse(opened.Problems);
        await using var book = opened.Value;
        return await book.JoinAsync(file, stop);
    }

    /// <summary>The same into a book that is open already, and stays so.</summary>
    public static async Task<Outcome<Joined>> RunAsync(string path, Book book, CancellationToken stop = default)
    {
        // Looking through takes a while and waits for the disk: the caller's thread has other things to do.
        var looked = await Task.Run(() => WholeFarmFile.Open(path), stop);
        if (looked.IsRefused) return Outcome<Joined>.Refuse(looked.Problems);
        using var file = looked.Value;
        return await book.JoinAsync(file, stop);
    }
}
