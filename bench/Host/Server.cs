using System.Diagnostics;

namespace Watersown.Bench;

/// <summary>A PostgreSQL server of its own with its usual settings, on the disk that is measured; gone afterwards.</summary>
internal sealed class Server : IDisposable
{
    private readonly string binaries;

    private readonly string folder;

    private Server(string binaries, string folder, string connection) => (this.binaries, this.folder, Connection) = (binaries, folder, connection);

    public string Connection { get; }

    /// <summary>Nothing where PostgreSQL is not installed.</summary>
    public static Server? Start(string folder)
    {
        const string Versions = "/usr/lib/postgresql";
        var found = Directory.Exists(Versions) ? Directory.GetDirectories(Versions).Select(d => Path.Combine(d, "bin")).Where(d => File.Exists(Path.Combine(d, "initdb"))).Order(StringComparer.Ordinal).LastOrDefault() : null;
        if (found is null) return null;
        Directory.CreateDirectory(folder);
        var port = Child.FreePort().ToString(System.Globalization.CultureInfo.InvariantCulture);
        if (Environment.IsPrivilegedProcess) Run("chown", "postgres", folder);
        RunAsOther(Path.Combine(found, "initdb"), "-D", folder + "/data", "-U", "watersown", "-A", "trust", "-E", "UTF8", "--locale", "C.UTF-8");
        RunAsOther(Path.Combine(found, "pg_ctl"), "-D", folder + "/data", "-l", folder + "/log", "-w", "-o", $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories=''", "start");
        return new Server(found, folder, $"Host=127.0.0.1;Port={port};Username=watersown;Database=postgres");
    }

    public void Dispose()
    {
        RunAsOther(Path.Combine(binaries, "pg_ctl"), "-D", folder + "/data", "-m", "fast", "-w", "stop");
        Directory.Delete(folder, recursive: true);
    }

    // It refuses to run as root; its package made a user for it.
    private static void RunAsOther(string program, params string[] words)
    {
        if (Environment.IsPrivilegedProcess) Run("runuser", ["-u", "postgres", "--", program, .. words]);
        else Run(program, words);
    }

    private static void Run(string program, params string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo("sh", ["-c", "exec \"$@\" >/dev/null 2>&1 </dev/null", "sh", program, .. words]) { WorkingDirectory = "/" })!;
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException(program + " " + string.Join(' ', words) + " failed");
    }
}
