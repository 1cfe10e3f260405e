using Watersown.Schedule;
using Watersown.Schedule.Replan;

namespace Watersown.Season;

/// <summary>Puts a choice for the coming mornings into the season, as marks and nothing else: the plan follows from them.</summary>
public static class ReplanChoosing
{
    /// <summary>The marks of a choice: pins for its steps, and older pins of fields that it leaves for later given back.</summary>
    public static ImmutableArray<MarkFact> Choose(SeasonBook book, MorningReplan replan, ReplanPlan choice)
    {
        var pins = ReplanLaying.Pins(choice);
        var now = book.State.Pins;
        var facts = ImmutableArray.CreateBuilder<MarkFact>();
        foreach (var pin in pins.Where(p => !now.Any(s => Is(s, p.Field, p.Task) && s.Start == p.Start))) facts.Add(new StepPinned(pin.Field, pin.Task, pin.Start));
        foreach (var field in replan.Case.Fields.Where(f => pins.All(p => p.Field != f.Code)))
        {
            foreach (var task in new[] { PlanTaskKind.Soak, PlanTaskKind.Sow }.Where(t => now.Any(s => Is(s, field.Code, t)))) facts.Add(new StepUnpinned(field.Code, task));
        }

        return facts.ToImmutable();
    }

    /// <summary>The marks that pin a choice as it stands: taken back, the pins that stood before stand again.</summary>
    public static ImmutableArray<MarkId> PinsOf(SeasonBook book, ReplanPlan choice)
    {
        var pins = ReplanLaying.Pins(choice);
        var standing = book.Story.Where(l => l.Standing == Standing.Stands && l.Mark.Fact is StepPinned).ToList();
        return
        [
            .. pins.SelectMany(p => standing.Where(l => l.Mark.Fact is StepPinned s && s.Task == p.Task && s.Start == p.Start && string.Equals(s.Field, p.Field, StringComparison.OrdinalIgnoreCase)))
                .Select(l => l.Mark.Id).Distinct(),
        ];
    }

    /// <summary>Somebody was told, or could not be.</summary>
    /// <param name="draft">What was drafted for them.</param>
    /// <param name="state">How far it has come.</param>
    /// <param name="voice">Said, not sent.</param>
    /// <param name="plan">Number of the plan in force.</param>
    public static Told Say(ReplanDraft draft, ToldState state, bool voice, [PlainNumber("number of a plan")] int? plan) => new(draft.Message, draft.Name, state)
    {
        Role = SaidWords.Role(draft.Role),
        ByVoice = voice,
        Plan = plan,
        Text = string.Join('\n', draft.Texts.Select(t => t.Text)),
        Steps = [.. draft.Steps],
    };

    private static bool Is(Pin pin, string field, PlanTaskKind task) =>
        string.Equals(pin.Field, field, StringComparison.OrdinalIgnoreCase) && string.Equals(pin.Task, TaskWords.Of(task), StringComparison.Ordinal);
}
