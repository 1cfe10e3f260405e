using System.Text.Json;

namespace Watersown.Web.Edge;

/// <summary>A short form: a few words under a few names, as a browser's form or as a JSON object of texts.</summary>
internal static class ShortForm
{
    private const int NamesMost = 20;

    /// <summary>The words by their names; nothing where it was no form, which has been answered then.</summary>
    public static async Task<Dictionary<string, string>?> ReadAsync(HttpContext context)
    {
        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return null;
        }

        var read = context.Request.HasJsonContentType() ? FromJson(body) : context.Request.ContentType?.StartsWith("application/x-www-form-urlencoded", StringComparison.OrdinalIgnoreCase) == true ? FromForm(body) : null;
        if (read is null) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, HostProblems.NotThisBody.At(string.Empty, ("limit", "a short form or a JSON object of texts")));
        return read;
    }

    private static Dictionary<string, string>? FromJson(ReadOnlyMemory<byte> body)
    {
        try
        {
            using var document = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = 4 });
            if (document.RootElement.ValueKind != JsonValueKind.Object) return null;
            var read = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var member in document.RootElement.EnumerateObject().Take(NamesMost))
            {
                read[member.Name] = member.Value.ValueKind switch
                {
                    JsonValueKind.String => member.Value.GetString()!,
                    JsonValueKind.Number => member.Value.GetRawText(),
                    _ => string.Empty,
                };
            }

            return read;
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            // Not JSON, or a text with half a letter in it.
            return null;
        }
    }

    private static Dictionary<string, string> FromForm(ReadOnlyMemory<byte> body)
    {
        var read = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var pair in System.Text.Encoding.UTF8.GetString(body.Span).Split('&', NamesMost + 1).Take(NamesMost))
        {
            var parts = pair.Split('=', 2);
            read[Plain(parts[0])] = parts.Length > 1 ? Plain(parts[1]) : string.Empty;
        }

        return read;
    }

    private static string Plain(string text) => Uri.UnescapeDataString(text.Replace('+', ' '));
}
