using System.Buffers;
using System.Text;
using System.Text.Json;
using Microsoft.JSInterop;

namespace Watersown.Pocket.Keeping;

/// <summary>The browser's own database, through one small script.</summary>
public sealed class BrowserDevice : IDevice, IDisposable
{
    private readonly IJSObjectReference script;
    private readonly DotNetObjectReference<BrowserDevice> self;

    private BrowserDevice(IJSObjectReference script)
    {
        this.script = script;
        self = DotNetObjectReference.Create(this);
    }

    public event Action<string>? Heard;

    public bool Keeps => true;

    /// <summary>Opens the browser's database; nothing where the browser gives none.</summary>
    public static async Task<BrowserDevice?> OpenAsync(IJSObjectReference script)
    {
        try
        {
            await script.InvokeAsync<bool>("ready");
        }
        catch (JSException)
        {
            return null;
        }

        var device = new BrowserDevice(script);
        await script.InvokeVoidAsync("listen", device.self);
        return device;
    }

    [JSInvokable("Heard")]
    public void Hear(string word) => Heard?.Invoke(word);

    public async Task<string?> PaperAsync(string name) => await script.InvokeAsync<string?>("paper", name);

    public async Task KeepPapersAsync(params ImmutableArray<(string Name, string? Text)> papers) => await script.InvokeVoidAsync("keepPapers", Written(json =>
    {
        json.WriteStartObject();
        foreach (var (name, text) in papers) json.WriteString(name, text);
        json.WriteEndObject();
    }));

    public async Task<MarksSince> MarksAsync(long since)
    {
        using var read = JsonDocument.Parse(await script.InvokeAsync<string>("marks", since));
        var marks = read.RootElement.GetProperty("marks").EnumerateArray().Select(m => new KeptMark(Text(m, "id")!, Text(m, "text")!, State(Text(m, "state"))) { Why = Text(m, "why") });
        return new MarksSince([.. marks], read.RootElement.GetProperty("turn").GetInt64());
    }

    public async Task KeepMarksAsync(ImmutableArray<KeptMark> marks) => await script.InvokeVoidAsync("keepMarks", Written(json =>
    {
        json.WriteStartArray();
        foreach (var mark in marks)
        {
            json.WriteStartObject();
            json.WriteString("id", mark.Id);
            json.WriteString("text", mark.Text);
            json.WriteString("state", Name(mark.State));
            if (mark.Why is { } why) json.WriteString("why", why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }));

    public async Task<ImmutableArray<KeptPhoto>> PhotosAsync()
    {
        using var list = JsonDocument.Parse(await script.InvokeAsync<string>("photos"));
        return [.. list.RootElement.EnumerateArray().Select(p => new KeptPhoto(Text(p, "id")!, State(Text(p, "state")), p.GetProperty("size").GetInt32()))];
    }

    public async Task<byte[]?> PhotoAsync(string id) => await script.InvokeAsync<byte[]?>("photo", id);

    public async Task SettlePhotoAsync(string id, SendState state) => await script.InvokeVoidAsync("settlePhoto", id, Name(state));

    public async Task<bool> HoldAsync(string work) => await script.InvokeAsync<bool>("hold", work);

    public async Task ReleaseAsync(string work) => await script.InvokeVoidAsync("release", work);

    public async Task TellTabsAsync(string word) => await script.InvokeVoidAsync("tellTabs", word);

    public void Dispose() => self.Dispose();

    private static string Written(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer)) write(json);
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static string? Text(JsonElement thing, string name) => thing.TryGetProperty(name, out var text) ? text.GetString() : null;

    private static string Name(SendState state) => state switch
    {
        SendState.Unsent => "unsent",
        SendState.Sent => "sent",
        SendState.Refused => "refused",
        SendState.LetGo => "let-go",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static SendState State(string? name) => name switch
    {
        "sent" => SendState.Sent,
        "refused" => SendState.Refused,
        "let-go" => SendState.LetGo,
        _ => SendState.Unsent,
    };
}
