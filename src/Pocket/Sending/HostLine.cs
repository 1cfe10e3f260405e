using System.Net;
using System.Net.Http.Headers;

namespace Watersown.Pocket.Sending;

/// <summary>How a question to the host ended.</summary>
public enum LineState
{
    /// <summary>The host answered.</summary>
    Reached,

    /// <summary>No answer, or not one of the host's: to be tried again later.</summary>
    NoAnswer,

    /// <summary>The host wants to know who asks.</summary>
    SignIn,

    /// <summary>The host understood and would not.</summary>
    Refused,
}

/// <summary>What the host said.</summary>
/// <param name="State">How it ended.</param>
/// <param name="Body">Its words; empty where there were none.</param>
public sealed record HostAnswer(LineState State, ReadOnlyMemory<byte> Body)
{
    public static HostAnswer None { get; } = new(LineState.NoAnswer, ReadOnlyMemory<byte>.Empty);
}

/// <summary>The line to the host: asks and sends, and never takes a stranger's page for an answer.</summary>
/// <param name="http">Carries it; its base address is the host's.</param>
public sealed class HostLine(HttpClient http)
{
    /// <summary>One bar of signal is slow, but past this it is no signal.</summary>
    public static TimeSpan Patience { get; } = TimeSpan.FromSeconds(25);

    /// <summary>Proves to the host that the desk's own page writes, for this session.</summary>
    public string? Token { get; set; }

    public Task<HostAnswer> AskAsync(string path) => SayAsync(HttpMethod.Get, path, null);

    public Task<HostAnswer> SendAsync(string path, ReadOnlyMemory<byte> body, string sort = "application/json")
    {
        var content = new ReadOnlyMemoryContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue(sort);
        return SayAsync(HttpMethod.Post, path, content);
    }

    public Task<HostAnswer> PutAsync(string path, ReadOnlyMemory<byte> body, string sort)
    {
        var content = new ReadOnlyMemoryContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue(sort);
        return SayAsync(HttpMethod.Put, path, content);
    }

    public Task<HostAnswer> TakeBackAsync(string path) => SayAsync(HttpMethod.Delete, path, null);

    private async Task<HostAnswer> SayAsync(HttpMethod method, string path, HttpContent? content)
    {
        using var request = new HttpRequestMessage(method, path) { Content = content };
        request.Headers.Add("X-Watersown", "1");
        request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/json"));
        if (Token is { } token) request.Headers.Add("X-Watersown-Token", token);
        using var patience = new CancellationTokenSource(Patience);
        try
        {
            using var answer = await http.SendAsync(request, patience.Token);
            var body = await answer.Content.ReadAsByteArrayAsync(patience.Token);
            return new HostAnswer(State(answer), body);
        }
        catch (Exception failure) when (failure is HttpRequestException or OperationCanceledException or IOException)
        {
            return HostAnswer.None;
        }
    }

    // A hotel's or a carrier's page answers 200 with a page: that is no answer of the host.
    private static LineState State(HttpResponseMessage answer) => (int)answer.StatusCode switch
    {
        >= 200 and < 300 when answer.StatusCode is HttpStatusCode.NoContent || answer.Content.Headers.ContentType?.MediaType is "application/json" => LineState.Reached,
        401 or 403 => LineState.SignIn,
        400 or 409 or 413 or 415 or 422 when answer.Content.Headers.ContentType?.MediaType is "application/json" or "application/problem+json" => LineState.Refused,
        413 => LineState.Refused,
        _ => LineState.NoAnswer,
    };
}
