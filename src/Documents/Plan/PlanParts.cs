using System.Text.Json;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Schedule;

namespace Watersown.Documents.Plan;

/// <summary>The parts of a plan document that has been held against its outline.</summary>
/// <param name="Offset">The farm's offset from UTC, for a moment written without one.</param>
internal readonly record struct PlanParts(TimeSpan Offset)
{
    public static ImmutableArray<T> List<T>(JsonElement of, string key, Func<JsonElement, T> read) =>
        of.TryGetProperty(key, out var list) ? [.. list.EnumerateArray().Select(read)] : [];

    public static ImmutableArray<string> Texts(JsonElement of, string key) => List(of, key, e => e.GetString()!);

    public static Money Dollars(JsonElement of, string key) => Money.FromDollars(of.GetProperty(key).GetDecimal());

    public DateTimeOffset Moment(JsonElement of, string key)
    {
        var written = JsonFacts.MomentOf(of.GetProperty(key))!.Value;
        return new DateTimeOffset(written.Day.ToDateTime(written.Hour), written.Offset ?? Offset);
    }

    public PlanTask Task(JsonElement task) => new(Text(task, "field")!, Words.Tasks.Find(Text(task, "task"))!.Value, Moment(task, "start"), Moment(task, "end"), Text(task, "resource")!)
    {
        Implement = Words.Work.Find(Text(task, "implement")),
        Flow = Number(task, "flow_cfs") is { } flow ? FlowRate.FromCubicFeetPerSecond(flow) : null,
        From = List(task, "from", s => (Text(s, "source")!, FlowRate.FromCubicFeetPerSecond(s.GetProperty("flow_cfs").GetDouble()))),
        Batch = Text(task, "batch"),
        Dry = Number(task, "dry_lb") is { } dry ? DrySeed.FromPounds(dry) : null,
        Soaked = Number(task, "wet_lb") is { } wet ? SoakedSeed.FromPounds(wet) : null,
        Trailers = (int?)Number(task, "trailers"),
        Loads = (int?)Number(task, "loads"),
        Fixed = Flag(task, "fixed"),
        Pinned = Flag(task, "pinned"),
        Reasons = Texts(task, "reasons"),
        Working = Working(task),
    };

    public OrderedFlow Order(JsonElement order) =>
        new(Text(order, "source")!, Moment(order, "from"), Moment(order, "until"), FlowRate.FromCubicFeetPerSecond(order.GetProperty("flow_cfs").GetDouble()));

    public Decision Decision(JsonElement decision) => new(Moment(decision, "by"), Text(decision, "what")!, Text(decision, "who")!, Texts(decision, "fields"))
    {
        Kind = Text(decision, "kind")!,
        CostOfWaiting = Text(decision, "cost_of_waiting")!,
        Cost = decision.TryGetProperty("cost", out _) ? Dollars(decision, "cost") : null,
        Working = Working(decision),
    };

    public static Conflict Conflict(JsonElement conflict) => new(Texts(conflict, "fields"), Text(conflict, "what")!, Text(conflict, "remedy")!)
    {
        Kind = Text(conflict, "kind")!,
        Working = Working(conflict),
    };

    private static string? Text(JsonElement of, string key) => of.TryGetProperty(key, out var text) ? text.GetString() : null;

    private static double? Number(JsonElement of, string key) => of.TryGetProperty(key, out var number) ? number.GetDouble() : null;

    private static bool Flag(JsonElement of, string key) => of.TryGetProperty(key, out var flag) && flag.GetBoolean();

    private static Working Working(JsonElement of) => WorkingJson.Read(of);
}
