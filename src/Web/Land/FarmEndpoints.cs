using System.Globalization;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Web.Schedule;
using Watersown.Web.Season;
using Watersown.Web.SignIn;

namespace Watersown.Web.Land;

/// <summary>The farm document: read, and saved as a new version by whoever saw the newest.</summary>
internal sealed class FarmEndpoints(Book book, LiveSeason season, PlanRunner plans, TimeProvider time)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/farm", ShowAsync).WithMetadata(Access.Readers);
        routes.MapPut("/api/farm", SaveAsync).WithMetadata(Access.Farmers, new BodySize(JsonText.MaxBytes));
    }

    private async Task ShowAsync(HttpContext context)
    {
        if (await book.LatestFarmAsync(context.RequestAborted) is not { } farm)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoFarm.At(string.Empty));
            return;
        }

        context.Response.Headers.ETag = "\"" + farm.Version.ToString(CultureInfo.InvariantCulture) + "\"";
        await Reply.BytesAsync(context, StatusCodes.Status200OK, Reply.Json, farm.Document);
    }

    private async Task SaveAsync(HttpContext context)
    {
        if (!long.TryParse(context.Request.Query["version"].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var version))
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, SendProblems.NoVersion.At("version"));
            return;
        }

        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return;
        }

        var read = FarmReading.Read(body, new FarmContext(time.GetUtcNow()));
        if (read.IsRefused)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, read.Problems);
            return;
        }

        var why = context.Request.Query["why"].ToString();
        var caller = Door.CallerOf(context);
        var saved = await book.SaveFarmAsync(body, version, caller.Name, why.Length is > 0 and <= 200 ? why : "edited", CancellationToken.None);
        if (saved.IsRefused)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status409Conflict, saved.Problems);
            return;
        }

        season.Changed();
        plans.FarmChanged(caller.Name);
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("farm_version", saved.Value.Version);
            Reply.Write(json, read.Warnings, Reply.LanguageOf(context));
            json.WriteEndObject();
        });
    }
}
