using Watersown.Documents.Farms;
using Watersown.Documents.Json;

namespace Watersown.Documents.Plan;

/// <summary>What a plan document may hold: every key and what it means. docs/plan.schema.json says the same to other programs.</summary>
public static class PlanOutline
{
    /// <summary>The key that says what document it is, and its version.</summary>
    public const string VersionKey = "watersown_plan";

    // Sentences of the plan are long, and none is longer than this.
    private const int Sentence = 4000;

    public static ImmutableArray<string> DecisionKinds { get; } = ["order-water", "cut-water", "call-soak", "put-in-soak", "drain", "list-flight", "dump-seed"];

    public static ImmutableArray<string> ConflictKinds { get; } = ["pin", "water", "ground", "seed", "air", "date", "assumption"];

    private static Outline.Text Said => new(Sentence) { MayBeEmpty = true };

    private static Outline.Several Texts => new(Said);

    private static Outline.Moment Moment => new();

    private static Outline.Several Workings => new(new Outline.Thing("working line",
    [
        Need("symbol", Said, "letter of the formula"),
        Need("meaning", Said, "what it is"),
        Need("value", new Outline.Anything(), "a number or words"),
        Need("unit", Said, "its unit"),
        new("formula", Said, "the formula in plain symbols"),
        new("source", Said, "published source of the formula or the constant"),
        new("from", Said, "where an input came from"),
        new("at", Moment, "when an input was true"),
    ]));

    private static Outline.Thing Cost => new("cost",
    [
        Number("delay", "$", "sowing later than the day of planning"),
        Number("head_age", "$", "head checks wet longer than the free days"),
        Number("idle_water", "$", "water ordered that no field takes up"),
        Number("seed_lost", "$", "soaked seed that no field can use in time"),
        Number("ferry", "$", "flying between strip and field"),
        Number("unsown", "$", "acres not sown within the plan"),
    ]);

    private static Outline.Thing Share => new("share", [Need("source", Said, "code of the source"), Number("flow_cfs", "cfs", "how much comes from it")]);

    private static Outline.Thing Task => new("task",
    [
        Need("field", Said, "code of the field"),
        Need("task", new Outline.Word(Words.Tasks.All), "what is done"),
        new("implement", new Outline.Word(Words.Work.All), "for ground work: which"),
        Need("start", Moment, "when it starts"),
        Need("end", Moment, "when it is done"),
        Need("resource", Said, "what it occupies"),
        Number("flow_cfs", "cfs", "water given to the field") with { Required = false },
        new("from", new Outline.Several(Share), "how much comes from each source"),
        new("batch", Said, "code of the batch"),
        Number("dry_lb", "lb dry", "dry weight of the seed") with { Required = false },
        Number("wet_lb", "lb wet", "soaked weight of the seed") with { Required = false },
        Whole("trailers", "trailers taken up") with { Required = false },
        Whole("loads", "loads flown") with { Required = false },
        new("fixed", new Outline.Flag(), "already happened or running"),
        new("pinned", new Outline.Flag(), "a person fixed it"),
        Need("reasons", Texts, "why it stands where it does"),
        new("working", Workings, "the arithmetic behind it"),
    ]);

    private static Outline.Thing Order => new("order",
    [
        Need("source", Said, "code of the source"), Need("from", Moment, "from when"), Need("until", Moment, "until when"), Number("flow_cfs", "cfs", "what is ordered"),
    ]);

    private static Outline.Thing Decision => new("decision",
    [
        Need("by", Moment, "last safe moment"),
        Need("kind", new Outline.Word(DecisionKinds), "what kind of decision"),
        Need("what", Said, "what to do or say"),
        Need("who", Said, "who is told"),
        Need("fields", Texts, "codes of the fields it is about"),
        Need("cost_of_waiting", Said, "what waiting costs"),
        Number("cost", "$", "the same in money") with { Required = false },
        new("working", Workings, "the arithmetic behind it"),
    ]);

    private static Outline.Thing Conflict => new("conflict",
    [
        Need("kind", new Outline.Word(ConflictKinds), "what kind"),
        Need("fields", Texts, "codes of the fields it is about"),
        Need("what", Said, "what stands in the way"),
        Need("remedy", Said, "what would lift it"),
        new("working", Workings, "the arithmetic behind it"),
    ]);

    // Below the outlines it is made of: what stands above is made first.
    public static Outline.Thing Root { get; } = new("plan",
    [
        Whole(VersionKey, "the version of the plan document"),
        Need("farm", Said, "the farm's name"),
        Whole("number", "plan number, printed on every sheet"),
        Need("made_at", Moment, "when it was made"),
        Number("objective", "$", "cost still to come"),
        Number("bound", "$", "no plan can cost less"),
        Number("gap_pct", "%", "how far the plan may be from the best"),
        Number("solve_s", "s", "how long it was searched for"),
        Need("currency", Said, "the money it is told in"),
        Need("cost", Cost, "the cost by part"),
        Need("tasks", new Outline.Several(Task, 100_000), "every step of every field not yet sown"),
        Need("orders", new Outline.Several(Order), "water ordered"),
        Need("decisions", new Outline.Several(Decision), "what must be decided by when"),
        Need("conflicts", new Outline.Several(Conflict), "what stands in the way"),
        Need("lost_batches", Texts, "batches that no field can use in time"),
        Need("assumptions", Texts, "what was not known and taken as usual"),
    ]);

    private static OutlineKey Need(string name, Outline value, string meaning) => new(name, value, meaning) { Required = true };

    private static OutlineKey Number(string name, string unit, string meaning) => OutlineKey.Of(new Limit(name, unit), meaning) with { Required = true };

    private static OutlineKey Whole(string name, string meaning) => OutlineKey.Of(new Limit(name, string.Empty) { Least = 1, Whole = true }, meaning) with { Required = true };
}
