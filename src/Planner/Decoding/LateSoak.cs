using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

/// <summary>
/// Puts seed in soak as late as its sowing allows. The search sees no price in an early soak; a grower does: it is a day
/// less of forecast and a day more of seed that cannot be put back. Later is always possible, since it only frees trailers.
/// </summary>
internal static class LateSoak
{
    public static Solution Apply(Instance instance, Solution plan) => plan with
    {
        Fields = [.. plan.Fields.Select((f, i) => f.Sown && f.Batch < 0 && instance.Fields[i].PinnedSoakDay is null ? f with { SoakDay = Latest(instance, f) } : f)],
    };

    private static int Latest(Instance instance, FieldSolution field)
    {
        var day = field.SoakDay;
        while (instance.Clock.DayStart(day + 1) + instance.Soak.Hour + instance.Soak.Least <= field.Sow) day++;
        return day;
    }
}
