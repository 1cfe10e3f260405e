using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Watersown.Documents.Logbooks;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>A host that is killed in the middle of sends: nothing that was acknowledged is lost, nothing is there twice.</summary>
public sealed class KilledDeskTests : IDisposable
{
    private const int Sends = 1_000;

    private readonly string folder = Directory.CreateTempSubdirectory("watersown-killed-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Killed_in_the_middle_of_a_thousand_sends_it_has_lost_and_doubled_nothing()
    {
        var (file, port) = (Path.Combine(folder, "farm.book"), FreePort());
        // One to three marks a send; every tenth brings one along that was sent before, as a phone does whose answer was lost.
        var sends = Enumerable.Range(0, Sends).Select(i => Enumerable.Range(0, 1 + (i % 3)).Select(_ => RunningDesk.NewId()).ToImmutableArray()).ToList();
        for (var i = 10; i < Sends; i += 10) sends[i] = sends[i].Add(sends[i - 1][0]);
        var marks = sends.SelectMany(s => s).ToHashSet(StringComparer.Ordinal);
        var acknowledged = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        var waiting = new ConcurrentQueue<ImmutableArray<string>>(sends);
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}"), Timeout = TimeSpan.FromSeconds(20) };
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        var desk = await StartAsync(client, file, port);
        var kills = 0;
        var sending = Enumerable.Range(0, 8).Select(_ => Task.Run(() => SendAllAsync(client, waiting, acknowledged))).ToArray();
        // Twice while sends are on their way; the phones send again what was not acknowledged.
        foreach (var at in (int[])[500, 1_200])
        {
            while (acknowledged.Count < at) await Task.Delay(1);
            desk.Kill();
            await desk.WaitForExitAsync();
            kills++;
            Assert.NotEqual(0, desk.ExitCode);
            desk.Dispose();
            var before = acknowledged.Keys.ToHashSet();
            await using (var book = (await Book.OpenAsync(file)).Value)
            {
                var there = (await book.MarksAfterAsync(0, int.MaxValue)).Select(m => m.Mark.Id).ToList();
                Assert.Equal(there.Count, there.Distinct().Count());
                Assert.Empty(before.Except(there));
                // Whole, too: what a kill cut off must not stand there as half a mark.
                Assert.All(await book.MarksAfterAsync(0, int.MaxValue), m => Assert.True(MarkReading.Read(System.Text.Encoding.UTF8.GetBytes(m.Mark.Body)).HasValue));
            }

            desk = await StartAsync(client, file, port);
        }

        await Task.WhenAll(sending).WaitAsync(TimeSpan.FromMinutes(2));
        using var all = await RunningDesk.JsonAsync(await client.GetAsync("/api/changes?after=0"));
        desk.Kill();
        await desk.WaitForExitAsync();
        desk.Dispose();
        Assert.Equal(2, kills);
        Assert.Equal(marks.Count, acknowledged.Count);
        Assert.Equal(marks.Order(StringComparer.Ordinal), all.RootElement.GetProperty("marks").EnumerateArray().Select(m => m.GetProperty("id").GetString()!).Where(marks.Contains).Order(StringComparer.Ordinal));
    }

    // As a phone does: what was not acknowledged is sent again, until it is.
    private static async Task SendAllAsync(HttpClient client, ConcurrentQueue<ImmutableArray<string>> waiting, ConcurrentDictionary<string, int> acknowledged)
    {
        while (waiting.TryDequeue(out var ids))
        {
            while (!ids.All(acknowledged.ContainsKey))
            {
                try
                {
                    using var answer = await client.PostAsync("/api/marks", RunningDesk.Send(ids.Select(id => RunningDesk.Mark(id))));
                    if (answer.StatusCode != HttpStatusCode.OK) continue;
                    using var json = await RunningDesk.JsonAsync(answer);
                    foreach (var kept in json.RootElement.GetProperty("kept").EnumerateArray()) acknowledged[kept.GetString()!] = 1;
                }
                catch (Exception lost) when (lost is HttpRequestException or TaskCanceledException or IOException or System.Text.Json.JsonException)
                {
                    await Task.Delay(20);
                }
            }
        }
    }

    private static async Task<Process> StartAsync(HttpClient client, string file, int port)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        string[] words = [typeof(DeskHost).Assembly.Location, Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"), "--book", file, "--port", port.ToString(), "--at", "2026-05-08T04:50", "--plan-seconds", "1"];
        foreach (var word in words) start.ArgumentList.Add(word);
        var desk = Process.Start(start)!;
        desk.OutputDataReceived += (_, _) => { };
        desk.ErrorDataReceived += (_, _) => { };
        desk.BeginOutputReadLine();
        desk.BeginErrorReadLine();
        for (var i = 0; ; i++)
        {
            try
            {
                if ((await client.GetAsync("/health")).StatusCode == HttpStatusCode.OK) return desk;
            }
            catch (HttpRequestException)
            {
                Assert.True(i < 300 && !desk.HasExited, "the desk did not start");
                await Task.Delay(100);
            }
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
