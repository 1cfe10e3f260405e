namespace Watersown.Water;

/// <summary>How long a field stays covered once its water stops.</summary>
public static class DryOut
{
    /// <summary>
    /// Time until the first bare soil shows, with no water coming and no rain; nothing where no water is lost, zero where
    /// the high spots stand out already.
    /// </summary>
    /// <param name="depth">Mean depth now.</param>
    /// <param name="highSpot">How far the highest soil stands above the mean.</param>
    /// <param name="loss">Lost to the air and the ground.</param>
    [Source(nameof(Sources.WaterBalance), "(depth − high spot) / loss")]
    public static TimeSpan? TimeToBare(WaterDepth depth, WaterDepth highSpot, DepthRate loss)
    {
        if (depth <= highSpot) return TimeSpan.Zero;
        if (loss.MetersPerSecond <= 0) return null;
        var seconds = (depth - highSpot).Meters / loss.MetersPerSecond;
        return seconds > TimeSpan.MaxValue.TotalSeconds / 2 ? null : TimeSpan.FromSeconds(seconds);
    }
}
