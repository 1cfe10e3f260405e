namespace Watersown.Flight.Cover;

/// <summary>How far a swath reaches from the line of flight, m; the line need not be in its middle.</summary>
/// <param name="Left">To the left, looking along the flight; below zero where all of it lies right.</param>
/// <param name="Right">To the right.</param>
internal readonly record struct Reach(double Left, double Right)
{
    public static Reach About(Length swath) => new(swath.Meters / 2, swath.Meters / 2);
}
