using System.Text.Json;
using System.Text.Json.Nodes;
using Watersown.Documents.Json;
using Watersown.Documents.Logbooks;
using Watersown.Records.Database;
using Watersown.Season;
using Watersown.Web.Edge;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Season;

/// <summary>
/// Takes marks. Each is looked at by itself: what is good is on disk when the answer says so, what is not is told with all
/// that is wrong, and neither waits for the other.
/// </summary>
internal sealed class MarkEndpoints(MarkDoor door, LiveSeason season, RateLimits limits)
{
    public const int MarksMost = 500;

    /// <summary>Kinds that decide for the farm, which crew does not.</summary>
    private static readonly ImmutableHashSet<Type> Deciding = [typeof(StepPinned), typeof(StepUnpinned), typeof(PlanIssued), typeof(PersonNamed)];

    public void Map(IEndpointRouteBuilder routes) =>
        routes.MapPost("/api/marks", TakeAsync).WithMetadata(Access.Markers, new BodySize(BodySize.Megabyte));

    private async Task TakeAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is not null && limits.Marks.Count(caller.Key) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return;
        }

        var text = JsonText.Read(body);
        if (text.IsRefused)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, text.Problems);
            return;
        }

        using var document = text.Value;
        if (ListOf(document.RootElement) is not { } list)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, HostProblems.NotThisBody.At("marks", ("limit", "{ \"device\": \"…\", \"marks\": [ … ] }")));
            return;
        }

        if (list.GetArrayLength() > MarksMost)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status413PayloadTooLarge, HostProblems.TooLarge.At("marks", ("limit", Say.Number(MarksMost) + " marks")));
            return;
        }

        await KeepAsync(context, caller, list);
    }

    private static JsonElement? ListOf(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object && root.TryGetProperty("marks", out var list) && list.ValueKind == JsonValueKind.Array ? list : null;

    private async Task KeepAsync(HttpContext context, Caller caller, JsonElement list)
    {
        var known = caller.Role == Role.Crew ? await season.ReadAsync(context.RequestAborted) : null;
        var (good, refused, facts) = (new List<StoredMark>(), new List<RefusedMark>(), new List<MarkFact>());
        foreach (var element in list.EnumerateArray())
        {
            var mark = MarkReading.Read(element, string.Empty);
            var problems = mark.HasValue && caller.Role == Role.Crew ? [.. mark.Refusals, .. CrewFaults(mark.Value, caller, known)] : mark.Refusals;
            var stored = mark.HasValue ? Stored(element, mark.Value, caller) : Outcome<StoredMark>.Refuse(mark.Problems);
            problems = [.. problems, .. stored.Refusals];
            if (stored.HasValue && !problems.Any())
            {
                good.Add(stored.Value);
                facts.Add(mark.Value.Fact);
            }
            else
            {
                refused.Add(new RefusedMark(NameOf(element), [.. problems.DistinctBy(p => (p.Kind.Code, p.Where))]));
            }
        }

        var appended = await door.KeepAsync(good, facts, caller.Session is null ? null : caller.Name);
        refused.AddRange(appended.Refused);
        await AnswerAsync(context, appended, refused);
    }

    private static Task AnswerAsync(HttpContext context, Appended appended, List<RefusedMark> refused) => Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("kept");
        foreach (var kept in appended.Kept) json.WriteStringValue(kept.Id);
        json.WriteEndArray();
        json.WriteStartArray("refused");
        foreach (var one in refused)
        {
            json.WriteStartObject();
            json.WriteString("id", one.Id);
            Reply.Write(json, one.Problems, Reply.LanguageOf(context));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("upto", appended.Upto);
        json.WriteEndObject();
    });

    /// <summary>Crew speak for themselves: another's mark they neither replace nor take back, and the farm's decisions they leave.</summary>
    private static IEnumerable<Problem> CrewFaults(Mark mark, Caller caller, KnownSeason? known)
    {
        if (mark.Replaces is { } other && known?.Log.Find(other) is { } replaced && replaced.By != caller.Name)
            yield return SendProblems.AnothersMark.At("replaces", ("value", replaced.By));
        if (Deciding.Contains(mark.Fact.GetType())) yield return SignInProblems.NotAllowed.At("kind", ("value", caller.Name));
    }

    /// <summary>Nobody but those who run the farm can say who said something: a session's marks are its own person's.</summary>
    private static Outcome<StoredMark> Stored(JsonElement element, Mark mark, Caller caller)
    {
        if (caller.Role is Role.Owner or Role.Family || mark.By == caller.Name || JsonObject.Create(element) is not { } own) return StoredMark.Of(element, mark);
        own["by"] = caller.Name;
        using var document = JsonDocument.Parse(own.ToJsonString());
        return StoredMark.Of(document.RootElement, mark with { By = caller.Name });
    }

    // What a refused mark calls itself goes back as it came, for the device to know it by; no longer than a name is.
    private static string NameOf(JsonElement element)
    {
        var said = element.ValueKind == JsonValueKind.Object && element.TryGetProperty("id", out var id) && id.ValueKind == JsonValueKind.String ? id.GetString()! : string.Empty;
        return said.Length <= MarkId.Digits ? said : said[..MarkId.Digits];
    }
}
