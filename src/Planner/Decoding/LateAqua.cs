using Watersown.Planner.Instances;
using Watersown.Schedule;

namespace Watersown.Planner.Decoding;

/// <summary>
/// Moves aqua and roll toward the water: nitrogen that waits in warm ground is lost, and a plan that only looks at cost puts
/// ground work anywhere before its fill. Two days are kept in hand for weather.
/// </summary>
internal static class LateAqua
{
    private const int DaysInHand = 2;

    public static Solution Apply(Instance instance, Solution plan)
    {
        var groups = instance.Groups.Select(_ => new StepProfile()).ToArray();
        var drivers = new StepProfile();
        var works = plan.Fields.Select(f => f.Works.ToArray()).ToArray();
        foreach (var field in instance.Fields.Where(f => plan.Fields[f.Index].Flooded)) Book(field, works[field.Index], groups, drivers, 1);
        foreach (var field in instance.Fields.Where(f => plan.Fields[f.Index].Flooded && !f.Works.IsEmpty && f.Need == WaterNeed.ToStart).OrderByDescending(f => plan.Fields[f.Index].FillStart))
        {
            var latest = instance.Work.AtOrAfter(plan.Fields[field.Index].FillStart) - (DaysInHand * instance.Work.PerDay);
            for (var i = field.Works.Length - 1; i >= 0 && field.Works[i].Work is GroundWork.Aqua or GroundWork.Roll; i--)
                latest = Shift(instance, field.Works[i], ref works[field.Index][i], latest, groups, drivers);
        }

        return plan with { Fields = [.. plan.Fields.Select((f, i) => f with { Works = [.. works[i]] })] };
    }

    /// <summary>Puts one piece of work at the latest free place before <paramref name="latest"/>, never earlier than it was; gives its start.</summary>
    private static int Shift(Instance instance, WorkItem item, ref int start, int latest, StepProfile[] groups, StepProfile drivers)
    {
        Take(item, start, groups, drivers, -1);
        for (var tried = latest - item.Steps; tried > start; tried -= SeasonClock.PerHour / 2)
        {
            var free = (item.Group < 0 || groups[item.Group].Peak(tried, tried + item.Steps) < instance.Groups[item.Group].Count)
                && (instance.Drivers is not { } most || drivers.Peak(tried, tried + item.Steps) < most);
            if (!free) continue;
            start = tried;
            break;
        }

        Take(item, start, groups, drivers, 1);
        return start;
    }

    private static void Book(FieldItem field, int[] starts, StepProfile[] groups, StepProfile drivers, int amount)
    {
        for (var i = 0; i < starts.Length; i++) Take(field.Works[i], starts[i], groups, drivers, amount);
    }

    private static void Take(WorkItem item, int start, StepProfile[] groups, StepProfile drivers, int amount)
    {
        if (item.Group >= 0) groups[item.Group].Take(start, start + item.Steps, amount);
        drivers.Take(start, start + item.Steps, amount);
    }
}
