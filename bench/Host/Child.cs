using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Watersown.Bench;

/// <summary>A host that runs as a program of its own until it is let go of.</summary>
internal sealed class Child : IAsyncDisposable
{
    private readonly Process process;

    private Child(Process process, Uri address) => (this.process, Address) = (process, address);

    public Uri Address { get; }

    public static async Task<Child> StartAsync(params string[] words)
    {
        var port = FreePort().ToString(System.Globalization.CultureInfo.InvariantCulture);
        var started = Process.Start(new ProcessStartInfo("dotnet", words.Select(w => w == "PORT" ? port : w)) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        started.OutputDataReceived += (_, _) => { };
        started.ErrorDataReceived += (_, said) => Console.Error.WriteLine(said.Data);
        started.BeginOutputReadLine();
        started.BeginErrorReadLine();
        var address = new Uri("http://127.0.0.1:" + port);
        using var client = new HttpClient { BaseAddress = address };
        for (var i = 0; i < 600; i++)
        {
            try
            {
                using var answer = await client.GetAsync(new Uri("/health", UriKind.Relative));
                if (answer.IsSuccessStatusCode) return new Child(started, address);
            }
            catch (HttpRequestException)
            {
                await Task.Delay(100);
            }
        }

        started.Kill(entireProcessTree: true);
        started.Dispose();
        throw new InvalidOperationException("It did not start: " + string.Join(' ', words));
    }

    public async ValueTask DisposeAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
    }

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
