using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Watersown.Cli;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;
using Watersown.Records.Season;

namespace Watersown.Web;

/// <summary>What the machine does to a book at the wrong moment: killed, no room left, a damaged file.</summary>
public sealed class FaultTests : IDisposable
{
    private const int Marks = 4_000;

    private readonly string folder = Directory.CreateTempSubdirectory("watersown-fault-").FullName;

    private string BookFile => Path.Combine(folder, "farm.book");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Killed_while_it_copies_it_leaves_the_book_and_no_half_copy()
    {
        await FillAsync(BookFile, Marks);
        string[] words = ["backup", "--book", BookFile];
        var whole = await RunAsync(words, null);
        for (var i = 1; i <= 5; i++) await RunAsync(words, whole * i / 6);
        var copies = CopyFolder.Of(BookFile);
        Assert.NotEmpty(copies.List());
        foreach (var copy in copies.List()) Assert.Equal(Marks, (await CopyFolder.LookAsync(copy.Path)).Value.Marks);
        await using var book = (await Book.OpenAsync(BookFile)).Value;
        Assert.Null(await book.CheckAsync());
        Assert.Equal(Marks, await book.UptoAsync());
    }

    [Fact]
    public async Task Killed_while_it_takes_a_farm_in_it_has_all_or_nothing()
    {
        var (from, file) = (Path.Combine(folder, "from.book"), Path.Combine(folder, "farm.zip"));
        await FillAsync(from, Marks);
        await using (var book = (await Book.OpenAsync(from)).Value) Assert.True((await ExportFarm.RunAsync(book, file, TimeProvider.System, replace: false)).HasValue);
        var whole = await RunAsync(["import", "farm", file, "--book", Path.Combine(folder, "first.book")], null);
        await FillAsync(BookFile, 7);
        for (var i = 2; i <= 6; i++)
        {
            await RunAsync(["import", "farm", file, "--book", BookFile], whole * i / 7);
            await using var book = (await Book.OpenAsync(BookFile)).Value;
            Assert.Null(await book.CheckAsync());
            Assert.Contains(await book.UptoAsync(), new[] { 7L, 7L + Marks });
        }

        await RunAsync(["import", "farm", file, "--book", BookFile], null);
        await using var last = (await Book.OpenAsync(BookFile)).Value;
        Assert.Equal(7 + Marks, await last.UptoAsync());
    }

    [Fact]
    public async Task Where_no_room_is_left_it_says_so_and_what_it_acknowledged_is_there()
    {
        if (OperatingSystem.IsWindows()) return;
        var port = FreePort();
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}"), Timeout = TimeSpan.FromSeconds(60) };
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        var acknowledged = new List<string>();
        // No file may grow past 2 MB, as on a disk without room. The runtime's own memory is a file to the system, so it does without.
        using (var desk = Start("bash", ["-c", "export DOTNET_EnableWriteXorExecute=0; trap '' XFSZ; ulimit -f 2048; exec \"$@\"", "bash", "dotnet", typeof(DeskHost).Assembly.Location, Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"), "--book", BookFile, "--port", port.ToString(CultureInfo.InvariantCulture), "--at", "2026-05-08T04:50", "--plan-seconds", "1"]))
        {
            for (var i = 0; ; i++)
            {
                try
                {
                    if ((await client.GetAsync("/health")).StatusCode == HttpStatusCode.OK) break;
                }
                catch (HttpRequestException)
                {
                    Assert.True(i < 600 && !desk.HasExited, "the desk did not start");
                    await Task.Delay(100);
                }
            }

            var refused = await FillDiskAsync(client, acknowledged);
            Assert.Equal("HOST-014", await RunningDesk.ProblemsAsync(refused, HttpStatusCode.ServiceUnavailable));
            // It goes on: what it has can be read.
            Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/api/changes?after=0")).StatusCode);
            desk.Kill();
            await desk.WaitForExitAsync();
        }

        Assert.NotEmpty(acknowledged);
        await using var book = (await Book.OpenAsync(BookFile)).Value;
        Assert.Null(await book.CheckAsync());
        Assert.Empty(acknowledged.Except((await book.MarksAfterAsync(0, int.MaxValue)).Select(m => m.Mark.Id)));
    }

    [Fact]
    public async Task A_copy_without_room_is_told_and_leaves_nothing()
    {
        if (OperatingSystem.IsWindows()) return;
        await FillAsync(BookFile, Marks);
        var start = new ProcessStartInfo("bash", ["-c", "export DOTNET_EnableWriteXorExecute=0; trap '' XFSZ; ulimit -f 512; exec \"$@\"", "bash", "dotnet", typeof(ExitCode).Assembly.Location, "backup", "--book", BookFile]) { UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
        using var backup = Process.Start(start)!;
        var error = await backup.StandardError.ReadToEndAsync();
        await backup.WaitForExitAsync();
        Assert.Equal(ExitCode.WorldFailed, backup.ExitCode);
        Assert.Contains("COPY-001", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.Combine(folder, "backups")));
    }

    [Fact]
    public async Task A_damaged_book_is_not_opened_and_its_newest_good_copy_is_named()
    {
        await FillAsync(BookFile, 300);
        CheckedCopy copy;
        await using (var book = (await Book.OpenAsync(BookFile)).Value) copy = (await CopyFolder.Of(BookFile).MakeAsync(book, TimeProvider.System)).Value;
        var bytes = await File.ReadAllBytesAsync(BookFile);
        // Beyond the first page, so that only a look over the whole of it finds the damage.
        new Random(5).NextBytes(bytes.AsSpan(bytes.Length / 2, 4096));
        await File.WriteAllBytesAsync(BookFile, bytes);
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(DeskStart.ProblemsInInput, await DeskStart.RunAsync(["--book", BookFile], output, error, TimeProvider.System));
        Assert.Contains("BOOK-003", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("COPY-005", error.ToString(), StringComparison.Ordinal);
        Assert.Contains($"watersown restore {copy.Copy.Path} --book {BookFile} --replace", error.ToString(), StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(BookFile));
        var said = await Hosts.Asking.AsksAsync("book", "info", "--book", BookFile);
        Assert.Contains("COPY-005", said.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.ProblemsInInput, said.Code);
        // And so it comes back.
        Assert.Equal(ExitCode.Done, (await Hosts.Asking.AsksAsync("restore", copy.Copy.Path, "--book", BookFile, "--replace")).Code);
        said = await Hosts.Asking.AsksAsync("book", "info", "--book", BookFile);
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        Assert.Contains("300 marks", said.Out, StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> FillDiskAsync(HttpClient client, List<string> acknowledged)
    {
        for (var i = 0; i < 2_000; i++)
        {
            var ids = Enumerable.Range(0, 20).Select(_ => RunningDesk.NewId()).ToList();
            var answer = await client.PostAsync("/api/marks", RunningDesk.Send(ids.Select(id => RunningDesk.Mark(id, fact: "{\"text\":\"" + new string('g', 1500) + "\"}"))));
            if (answer.StatusCode != HttpStatusCode.OK) return answer;
            using var kept = await RunningDesk.JsonAsync(answer);
            acknowledged.AddRange(kept.RootElement.GetProperty("kept").EnumerateArray().Select(k => k.GetString()!));
            answer.Dispose();
        }

        throw new InvalidOperationException("The disk was never full.");
    }

    /// <summary>Runs the command, kills it after a while where one is given; how long it ran.</summary>
    private static async Task<TimeSpan> RunAsync(string[] words, TimeSpan? killedAfter)
    {
        var watch = Stopwatch.StartNew();
        using var command = Start("dotnet", [typeof(ExitCode).Assembly.Location, .. words]);
        if (killedAfter is { } after)
        {
            await Task.WhenAny(Task.Delay(after), command.WaitForExitAsync());
            if (!command.HasExited) command.Kill();
        }

        await command.WaitForExitAsync();
        Assert.True(killedAfter is not null || command.ExitCode == ExitCode.Done);
        return watch.Elapsed;
    }

    private static Process Start(string program, string[] words)
    {
        var process = Process.Start(new ProcessStartInfo(program, words) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    private static async Task FillAsync(string path, int marks)
    {
        await using var book = (await Book.OpenAsync(path)).Value;
        var made = Enumerable.Range(0, marks).Select(_ => StoredMark.Read(System.Text.Encoding.UTF8.GetBytes(RunningDesk.Mark(RunningDesk.NewId()))).Value).ToList();
        await book.AppendMarksAsync(made);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
