using System.Data.Common;
using System.Globalization;
using System.Text;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>A farm document as it was saved.</summary>
/// <param name="Version">1, 2, 3 without a gap.</param>
/// <param name="Saved">When.</param>
/// <param name="Who">By whom.</param>
/// <param name="Why">In their words.</param>
/// <param name="Document">The document, UTF-8.</param>
public sealed record FarmVersion(long Version, DateTimeOffset Saved, string Who, string Why, ReadOnlyMemory<byte> Document);

public sealed partial class Book
{
    /// <summary>
    /// Saves a farm document as a new version. One who changed an older version than the book has gets a problem and looks
    /// again; the same document sent twice is one version.
    /// </summary>
    /// <param name="document">The document, as <c>FarmReading</c> took it.</param>
    /// <param name="expectedVersion">The version that was changed; 0 for the first.</param>
    /// <param name="who">By whom.</param>
    /// <param name="why">In their words.</param>
    /// <param name="stop">Gives up.</param>
    public Task<Outcome<FarmVersion>> SaveFarmAsync(ReadOnlyMemory<byte> document, long expectedVersion, string who, string why, CancellationToken stop = default) =>
        WriteAsync(connection => SaveFarmAsync(connection, document, expectedVersion, who, why, time.GetUtcNow()), stop);

    /// <summary>The newest farm document; none in a new book.</summary>
    public Task<FarmVersion?> LatestFarmAsync(CancellationToken stop = default) => ReadAsync(LatestFarmAsync, stop);

    /// <summary>The farm as it was at a version.</summary>
    public Task<FarmVersion?> FarmAsync(long version, CancellationToken stop = default) => ReadAsync(async connection =>
        (await connection.QuerySingleOrDefaultAsync<FarmRow>(FarmColumns + "WHERE version = @version", new { version }))?.Read(), stop);

    private const string FarmColumns = "SELECT version, saved, who, why, sha256, document FROM farms ";

    internal static async Task<FarmVersion?> LatestFarmAsync(DbConnection connection) => (await LatestRowAsync(connection))?.Read();

    internal static async Task<ImmutableArray<FarmVersion>> FarmsAsync(DbConnection connection) =>
        [.. (await connection.QueryAsync<FarmRow>(FarmColumns + "ORDER BY version")).Select(r => r.Read())];

    internal static async Task<Outcome<FarmVersion>> SaveFarmAsync(DbConnection connection, ReadOnlyMemory<byte> document, long expectedVersion, string who, string why, DateTimeOffset now)
    {
        var (latest, text) = (await LatestRowAsync(connection), Encoding.UTF8.GetString(document.Span));
        var sha256 = CanonicalJson.Digest(text);
        var has = latest?.Version ?? 0;
        if (latest is not null && latest.Sha256 == sha256 && expectedVersion >= has - 1 && expectedVersion <= has) return Outcome<FarmVersion>.Of(latest.Read());
        if (has != expectedVersion) return Outcome<FarmVersion>.Refuse(BookProblems.FarmChanged.At("farm", ("value", Plain(expectedVersion)), ("limit", Plain(has))));
        var farm = new FarmVersion(has + 1, now, who, why, Encoding.UTF8.GetBytes(text));
        await InsertFarmAsync(connection, farm);
        return Outcome<FarmVersion>.Of(farm);
    }

    internal static Task<int> InsertFarmAsync(DbConnection connection, FarmVersion farm) => connection.ExecuteAsync(
        "INSERT INTO farms (version, saved, who, why, program, sha256, document) VALUES (@Version, @Saved, @Who, @Why, @Program, @sha256, @document)",
        new { farm.Version, farm.Saved, farm.Who, farm.Why, Program, sha256 = CanonicalJson.Digest(farm.Document.Span), document = Encoding.UTF8.GetString(farm.Document.Span) });

    private static Task<FarmRow?> LatestRowAsync(DbConnection connection) => connection.QueryFirstOrDefaultAsync<FarmRow>(FarmColumns + "ORDER BY version DESC LIMIT 1");

    private static string Plain(long number) => number.ToString(CultureInfo.InvariantCulture);

    private sealed record FarmRow(long Version, DateTimeOffset Saved, string Who, string Why, string Sha256, string Document)
    {
        public FarmVersion Read() => new(Version, Saved, Who, Why, Encoding.UTF8.GetBytes(Document));
    }
}
