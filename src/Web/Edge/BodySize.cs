using System.Globalization;
using Microsoft.AspNetCore.Http.Features;

namespace Watersown.Web.Edge;

/// <summary>The most that an endpoint reads; every endpoint that takes a body names one.</summary>
/// <param name="Bytes">Most bytes of a body.</param>
internal sealed record BodySize(long Bytes)
{
    public const int Kilobyte = 1024;

    public const int Megabyte = 1024 * 1024;

    /// <summary>What an endpoint takes that names nothing: a short form.</summary>
    public static BodySize Usual { get; } = new(16 * Kilobyte);

    /// <summary>Told to the server before anything is read.</summary>
    public static void Limit(HttpContext context)
    {
        var most = Of(context).Bytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } feature) feature.MaxRequestBodySize = most;
    }

    public static BodySize Of(HttpContext context) => context.GetEndpoint()?.Metadata.GetMetadata<BodySize>() ?? Usual;

    public static string Said(HttpContext context)
    {
        var most = Of(context).Bytes;
        return most >= Megabyte ? (most / Megabyte).ToString(CultureInfo.InvariantCulture) + " MB" : (most / Kilobyte).ToString(CultureInfo.InvariantCulture) + " kB";
    }

    /// <summary>The whole body; nothing where it is larger than the endpoint takes, whatever it said of its length.</summary>
    public static async Task<ReadOnlyMemory<byte>?> ReadAsync(HttpContext context)
    {
        var most = Of(context).Bytes;
        if (context.Request.ContentLength > most) return null;
        using var kept = new MemoryStream(context.Request.ContentLength is { } length ? (int)length : 0);
        var piece = new byte[16 * Kilobyte];
        for (int count; (count = await context.Request.Body.ReadAsync(piece, context.RequestAborted)) > 0;)
        {
            await kept.WriteAsync(piece.AsMemory(0, count), context.RequestAborted);
            if (kept.Length > most) return null;
        }

        return kept.GetBuffer().AsMemory(0, (int)kept.Length);
    }

    /// <summary>The whole body into a new file; false where it is larger than the endpoint takes.</summary>
    public static async Task<bool> KeepAsync(HttpContext context, string path)
    {
        var most = Of(context).Bytes;
        if (context.Request.ContentLength > most) return false;
        await using var kept = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        var piece = new byte[64 * Kilobyte];
        for (int count; (count = await context.Request.Body.ReadAsync(piece, context.RequestAborted)) > 0;)
        {
            await kept.WriteAsync(piece.AsMemory(0, count), context.RequestAborted);
            if (kept.Length > most) return false;
        }

        return true;
    }

    public static Task TooLargeAsync(HttpContext context)
    {
        context.Response.Headers.Connection = "close";
        return Reply.ProblemsAsync(context, StatusCodes.Status413PayloadTooLarge, HostProblems.TooLarge.At(string.Empty, ("limit", Said(context))));
    }
}
