using Watersown.Flight;
using Watersown.Land;

namespace Watersown.Schedule.Board;

/// <summary>Finds what holds a field where the plan has it, from the plan and what is known; it follows what the plan shows, not how it was searched for.</summary>
internal sealed class BoardReasons(SeasonPlan plan, SeasonState state)
{
    // Within an hour two things count as one following the other.
    private static readonly TimeSpan follows = TimeSpan.FromHours(1);

    // Of its own morning, less than this before it is the time between two fields.
    private static readonly TimeSpan idle = TimeSpan.FromMinutes(30);

    private readonly ImmutableDictionary<string, (Aeroplane Plane, ImmutableArray<FlyingWindow> Windows)> planes =
        (plan.State.Aeroplanes.IsEmpty ? [new Aeroplane(string.Empty)] : plan.State.Aeroplanes).DistinctBy(p => p.Name, StringComparer.Ordinal).ToImmutableDictionary(p => p.Name, p => (p, FlyingWindows.Of(plan.State, p)), StringComparer.Ordinal);

    private readonly ImmutableArray<PlanTask> flights = [.. plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow)];

    private readonly UseLane? trailers = TrailerLanes.Of(plan, new BoardSpan(BoardZoom.Season, plan.MadeAt.AddDays(-30), plan.MadeAt.AddDays(200))).FirstOrDefault();

    public BoardReason Of(Field field, FieldSeason season)
    {
        if (season.Stage == FieldStage.Sown) return new BoardReason(BoardHold.Sown) { At = season.SownAt };
        if (plan.Task(field.Code, PlanTaskKind.Sow) is not { } sow) return Unsown(field, season);
        if (sow.Pinned && Kept(field, sow)) return new BoardReason(BoardHold.Pinned) { At = sow.Start };
        var water = Water(field, season);
        var seed = Seed(field, sow);
        var ready = Later(water.At, seed.At);
        return Air(field, sow, ready ?? plan.MadeAt) ?? (seed.At is { } s && (water.At is not { } w || s > w) ? seed : water);
    }

    /// <summary>The plan has the sowing where it is pinned: one that it could not keep there is held by something else.</summary>
    private bool Kept(Field field, PlanTask sow) => state.Pins.Where(p => p.Field == field.Code && p.Task == TaskWords.Of(PlanTaskKind.Sow)).All(p => (p.Start - sow.Start).Duration() < idle);

    private BoardReason Unsown(Field field, FieldSeason season) =>
        season.Stage == FieldStage.TooWet && !plan.Tasks.Any(t => t.Field == field.Code) ? new BoardReason(BoardHold.TooWet) { At = season.FitFrom } : new BoardReason(BoardHold.NotInPlan);

    /// <summary>Water, or the ground that the water waits for.</summary>
    private BoardReason Water(Field field, FieldSeason season)
    {
        if (plan.Task(field.Code, PlanTaskKind.Fill) is not { } fill) return new BoardReason(BoardHold.Water) { At = season.FullSince ?? plan.MadeAt };
        var ground = plan.Tasks.Where(t => t.Field == field.Code && t.Kind == PlanTaskKind.Ground).Select(t => (DateTimeOffset?)t.End).Max();
        if (ground is { } done && fill.Start - done <= follows) return new BoardReason(BoardHold.Ground) { At = done };
        return new BoardReason(BoardHold.Water) { At = fill.End, Others = [.. fill.From.Select(f => f.Source).DefaultIfEmpty(fill.Resource)] };
    }

    /// <summary>When seed could be there at the soonest, whatever day the plan soaks it.</summary>
    private BoardReason Seed(Field field, PlanTask sow)
    {
        var rules = plan.State.SoakRules;
        if (plan.State.Batches.FirstOrDefault(b => b.Code == sow.Batch) is { } batch)
        {
            var drained = batch.Drained ?? Later(batch.InSoak + rules.SoakLeast, plan.MadeAt)!.Value;
            return new BoardReason(BoardHold.Seed) { At = drained + rules.Drain, Others = [batch.Code] };
        }

        var soaked = plan.Task(field.Code, PlanTaskKind.Soak)?.Start;
        var today = FarmTime.Day(plan.State, plan.MadeAt);
        var first = FarmTime.At(plan.State, plan.MadeAt <= FarmTime.At(plan.State, today, rules.CallsUntil) ? today : today.AddDays(1), rules.SoakHour);
        return new BoardReason(BoardHold.Seed) { At = (soaked < first ? soaked.Value : first) + rules.SoakLeast + rules.Drain };
    }

    /// <summary>The last morning before its own on which it could have gone by water and seed, and what took that morning; none where there was none.</summary>
    private BoardReason? Air(Field field, PlanTask sow, DateTimeOffset ready)
    {
        if (!planes.TryGetValue(sow.Resource, out var known)) return null;
        var need = sow.End - sow.Start;
        for (var day = FarmTime.Day(state, sow.Start); day >= FarmTime.Day(state, ready); day = day.AddDays(-1))
        {
            foreach (var slot in FlyingWindows.Slots(plan.State, known.Plane, day).Reverse())
            {
                var from = slot.From > ready ? slot.From : ready;
                var until = slot.Until < sow.Start ? slot.Until : sow.Start;
                if (until - from < (day == FarmTime.Day(state, sow.Start) ? idle : need)) continue;
                return Morning(field, sow, from, until, known.Windows);
            }
        }

        return null;
    }

    private BoardReason Morning(Field field, PlanTask sow, DateTimeOffset from, DateTimeOffset until, ImmutableArray<FlyingWindow> windows)
    {
        var need = sow.End - sow.Start;
        var others = flights.Where(t => t.Field != field.Code && t.Resource == sow.Resource && t.Start < until && t.End > from).Select(t => t.Field).Distinct(StringComparer.Ordinal).ToImmutableArray();
        var calm = windows.Where(w => w.From < until && w.Until > from).Sum(w => (Earlier(w.Until, until) - Later(w.From, from)!.Value).TotalHours);
        if (calm < need.TotalHours && others.IsEmpty && windows.All(w => w.Forecast || w.From >= until || w.Until <= from)) return new BoardReason(BoardHold.Wind) { At = from };
        if (!others.IsEmpty) return new BoardReason(BoardHold.Plane) { At = from, Others = others };
        return TrailersOut(sow, from) ? new BoardReason(BoardHold.Trailers) { At = from } : new BoardReason(BoardHold.Others) { At = from };
    }

    /// <summary>Whether its trailers could not have been filled two days before such a morning.</summary>
    private bool TrailersOut(PlanTask sow, DateTimeOffset morning)
    {
        if (trailers is not { Most: { } most }) return false;
        var rules = plan.State.SoakRules;
        var into = FarmTime.At(plan.State, FarmTime.Day(plan.State, morning - rules.SoakLeast - rules.Drain), rules.SoakHour);
        var taken = trailers.Bars.Where(b => b.Field != sow.Field && b.From < morning && b.Until > into).Select(b => b.Layer).Distinct().Count();
        return taken + (sow.Trailers ?? 1) > most;
    }

    private static DateTimeOffset? Later(DateTimeOffset? a, DateTimeOffset? b) => a is null || b > a ? b : a;

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;
}
