namespace Watersown.Schedule.Sheets;

/// <summary>Chooses a round length for the scale bar of a map.</summary>
internal static class ScaleBar
{
    private static readonly ImmutableArray<int> Steps = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000];

    /// <summary>The longest round length not above a limit, in meters, and its words.</summary>
    public static (double Meters, string Words) For(Telling tell, double mostMeters)
    {
        double unit = tell.Metric ? 1 : 0.3048;
        var step = Steps.LastOrDefault(s => s * unit <= mostMeters, Steps[0]);
        return (step * unit, tell.Long(Length.FromMeters(step * unit)));
    }
}
