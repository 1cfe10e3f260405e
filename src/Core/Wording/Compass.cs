namespace Watersown.Wording;

/// <summary>The eight winds as a person says them.</summary>
public static class Compass
{
    /// <summary>The nearest of the eight, in letters: <c>NW</c>.</summary>
    public static string Point(Bearing bearing, FlightScreenWords words)
    {
        ImmutableArray<string> points = [words.North, words.NorthEast, words.East, words.SouthEast, words.South, words.SouthWest, words.West, words.NorthWest];
        return points[(int)Math.Round(bearing.Degrees / 45, MidpointRounding.AwayFromZero) % 8];
    }
}
