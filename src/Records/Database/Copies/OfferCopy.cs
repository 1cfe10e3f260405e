using System.Globalization;

namespace Watersown.Records.Database.Copies;

/// <summary>Says to somebody whose book is damaged where the newest good copy is.</summary>
public static class OfferCopy
{
    /// <summary>The copy and how to bring it back, or that there is none.</summary>
    /// <param name="connection">The book.</param>
    /// <param name="folder">Where its copies stand; the usual place where not given.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<Problem> OfAsync(string connection, string? folder = null, CancellationToken stop = default)
    {
        var copies = CopyFolder.Of(connection, folder);
        var book = Dialect.IsServer(connection) ? "…" : connection;
        return await copies.NewestGoodAsync(stop) is { } good
            ? CopyProblems.GoodCopy.At(copies.Path,
                ("value", Moment(good.Copy.Made)), ("count", Wording.Say.Number(good.Counts.Marks)), ("copy", good.Copy.Path), ("book", book))
            : CopyProblems.NoCopy.At(copies.Path, ("value", copies.Path));
    }

    /// <summary>A moment as it is told of a book and its copies, which know no farm's clock.</summary>
    public static string Moment(DateTimeOffset moment) => moment.ToUniversalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " UTC";
}
