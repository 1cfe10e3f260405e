using System.Globalization;
using Watersown.Records.Season;

namespace Watersown.Records.Database.Copies;

/// <summary>A copy of a book.</summary>
/// <param name="Path">The file: a book of its own, or a whole-farm file where the book is on a server.</param>
/// <param name="Made">When, as its name tells.</param>
public sealed record BookCopy(string Path, DateTimeOffset Made);

/// <summary>A copy that was opened and found whole.</summary>
/// <param name="Copy">The copy.</param>
/// <param name="Counts">What is in it.</param>
public sealed record CheckedCopy(BookCopy Copy, BookCounts Counts);

/// <summary>The folder in which the copies of one book stand. A copy comes into it whole and checked, or not at all.</summary>
public sealed class CopyFolder
{
    private const string Moment = "yyyyMMdd-HHmmss";

    private const string Unfinished = ".part-";

    /// <summary>What a copy that was broken off is left alone for: it may still be being written.</summary>
    private static readonly TimeSpan unfinishedMost = TimeSpan.FromHours(6);

    private readonly string stem;

    private readonly string ending;

    private CopyFolder(string path, string stem, string ending) => (Path, this.stem, this.ending) = (path, stem, ending);

    public string Path { get; }

    /// <summary>Where copies of a book stand when nobody says where.</summary>
    public static string UsualPath(string connection) =>
        System.IO.Path.Combine(Dialect.IsServer(connection) ? "." : System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(connection))!, "backups");

    /// <summary>The copies of a book.</summary>
    /// <param name="connection">The book: a file, or the connection text of a server.</param>
    /// <param name="path">The folder; the usual one where not given.</param>
    public static CopyFolder Of(string connection, string? path = null) => Dialect.IsServer(connection)
        ? new(path ?? UsualPath(connection), Dialect.NameOf(connection), ".zip")
        : new(path ?? UsualPath(connection), System.IO.Path.GetFileNameWithoutExtension(connection), ".book");

    /// <summary>All copies of this book, newest first.</summary>
    public ImmutableArray<BookCopy> List() => !Directory.Exists(Path) ? [] :
        [.. Directory.EnumerateFiles(Path, stem + "-*" + ending).Select(Read).OfType<BookCopy>().OrderByDescending(c => c.Made).ThenByDescending(c => c.Path, StringComparer.Ordinal)];

    /// <summary>Makes a copy, opens it, holds every digest in it against what it is of, and only then gives it its name.</summary>
    public async Task<Outcome<CheckedCopy>> MakeAsync(Book book, TimeProvider time, CancellationToken stop = default)
    {
        var now = time.GetUtcNow();
        var path = Free(now);
        var beside = path + Unfinished + Guid.NewGuid().ToString("N")[..8];
        try
        {
            if (!Directory.Exists(Path)) MakeFolder();
            var before = await book.CountsAsync(stop);
            var made = book.File is null ? await ExportAsync(book, beside, time, before, stop) : await CopyAsync(book, beside, before, stop);
            if (made.IsRefused) return Outcome<CheckedCopy>.Refuse(made.Problems);
            File.Move(beside, path);
            return Outcome<CheckedCopy>.Of(new CheckedCopy(new BookCopy(path, Cut(now)), made.Value));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Outcome<CheckedCopy>.Refuse(CopyProblems.NotMade.At(Path, ("value", BookFailedException.Cause(failure))));
        }
        finally
        {
            if (File.Exists(beside)) File.Delete(beside);
        }
    }

    /// <summary>Takes away copies older than so long, but never the last one, and what was broken off long ago.</summary>
    /// <returns>What was taken away.</returns>
    public ImmutableArray<BookCopy> Prune(TimeSpan keep, DateTimeOffset now)
    {
        ImmutableArray<BookCopy> old = [.. List().Skip(1).Where(c => now - c.Made > keep)];
        foreach (var copy in old) File.Delete(copy.Path);
        foreach (var part in Directory.EnumerateFiles(Path, stem + "-*" + ending + Unfinished + "*"))
        {
            if (now - new DateTimeOffset(File.GetLastWriteTimeUtc(part), TimeSpan.Zero) > unfinishedMost) File.Delete(part);
        }

        return old;
    }

    /// <summary>The newest copy that opens and is whole; none where there is none.</summary>
    public async Task<CheckedCopy?> NewestGoodAsync(CancellationToken stop = default)
    {
        foreach (var copy in List())
        {
            var looked = await LookAsync(copy.Path, stop);
            if (looked.HasValue) return new CheckedCopy(copy, looked.Value);
        }

        return null;
    }

    /// <summary>What is in a copy, once all of it was held against its digests; or what is wrong with it.</summary>
    public static async Task<Outcome<BookCounts>> LookAsync(string path, CancellationToken stop = default)
    {
        if (await IsZipAsync(path, stop))
        {
            var opened = await Task.Run(() => Files.WholeFarm.WholeFarmFile.Open(path), stop);
            if (opened.IsRefused) return Outcome<BookCounts>.Refuse(opened.Problems);
            using var file = opened.Value;
            var told = file.Manifest;
            return Outcome<BookCounts>.Of(new BookCounts(told.Farms, told.Marks, told.Plans, told.Photos, told.Accounts, null));
        }

        var looked = await Book.LookAsync(path, stop);
        if (looked.IsRefused) return Outcome<BookCounts>.Refuse(looked.Problems);
        await using var copy = looked.Value;
        return await copy.CheckAsync(stop) is { } fault ? Outcome<BookCounts>.Refuse(fault) : Outcome<BookCounts>.Of(await copy.CountsAsync(stop));
    }

    internal static async Task<bool> IsZipAsync(string path, CancellationToken stop)
    {
        if (!File.Exists(path)) return false;
        await using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var head = new byte[4];
        return await stream.ReadAtLeastAsync(head, head.Length, throwOnEndOfStream: false, stop) == head.Length && head.AsSpan().StartsWith("PK"u8);
    }

    private static async Task<Outcome<BookCounts>> CopyAsync(Book book, string path, BookCounts before, CancellationToken stop)
    {
        // The engine fills an empty file that is there already: made first, so that nobody else can ever read it.
        OwnFile.Make(path);
        await book.CopyIntoAsync(path, stop);
        OwnFile.ToDisk(path);
        var looked = await LookAsync(path, stop);
        return looked.HasValue && !looked.Value.Holds(before) ? Outcome<BookCounts>.Refuse(CopyProblems.Lacks.At(path)) : looked;
    }

    private static async Task<Outcome<BookCounts>> ExportAsync(Book book, string path, TimeProvider time, BookCounts before, CancellationToken stop)
    {
        var written = await ExportFarm.RunAsync(book, path, time, replace: false, stop);
        if (written.IsRefused) return Outcome<BookCounts>.Refuse(written.Problems);
        OwnFile.Close(path);
        var told = written.Value;
        var counts = new BookCounts(told.Farms, told.Marks, told.Plans, told.Photos, told.Accounts, null);
        return counts.Holds(before) ? Outcome<BookCounts>.Of(counts) : Outcome<BookCounts>.Refuse(CopyProblems.Lacks.At(path));
    }

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(Path);
        else Directory.CreateDirectory(Path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private string Free(DateTimeOffset now)
    {
        var plain = System.IO.Path.Combine(Path, stem + "-" + now.ToUniversalTime().ToString(Moment, CultureInfo.InvariantCulture));
        var path = plain + ending;
        for (var more = 2; File.Exists(path); more++) path = plain + "-" + more.ToString(CultureInfo.InvariantCulture) + ending;
        return path;
    }

    private BookCopy? Read(string path)
    {
        var name = System.IO.Path.GetFileName(path);
        if (name.Length < stem.Length + 1 + Moment.Length + ending.Length) return null;
        return DateTimeOffset.TryParseExact(name.AsSpan(stem.Length + 1, Moment.Length), Moment, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var made) ? new BookCopy(path, made) : null;
    }

    private static DateTimeOffset Cut(DateTimeOffset now) => new(now.UtcTicks - (now.UtcTicks % TimeSpan.TicksPerSecond), TimeSpan.Zero);
}
