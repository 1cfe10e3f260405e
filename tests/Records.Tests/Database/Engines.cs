using Watersown.Records.Database;

namespace Watersown.Database;

/// <summary>Both engines, so that every test of the book runs on each.</summary>
public enum Engine
{
    Sqlite,
    Postgres,
}

/// <summary>A place for a book that nobody else uses, gone afterwards.</summary>
public sealed class Shelf : IAsyncDisposable
{
    private readonly Engine engine;

    private Shelf(Engine engine, string folder, string connection) => (this.engine, Folder, Connection) = (engine, folder, connection);

    /// <summary>Rows of every theory over the engines.</summary>
    public static TheoryData<Engine> Engines => [Engine.Sqlite, Engine.Postgres];

    /// <summary>A folder beside the book.</summary>
    public string Folder { get; }

    public string Connection { get; }

    public static async Task<Shelf> OfAsync(Engine engine)
    {
        var folder = Directory.CreateTempSubdirectory("watersown-book-").FullName;
        return new Shelf(engine, folder, engine == Engine.Sqlite ? Path.Combine(folder, "farm.watersown") : await PostgresServer.NewDatabaseAsync());
    }

    public async Task<Book> OpenAsync(TimeProvider? time = null) => (await Book.OpenAsync(Connection, time)).Value;

    public async ValueTask DisposeAsync()
    {
        if (engine == Engine.Postgres) await PostgresServer.DropAsync(Connection);
        Directory.Delete(Folder, recursive: true);
    }
}
