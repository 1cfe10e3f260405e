using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Web.Edge;
using Watersown.Web.Season;
using Watersown.Web.SignIn;

namespace Watersown.Web.Land;

/// <summary>
/// Reads a file of edges for a person to look at. Nothing of it is kept here: what is taken comes back as marks, one for each
/// field, each of which can be undone.
/// </summary>
internal sealed class EdgeFileEndpoints(LiveSeason season, RateLimits limits) : IDisposable
{
    // A farm's file is read in a moment; a hostile one takes its time alone, without holding up the desk.
    private readonly SemaphoreSlim one = new(1, 1);

    public void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/api/edges/read", ReadAsync).WithMetadata(Access.Farmers, new BodySize(MostBytes));

    /// <summary>Sixty surveyed fields take a hundredth of it.</summary>
    public const int MostBytes = 16 * BodySize.Megabyte;

    public void Dispose() => one.Dispose();

    private async Task ReadAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is not null && limits.Uploads.Count(caller.Key) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await season.ReadAsync(context.RequestAborted) is not { } known)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoFarm.At(string.Empty));
            return;
        }

        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return;
        }

        // The name is for people to know the file by; nothing is opened under it.
        var name = context.Request.Query["name"].ToString();
        var file = name.Length is 0 or > 100 || name.Any(char.IsControl) ? "file" : name;
        var farm = known.BookAt(known.Ground.Now).State.Farm;
        await one.WaitAsync(context.RequestAborted);
        try
        {
            var read = await Task.Run(() => MapFile.Read(file, body), context.RequestAborted);
            if (!read.HasValue) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, read.Problems);
            else await TellAsync(context, farm, file, read);
        }
        finally
        {
            one.Release();
        }
    }

    private static Task TellAsync(HttpContext context, Farm farm, string file, Outcome<ImmutableArray<MapBoundary>> read)
    {
        // That nothing matches by itself is no refusal here: a person says which field is which.
        var matched = BoundaryMatching.Match(farm, read.Value, new MatchOptions(), file);
        ImmutableArray<(Field? Field, MapBoundary Boundary)> fields = matched.HasValue ? [.. matched.Value.Pairs.Select(p => ((Field?)p.Field, p.Boundary))] : [];
        return Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("edges");
            foreach (var edge in read.Value) Write(json, edge, fields.FirstOrDefault(p => ReferenceEquals(p.Boundary, edge)).Field?.Code);
            json.WriteEndArray();
            Reply.Write(json, read.Problems.Concat(matched.HasValue ? matched.Problems : []), Reply.LanguageOf(context));
            json.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter json, MapBoundary edge, string? field)
    {
        using var pen = new JsonPen(indented: false);
        pen.Thing(null, () =>
        {
            pen.Text("where", edge.Where);
            pen.Text("name", edge.Name);
            pen.Text("field", field);
            GeometryWriting.Write(pen, "edge", edge.Edge);
        });
        json.WriteRawValue(pen.Line().Span);
    }
}
