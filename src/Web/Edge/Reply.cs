using System.Buffers;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Watersown.Wording;

namespace Watersown.Web.Edge;

/// <summary>What every answer has in common: JSON that is never kept by anybody on the way, and problems in the asker's language.</summary>
internal static class Reply
{
    public const string Json = "application/json; charset=utf-8";

    private static readonly JsonWriterOptions Plainly = new() { Encoder = JavaScriptEncoder.Default };

    /// <summary>JSON written straight to the answer.</summary>
    public static async Task JsonAsync(HttpContext context, int status, Action<Utf8JsonWriter> body)
    {
        var buffer = new ArrayBufferWriter<byte>(1024);
        await using (var json = new Utf8JsonWriter(buffer, Plainly)) body(json);
        await BytesAsync(context, status, Json, buffer.WrittenMemory);
    }

    /// <summary><c>{ "name": [ { … }, { … } ] }</c>.</summary>
    public static Task ListAsync<T>(HttpContext context, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> item) =>
        JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteStartArray(name);
            foreach (var one in items)
            {
                json.WriteStartObject();
                item(json, one);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    public static async Task BytesAsync(HttpContext context, int status, string type, ReadOnlyMemory<byte> bytes)
    {
        var response = context.Response;
        response.StatusCode = status;
        response.ContentType = type;
        response.ContentLength = bytes.Length;
        if (!response.Headers.ContainsKey("Cache-Control")) response.Headers.CacheControl = "no-store";
        if (!HttpMethods.IsHead(context.Request.Method)) await response.BodyWriter.WriteAsync(bytes, context.RequestAborted);
    }

    /// <summary><c>{ "problems": [ { code, where, text } ] }</c>.</summary>
    public static Task ProblemsAsync(HttpContext context, int status, params IEnumerable<Problem> problems) =>
        JsonAsync(context, status, json =>
        {
            json.WriteStartObject();
            Write(json, problems, LanguageOf(context));
            json.WriteEndObject();
        });

    /// <summary>The list of problems as a member of an answer.</summary>
    public static void Write(Utf8JsonWriter json, IEnumerable<Problem> problems, Language language)
    {
        json.WriteStartArray("problems");
        foreach (var problem in problems)
        {
            json.WriteStartObject();
            json.WriteString("code", problem.Kind.Code);
            json.WriteString("where", problem.Where);
            json.WriteString("text", Say.Sentence(problem, language));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Said with the seconds to wait, for the person and for the program.</summary>
    public static Task TooOftenAsync(HttpContext context, TimeSpan wait)
    {
        var seconds = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        context.Response.Headers.RetryAfter = seconds;
        return ProblemsAsync(context, StatusCodes.Status429TooManyRequests, HostProblems.TooOften.At(string.Empty, ("value", seconds)));
    }

    /// <summary>The language that the asker's browser names first, of those that the desk speaks.</summary>
    public static Language LanguageOf(HttpContext context)
    {
        foreach (var part in context.Request.Headers.AcceptLanguage.ToString().Split(',', StringSplitOptions.TrimEntries))
        {
            if (part.StartsWith("es", StringComparison.OrdinalIgnoreCase)) return Language.Spanish;
            if (part.StartsWith("en", StringComparison.OrdinalIgnoreCase)) return Language.English;
        }

        return Language.English;
    }
}
