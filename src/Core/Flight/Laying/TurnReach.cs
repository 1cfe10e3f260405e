namespace Watersown.Flight.Laying;

/// <summary>
/// Time from one pass to another some way off, from the one turn that was taken by watch: read as a bulb to the next pass,
/// all of it at one radius, it tells the radius, and the radius tells the rest. An estimate; the watch beats it.
/// </summary>
public sealed record TurnReach
{
    private TurnReach(Speed speed, Length radius) => (Speed, Radius) = (speed, radius);

    public Speed Speed { get; }

    /// <summary>Of the turn that was timed.</summary>
    public Length Radius { get; }

    /// <summary>The reach of a turn timed between passes a spacing apart.</summary>
    /// <param name="turn">By the watch; above zero.</param>
    /// <param name="speed">In the turn.</param>
    /// <param name="spacing">From the pass left to the pass taken up.</param>
    [Source(nameof(Sources.TurnGeometry), "R such that R (3 π − 4 asin((2 R + S) / (4 R))) = V × turn")]
    public static TurnReach Of(TimeSpan turn, Speed speed, Length spacing)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(turn, TimeSpan.Zero);
        var way = (speed * turn).Meters;

        // The way grows with the radius: from the straight step across with none, to 7 π / 3 of it and less S far out.
        var (low, high) = (0.0, way);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (middle > 0 && Turns.ToNextPass(Length.FromMeters(middle), spacing).Meters < way) low = middle;
            else high = middle;
        }

        return new TurnReach(speed, Length.FromMeters(high));
    }

    /// <summary>From one pass to another some way to the side.</summary>
    [Source(nameof(Sources.TurnGeometry), "bulb below two radii, half circle with a straight from there on")]
    public TimeSpan Time(Length apart) => Turns.ToNextPass(Radius, apart) / Speed;

    /// <summary>Passes to the side at which a plain half circle comes out on the line.</summary>
    [Source(nameof(Sources.TurnGeometry), "next whole number of 2 R / S")]
    [return: PlainNumber("passes")]
    public int Offset(Length spacing) => Turns.RacetrackOffset(Radius, spacing);
}
