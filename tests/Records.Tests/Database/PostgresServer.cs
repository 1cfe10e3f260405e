using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Watersown.Database;

/// <summary>A server of our own for the time of the tests: made in a temporary folder, on the loopback address, thrown away at the end.</summary>
public static class PostgresServer
{
    private static readonly Lazy<string> server = new(Start);

    /// <summary>Connection text of a new empty database.</summary>
    public static async Task<string> NewDatabaseAsync()
    {
        var name = "farm_" + Guid.NewGuid().ToString("N")[..12];
        await ExecuteAsync(server.Value, "CREATE DATABASE " + name);
        return server.Value.Replace("Database=postgres", "Database=" + name, StringComparison.Ordinal);
    }

    public static async Task DropAsync(string connection)
    {
        var name = new NpgsqlConnectionStringBuilder(connection).Database;
        await ExecuteAsync(server.Value, "DROP DATABASE IF EXISTS " + name + " WITH (FORCE)");
    }

    /// <summary>Runs a statement of the test's own, past the book.</summary>
    public static async Task ExecuteAsync(string connection, string sql)
    {
        await using var source = NpgsqlDataSource.Create(connection + ";Pooling=false");
        await using var command = source.CreateCommand(sql);
        await command.ExecuteNonQueryAsync();
    }

    private static string Start()
    {
        var binaries = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").Select(d => Path.Combine(d, "bin")).Where(d => File.Exists(Path.Combine(d, "initdb"))).Order(StringComparer.Ordinal).LastOrDefault()
            : null;
        Assert.True(binaries is not null, "PostgreSQL is not installed: script/test installs it, or install the package postgresql.");
        var folder = Directory.CreateTempSubdirectory("watersown-postgres-").FullName;
        var port = FreePort();
        if (Environment.IsPrivilegedProcess) Run("chown", ["postgres", folder]);
        Run(AsOther(Path.Combine(binaries, "initdb")), [.. Arguments(Path.Combine(binaries, "initdb")), "-D", folder + "/data", "-U", "watersown", "-A", "trust", "-E", "UTF8", "--locale", "C.UTF-8"]);
        var options = string.Create(CultureInfo.InvariantCulture, $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c max_connections=200 -c shared_buffers=32MB");
        var control = Path.Combine(binaries, "pg_ctl");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Stop(control, folder);
        Run(AsOther(control), [.. Arguments(control), "-D", folder + "/data", "-l", folder + "/log", "-w", "-o", options, "start"]);
        return string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={port};Username=watersown;Database=postgres");
    }

    private static void Stop(string control, string folder)
    {
        Run(AsOther(control), [.. Arguments(control), "-D", folder + "/data", "-m", "immediate", "-w", "stop"]);
        Directory.Delete(folder, recursive: true);
    }

    // The server refuses to run as root; the package made a user for it.
    private static string AsOther(string program) => Environment.IsPrivilegedProcess ? "runuser" : program;

    private static string[] Arguments(string program) => Environment.IsPrivilegedProcess ? ["-u", "postgres", "--", program] : [];

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private static void Run(string program, string[] arguments)
    {
        // Its output goes nowhere: the server inherits what it is started with, and would hold a pipe open for ever.
        using var process = Process.Start(new ProcessStartInfo("sh", ["-c", "exec \"$@\" >/dev/null 2>&1 </dev/null", "sh", program, .. arguments]) { WorkingDirectory = "/" })!;
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, program + " " + string.Join(' ', arguments) + " ended with " + process.ExitCode.ToString(CultureInfo.InvariantCulture));
    }
}
