using System.Globalization;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>One ring as drawn: its corners looked at one by one, before anything is asked of the whole.</summary>
internal static class RingReading
{
    // Grid meters and feet start far above any number of degrees.
    private const double LeastGrid = 1000;

    /// <summary>
    /// The ring without its closing corner and without corners twice in a row; faults of each sort are told once for a ring, at
    /// the first corner that has it.
    /// </summary>
    public static ImmutableArray<GeoPoint> Clean(ImmutableArray<GeoPoint> ring, string where, ImmutableArray<Problem>.Builder problems)
    {
        var clean = ImmutableArray.CreateBuilder<GeoPoint>(ring.Length);
        var told = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < ring.Length; i++)
        {
            if (Fault(ring[i]) is { } fault)
            {
                if (told.Add(fault.Kind.Code))
                    problems.Add(fault.Kind.At(string.Create(CultureInfo.InvariantCulture, $"{where}, corner {i + 1}"), ("value", fault.Value)));
                continue;
            }

            var corner = ring[i] with { Longitude = Turned(ring[i].Longitude) };
            if (clean.Count == 0 || clean[^1] != corner) clean.Add(corner);
        }

        if (told.Count > 0) return clean.ToImmutable();
        if (clean.Count > 1 && clean[^1] == clean[0]) clean.RemoveAt(clean.Count - 1);
        else if (clean.Count >= 3) problems.Add(BoundaryProblems.NotClosed.At(where));
        var distinct = clean.Distinct().Count();
        if (distinct < 3) problems.Add(BoundaryProblems.TooFewCorners.At(where, ("value", Say.Number(distinct))));
        return clean.ToImmutable();
    }

    private static (ProblemKind Kind, string Value)? Fault(GeoPoint corner)
    {
        var (latitude, longitude) = corner;
        if (!double.IsFinite(latitude)) return (BoundaryProblems.NotANumber, Plain(latitude));
        if (!double.IsFinite(longitude)) return (BoundaryProblems.NotANumber, Plain(longitude));
        if (Math.Abs(latitude) > LeastGrid) return (BoundaryProblems.LooksProjected, Plain(latitude));
        if (Math.Abs(longitude) > LeastGrid) return (BoundaryProblems.LooksProjected, Plain(longitude));
        if (Math.Abs(latitude) > 90 && Math.Abs(latitude) <= 180 && Math.Abs(longitude) <= 90) return (BoundaryProblems.Swapped, Plain(latitude) + "°");
        if (Math.Abs(latitude) > 90) return (BoundaryProblems.OffTheEarth, "latitude " + Plain(latitude) + "°");

        // Some programs count longitude from 0 to 360; that is still a place.
        return Math.Abs(longitude) > 360 ? (BoundaryProblems.OffTheEarth, "longitude " + Plain(longitude) + "°") : null;
    }

    private static double Turned(double longitude) => Math.Abs(longitude) <= 180 ? longitude : Math.IEEERemainder(longitude, 360);

    private static string Plain(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
