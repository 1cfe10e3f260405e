using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>What a newer plan has moved on the sheet of one link, in words.</summary>
internal static class LinkMoves
{
    /// <summary>One line for each step that stands elsewhere than it did when the link was made; empty where nothing moved.</summary>
    public static ImmutableArray<string> Of(LinkScope scope)
    {
        if (scope.Plan.Number == scope.Issued.Number) return [];
        var before = Steps(scope, scope.Issued);
        var after = Steps(scope, scope.Plan);
        var words = scope.Tell.Words.Link;
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (var (key, was) in before)
        {
            var what = Say(scope, key);
            var now = after.FirstOrDefault(a => a.Key == key).Step;
            if (now is null) lines.Add(Template.Fill(words.NoLonger, ("what", what), ("before", Moment(scope, was))));
            else if (now.Start != was.Start || now.End != was.End) lines.Add(Template.Fill(words.MovedFrom, ("what", what), ("after", Moment(scope, now)), ("before", Moment(scope, was))));
        }

        foreach (var (key, now) in after.Where(a => before.All(b => b.Key != a.Key)))
            lines.Add(Template.Fill(words.NewStep, ("what", Say(scope, key)), ("after", Moment(scope, now))));
        return lines.ToImmutable();
    }

    private static ImmutableArray<((string Field, PlanTaskKind Kind, int Turn) Key, PlanTask Step)> Steps(LinkScope scope, SeasonPlan plan) =>
    [
        .. plan.Tasks.Where(t => Concerns(scope.Sheet.Kind, t.Kind) && OnItsDays(scope, t))
            .GroupBy(t => (t.Field, t.Kind)).SelectMany(g => g.OrderBy(t => t.Start).Select((t, i) => ((t.Field, t.Kind, i + 1), t))),
    ];

    private static bool Concerns(LinkKind sheet, PlanTaskKind step) => sheet switch
    {
        LinkKind.Flight => step == PlanTaskKind.Sow,
        LinkKind.Seed => step is PlanTaskKind.CallSeed or PlanTaskKind.Soak or PlanTaskKind.Drain or PlanTaskKind.Haul,
        LinkKind.Water => step is PlanTaskKind.Fill or PlanTaskKind.OrderWater,
        LinkKind.Day => step != PlanTaskKind.Ground,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // A flight sheet is of one day; seed and water look a few days ahead.
    private static bool OnItsDays(LinkScope scope, PlanTask step)
    {
        var day = scope.Tell.Day(step.Start);
        var last = scope.Sheet.Kind is LinkKind.Flight or LinkKind.Day ? scope.Sheet.Day : scope.Sheet.Day.AddDays(3);
        return day >= scope.Sheet.Day && day <= last;
    }

    private static string Say(LinkScope scope, (string Field, PlanTaskKind Kind, int Turn) key)
    {
        var tell = scope.Tell;
        return key.Field + " " + (key.Kind switch
        {
            PlanTaskKind.Sow => tell.Words.Link.StepSow,
            PlanTaskKind.Fill => tell.Words.Link.StepFill,
            PlanTaskKind.OrderWater => tell.Words.Link.StepOrder,
            PlanTaskKind.CallSeed => tell.Words.Link.StepCall,
            PlanTaskKind.Soak => tell.Words.Link.StepSoak,
            PlanTaskKind.Drain => tell.Words.Link.StepDrain,
            PlanTaskKind.Haul => tell.Words.Link.StepHaul,
            _ => throw new System.Diagnostics.UnreachableException(),
        });
    }

    private static string Moment(LinkScope scope, PlanTask step) => scope.Tell.Moment(step.Start);
}
