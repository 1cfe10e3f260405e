using Watersown.Documents.Json;
using Watersown.Season;
using Watersown.Wording;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of what was said, fixed and overridden, and of the logbook itself.</summary>
internal static class TalkForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<Told>("told",
            [
                Need("message", Text, "name of the message"),
                Need("person", Text, "whom"),
                Need("state", new Outline.Word(MarkWords.Told.All), "how far it has come"),
                May("role", Text, "what the person does"),
                May("by_voice", new Outline.Flag(), "said by voice"),
                May(SeasonLimits.Plan, "number of the plan it came from"),
                May("text", LongText, "the words"),
                May("steps", new Outline.Several(new Outline.Thing("told step", [OfField, Task, Start]), 500), "steps of the plan it told of"),
            ],
            WriteTold,
            f => new Told(f.Text("message")!, f.Text("person")!, MarkWords.Told.Find(f.Text("state"))!.Value)
            {
                Role = f.Text("role"),
                ByVoice = f.Flag("by_voice") ?? false,
                Plan = f.Whole("plan"),
                Text = f.Text("text"),
                Steps = [.. f.Entries("steps").Select(s => new ToldStep(s.Text("field")!, TaskOf(s), s.Instant("start")!.Value))],
            }),
        Of<StepPinned>("pin",
            [OfField, Task, Start],
            (pen, f) => WriteStep(pen, f.Field, f.Task, f.Start),
            f => new StepPinned(f.Text("field")!, TaskOf(f), f.Instant("start")!.Value)),
        Of<StepUnpinned>("unpin",
            [OfField, Task],
            (pen, f) => WriteStep(pen, f.Field, f.Task, null),
            f => new StepUnpinned(f.Text("field")!, TaskOf(f))),
        Of<Overridden>("overridden",
            [
                Need("stop", LongText, "which stop"), Need("who", Text, "who answers for it"), Need("reason", LongText, "why"),
                AnyField, May("batch", Text, "batch code"), May("trailer", Text, "the trailer's number"),
            ],
            (pen, f) =>
            {
                pen.Text("stop", f.Stop);
                pen.Text("who", f.Who);
                pen.Text("reason", f.Reason);
                pen.Text("field", f.Field);
                pen.Text("batch", f.Batch);
                pen.Text("trailer", f.Trailer);
            },
            f => new Overridden(f.Text("stop")!, f.Text("who")!, f.Text("reason")!) { Field = f.Text("field"), Batch = f.Text("batch"), Trailer = f.Text("trailer") }),
        Of<PersonNamed>("person",
            [Need("name", Text, "the person's name"), Need("role", Text, "what the person does"), May("phone", Text, "phone number"), May("speaks", new Outline.Word(Farms.Words.Languages.All), "the language the person reads")],
            (pen, f) =>
            {
                pen.Text("name", f.Name);
                pen.Text("role", f.Role);
                pen.Text("phone", f.Phone);
                pen.Text("speaks", Farms.Words.Languages.Of(f.Speaks));
            },
            f => new PersonNamed(f.Text("name")!, f.Text("role")!) { Phone = f.Text("phone"), Speaks = Farms.Words.Languages.Find(f.Text("speaks")) ?? Language.English }),
        Of<PlanIssued>("plan-issued",
            [Need(SeasonLimits.PlanNumber, "number of the plan"), Need("made_at", new Outline.Instant(), "when it was made"), May("why", LongText, "why it was made")],
            (pen, f) =>
            {
                pen.Number("number", f.Number);
                pen.Instant("made_at", f.MadeAt);
                pen.Text("why", f.Why);
            },
            f => new PlanIssued(f.Whole("number")!.Value, f.Instant("made_at")!.Value, f.Text("why"))),
        Of<Withdrawn>("withdrawn", [], (_, _) => { }, _ => new Withdrawn()),
    ];

    private static OutlineKey Task => Need("task", new Outline.Word(Farms.Words.Tasks.All), "the step of the plan");

    private static OutlineKey Start => Need("start", new Outline.Instant(), "when it is to start");

    private static Schedule.PlanTaskKind TaskOf(JsonFacts facts) => Farms.Words.Tasks.Find(facts.Text("task"))!.Value;

    private static void WriteStep(JsonPen pen, string field, Schedule.PlanTaskKind task, DateTimeOffset? start)
    {
        pen.Text("field", field);
        pen.Text("task", Farms.Words.Tasks.Of(task));
        pen.Instant("start", start);
    }

    private static void WriteTold(JsonPen pen, Told f)
    {
        pen.Text("message", f.Message);
        pen.Text("person", f.Person);
        pen.Text("state", MarkWords.Told.Of(f.State));
        pen.Text("role", f.Role);
        pen.Flag("by_voice", f.ByVoice);
        pen.Number("plan", f.Plan);
        pen.Text("text", f.Text);
        pen.Things("steps", f.Steps.AsArray(), s => WriteStep(pen, s.Field, s.Task, s.Start));
    }
}
