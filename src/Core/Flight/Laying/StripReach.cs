namespace Watersown.Flight.Laying;

/// <summary>
/// How far each pass must be flown so that its whole strip is behind it: from the first land anywhere in the strip to the last.
/// Where the edge slants that is farther than the land under the line itself, and along an edge that is nearly its own way
/// much farther: a run a hair off the side of a field is no saving.
/// </summary>
internal sealed class StripReach
{
    private readonly double low;
    private readonly double spacing;

    private StripReach(FieldRings rings, double swath, double sin, double cos)
    {
        (low, var width) = SweepLine.Extent(rings, sin, cos);
        var passes = (int)Math.Max(1, Math.Ceiling((width - SweepLine.Dust) / swath));
        (spacing, Near, Far) = (width / passes, new double[passes], new double[passes]);
        Array.Fill(Near, double.PositiveInfinity);
        Array.Fill(Far, double.NegativeInfinity);
    }

    /// <summary>Ahead of the middle of the field, strip by strip from the left, m.</summary>
    public double[] Near { get; }

    public double[] Far { get; }

    public int Passes => Near.Length;

    /// <summary>Length of all strips together, m.</summary>
    public double Sum
    {
        get
        {
            var sum = 0.0;
            for (var strip = 0; strip < Near.Length; strip++) sum += Math.Max(0, Far[strip] - Near[strip]);
            return sum;
        }
    }

    public static StripReach Of(FieldRings rings, double swath, double sin, double cos)
    {
        var reach = new StripReach(rings, swath, sin, cos);
        var i = 0;
        foreach (var end in rings.Ends)
        {
            var (right, ahead) = Turned(rings, i, sin, cos);
            for (i++; i < end; i++)
            {
                var (nextRight, nextAhead) = Turned(rings, i, sin, cos);
                if (right <= nextRight) reach.Add(right, ahead, nextRight, nextAhead);
                else reach.Add(nextRight, nextAhead, right, ahead);
                (right, ahead) = (nextRight, nextAhead);
            }
        }

        return reach;
    }

    private static (double Right, double Ahead) Turned(FieldRings rings, int i, double sin, double cos) =>
        ((rings.East[i] * cos) - (rings.North[i] * sin), (rings.East[i] * sin) + (rings.North[i] * cos));

    // Every strip that the edge lies in, cut to it; an edge along the border of a strip is left to the one before.
    private void Add(double right, double ahead, double nextRight, double nextAhead)
    {
        // No farther than its ends: of an edge along the strips the share where a border cuts it is a ratio of roundings.
        double At(double border) => ahead + (Math.Clamp((border - right) / (nextRight - right), 0, 1) * (nextAhead - ahead));
        var (first, last) = ((int)Math.Floor(((right - low) / spacing) + Hair), (int)Math.Ceiling(((nextRight - low) / spacing) - Hair) - 1);
        for (var strip = Math.Clamp(first, 0, Passes - 1); strip <= Math.Clamp(Math.Max(first, last), 0, Passes - 1); strip++)
        {
            var (left, edge) = (low + (strip * spacing), low + ((strip + 1) * spacing));
            var (from, to) = (left > right ? At(left) : ahead, edge < nextRight ? At(edge) : nextAhead);
            Near[strip] = Math.Min(Near[strip], Math.Min(from, to));
            Far[strip] = Math.Max(Far[strip], Math.Max(from, to));
        }
    }

    // Share of a strip.
    private const double Hair = 1e-9;
}
