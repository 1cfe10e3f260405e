using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Watersown.Schedule;

namespace Watersown.Documents.Plan;

/// <summary>A season plan as JSON (docs/plan.schema.json): tasks, orders, decisions, conflicts, cost, bound and gap.</summary>
public static class PlanDocument
{
    /// <summary>Version of the plan document.</summary>
    public const int Version = 1;

    /// <summary>The whole document, indented, ready to be printed or kept.</summary>
    public static string Write(SeasonPlan plan)
    {
        var buffer = new ArrayBufferWriter<byte>(64 * 1024);
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            WriteHead(json, plan);
            WriteList(json, "tasks", plan.Tasks, WriteTask);
            WriteList(json, "orders", plan.Orders, WriteOrder);
            WriteList(json, "decisions", plan.Decisions, WriteDecision);
            WriteList(json, "conflicts", plan.Conflicts, WriteConflict);
            WriteTexts(json, "lost_batches", plan.LostBatches);
            WriteTexts(json, "assumptions", plan.Assumptions);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>The name of ground work on the wire.</summary>
    public static string Name(GroundWork work) => work switch
    {
        GroundWork.Chisel => "chisel",
        GroundWork.Disc => "disc",
        GroundWork.Plane => "plane",
        GroundWork.Aqua => "aqua",
        GroundWork.Roll => "roll",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static void WriteHead(Utf8JsonWriter json, SeasonPlan plan)
    {
        json.WriteNumber("watersown_plan", Version);
        json.WriteString("farm", plan.State.Farm.Name);
        json.WriteNumber("number", plan.Number);
        json.WriteString("made_at", Moment(plan.MadeAt));
        json.WriteNumber("objective", plan.Cost.Total.Amount);
        json.WriteNumber("bound", plan.Bound.Amount);
        json.WriteNumber("gap_pct", Math.Round(plan.Gap.Percent, 3));
        json.WriteNumber("solve_s", Math.Round(plan.SolveTime.TotalSeconds, 3));
        json.WriteString("currency", "USD");
        json.WriteStartObject("cost");
        json.WriteNumber("delay", plan.Cost.Delay.Amount);
        json.WriteNumber("head_age", plan.Cost.HeadAge.Amount);
        json.WriteNumber("idle_water", plan.Cost.IdleWater.Amount);
        json.WriteNumber("seed_lost", plan.Cost.SeedLost.Amount);
        json.WriteNumber("ferry", plan.Cost.Ferry.Amount);
        json.WriteNumber("unsown", plan.Cost.Unsown.Amount);
        json.WriteEndObject();
    }

    private static void WriteTask(Utf8JsonWriter json, PlanTask task)
    {
        json.WriteString("field", task.Field);
        json.WriteString("task", TaskWords.Of(task.Kind));
        if (task.Implement is { } work) json.WriteString("implement", Name(work));
        json.WriteString("start", Moment(task.Start));
        json.WriteString("end", Moment(task.End));
        json.WriteString("resource", task.Resource);
        if (task.Flow is { } flow) json.WriteNumber("flow_cfs", Math.Round(flow.CubicFeetPerSecond, 4));
        if (!task.From.IsEmpty) WriteList(json, "from", task.From, (w, f) => WriteShare(w, f.Source, f.Flow));
        if (task.Batch is { } batch) json.WriteString("batch", batch);
        if (task.Dry is { } dry) json.WriteNumber("dry_lb", Math.Round(dry.Pounds, 3));
        if (task.Soaked is { } soaked) json.WriteNumber("wet_lb", Math.Round(soaked.Pounds, 3));
        if (task.Trailers is { } trailers) json.WriteNumber("trailers", trailers);
        if (task.Loads is { } loads) json.WriteNumber("loads", loads);
        if (task.Fixed) json.WriteBoolean("fixed", value: true);
        if (task.Pinned) json.WriteBoolean("pinned", value: true);
        WriteTexts(json, "reasons", task.Reasons);
        WriteWorking(json, task.Working);
    }

    private static void WriteShare(Utf8JsonWriter json, string source, Quantities.FlowRate flow)
    {
        json.WriteString("source", source);
        json.WriteNumber("flow_cfs", Math.Round(flow.CubicFeetPerSecond, 4));
    }

    private static void WriteOrder(Utf8JsonWriter json, OrderedFlow order)
    {
        json.WriteString("source", order.Source);
        json.WriteString("from", Moment(order.From));
        json.WriteString("until", Moment(order.Until));
        json.WriteNumber("flow_cfs", Math.Round(order.Flow.CubicFeetPerSecond, 4));
    }

    private static void WriteDecision(Utf8JsonWriter json, Decision decision)
    {
        json.WriteString("by", Moment(decision.By));
        json.WriteString("kind", decision.Kind);
        json.WriteString("what", decision.What);
        json.WriteString("who", decision.Who);
        WriteTexts(json, "fields", decision.Fields);
        json.WriteString("cost_of_waiting", decision.CostOfWaiting);
        if (decision.Cost is { } cost) json.WriteNumber("cost", cost.Amount);
        WriteWorking(json, decision.Working);
    }

    private static void WriteConflict(Utf8JsonWriter json, Conflict conflict)
    {
        json.WriteString("kind", conflict.Kind);
        WriteTexts(json, "fields", conflict.Fields);
        json.WriteString("what", conflict.What);
        json.WriteString("remedy", conflict.Remedy);
        WriteWorking(json, conflict.Working);
    }

    private static void WriteWorking(Utf8JsonWriter json, Working working)
    {
        if (working.Lines.IsEmpty) return;
        WorkingJson.Write(json, working);
    }

    private static void WriteList<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, ImmutableArray<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static string Moment(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd'T'HH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture);
}
