using System.Data.Common;
using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Watersown.Bench;

/// <summary>Phones that send marks and ask for news, against the real host, on both engines.</summary>
/// <param name="options">How.</param>
internal sealed class SyncBench(BenchOptions options)
{
    private readonly List<Measured> lines = [];

    public async Task RunAsync()
    {
        var folder = Path.Combine(options.Folder, "bench-" + Environment.ProcessId.ToString(CultureInfo.InvariantCulture));
        Directory.CreateDirectory(folder);
        try
        {
            await EmptyAsync();
            await SqliteAsync(folder);
            using var server = Server.Start(Path.Combine(folder, "postgres"));
            if (server is not null) await PostgresAsync(server.Connection);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        var table = Measured.Head + string.Concat(lines.Select(l => l.Line));
        Console.WriteLine();
        Console.Write(table);
        Directory.CreateDirectory(Path.GetDirectoryName(options.Out)!);
        await File.WriteAllTextAsync(options.Out, Head() + table);
    }

    private string Head() => string.Create(CultureInfo.InvariantCulture, $"""
        # Sync endpoint

        The real host as a program of its own, the book on disk, {options.Phones} phones with one request each on its way, {options.Span.TotalSeconds:0} s a line; phones, host
        and database share {Environment.ProcessorCount} cores. Every acknowledged mark is on disk (`synchronous = FULL`, `synchronous_commit = on`). Marks are notes,
        which start no plan. Load of the machine in the last minute when it ended: {Load()}.

            dotnet run -c Release --project bench/Host -- --seconds {options.Span.TotalSeconds:0} --phones {options.Phones}


        """);

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";

    private async Task EmptyAsync()
    {
        await using var child = await Child.StartAsync(typeof(SyncBench).Assembly.Location, "empty", "PORT");
        await PhonesAsync("-", "baseline: empty endpoint, 1 mark read and thrown away", child, 1, (client, _) => SendAsync(client, 1));
        lines[^1] = lines[^1] with { Marks = 0 };
    }

    private async Task SqliteAsync(string folder)
    {
        await using (var connection = new SqliteConnection("Data Source=" + Path.Combine(folder, "bare.db") + ";Pooling=false"))
        {
            await connection.OpenAsync();
            await connection.ExecuteAsync("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
            await BareAsync("SQLite", connection);
        }

        await HostAsync("SQLite", Path.Combine(folder, "farm.book"));
    }

    private async Task PostgresAsync(string connection)
    {
        await using (var bare = new NpgsqlConnection(connection))
        {
            await bare.OpenAsync();
            await bare.ExecuteAsync("CREATE DATABASE farm");
            await BareAsync("PostgreSQL", bare);
        }

        await HostAsync("PostgreSQL", connection.Replace("Database=postgres", "Database=farm", StringComparison.Ordinal));
    }

    /// <summary>One row at a time, each on disk before the next: what the disk lets anybody do who groups nothing.</summary>
    private async Task BareAsync(string engine, DbConnection connection)
    {
        await connection.ExecuteAsync("CREATE TABLE bare (id TEXT NOT NULL PRIMARY KEY, body TEXT NOT NULL)");
        Add(await Measured.OfAsync(engine, "baseline: bare loop, one row a commit", 1, options.Span, 1,
            _ => connection.ExecuteAsync("INSERT INTO bare (id, body) VALUES (@id, @body)", new { id = NewId(), body = Mark() })));
    }

    private async Task HostAsync(string engine, string book)
    {
        await using var child = await Child.StartAsync(
            typeof(Web.DeskHost).Assembly.Location, Path.Combine(BenchOptions.Root, "examples", "marrowfen", "farm.json"), "--book", book, "--port", "PORT", "--at", "2026-05-08T04:50", "--plan-seconds", "1", "--pages", options.Folder);
        await PhonesAsync(engine, "send 1 mark", child, 1, (client, _) => SendAsync(client, 1));
        await PhonesAsync(engine, "send 20 marks", child, 20, (client, _) => SendAsync(client, 20));
        var upto = new long[options.Phones];
        await PhonesAsync(engine, "ask for news; each phone first catches up on all marks so far", child, 0, (client, phone) => NewsAsync(client, phone, upto));
        var turn = new int[options.Phones];
        await PhonesAsync(engine, "a phone's day: 1 send of 1 mark to 4 questions for news", child, 0, (client, phone) => turn[phone]++ % 5 == 0 ? SendAsync(client, 1) : NewsAsync(client, phone, upto));
    }

    private async Task PhonesAsync(string engine, string what, Child child, int marks, Func<HttpClient, int, Task> once)
    {
        var phones = Enumerable.Range(0, options.Phones).Select(_ =>
        {
            var client = new HttpClient(new SocketsHttpHandler { MaxConnectionsPerServer = 1, UseCookies = false }) { BaseAddress = child.Address };
            client.DefaultRequestHeaders.Add("X-Watersown", "1");
            return client;
        }).ToList();
        Add(await Measured.OfAsync(engine, what, options.Phones, options.Span, marks, phone => once(phones[phone], phone)));
        phones.ForEach(p => p.Dispose());
    }

    private void Add(Measured line)
    {
        lines.Add(line);
        Console.Write(line.Line);
    }

    private static async Task SendAsync(HttpClient client, int marks)
    {
        var body = new StringBuilder("{\"device\":\"a phone\",\"marks\":[");
        for (var i = 0; i < marks; i++) body.Append(i == 0 ? string.Empty : ",").Append(Mark());
        using var content = new StringContent(body.Append("]}").ToString(), Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/marks", UriKind.Relative), content);
        if (answer.StatusCode != HttpStatusCode.OK) throw new InvalidOperationException(await answer.Content.ReadAsStringAsync());
    }

    private static async Task NewsAsync(HttpClient client, int phone, long[] upto)
    {
        using var answer = await client.GetAsync(new Uri("/api/changes?after=" + upto[phone].ToString(CultureInfo.InvariantCulture), UriKind.Relative));
        if (answer.StatusCode != HttpStatusCode.OK) throw new InvalidOperationException(await answer.Content.ReadAsStringAsync());
        using var news = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        upto[phone] = news.RootElement.GetProperty("upto").GetInt64();
    }

    private static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    private static string Mark() =>
        $$$"""{"id":"{{{NewId()}}}","kind":"note","happened":"2026-05-08T04:40:00-07:00","entered":"2026-05-08T04:41:00-07:00","by":"Lucero Quintabar","device":"a phone","sure":"told","fact":{"text":"geese on the levee by box 3"}}""";
}
