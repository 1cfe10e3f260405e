using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

internal sealed partial class Decoder
{
    private readonly List<int> starts = [];

    /// <summary>The fill that ends first, a slow one being shunned by the genes' haste; nothing where none fits.</summary>
    private (int Start, int End, int Flow)? BestFill(FieldItem field, Genes genes, int ready)
    {
        if (field.Class < 0 || field.Fill is null) return UsualFill(field, ready);
        (int Start, int End, int Flow)? best = null;
        var bestScore = double.MaxValue;
        ListStarts(field, ready);
        foreach (var start in starts)
        {
            if (best is { } found && start >= found.End) break;
            if (FillAt(field, start) is not { } fill) continue;
            var score = fill.End + (genes.Haste * (fill.End - fill.Start));
            if (score >= bestScore) continue;
            (best, bestScore) = (fill, score);
        }

        return best;
    }

    private (int Start, int End, int Flow)? UsualFill(FieldItem field, int ready)
    {
        var start = field.Need == WaterNeed.Running ? 0 : FillingFrom(ready, field.UsualFill);
        var end = start + field.UsualFill;
        return end <= instance.Clock.Horizon ? (start, end, 0) : null;
    }

    private int FillingFrom(int ready, int steps) => instance.Fillings is { } most ? fillings.FirstFit(ready, steps, 1, most) : ready;

    private void ListStarts(FieldItem field, int ready)
    {
        starts.Clear();
        starts.Add(ready);
        if (field.Need == WaterNeed.Running || field.PinnedFill is not null) return;
        foreach (var l in limitsOf[field.Index]) starts.AddRange(flows[l].Changes.Where(t => t > ready && t < instance.Clock.Horizon));
        starts.Sort();
    }

    private (int Start, int End, int Flow)? FillAt(FieldItem field, int start)
    {
        if (field.Need == WaterNeed.Running) start = 0;
        var curve = field.Fill!;
        var flow = Math.Min(curve.MostFlow, Free(field, start, start + 1));
        for (var tries = 0; tries < 20; tries++)
        {
            if (flow < curve.LeastFlow) return null;
            var end = start + curve.Steps(flow);
            if (end > instance.Clock.Horizon || Free(field, end, instance.Clock.Horizon) < field.Hold) return null;
            var free = Free(field, start, end);
            if (free >= flow) return FillingFrom(start, end - start) == start || field.Need == WaterNeed.Running ? (start, end, flow) : null;
            flow = free;
        }

        return null;
    }

    private int Free(FieldItem field, int from, int until)
    {
        if (from >= until) return int.MaxValue;
        var free = int.MaxValue;
        foreach (var l in limitsOf[field.Index])
        {
            free = Math.Min(free, limitMost[l] - flows[l].Peak(from, until) + field.HoldNow);
        }

        return free;
    }
}
