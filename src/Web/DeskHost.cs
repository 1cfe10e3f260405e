using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Extensions.Logging.Console;
using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Web.Land;
using Watersown.Web.Links;
using Watersown.Web.Pages;
using Watersown.Web.Schedule;
using Watersown.Web.Season;
using Watersown.Web.SignIn;
using Watersown.Web.Texts;

namespace Watersown.Web;

/// <summary>Puts the desk together: what stands before every request, and the endpoints behind.</summary>
public static class DeskHost
{
    /// <summary>A desk on an open book, not started yet.</summary>
    /// <param name="book">The book; stays the caller's to close.</param>
    /// <param name="options">How it is started.</param>
    /// <param name="clock">The desk's clock.</param>
    public static WebApplication Build(Book book, DeskOptions options, DeskClock clock)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = [], ContentRootPath = AppContext.BaseDirectory });
        // How the desk runs is said on the command line and nowhere else: a file or a variable must not open it to others.
        builder.Configuration.Sources.Clear();
        builder.Configuration.AddInMemoryCollection();
        builder.WebHost.UseUrls([.. options.Urls.Select(u => u.ToString())]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = BodySize.Usual.Bytes;
            kestrel.Limits.MaxRequestHeadersTotalSize = 32 * BodySize.Kilobyte;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
            kestrel.Limits.MaxConcurrentConnections = 2_000;
        });
        builder.WebHost.UseKestrelHttpsConfiguration();
        // Addresses of links are keys, so the server's own lines about requests stay out of the log.
        builder.Logging.ClearProviders().AddSimpleConsole(o => (o.SingleLine, o.ColorBehavior) = (true, LoggerColorBehavior.Disabled)).SetMinimumLevel(LogLevel.Warning);
        AddParts(builder.Services, book, options, clock);
        var app = builder.Build();
        UseDoor(app, options);
        MapAll(app);
        return app;
    }

    private static void AddParts(IServiceCollection parts, Book book, DeskOptions options, DeskClock clock)
    {
        parts.AddRouting().AddSingleton<EdgeFileEndpoints>();
        parts.AddSingleton(book).AddSingleton(options).AddSingleton(clock).AddSingleton<TimeProvider>(clock);
        parts.AddSingleton<Bell>().AddSingleton<LiveSeason>().AddSingleton<RateLimits>().AddSingleton<Ceremonies>().AddSingleton<HostGuard>().AddSingleton<Door>().AddSingleton<PageFiles>();
        parts.AddSingleton<PlanRunner>().AddHostedService(p => p.GetRequiredService<PlanRunner>());
        parts.AddSingleton<DailyCopies>().AddHostedService(p => p.GetRequiredService<DailyCopies>());
        parts.AddSingleton<MarkDoor>().AddSingleton<DeskEndpoints>().AddSingleton<MarkEndpoints>().AddSingleton<PhotoEndpoints>().AddSingleton<PlanEndpoints>().AddSingleton<FarmEndpoints>().AddSingleton<WholeFarmEndpoints>().AddSingleton<CopyEndpoints>().AddSingleton<LinkEndpoints>().AddSingleton<TextEndpoints>();
        parts.AddSingleton<SignInEndpoints>().AddSingleton<PasskeyEndpoints>().AddSingleton<AccountEndpoints>();
    }

    private static void UseDoor(WebApplication app, DeskOptions options)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("Watersown");
        if (options.BehindProxy)
        {
            // Only what stands on this machine is believed about where a request came from.
            app.UseForwardedHeaders(new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto, ForwardLimit = 1 });
        }

        app.Use(next => context => FailureEdge.RunAsync(context, next, log, app.Lifetime.ApplicationStopping));
        app.UseRouting();
        var door = app.Services.GetRequiredService<Door>();
        app.Use(next => context => door.RunAsync(context, next));
    }

    private static void MapAll(WebApplication app)
    {
        var parts = app.Services;
        app.MapGet("/health", HealthAsync).WithMetadata(Access.Anyone);
        parts.GetRequiredService<EdgeFileEndpoints>().Map(app);
        parts.GetRequiredService<SignInEndpoints>().Map(app);
        parts.GetRequiredService<PasskeyEndpoints>().Map(app);
        parts.GetRequiredService<AccountEndpoints>().Map(app);
        parts.GetRequiredService<DeskEndpoints>().Map(app);
        parts.GetRequiredService<MarkEndpoints>().Map(app);
        parts.GetRequiredService<PhotoEndpoints>().Map(app);
        parts.GetRequiredService<PlanEndpoints>().Map(app);
        parts.GetRequiredService<FarmEndpoints>().Map(app);
        parts.GetRequiredService<WholeFarmEndpoints>().Map(app);
        parts.GetRequiredService<CopyEndpoints>().Map(app);
        parts.GetRequiredService<LinkEndpoints>().Map(app);
        parts.GetRequiredService<TextEndpoints>().Map(app);
        parts.GetRequiredService<PageFiles>().Map(app);
    }

    /// <summary>Tells that the desk can read its book, and nothing about the farm.</summary>
    private static async Task HealthAsync(HttpContext context)
    {
        await context.RequestServices.GetRequiredService<Book>().UptoAsync(context.RequestAborted);
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteString("desk", "open");
            json.WriteEndObject();
        });
    }
}
