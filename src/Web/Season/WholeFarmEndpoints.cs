using System.Globalization;
using System.Text;
using Watersown.Records;
using Watersown.Records.Database;
using Watersown.Records.Season;
using Watersown.Web.Edge;
using Watersown.Web.Schedule;
using Watersown.Web.SignIn;

namespace Watersown.Web.Season;

/// <summary>The whole farm as one open file: taken away, and brought in. One at a time, past a file of the disk, for it may be large.</summary>
internal sealed class WholeFarmEndpoints(Book book, LiveSeason season, PlanRunner plans, DeskClock clock) : IDisposable
{
    private const int MegabytesMost = 512;

    private readonly SemaphoreSlim one = new(1, 1);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/whole-farm", GiveAsync).WithMetadata(Access.Owners);
        routes.MapPost("/api/whole-farm", TakeAsync).WithMetadata(Access.Owners, new BodySize((long)MegabytesMost * BodySize.Megabyte));
    }

    public void Dispose() => one.Dispose();

    private Task GiveAsync(HttpContext context) => WithFileAsync(context, async path =>
    {
        var written = await ExportFarm.RunAsync(book, path, clock, replace: true, context.RequestAborted);
        if (written.IsRefused)
        {
            await RefuseAsync(context, written.Problems);
            return;
        }

        var name = Plain(await book.SettingAsync("farm-name", context.RequestAborted) ?? "farm") + "-" + clock.GetUtcNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ".zip";
        var response = context.Response;
        response.ContentType = "application/zip";
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentDisposition = "attachment; filename=\"" + name + "\"";
        response.ContentLength = new FileInfo(path).Length;
        await response.SendFileAsync(path, context.RequestAborted);
    });

    private Task TakeAsync(HttpContext context) => WithFileAsync(context, async path =>
    {
        if (!await BodySize.KeepAsync(context, path))
        {
            await BodySize.TooLargeAsync(context);
            return;
        }

        var joined = await ImportFarm.RunAsync(path, book, CancellationToken.None);
        if (joined.IsRefused)
        {
            // The file lies under a name of ours, which tells the asker nothing.
            await RefuseAsync(context, joined.Problems.Select(p => p.Where == path ? p with { Where = string.Empty } : p));
            return;
        }

        season.Changed();
        plans.FarmChanged(Door.CallerOf(context).Name);
        var taken = joined.Value;
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("farms", taken.Farms);
            json.WriteNumber("marks", taken.Marks);
            json.WriteNumber("plans", taken.Plans);
            json.WriteNumber("photos", taken.Photos);
            json.WriteNumber("people", taken.Accounts);
            Reply.Write(json, joined.Problems, Reply.LanguageOf(context));
            json.WriteEndObject();
        });
    });

    /// <summary>A file in a folder that nobody else of this machine can look into, gone afterwards.</summary>
    private async Task WithFileAsync(HttpContext context, Func<string, Task> work)
    {
        await one.WaitAsync(context.RequestAborted);
        var folder = Directory.CreateTempSubdirectory("watersown-farm-");
        try
        {
            await work(Path.Combine(folder.FullName, "farm.zip"));
        }
        catch (IOException failure) when (failure is not BookFailedException and not BadHttpRequestException && !context.Response.HasStarted && !context.RequestAborted.IsCancellationRequested)
        {
            await RefuseAsync(context, [FileProblems.NotWritable.At(folder.Name, ("value", failure.Message.TrimEnd('.')))]);
        }
        finally
        {
            folder.Delete(recursive: true);
            one.Release();
        }
    }

    private static Task RefuseAsync(HttpContext context, IEnumerable<Problem> problems) => Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, problems);

    /// <summary>Letters that every disk takes as a name.</summary>
    private static string Plain(string name)
    {
        var plain = new string([.. name.Normalize(NormalizationForm.FormD).ToLowerInvariant().Where(c => char.IsAsciiLetterOrDigit(c) || c == ' ').Select(c => c == ' ' ? '-' : c).Take(40)]).Trim('-');
        return plain.Length == 0 ? "farm" : plain;
    }
}
