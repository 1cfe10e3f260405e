namespace Watersown.Water.Learning;

/// <summary>
/// Learns a field's figures from what was seen of a flood: the figures at which what was held true before and what was seen
/// together are off least, with how sure they are by the curvature there.
/// </summary>
[Source(nameof(Sources.SeberWild1989), "ch. 2 and 14: Gauss-Newton; the covariance is the inverse of the curvature at the best figures")]
[Source(nameof(Sources.LangeLittleTaylor1989), "weights (ν + 1) / (ν + r²) with ν = 4, 1 within one spread")]
public static class FloodFit
{
    /// <summary>What the case says.</summary>
    public static FloodFitted Of(FloodCase flood)
    {
        var model = new FloodModel(flood);
        var task = new FitTask(model.Rows, model.RowCount, model.Silent, [.. Enumerable.Repeat(0.02, FloodModel.Count)], [.. Enumerable.Repeat(1.0, FloodModel.Count)], Robust: true, Enough: 1e-4);
        var fit = GaussNewton.Fit(task, Start(task));
        return FloodReading.Of(flood, model, fit);
    }

    // More water and thirstier ground look alike: the best of a few such places is a start from which water gets to where it was seen.
    private static double[] Start(FitTask task)
    {
        var (best, least) = (new double[FloodModel.Count], double.PositiveInfinity);
        foreach (var reach in (ReadOnlySpan<double>)[0, -1, 1, 2.5, 4])
        {
            var at = new double[FloodModel.Count];
            (at[FloodModel.TakeUp], at[FloodModel.Inflow]) = (-reach, reach);
            if (GaussNewton.SumAt(task, at) is var sum && sum < least) (best, least) = (at, sum);
        }

        return best;
    }
}
