using Watersown.Land;

namespace Watersown.Season.Crop;

/// <summary>A short way round some fields, from the strip and not back.</summary>
public static class ScoutRoute
{
    /// <summary>
    /// The fields in order: the nearest next, then any stretch turned round that makes the way shorter, until none does. Straight
    /// lines; roads and ditches are not known. Fields whose place nobody told come last.
    /// </summary>
    [Source(nameof(Sources.CommonPractice), "nearest next, then two-opt")]
    public static ImmutableArray<Field> Of(Farm farm, ImmutableArray<Field> fields)
    {
        var placed = fields.Where(f => f.Center is not null).ToList();
        if (placed.Count == 0) return fields;
        var at = Home(farm) ?? placed[0].Center!.Value;
        var route = new List<Field>();
        while (placed.Count > 0)
        {
            var next = placed.MinBy(f => Far(at, f.Center!.Value))!;
            placed.Remove(next);
            route.Add(next);
            at = next.Center!.Value;
        }

        Shorten(route, Home(farm));
        return [.. route, .. fields.Where(f => f.Center is null)];
    }

    /// <summary>How far the way is, in straight lines.</summary>
    [Source(nameof(Sources.Arithmetic), "sum of the straight ways")]
    public static Length Way(Farm farm, ImmutableArray<Field> route) => Length.FromMeters(Total([.. route.Where(f => f.Center is not null)], Home(farm)));

    private static void Shorten(List<Field> route, GeoPoint? from)
    {
        var best = Total(route, from);
        for (var better = true; better;)
        {
            better = false;
            for (var i = 0; i < route.Count - 1; i++)
            {
                for (var j = i + 1; j < route.Count; j++)
                {
                    route.Reverse(i, j - i + 1);
                    var way = Total(route, from);
                    // Dust of rounding must not turn a stretch to and fro for ever.
                    if (way < best - 0.01) (best, better) = (way, true);
                    else route.Reverse(i, j - i + 1);
                }
            }
        }
    }

    private static double Total(List<Field> route, GeoPoint? from)
    {
        double sum = 0;
        var at = from;
        foreach (var field in route)
        {
            if (at is { } here) sum += Far(here, field.Center!.Value);
            at = field.Center;
        }

        return sum;
    }

    private static GeoPoint? Home(Farm farm) => farm.Strips.Select(s => s.At).FirstOrDefault(p => p is not null);

    // On a farm a plane will do: degrees to meters at the middle latitude.
    private static double Far(GeoPoint one, GeoPoint other)
    {
        const double MetersPerDegree = 111_195;
        var north = (other.Latitude - one.Latitude) * MetersPerDegree;
        var east = (other.Longitude - one.Longitude) * MetersPerDegree * Math.Cos((one.Latitude + other.Latitude) / 2 * Math.PI / 180);
        return Math.Sqrt((north * north) + (east * east));
    }
}
