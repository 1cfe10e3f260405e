using Watersown.Planner.Decoding;
using Watersown.Planner.Instances;

namespace Watersown.Planner;

/// <summary>
/// A bound that is there at once: every field as if it had the tractors, the water and the aeroplane to itself, and every
/// batch that no slot can reach thrown away. The solver's own bound takes over once it has one.
/// </summary>
internal static class QuickBound
{
    public static long Of(Instance instance) => instance.Fields.Sum(f => Least(instance, f)) + Lost(instance);

    private static long Least(Instance instance, FieldItem field)
    {
        var least = field.UnsownCost;
        if (field.Impossible is not null) return least;
        var ready = Math.Max(Full(instance, field), SeedReady(instance, field));
        for (var p = 0; p < instance.Planes.Length; p++)
        {
            foreach (var (from, until) in instance.Planes[p].Windows)
            {
                var start = Math.Max(from, ready);
                if (start + field.FlySteps[p] > until) continue;
                least = Math.Min(least, field.DelayCost[instance.Clock.DayOf(start)] + field.FerryCost[p]);
                break;
            }
        }

        return least;
    }

    private static int Full(Instance instance, FieldItem field)
    {
        if (field.Need == WaterNeed.None) return 0;
        var ground = field.Works.IsEmpty ? 0 : instance.Work.End(Math.Min(instance.Work.Length, field.FitAxis + field.Works.Sum(w => w.Steps)));
        return Math.Max(0, ground) + (field.Fill?.LeastSteps ?? field.UsualFill);
    }

    private static int SeedReady(Instance instance, FieldItem field)
    {
        var ready = instance.Clock.DayStart(instance.Soak.FirstDay) + instance.Soak.Hour + instance.Soak.Least;
        return instance.Batches.Where(b => Decoder.Fits(b, field)).Select(b => b.ReadyFrom).Append(ready).Min();
    }

    private static long Lost(Instance instance)
    {
        var lost = instance.Batches.Where(b => !b.CanBeCalledOff && !instance.Planes.Any(p => p.Windows.Any(w => w.From < b.GoodUntil && w.Until > b.ReadyFrom)));
        return (long)Math.Floor(lost.Sum(b => b.DryPounds * b.CostPerPound * 1000));
    }
}
