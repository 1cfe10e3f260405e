namespace Watersown.Water;

/// <summary>Ground being flooded from one steady supply: what is wet loses water while the rest is still dry.</summary>
/// <param name="Dry">Land still to be covered.</param>
/// <param name="Wet">Land already covered that the same supply must hold.</param>
/// <param name="Fill">Water to wet the worked soil and stand over it.</param>
/// <param name="Loss">Lost from covered land to the air and the ground.</param>
public sealed record FloodJob(Area Dry, Area Wet, WaterDepth Fill, DepthRate Loss);

/// <summary>
/// How long a flood takes, and what it takes to hold. Volume balance over land that is wet or not yet wet:
/// V dA/dt = S − m A, with A the wet land, V the fill depth, m the loss and S the supply.
/// </summary>
public static class Ponding
{
    /// <summary>Flow that covered land takes up to stay as deep as it is.</summary>
    [Source(nameof(Sources.WaterBalance), "covered land × (evaporation + seepage)")]
    public static FlowRate HoldingFlow(Area covered, DepthRate loss) => covered * loss;

    /// <summary>
    /// Time until all of the job is covered, or nothing where the supply can never do it: at S = m A the flood stands still.
    /// </summary>
    /// <param name="job">Land, fill and loss.</param>
    /// <param name="supply">Steady supply, all demands of other land taken off.</param>
    [Source(nameof(Sources.WaterBalance), "t = (V / m) ln((S − m A0) / (S − m A1)); A V / S where nothing is lost")]
    public static TimeSpan? FillTime(FloodJob job, FlowRate supply)
    {
        // s m³/s; m m/s; v m; wet, all m². Follows from V dA/dt = S − m A.
        double s = supply.CubicMetersPerSecond, m = job.Loss.MetersPerSecond, v = job.Fill.Meters;
        double wet = job.Wet.SquareMeters, all = wet + job.Dry.SquareMeters;
        if (job.Dry.SquareMeters <= 0) return TimeSpan.Zero;
        if (s <= m * all || s <= 0) return null;
        // The same as v / m ln(…), but true to the last digits where hardly anything is lost: with share the part of what
        // is left over that the new land will drink, −ln(1 − share) / share, which is 1 where nothing is lost.
        var left = s - (m * wet);
        var rest = 1 - (m * job.Dry.SquareMeters / left);
        var seconds = job.Dry.SquareMeters * v / left * (rest >= 1 ? 1 : -Math.Log(rest) / (1 - rest));
        return seconds > TimeSpan.MaxValue.TotalSeconds / 2 ? null : TimeSpan.FromSeconds(seconds);
    }

    /// <summary>
    /// Land of the job covered after a while; it never shrinks, because ground that got wet stays wet: where holding takes more
    /// than comes, the water over it falls instead.
    /// </summary>
    [Source(nameof(Sources.WaterBalance), "A = S / m − (S / m − A0) exp(−m t / V); A0 + S t / V where nothing is lost")]
    public static Area Covered(FloodJob job, FlowRate supply, TimeSpan after)
    {
        double s = supply.CubicMetersPerSecond, m = job.Loss.MetersPerSecond, v = job.Fill.Meters, t = after.TotalSeconds;
        double wet = job.Wet.SquareMeters, all = wet + job.Dry.SquareMeters;
        if (s <= m * wet) return job.Wet;
        // (1 − exp(−x)) / x, true to the last digits where hardly anything is lost.
        var x = m * t / v;
        var slowed = x < 1e-6 ? 1 - (x / 2) : (1 - Math.Exp(-x)) / x;
        return Area.FromSquareMeters(Math.Min(all, wet + ((s - (m * wet)) * t / v * slowed)));
    }

    /// <summary>Covered land at which the supply is all taken up by holding, and the flood stops.</summary>
    [Source(nameof(Sources.WaterBalance), "A = S / m")]
    public static Area StallArea(FlowRate supply, DepthRate loss)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(loss.MetersPerSecond, 0, nameof(loss));
        return Area.FromSquareMeters(supply.CubicMetersPerSecond / loss.MetersPerSecond);
    }

    /// <summary>The plain sum, which forgets that covered land drinks: too hopeful. None where it is longer than time can be told.</summary>
    [Source(nameof(Sources.Arithmetic), "A V / S")]
    public static TimeSpan? NaiveTime(FloodJob job, FlowRate supply)
    {
        var seconds = (job.Dry * job.Fill).CubicMeters / supply.CubicMetersPerSecond;
        return seconds < TimeSpan.MaxValue.TotalSeconds / 2 ? TimeSpan.FromSeconds(seconds) : null;
    }

    /// <summary>Water that the job takes up in <paramref name="span"/> at a supply: stored and lost together.</summary>
    [Source(nameof(Sources.WaterBalance), "stored + lost = S t")]
    public static Volume Taken(FlowRate supply, TimeSpan span) => supply * span;
}
