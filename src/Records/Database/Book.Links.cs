using Dapper;

namespace Watersown.Records.Database;

/// <summary>A sheet behind a link, for somebody without an account.</summary>
/// <param name="Id">Name of the link: the digest of its token, which opens nothing.</param>
/// <param name="Sheet">Which sheet, in the host's words.</param>
/// <param name="Whom">For whom.</param>
/// <param name="MadeBy">Who made it.</param>
/// <param name="Created">When.</param>
/// <param name="Expires">When it ends by itself.</param>
/// <param name="Withdrawn">When somebody took it back.</param>
public sealed record Link(string Id, string Sheet, string Whom, string MadeBy, DateTimeOffset Created, DateTimeOffset Expires, DateTimeOffset? Withdrawn)
{
    public bool IsLiveAt(DateTimeOffset now) => Withdrawn is null && Expires > now;
}

/// <summary>A link that was just made, with the token that is handed out once.</summary>
public sealed record NewLink(Link Link, string Token);

public sealed partial class Book
{
    private const string LinkColumns = "SELECT id, sheet, whom, made_by, created, expires, withdrawn FROM links ";

    public Task<NewLink> MakeLinkAsync(string sheet, string whom, string madeBy, TimeSpan lifetime, CancellationToken stop = default) => WriteAsync(async connection =>
    {
        var (token, now) = (Tokens.New(), time.GetUtcNow());
        var link = new Link(Tokens.IdOf(token), sheet, Cut(whom), madeBy, now, now + lifetime, null);
        await connection.ExecuteAsync(
            "INSERT INTO links (id, sheet, whom, made_by, created, expires) VALUES (@Id, @Sheet, @Whom, @MadeBy, @Created, @Expires)",
            new { link.Id, link.Sheet, link.Whom, link.MadeBy, link.Created, link.Expires });
        return new NewLink(link, token);
    }, stop);

    /// <summary>The link of a token, withdrawn and expired ones too; none where nobody ever made it.</summary>
    public Task<Link?> LinkAsync(string token, CancellationToken stop = default) => ReadAsync(connection =>
        connection.QuerySingleOrDefaultAsync<Link>(LinkColumns + "WHERE id = @id", new { id = Tokens.IdOf(token) }), stop);

    /// <summary>All links, newest first.</summary>
    public Task<ImmutableArray<Link>> LinksAsync(CancellationToken stop = default) => ReadAsync<ImmutableArray<Link>>(async connection =>
        [.. await connection.QueryAsync<Link>(LinkColumns + "ORDER BY created DESC, id")], stop);

    /// <summary>Takes a link back by its name; false where it was taken back before or never made.</summary>
    public Task<bool> WithdrawLinkAsync(string id, CancellationToken stop = default) => WriteAsync(async connection =>
        await connection.ExecuteAsync("UPDATE links SET withdrawn = @now WHERE id = @id AND withdrawn IS NULL", new { id, now = time.GetUtcNow() }) == 1, stop);
}
