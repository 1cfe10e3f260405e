using System.Data;
using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Watersown.Records.Database;

/// <summary>All in which the two engines differ. Everything else is one text of SQL that both accept.</summary>
internal abstract class Dialect : IAsyncDisposable
{
    public abstract string Name { get; }

    /// <summary>The file of the book, where it is one.</summary>
    public virtual string? File => null;

    /// <summary>How many tables there are, ours or not.</summary>
    public abstract string CountTables { get; }

    /// <summary>Narrows that count to the table @name.</summary>
    public abstract string AndTableNamed { get; }

    /// <summary>Holds where an id is one of @ids.</summary>
    public abstract string IdAmong { get; }

    /// <summary>Asks the engine whether its file is sound, and soon; none where there is no file. The answer is <c>ok</c>.</summary>
    public virtual string? QuickCheck => null;

    /// <summary>The same, whatever time it takes.</summary>
    public virtual string? WholeCheck => null;

    /// <summary>The engine that a text names: a server by its host; everything else is the path of a file.</summary>
    /// <exception cref="ArgumentException">It is neither.</exception>
    public static Dialect Of(string connection) => IsServer(connection) ? new Postgres(connection) : new Sqlite(connection, looksOnly: false);

    /// <summary>A file that is only looked at, and stays as it is to the last byte.</summary>
    public static Dialect Looking(string path) => new Sqlite(path, looksOnly: true);

    /// <summary>What the database of a server is called, in letters that every disk takes.</summary>
    public static string NameOf(string connection) =>
        new([.. (new NpgsqlConnectionStringBuilder(connection).Database ?? "farm").Select(c => char.IsAsciiLetterOrDigit(c) || c is '_' ? c : '-').Take(40)]);

    public static bool IsServer(string connection) => connection.Contains("Host=", StringComparison.OrdinalIgnoreCase);

    /// <summary>What a failure on opening says about what was given; none where it is the world that failed.</summary>
    public abstract ProblemKind? Blames(DbException failure);

    public abstract Task<DbConnection> OpenAsync(CancellationToken stop);

    /// <summary>Begins to write; there is one writer at a time, and what is committed is on disk.</summary>
    public abstract Task<DbTransaction> BeginWriteAsync(DbConnection connection, CancellationToken stop);

    /// <summary>Begins to read the book as it stands at one moment.</summary>
    public abstract Task<DbTransaction> BeginReadAsync(DbConnection connection, CancellationToken stop);

    public abstract ValueTask DisposeAsync();

    private sealed class Sqlite(string path, bool looksOnly) : Dialect
    {
        private readonly string text = new SqliteConnectionStringBuilder
        {
            DataSource = Path.GetFullPath(path),
            ForeignKeys = true,
            DefaultTimeout = 30,
            Mode = looksOnly ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWriteCreate,
            Pooling = !looksOnly,
        }.ToString();

        public override string Name => "SQLite";
        public override string? File { get; } = Path.GetFullPath(path);
        public override string CountTables => "SELECT COUNT(*) FROM sqlite_master WHERE type = 'table'";
        public override string AndTableNamed => " AND name = @name";
        public override string IdAmong => "id IN @ids";
        public override string QuickCheck => "PRAGMA quick_check(1)";
        public override string WholeCheck => "PRAGMA integrity_check(1)";

        public override ProblemKind? Blames(DbException failure) => failure is not SqliteException fault ? null : fault.SqliteErrorCode switch
        {
            SQLitePCL.raw.SQLITE_NOTADB => BookProblems.NotABook,
            SQLitePCL.raw.SQLITE_CORRUPT => BookProblems.Damaged,
            SQLitePCL.raw.SQLITE_CANTOPEN or SQLitePCL.raw.SQLITE_READONLY or SQLitePCL.raw.SQLITE_PERM => FileProblems.NotWritable,
            _ => null,
        };

        public override async Task<DbConnection> OpenAsync(CancellationToken stop)
        {
            var connection = new SqliteConnection(text);
            await connection.OpenAsync(stop);
            if (looksOnly) return connection;
            // FULL: the log is on disk before a commit returns, so that a power cut loses nothing that was acknowledged.
            await connection.ExecuteAsync("PRAGMA busy_timeout = 20000; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON");
            return connection;
        }

        // Not deferred: takes the one place to write at once, or waits for it.
        public override async Task<DbTransaction> BeginWriteAsync(DbConnection connection, CancellationToken stop) => await connection.BeginTransactionAsync(IsolationLevel.Serializable, stop);

        // The driver's word for deferred; what is read is committed all the same, as no cache is shared.
        public override async Task<DbTransaction> BeginReadAsync(DbConnection connection, CancellationToken stop) => await connection.BeginTransactionAsync(IsolationLevel.ReadUncommitted, stop);

        public override ValueTask DisposeAsync()
        {
            using var any = new SqliteConnection(text);
            SqliteConnection.ClearPool(any);
            return ValueTask.CompletedTask;
        }
    }

    private sealed class Postgres(string connection) : Dialect
    {
        private readonly NpgsqlDataSource source = NpgsqlDataSource.Create(connection);

        public override string Name => "PostgreSQL";
        public override string CountTables => "SELECT COUNT(*) FROM pg_tables WHERE schemaname = current_schema()";
        public override string AndTableNamed => " AND tablename = @name";
        public override string IdAmong => "id = ANY(@ids)";

        public override ProblemKind? Blames(DbException failure) => BookProblems.ServerRefuses;

        public override async Task<DbConnection> OpenAsync(CancellationToken stop) => await source.OpenConnectionAsync(stop);

        public override async Task<DbTransaction> BeginWriteAsync(DbConnection connection, CancellationToken stop)
        {
            var transaction = await connection.BeginTransactionAsync(IsolationLevel.ReadCommitted, stop);
            await connection.ExecuteAsync("SET LOCAL synchronous_commit TO on; SELECT pg_advisory_xact_lock(hashtext('watersown book'))");
            return transaction;
        }

        public override async Task<DbTransaction> BeginReadAsync(DbConnection connection, CancellationToken stop) => await connection.BeginTransactionAsync(IsolationLevel.RepeatableRead, stop);

        public override ValueTask DisposeAsync() => source.DisposeAsync();
    }
}
