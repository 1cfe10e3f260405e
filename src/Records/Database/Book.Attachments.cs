using System.Data.Common;
using System.Globalization;
using Dapper;

namespace Watersown.Records.Database;

/// <summary>A photo that a mark names.</summary>
/// <param name="Id">32 lower-case hexadecimal digits, made by the device.</param>
/// <param name="MediaType">JPEG, PNG or WebP.</param>
/// <param name="SizeBytes">How large.</param>
/// <param name="Sha256">Digest of the bytes.</param>
/// <param name="Received">When it came in.</param>
/// <param name="Sender">Who was signed in.</param>
public sealed record Attachment(string Id, string MediaType, long SizeBytes, string Sha256, DateTimeOffset Received, string? Sender);

public sealed partial class Book
{
    private const string AttachmentColumns = "SELECT id, media_type, size_bytes, sha256, received, sender FROM attachments ";

    /// <summary>Keeps a photo; the same one sent twice is one photo.</summary>
    public Task<Outcome<Attachment>> AddAttachmentAsync(string id, string mediaType, ReadOnlyMemory<byte> content, string? sender = null, CancellationToken stop = default)
    {
        var problem = AttachmentFault(id, mediaType, content.Span);
        return problem is null
            ? WriteAsync(connection => AddAttachmentAsync(connection, id, mediaType, content, sender, time.GetUtcNow()), stop)
            : Task.FromResult(Outcome<Attachment>.Refuse(problem));
    }

    public Task<Attachment?> AttachmentAsync(string id, CancellationToken stop = default) => ReadAsync(connection => AttachmentAsync(connection, id), stop);

    public Task<byte[]?> AttachmentContentAsync(string id, CancellationToken stop = default) => ReadAsync(connection => ContentAsync(connection, id), stop);

    internal static Problem? AttachmentFault(string id, string mediaType, ReadOnlySpan<byte> content)
    {
        if (!BookLimits.IsMarkId(id)) return BookProblems.AttachmentName.At("photo", ("value", id));
        if (content.Length > BookLimits.AttachmentBytesMost) return BookProblems.AttachmentTooLarge.At(id, ("value", Megabytes(content.Length)), ("limit", Megabytes(BookLimits.AttachmentBytesMost)));
        return PhotoKind.Of(content) != mediaType ? BookProblems.AttachmentNotAPhoto.At(id, ("value", mediaType)) : null;
    }

    internal static async Task<Outcome<Attachment>> AddAttachmentAsync(DbConnection connection, string id, string mediaType, ReadOnlyMemory<byte> content, string? sender, DateTimeOffset now)
    {
        var attachment = new Attachment(id, mediaType, content.Length, CanonicalJson.Digest(content.Span), now, sender);
        if (await AttachmentAsync(connection, id) is { } there)
            return there.Sha256 == attachment.Sha256 ? Outcome<Attachment>.Of(there) : Outcome<Attachment>.Refuse(BookProblems.AttachmentDiffers.At(id));
        await connection.ExecuteAsync(
            "INSERT INTO attachments (id, received, sender, media_type, size_bytes, sha256, content) VALUES (@Id, @Received, @Sender, @MediaType, @SizeBytes, @Sha256, @content)",
            new { attachment.Id, attachment.Received, attachment.Sender, attachment.MediaType, attachment.SizeBytes, attachment.Sha256, content = content.ToArray() });
        return Outcome<Attachment>.Of(attachment);
    }

    internal static async Task<ImmutableArray<Attachment>> AttachmentsAsync(DbConnection connection) => [.. await connection.QueryAsync<Attachment>(AttachmentColumns + "ORDER BY received, id")];

    internal static Task<byte[]?> ContentAsync(DbConnection connection, string id) => connection.QuerySingleOrDefaultAsync<byte[]?>("SELECT content FROM attachments WHERE id = @id", new { id });

    private static Task<Attachment?> AttachmentAsync(DbConnection connection, string id) => connection.QuerySingleOrDefaultAsync<Attachment>(AttachmentColumns + "WHERE id = @id", new { id });

    private static string Megabytes(int bytes) => (bytes / 1024.0 / 1024.0).ToString("0.0", CultureInfo.InvariantCulture) + " MB";
}
