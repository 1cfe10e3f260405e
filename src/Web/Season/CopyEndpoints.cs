using System.Text.Json;
using Watersown.Web.Edge;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Season;

/// <summary>Of when the last copy of the book is, and making one now.</summary>
internal sealed class CopyEndpoints(DailyCopies copies, DeskOptions options)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/copies", ShowAsync).WithMetadata(Access.Farmers);
        routes.MapPost("/api/copies", MakeAsync).WithMetadata(Access.Owners);
    }

    /// <summary>The same as a member of another answer, for those who run the farm.</summary>
    public static void Write(Utf8JsonWriter json, DailyCopies copies, HttpContext context)
    {
        if (!copies.IsOn || !Access.Farmers.Lets(Door.CallerOf(context).Role)) return;
        json.WriteStartObject("copies");
        Members(json, copies, context);
        json.WriteEndObject();
    }

    private Task ShowAsync(HttpContext context) => Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
    {
        json.WriteStartObject();
        json.WriteBoolean("on", copies.IsOn);
        json.WriteNumber("days", options.CopyDays);
        Members(json, copies, context);
        json.WriteEndObject();
    });

    private async Task MakeAsync(HttpContext context)
    {
        // Not given up when the asker goes: the next look finds it made.
        var made = await copies.MakeAsync(CancellationToken.None);
        if (made is null) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, SendProblems.NoCopies.At(string.Empty));
        else if (made.IsRefused) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, made.Problems);
        else await ShowAsync(context);
    }

    private static void Members(Utf8JsonWriter json, DailyCopies copies, HttpContext context)
    {
        var view = copies.View;
        json.WriteNumber("count", view.Count);
        if (view.Last is { } last) json.WriteString("last", last.Made);
        if (view is not { FailedAt: { } failed, Failure: { } why }) return;
        json.WriteString("failed", failed);
        json.WriteString("why", Say.Sentence(why, Reply.LanguageOf(context)));
    }
}
