namespace Watersown.Flight.Cover;

/// <summary>How far a swath reaches from the line of flight, m; the line need not be in its middle.</summary>
/// <param name="Left">To the left, looking along the flight; below zero where all of it lies right.</param>
/// <param name="Right">To the right.</param>
internal readonly record struct Reach(double Left, double Right)
{
    /// <summary>Half a swath to either side of a line that lies beside its middle.</summary>
    /// <param name="swath">The swath.</param>
    /// <param name="right">How far right of the line its middle lies.</param>
    public static Reach About(Length swath, Length right) => new((swath.Meters / 2) - right.Meters, (swath.Meters / 2) + right.Meters);
}
