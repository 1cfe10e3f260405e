using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace Watersown.Records.Database;

/// <summary>
/// All that one farm keeps: marks, farm documents, issued plans, photos, people, links. A file of its own, or a database on
/// a server. One writer at a time; what was answered is on disk. Safe to use from many threads at once.
/// </summary>
public sealed partial class Book : IAsyncDisposable
{
    internal const string IdentitySetting = "book";

    private readonly Dialect dialect;

    private readonly TimeProvider time;

    private readonly SemaphoreSlim writing = new(1, 1);

    private readonly MarkQueue queue;

    private readonly FileStream? hold;

    private Book(Dialect dialect, TimeProvider time, FileStream? hold)
    {
        (this.dialect, this.time, this.hold) = (dialect, time, hold);
        queue = new MarkQueue(WriteSendsAsync);
    }

    /// <summary>The engine by the name that people know it by.</summary>
    public string Engine => dialect.Name;

    /// <summary>The file, where the book is one.</summary>
    public string? File => dialect.File;

    /// <summary>Form of the book: the newest that this program knows.</summary>
    public static long Form => Migrations.Newest;

    /// <summary>Version of this program, kept beside what it wrote.</summary>
    internal static string Program { get; } = typeof(Book).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";

    /// <summary>Opens a book, makes it where there is none, and brings an older one to the newest form.</summary>
    /// <param name="connection">Path of a file, or a text with <c>Host=</c> for a PostgreSQL server.</param>
    /// <param name="time">The clock; the machine's where not given.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<Outcome<Book>> OpenAsync(string connection, TimeProvider? time = null, CancellationToken stop = default)
    {
        MomentColumn.Register();
        var (clock, called) = (time ?? TimeProvider.System, Called(connection));
        Dialect engine;
        try
        {
            engine = Dialect.Of(connection);
        }
        catch (ArgumentException fault)
        {
            return Refuse(BookProblems.NotAConnection.At(called, ("value", fault.Message.TrimEnd('.'))));
        }

        var held = engine.File is { } file ? BookHold.Shared(file) : (File: null, InUse: false);
        var problem = held.InUse ? BookProblems.BeingRestored.At(called) : await FaultAsync(engine, called, connection => Migrations.RunAsync(engine, connection, called, clock, stop), stop);
        if (problem is null) return Own(engine, clock, held.File);
        await CloseAsync(engine, held.File);
        return Refuse(problem);
    }

    /// <summary>A file that is only looked at: nothing in it or beside it changes.</summary>
    internal static async Task<Outcome<Book>> LookAsync(string path, CancellationToken stop)
    {
        MomentColumn.Register();
        if (!System.IO.File.Exists(path)) return Refuse(FileProblems.NotThere.At(path));
        var engine = Dialect.Looking(path);
        var problem = await FaultAsync(engine, path, connection => Migrations.LookAsync(engine, connection, path, stop), stop);
        if (problem is null) return Own(engine, TimeProvider.System, null);
        await CloseAsync(engine, null);
        return Refuse(problem);
    }

    /// <summary>The same, but makes none: a file that is not there is told.</summary>
    public static Task<Outcome<Book>> OpenThereAsync(string connection, TimeProvider? time = null, CancellationToken stop = default) =>
        !string.IsNullOrEmpty(connection) && !Dialect.IsServer(connection) && !System.IO.File.Exists(connection)
            ? Task.FromResult(Refuse(FileProblems.NotThere.At(connection)))
            : OpenAsync(connection, time, stop);

    /// <summary>Writes what waits, then closes.</summary>
    public async ValueTask DisposeAsync()
    {
        await queue.DisposeAsync();
        await CloseAsync(dialect, hold);
        writing.Dispose();
    }

    /// <summary>One transaction; a failure in it leaves the book as it was.</summary>
    internal async Task<T> WriteAsync<T>(Func<DbConnection, Task<T>> work, CancellationToken stop = default)
    {
        await writing.WaitAsync(stop);
        try
        {
            await using var connection = await dialect.OpenAsync(stop);
            await using var transaction = await dialect.BeginWriteAsync(connection, stop);
            var result = await work(connection);
            // Past this point the answer is owed, whoever has stopped waiting for it.
            await transaction.CommitAsync(CancellationToken.None);
            return result;
        }
        catch (DbException failure)
        {
            throw new BookFailedException(failure);
        }
        finally
        {
            writing.Release();
        }
    }

    /// <summary>The book as it stands at one moment, however many questions are asked.</summary>
    internal async Task<T> ReadAsync<T>(Func<DbConnection, Task<T>> work, CancellationToken stop = default)
    {
        try
        {
            await using var connection = await dialect.OpenAsync(stop);
            await using var transaction = await dialect.BeginReadAsync(connection, stop);
            return await work(connection);
        }
        catch (DbException failure)
        {
            throw new BookFailedException(failure);
        }
    }

    [SuppressMessage("Reliability", "CA2000", Justification = "Whoever opens a book closes it.")]
    private static Outcome<Book> Own(Dialect engine, TimeProvider clock, FileStream? hold) => Outcome<Book>.Of(new Book(engine, clock, hold));

    private static async ValueTask CloseAsync(Dialect engine, FileStream? hold)
    {
        await engine.DisposeAsync();
        if (hold is not null) await hold.DisposeAsync();
    }

    private static async Task<Problem?> FaultAsync(Dialect dialect, string where, Func<DbConnection, Task<Problem?>> look, CancellationToken stop)
    {
        try
        {
            await using var connection = await dialect.OpenAsync(stop);
            return await look(connection);
        }
        catch (DbException failure) when (dialect.Blames(failure) is { } kind)
        {
            return kind.At(where, ("value", failure.Message.TrimEnd('.')));
        }
        catch (DbException failure)
        {
            throw new BookFailedException(failure);
        }
    }

    /// <summary>A connection text holds a password, so it is never told back.</summary>
    private static string Called(string connection) => Dialect.IsServer(connection) ? "PostgreSQL" : connection;

    private static Outcome<Book> Refuse(Problem problem) => Outcome<Book>.Refuse(problem);
}
