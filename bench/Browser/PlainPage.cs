using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Watersown.Bench;

/// <summary>The baseline: one heading in an empty page, from a server of its own that does nothing else.</summary>
internal sealed class PlainPage : IDisposable
{
    private const string Page = "<!doctype html><html lang=en><title>Plain</title><main><h1>Plain</h1></main>";

    private readonly TcpListener listener = new(IPAddress.Loopback, 0);

    public PlainPage()
    {
        listener.Start();
        _ = ServeAsync();
    }

    public Uri Address => new(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/"));

    public void Dispose() => listener.Dispose();

    private async Task ServeAsync()
    {
        var answer = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"HTTP/1.1 200 OK\r\nContent-Type: text/html\r\nContent-Length: {Page.Length}\r\nConnection: close\r\n\r\n{Page}"));
        var asked = new byte[8192];
        while (true)
        {
            TcpClient client;
            try
            {
                client = await listener.AcceptTcpClientAsync();
            }
            catch (Exception closed) when (closed is SocketException or ObjectDisposedException)
            {
                return;
            }

            using (client)
            {
                await using var stream = client.GetStream();
                // A browser also opens a connection on which it asks for nothing yet.
                using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
                try
                {
                    if (await stream.ReadAsync(asked, patience.Token) > 0) await stream.WriteAsync(answer, patience.Token);
                }
                catch (Exception gone) when (gone is OperationCanceledException or IOException)
                {
                    continue;
                }
            }
        }
    }
}
