using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Web.SignIn;

namespace Watersown.Web.Season;

/// <summary>Photos that marks name. A photo is shown as a picture and never as anything else, whatever it was called.</summary>
internal sealed class PhotoEndpoints(Book book, RateLimits limits)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPut("/api/attachments/{id}", TakeAsync).WithMetadata(Access.Markers, new BodySize(BookLimits.AttachmentBytesMost));
        routes.MapGet("/api/attachments/{id}", ShowAsync).WithMetadata(Access.Readers);
    }

    private async Task TakeAsync(HttpContext context, string id)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is not null && limits.Uploads.Count(caller.Key) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return;
        }

        var type = (context.Request.ContentType ?? string.Empty).Split(';')[0].Trim().ToLowerInvariant();
        var kept = await book.AddAttachmentAsync(id, type, body, caller.Session is null ? null : caller.Name, CancellationToken.None);
        if (kept.IsRefused) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, kept.Problems);
        else context.Response.StatusCode = StatusCodes.Status204NoContent;
    }

    private async Task ShowAsync(HttpContext context, string id)
    {
        if (await book.AttachmentAsync(id, context.RequestAborted) is not { } photo || await book.AttachmentContentAsync(id, context.RequestAborted) is not { } bytes)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoPhoto.At("photo"));
            return;
        }

        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        context.Response.Headers.ContentDisposition = "inline";
        await Reply.BytesAsync(context, StatusCodes.Status200OK, photo.MediaType, bytes);
    }
}
