namespace Watersown.Planner.Instances;

/// <summary>When tailwater comes: once enough acres of its fields are full.</summary>
internal static class TailwaterTime
{
    /// <summary>The step from which it comes (the horizon where it never does), and the fields that bring it.</summary>
    public static (int From, ImmutableHashSet<int> Fields) Of(Instance instance, TailwaterItem need, IReadOnlyList<FieldSolution?> planned)
    {
        double acres = 0;
        var bringing = ImmutableHashSet<int>.Empty;
        foreach (var i in need.Fields.Where(i => planned[i] is { Flooded: true }).OrderBy(i => planned[i]!.FillEnd).ThenBy(i => i))
        {
            acres += instance.Fields[i].Acres;
            bringing = bringing.Add(i);
            if (acres >= need.AcresMissing) return (Math.Max(0, planned[i]!.FillEnd), bringing);
        }

        return need.AcresMissing <= 0 ? (0, bringing) : (instance.Clock.Horizon, []);
    }
}
