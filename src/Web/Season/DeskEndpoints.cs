using System.Globalization;
using System.Text.Json;
using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Season;

/// <summary>The whole desk for a phone that opens it, and what is new for one that has it.</summary>
internal sealed class DeskEndpoints(Book book, LiveSeason season, Bell bell, DailyCopies copies, DeskClock clock, DeskOptions options)
{
    private const int MarksAtOnce = 2_000;

    private static readonly TimeSpan waitMost = TimeSpan.FromSeconds(55);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/desk", DeskAsync).WithMetadata(Access.Readers);
        routes.MapGet("/api/changes", ChangesAsync).WithMetadata(Access.Readers);
    }

    private async Task DeskAsync(HttpContext context)
    {
        if (Number(context, "after") is not { } after)
        {
            await NotANumberAsync(context);
            return;
        }

        if (await season.ReadAsync(context.RequestAborted) is not { } known)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoFarm.At(string.Empty));
            return;
        }

        var marks = await book.MarksAfterAsync(after, int.MaxValue, context.RequestAborted);
        var caller = Door.CallerOf(context);
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteString("book", known.Book);
            json.WriteNumber("farm_version", known.Farm.Version);
            json.WritePropertyName("farm");
            json.WriteRawValue(known.Farm.Document.Span);
            json.WritePropertyName("plan");
            if (known.Plan is { } plan) json.WriteRawValue(plan.Document.Span);
            else json.WriteNullValue();
            if (known.Plan is { } numbered) json.WriteNumber("plan_number", numbered.Number);
            Write(json, marks, Math.Min(after, known.Upto));
            SignInEndpoints.WriteYou(json, "you", caller);
            CopyEndpoints.Write(json, copies, context);
            json.WriteString("now", clock.GetUtcNow());
            if (clock.SetTo is { } story) json.WriteString("demo_from", story);
            if (options.Tiles is { } tiles) json.WriteString("tiles", tiles.OriginalString);
            json.WriteEndObject();
        });
    }

    /// <summary>Marks after a number, at once where there are any; otherwise when there are, or when a plan or farm is new.</summary>
    private async Task ChangesAsync(HttpContext context)
    {
        if (Number(context, "after") is not { } after || Number(context, "wait") is not { } seconds || Number(context, "plan") is not { } plan || Number(context, "farm") is not { } farm)
        {
            await NotANumberAsync(context);
            return;
        }

        var ring = bell.Next;
        var known = await season.ReadAsync(context.RequestAborted);
        var nothing = known is not null && known.Upto <= after && (plan == 0 || (known.Plan?.Number ?? 0) == plan) && (farm == 0 || known.Farm.Version == farm);
        if (nothing && seconds > 0)
        {
            await bell.WaitAsync(ring, TimeSpan.FromSeconds(Math.Min(seconds, waitMost.TotalSeconds)), context.RequestAborted);
            known = await season.ReadAsync(context.RequestAborted);
        }

        if (known is null)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoFarm.At(string.Empty));
            return;
        }

        // The commonest answer is that there is nothing new, which needs no trip to the book.
        var marks = known.Upto <= after ? [] : await book.MarksAfterAsync(after, MarksAtOnce, context.RequestAborted);
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteString("book", known.Book);
            Write(json, marks, Math.Min(after, known.Upto));
            json.WriteBoolean("more", marks.Length == MarksAtOnce);
            json.WriteNumber("farm_version", known.Farm.Version);
            json.WriteNumber("plan_number", known.Plan?.Number ?? 0);
            CopyEndpoints.Write(json, copies, context);
            json.WriteString("now", clock.GetUtcNow());
            json.WriteEndObject();
        });
    }

    // The number goes with the marks that are told, never beyond them; a book restored from a copy counts lower, which tells.
    private static void Write(Utf8JsonWriter json, ImmutableArray<KeptMark> marks, long upto)
    {
        json.WriteStartArray("marks");
        foreach (var mark in marks) json.WriteRawValue(mark.Mark.Body, skipInputValidation: true);
        json.WriteEndArray();
        json.WriteNumber("upto", marks.IsEmpty ? upto : marks[^1].Seq);
    }

    /// <summary>A number of the address; 0 where it is not given, nothing where it is no number.</summary>
    private static long? Number(HttpContext context, string name) =>
        context.Request.Query[name].ToString() is not { Length: > 0 } text ? 0 : long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static Task NotANumberAsync(HttpContext context) =>
        Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, HostProblems.NotFull.At("after", ("value", Say.Short(context.Request.QueryString.Value ?? string.Empty, 60))));
}
