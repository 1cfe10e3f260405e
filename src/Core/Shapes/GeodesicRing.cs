namespace Watersown.Shapes;

/// <summary>What a ring of places encloses.</summary>
/// <param name="SignedArea">Positive where the ring runs counter-clockwise seen from above, negative where clockwise.</param>
/// <param name="Perimeter">Length of all its sides, the closing one included.</param>
public sealed record RingMeasure(Area SignedArea, Length Perimeter);

/// <summary>
/// Area and length of a ring whose sides are shortest ways on the ellipsoid. Works across the antimeridian and around a
/// pole. Measured against a second implementation: within 1e-9 of the area, and
/// within 1e-4 m² where that is more (under 25 acres).
/// </summary>
public static class GeodesicRing
{
    /// <summary>Measures a ring of corners in degrees, which need not be closed; under three corners enclose nothing.</summary>
    /// <exception cref="ArgumentException">Not as many longitudes as latitudes.</exception>
    [Source(nameof(Sources.Karney2013), "section 6")]
    public static RingMeasure Measure(
        [PlainNumber("degrees of latitude")] ReadOnlySpan<double> latitudes,
        [PlainNumber("degrees of longitude")] ReadOnlySpan<double> longitudes)
    {
        if (latitudes.Length != longitudes.Length) throw new ArgumentException("A corner has a latitude and a longitude.", nameof(longitudes));
        Tally under = default, length = default;
        var turned = 0.0;
        for (var i = 0; i < latitudes.Length; i++)
        {
            var next = (i + 1) % latitudes.Length;
            var side = Geodesic.Solve(latitudes[i], longitudes[i], latitudes[next], longitudes[next]);
            under.Add(side.Under);
            length.Add(side.Meters);
            turned += Geodesic.LongitudeStep(longitudes[i], longitudes[next]);
        }

        // A ring that goes once round has a pole inside: the hemisphere less what lies between ring and equator.
        var half = 2 * Math.PI * Wgs84.AuthalicSquared;
        under.Add(-Math.Round(turned / 360) * half);
        var area = latitudes.Length < 3 ? 0 : Math.IEEERemainder(-under.Total, 2 * half);
        return new RingMeasure(Area.FromSquareMeters(area), Length.FromMeters(length.Total));
    }

    // A sum that keeps what rounding would drop: areas under the sides are thousands of times the area of the ring.
    private struct Tally
    {
        private double sum;
        private double dropped;

        public readonly double Total => sum + dropped;

        public void Add(double value)
        {
            var next = sum + value;
            dropped += Math.Abs(sum) >= Math.Abs(value) ? sum - next + value : value - next + sum;
            sum = next;
        }
    }
}
