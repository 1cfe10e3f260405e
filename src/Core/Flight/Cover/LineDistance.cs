using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>How far a place lies from a line that was flown.</summary>
internal static class LineDistance
{
    /// <summary>Meters to the nearest piece of the line, and the way that piece runs, 0 up to but not including 180°; without end where the line has none.</summary>
    public static (double Distance, Bearing Axis) From(PlanePoint place, ImmutableArray<PlanePoint> line)
    {
        var nearest = double.PositiveInfinity;
        var (wayEast, wayNorth) = (0.0, 1.0);
        for (var i = 0; i + 1 < line.Length; i++)
        {
            var (east, north) = (line[i + 1].East - line[i].East, line[i + 1].North - line[i].North);
            var square = (east * east) + (north * north);
            if (!(square > 0)) continue;
            var (toEast, toNorth) = (place.East - line[i].East, place.North - line[i].North);
            var share = Math.Clamp(((toEast * east) + (toNorth * north)) / square, 0, 1);
            var distance = double.Hypot(toEast - (share * east), toNorth - (share * north));
            if (distance < nearest) (nearest, wayEast, wayNorth) = (distance, east, north);
        }

        var degrees = Math.Atan2(wayEast, wayNorth) * 180 / Math.PI;
        if (degrees < 0) degrees += 180;
        return (nearest, Bearing.FromDegrees(degrees >= 180 ? 0 : degrees));
    }
}
