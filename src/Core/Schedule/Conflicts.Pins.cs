using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>Steps that a person has fixed and that the plan cannot have there.</summary>
public static partial class Conflicts
{
    // As near as a crew reads a watch.
    private static readonly TimeSpan sameHour = TimeSpan.FromMinutes(15);

    private static IEnumerable<Conflict> Pins(SeasonPlan plan)
    {
        foreach (var pin in plan.State.Pins)
        {
            if (TaskWords.Kind(pin.Task) is not (PlanTaskKind.Fill or PlanTaskKind.Sow) || plan.State.Season(pin.Field).Stage == FieldStage.Sown) continue;
            var kind = TaskWords.Kind(pin.Task)!.Value;
            var word = kind == PlanTaskKind.Sow ? "sowing" : "flooding";
            if (plan.Tasks.Where(t => t.Field == pin.Field && t.Kind == kind).MinBy(t => (t.Start - pin.Start).Duration()) is not { } task)
            {
                if (kind == PlanTaskKind.Fill && plan.State.Season(pin.Field).Stage >= FieldStage.Flooding) continue;
                yield return new Conflict([pin.Field], $"{Name(plan, pin.Field)}: its {word} is pinned for {When.Moment(pin.Start)}, and the plan cannot have it there: it has none.", "Let go of the pin, or lift what stands against that hour.") { Kind = "pin" };
            }
            else if (!task.Fixed && (task.Start - pin.Start).Duration() > sameHour)
            {
                yield return new Conflict([pin.Field],
                    $"{Name(plan, pin.Field)}: its {word} is pinned for {When.Moment(pin.Start)}, and the plan has it {When.Moment(task.Start)}, {Say.Number((task.Start - pin.Start).Duration().TotalHours, 1)} h {(task.Start > pin.Start ? "later" : "earlier")}.",
                    "Let go of the pin, or lift what stands against that hour.")
                {
                    Kind = "pin",
                    Working = Working.Empty.Given("P", "pinned for", Datum.Moment(pin.Start), string.Empty, "pin").Given("S", "in the plan", Datum.Moment(task.Start), string.Empty, "plan", plan.MadeAt)
                        .Step("L", "apart", (task.Start - pin.Start).TotalHours, "h", "S − P", Sources.Arithmetic),
                };
            }
        }
    }
}
