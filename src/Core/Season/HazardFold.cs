using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>The farm's hazards as the marks about them go by.</summary>
internal sealed class HazardFold(SeasonState ground)
{
    private readonly GroundTime time = new(ground.Now);
    private readonly List<Hazard> hazards = [.. ground.Farm.Hazards];

    public ImmutableArray<Hazard> Close() => [.. hazards];

    public void Apply(Mark mark)
    {
        if (mark.Fact is not HazardSeen seen) return;
        var at = hazards.FindIndex(h => string.Equals(h.Name, seen.Name, StringComparison.OrdinalIgnoreCase));
        if (seen.What == HazardSighting.Gone)
        {
            // What the document says after that look stands: it may have been put up again.
            if (at >= 0 && (time.IsOlderThan(mark) || !ground.Farm.Hazards.Contains(hazards[at]))) hazards.RemoveAt(at);
            return;
        }

        // A look at what nobody knew of is the first word of it.
        if (at < 0) hazards.Add(Laid(new Hazard(seen.Kind ?? HazardKind.Other, seen.Name), seen, Day(mark)));
        else hazards[at] = Laid(hazards[at], seen, Later(hazards[at].Confirmed, Day(mark)));
    }

    private static Hazard Laid(Hazard hazard, HazardSeen seen, DateOnly looked) => hazard with
    {
        Kind = seen.Kind ?? hazard.Kind,
        Height = seen.Height ?? hazard.Height,
        Points = seen.At is { } at ? [at] : hazard.Points,
        Near = seen.Field is { } field && !hazard.Near.Contains(field, StringComparer.OrdinalIgnoreCase) ? hazard.Near.Add(field) : hazard.Near,
        Confirmed = looked,
    };

    private static DateOnly Later(DateOnly? before, DateOnly day) => before is { } known && known > day ? known : day;

    private DateOnly Day(Mark mark)
    {
        var here = mark.Happened.ToOffset(ground.Offset);
        return new DateOnly(here.Year, here.Month, here.Day);
    }
}
