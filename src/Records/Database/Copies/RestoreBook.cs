using System.Globalization;
using Watersown.Records.Files.WholeFarm;
using Watersown.Records.Season;

namespace Watersown.Records.Database.Copies;

/// <summary>A book that stands where a copy was brought back to.</summary>
/// <param name="Counts">What is in it.</param>
/// <param name="Kept">Where the book stands that was there before; none where there was none.</param>
public sealed record RestoredBook(BookCounts Counts, string? Kept);

/// <summary>Puts a copy in the place of a book. The copy stays; what was in the place is kept beside it, never written over.</summary>
public static class RestoreBook
{
    /// <summary>The book as it stands now, or everything that keeps the copy from its place; nothing was changed then.</summary>
    /// <param name="copy">A copy as the desk makes it, or a whole-farm file.</param>
    /// <param name="connection">The place: a file, or a database.</param>
    /// <param name="replace">Whether a book that is there may be put aside.</param>
    /// <param name="time">The clock.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<Outcome<RestoredBook>> RunAsync(string copy, string connection, bool replace, TimeProvider time, CancellationToken stop = default)
    {
        if (!File.Exists(copy)) return Refuse(FileProblems.NotThere.At(copy));
        var looked = await CopyFolder.LookAsync(copy, stop);
        if (looked.IsRefused) return Refuse([.. looked.Problems]);
        if (!Dialect.IsServer(connection)) return await ToFileAsync(copy, Path.GetFullPath(connection), replace, time, stop);
        if (await CopyFolder.IsZipAsync(copy, stop)) return await ToServerAsync(copy, connection, replace, time, stop);
        return await ThroughFileAsync(copy, connection, replace, time, stop);
    }

    private static async Task<Outcome<RestoredBook>> ToFileAsync(string copy, string path, bool replace, TimeProvider time, CancellationToken stop)
    {
        if (File.Exists(path) && !replace) return Refuse(CopyProblems.BookIsThere.At(path));
        var beside = path + ".part-" + Guid.NewGuid().ToString("N")[..8];
        try
        {
            // Held to the end, so that no desk opens the book while it changes.
            using var held = BookHold.Alone(path);
            if (held is null) return Refuse(CopyProblems.BookIsOpen.At(path));
            OwnFile.Make(beside);
            var problems = await FillAsync(copy, beside, time, stop);
            if (problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse)) return Refuse([.. problems]);
            var made = await CopyFolder.LookAsync(beside, stop);
            if (made.IsRefused) return Refuse([.. made.Problems]);
            OwnFile.ToDisk(beside);
            var kept = File.Exists(path) ? PutAside(path, time) : null;
            // A log that is left of an old book would be taken for one of the new.
            foreach (var log in new[] { path + "-wal", path + "-shm" }.Where(File.Exists)) File.Delete(log);
            File.Move(beside, path, overwrite: true);
            return Outcome<RestoredBook>.Of(new RestoredBook(made.Value, kept), problems);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Refuse(FileProblems.NotWritable.At(path, ("value", BookFailedException.Cause(failure))));
        }
        finally
        {
            foreach (var part in new[] { beside, beside + "-wal", beside + "-shm", beside + BookHold.Ending }.Where(File.Exists)) File.Delete(part);
        }
    }

    /// <summary>Makes the new book in a file of its own, closed and whole.</summary>
    private static async Task<ImmutableArray<Problem>> FillAsync(string copy, string beside, TimeProvider time, CancellationToken stop)
    {
        var zip = await CopyFolder.IsZipAsync(copy, stop);
        if (!zip) File.Copy(copy, beside, overwrite: true);
        OwnFile.Close(beside);
        var opened = await Book.OpenAsync(beside, time, stop);
        if (opened.IsRefused) return opened.Problems;
        await using var book = opened.Value;
        if (!zip)
        {
            await book.RenameAsync();
            return [];
        }

        var joined = await ImportFarm.RunAsync(copy, book, stop);
        return joined.IsRefused ? joined.Problems : [.. joined.Problems, CopyProblems.WithoutSecrets.At(copy)];
    }

    /// <summary>The old book with its log, under a name of its own. Copied and not moved: until the new one stands there, the old one does.</summary>
    private static string PutAside(string path, TimeProvider time)
    {
        var plain = path + ".before-" + time.GetUtcNow().ToUniversalTime().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
        var aside = plain;
        for (var more = 2; File.Exists(aside); more++) aside = plain + "-" + more.ToString(CultureInfo.InvariantCulture);
        foreach (var ending in new[] { string.Empty, "-wal" }.Where(e => File.Exists(path + e)))
        {
            File.Copy(path + ending, aside + ending);
            OwnFile.ToDisk(aside + ending);
        }

        return aside;
    }

    /// <summary>A server cannot take a file of the other engine: it goes through the open form.</summary>
    private static async Task<Outcome<RestoredBook>> ThroughFileAsync(string copy, string connection, bool replace, TimeProvider time, CancellationToken stop)
    {
        var folder = Directory.CreateTempSubdirectory("watersown-restore-");
        try
        {
            var looked = await Book.LookAsync(copy, stop);
            if (looked.IsRefused) return Refuse([.. looked.Problems]);
            await using var book = looked.Value;
            var zip = Path.Combine(folder.FullName, "farm.zip");
            var written = await ExportFarm.RunAsync(book, zip, time, replace: false, stop);
            return written.IsRefused ? Refuse([.. written.Problems]) : await ToServerAsync(zip, connection, replace, time, stop);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<Outcome<RestoredBook>> ToServerAsync(string zip, string connection, bool replace, TimeProvider time, CancellationToken stop)
    {
        using var file = WholeFarmFile.Open(zip).Value;
        var opened = await Book.OpenAsync(connection, time, stop);
        if (opened.IsRefused) return Refuse([.. opened.Problems]);
        await using var book = opened.Value;
        if (await book.OthersAsync(stop)) return Refuse(CopyProblems.BookIsOpen.At("PostgreSQL"));
        if (!(await book.CountsAsync(stop)).IsEmpty && !replace) return Refuse(CopyProblems.BookIsThere.At("PostgreSQL"));
        var aside = "before_" + time.GetUtcNow().ToUniversalTime().ToString("yyyyMMdd_HHmmss_fff", CultureInfo.InvariantCulture);
        var (joined, kept) = await book.ReplaceAsync(file, aside, stop);
        return joined.IsRefused ? Refuse([.. joined.Problems]) : Outcome<RestoredBook>.Of(new RestoredBook(await book.CountsAsync(stop), kept), [.. joined.Problems, CopyProblems.WithoutSecrets.At(zip)]);
    }

    private static Outcome<RestoredBook> Refuse(params IEnumerable<Problem> problems) => Outcome<RestoredBook>.Refuse(problems);
}
