using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace Watersown.Bench;

/// <summary>The same web server with nothing behind it: what a request costs before the desk does anything.</summary>
internal static class EmptyHost
{
    public static async Task RunAsync(int port)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:" + port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        var app = builder.Build();
        app.MapGet("/health", () => Results.Ok());
        app.MapPost("/api/marks", async context =>
        {
            // Read as the desk must read it, then thrown away.
            await context.Request.Body.CopyToAsync(Stream.Null);
            await context.Response.WriteAsync("{}");
        });
        await app.RunAsync();
    }
}
