namespace Watersown.Water.Learning;

/// <summary>
/// One flood as rows to be fitted: first what was seen, then, silent, when water comes to each check and covers it. Its figures
/// are counted in spreads from what was held true before.
/// </summary>
internal sealed class FloodModel
{
    public const int TakeUp = 0;
    public const int Pond = 1;
    public const int Seepage = 2;
    public const int Inflow = 3;
    public const int Start = 4;
    public const int Count = 5;

    /// <summary>Longer is never, s.</summary>
    public const double Never = 400 * 86400.0;

    private readonly FloodCase flood;
    private readonly FloodAdvance advance;
    private readonly int[] sampleOf;
    private readonly double[] last = [double.NaN, 0, 0, 0];

    public FloodModel(FloodCase flood)
    {
        this.flood = flood;
        var read = Enumerable.Range(0, flood.Sightings.Length).Where(i => flood.Sightings[i].Kind == SightingKind.Depth).OrderBy(i => flood.Sightings[i].At).ToList();
        sampleOf = [.. Enumerable.Range(0, flood.Sightings.Length).Select(i => read.IndexOf(i))];
        advance = new FloodAdvance(flood.Network, [.. read.Select(i => (flood.Sightings[i].At.TotalSeconds, flood.Sightings[i].Check ?? -1))], Never);
    }

    public int Silent => 2 * flood.Network.Checks.Length;

    public int RowCount => flood.Sightings.Length + Silent;

    /// <summary>The silent row of when water comes to a check; the next is when it covers it.</summary>
    public int RowOf(int check) => flood.Sightings.Length + (2 * check);

    public static WaterDepth TakeUpAt(FloodFigures before, double[] at) => before.TakeUp * Math.Exp(before.TakeUpSpread.Share * at[TakeUp]);

    public static WaterDepth PondAt(FloodFigures before, double[] at) => before.Pond * Math.Exp(before.PondSpread.Share * at[Pond]);

    public static DepthRate SeepageAt(FloodFigures before, double[] at) => before.Seepage * Math.Exp(before.SeepageSpread.Share * at[Seepage]);

    public double InflowAt(double[] at) => Math.Exp(flood.InflowSpread.Share * at[Inflow]);

    /// <summary>Puts the rows for figures; moments in s, infinite where they never come.</summary>
    public void Rows(double[] at, double[] rows)
    {
        Run(at);
        var late = flood.StartSpread.TotalSeconds * at[Start];
        for (var i = 0; i < flood.Sightings.Length; i++) rows[i] = Row(i, at, late);
        for (var c = 0; c < flood.Network.Checks.Length; c++)
        {
            rows[RowOf(c)] = Moment(advance.FirstWet[c], late);
            rows[RowOf(c) + 1] = Moment(advance.Full[c], late);
        }
    }

    /// <summary>When the last check is covered, s; infinite where never.</summary>
    public double AllFull(double[] at)
    {
        Run(at);
        return advance.Full.Max() is var full && full > 0 ? full + (flood.StartSpread.TotalSeconds * at[Start]) : 0;
    }

    // The start moves all moments alike and needs no run of its own.
    private void Run(double[] at)
    {
        if (last.AsSpan().SequenceEqual(at.AsSpan(0, last.Length))) return;
        at.AsSpan(0, last.Length).CopyTo(last);
        advance.Run(TakeUpAt(flood.Before, at).Meters, PondAt(flood.Before, at).Meters, (flood.Evaporation + SeepageAt(flood.Before, at)).MetersPerSecond, InflowAt(at));
    }

    private double Row(int i, double[] at, double late)
    {
        var seen = flood.Sightings[i];
        return seen.Kind switch
        {
            SightingKind.Wet => Apart(seen, advance.FirstWet[seen.Check ?? 0], late, LearningSpreads.SeenWet),
            SightingKind.StillDry => Math.Max(0, Apart(seen, advance.FirstWet[seen.Check ?? 0], late, LearningSpreads.SeenWet)),
            SightingKind.Full => Apart(seen, seen.Check is { } check ? advance.Full[check] : advance.Full.Max(), late, LearningSpreads.SeenFull),
            SightingKind.Depth => (seen.Depth.Meters - advance.Depths[sampleOf[i]]) / (LearningSpreads.Stick.Meters * seen.Wider),
            SightingKind.Drop => Fell(seen, at),
            SightingKind.Flow => -Math.Log(InflowAt(at)) / Sure(seen),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static double Apart(FloodSighting seen, double moment, double late, TimeSpan spread)
    {
        var (own, flood) = (spread.TotalSeconds * seen.Wider, LearningSpreads.Flood.Share * seen.At.TotalSeconds);
        return (seen.At.TotalSeconds - Math.Min(Never, moment) - late) / Math.Sqrt((own * own) + (flood * flood));
    }

    private double Fell(FloodSighting seen, double[] at)
    {
        var air = (flood.Evaporation * seen.Over).Meters;
        var (own, days) = (LearningSpreads.StickDrop.Meters * seen.Wider, LearningSpreads.Evaporation.Share * air);
        return (seen.Depth.Meters - air - (SeepageAt(flood.Before, at) * seen.Over).Meters) / Math.Sqrt((own * own) + (days * days));
    }

    private static double Sure(FloodSighting seen)
    {
        var (own, shared) = (LearningSpreads.FlowRead.Share * seen.Wider, seen.Shared ? LearningSpreads.Shared.Share : 0);
        return Math.Sqrt((own * own) + (shared * shared));
    }

    private static double Moment(double seconds, double late) => seconds <= 0 ? 0 : Math.Min(Never, seconds) + late;
}
