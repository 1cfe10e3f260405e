using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace Watersown.Journeys;

/// <summary>The desk as a grower starts it, by the same command, on a free port and on the morning of the example farm's story.</summary>
public sealed class RunningHost : IAsyncDisposable
{
    public const string StoryMoment = "2026-05-08T04:50";

    // The first start of a run may build the desk.
    private static readonly TimeSpan StartsWithin = TimeSpan.FromMinutes(8);

    private readonly Process process;

    private readonly HttpClient client;

    private readonly StringBuilder said;

    private RunningHost(Process process, Uri address, StringBuilder said, bool hasFarm)
    {
        (this.process, this.said, Address, HasFarm) = (process, said, address, hasFarm);
        client = new HttpClient { BaseAddress = address, Timeout = TimeSpan.FromSeconds(60) };
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
    }

    public Uri Address { get; }

    public bool HasFarm { get; }

    /// <summary>Opens the desk on a book, which gets a farm where it is new and one is given.</summary>
    public static async Task<RunningHost> StartAsync(string book, string? farm = null, string at = StoryMoment, params string[] more)
    {
        var hasFarm = farm is not null || File.Exists(book);
        var port = FreePort();
        var start = new ProcessStartInfo(Path.Combine(ReferenceFile.RepositoryRoot, "script", "watersown")) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in (IEnumerable<string>)["desk", "--book", book, "--at", at, "--port", port.ToString(CultureInfo.InvariantCulture), "--plan-seconds", "0.5", .. farm is null ? (string[])[] : ["--farm", farm], .. more]) start.ArgumentList.Add(word);
        var heard = new StringBuilder();
        var desk = new Process { StartInfo = start };
        desk.OutputDataReceived += (_, line) => Hear(heard, line.Data);
        desk.ErrorDataReceived += (_, line) => Hear(heard, line.Data);
        desk.Start();
        desk.BeginOutputReadLine();
        desk.BeginErrorReadLine();
        var host = new RunningHost(desk, new UriBuilder(Uri.UriSchemeHttp, IPAddress.Loopback.ToString(), port).Uri, heard, hasFarm);
        try
        {
            await host.UntilAsync(StartsWithin, host.AnswersAsync, "open");
        }
        catch
        {
            await host.DisposeAsync();
            throw;
        }

        return host;
    }

    /// <summary>Waits until the desk has made a plan.</summary>
    public Task PlannedAsync() => UntilAsync(TimeSpan.FromMinutes(1), async () => (await DeskAsync()).TryGetProperty("plan_number", out var number) && number.GetInt32() > 0, "planned");

    /// <summary>Everything that the desk tells a device.</summary>
    public async Task<JsonElement> DeskAsync() => await client.GetFromJsonAsync<JsonElement>("api/desk");

    /// <summary>The marks of people in the book, in the order in which they came; the desk's own, of the plans that it made, are left out.</summary>
    public async Task<ImmutableArray<JsonElement>> MarksAsync() =>
        [.. (await client.GetFromJsonAsync<JsonElement>("api/changes?after=0")).GetProperty("marks").EnumerateArray().Where(m => m.GetProperty("device").GetString() != "desk")];

    /// <summary>The same, once there are so many: a head that says "all sent" may still speak of what was before.</summary>
    public async Task<ImmutableArray<JsonElement>> MarksAsync(int least)
    {
        await UntilAsync(TimeSpan.FromSeconds(20), async () => (await MarksAsync()).Length >= least, "told of " + least.ToString(CultureInfo.InvariantCulture) + " marks");
        return await MarksAsync();
    }

    /// <summary>Makes a sheet's link for somebody outside.</summary>
    public async Task<Uri> LinkAsync(string sheet, string person, string day)
    {
        using var answer = await client.PostAsJsonAsync("api/links", new Dictionary<string, string>(StringComparer.Ordinal) { ["sheet"] = sheet, ["person"] = person, ["day"] = day });
        var text = await answer.Content.ReadAsStringAsync();
        return answer.StatusCode == HttpStatusCode.Created ? new Uri(JsonElement.Parse(text).GetProperty("url").GetString()!) : throw new InvalidOperationException($"No {sheet} sheet for {person}: {text}");
    }

    /// <summary>Sends marks as a device does.</summary>
    public async Task SendAsync(IEnumerable<JsonElement> marks)
    {
        using var answer = await client.PostAsync("api/marks", new StringContent("{\"device\":\"a phone\",\"marks\":[" + string.Join(',', marks.Select(m => m.GetRawText())) + "]}", Encoding.UTF8, "application/json"));
        if (!answer.IsSuccessStatusCode) throw new InvalidOperationException("The marks were not taken: " + await answer.Content.ReadAsStringAsync());
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        if (!process.HasExited)
        {
            // Asked to stop first, so that the book is whole in one file; the command has become the desk itself.
            using (var ask = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)])) await ask.WaitForExitAsync();
            using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(10));
            try
            {
                await process.WaitForExitAsync(patience.Token);
            }
            catch (OperationCanceledException)
            {
                process.Kill(entireProcessTree: true);
                await process.WaitForExitAsync();
            }
        }

        process.Dispose();
    }

    private static void Hear(StringBuilder heard, string? line)
    {
        if (line is null) return;
        lock (heard) heard.AppendLine(line);
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private async Task<bool> AnswersAsync()
    {
        try
        {
            using var answer = await client.GetAsync("health");
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }

    private async Task UntilAsync(TimeSpan within, Func<Task<bool>> holds, string what)
    {
        var since = Stopwatch.StartNew();
        while (!await holds())
        {
            if (process.HasExited || since.Elapsed > within)
            {
                lock (said) throw new InvalidOperationException($"The desk is not {what} after {since.Elapsed.TotalSeconds:0} s. It said: {said}");
            }

            await Task.Delay(100);
        }
    }
}
