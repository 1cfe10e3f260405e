namespace Watersown.Shapes;

/// <summary>
/// The earth as a ball on a plane, seen from the point opposite its middle: for looking at how rings lie to each other,
/// however large they are. Nothing is measured on it.
/// </summary>
internal sealed class SpherePlane
{
    private const double Radius = 6371009;

    // Sides longer than this bend visibly on the plane and are drawn in pieces.
    private const double PieceRadians = 0.005;

    // No honest boundary needs more pieces; a dishonest one must not eat the memory.
    private const int MostPieces = 400_000;

    // Beyond this much of the way to the opposite point the plane runs off to infinity.
    private const double Edge = -0.99;

    private readonly Vector east;
    private readonly Vector north;
    private readonly Vector up;

    private SpherePlane(Vector middle)
    {
        up = middle;
        var side = new Vector(-middle.Y, middle.X, 0);
        east = side.Length < 1e-12 ? new Vector(0, 1, 0) : side.Unit;
        north = up.Cross(east);
    }

    public static SpherePlane Over(IEnumerable<(double Latitude, double Longitude)> places)
    {
        var sum = places.Aggregate(default(Vector), (s, p) => s + Vector.Of(p.Latitude, p.Longitude));
        return new SpherePlane(sum.Length < 1e-9 ? new Vector(0, 0, 1) : sum.Unit);
    }

    /// <summary>A ring on the plane; none where it reaches around to the far side of the earth.</summary>
    public ImmutableArray<PlanePoint>? Draw(IReadOnlyList<(double Latitude, double Longitude)> ring)
    {
        var drawn = ImmutableArray.CreateBuilder<PlanePoint>(ring.Count);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (Vector.Of(ring[i].Latitude, ring[i].Longitude), Vector.Of(ring[(i + 1) % ring.Count].Latitude, ring[(i + 1) % ring.Count].Longitude));
            var pieces = Math.Max(1, (int)Math.Ceiling(Math.Atan2(a.Cross(b).Length, a.Dot(b)) / PieceRadians));
            if (drawn.Count + pieces > MostPieces) return null;
            for (var k = 0; k < pieces; k++)
            {
                var share = (double)k / pieces;
                var spot = a.Scale(1 - share) + b.Scale(share);
                if (spot.Length < 1e-9) return null;
                if (k > 0) spot = spot.Unit;
                if (spot.Dot(up) < Edge) return null;
                drawn.Add(ToPlane(spot));
            }
        }

        return drawn.ToImmutable();
    }

    public (double Latitude, double Longitude) ToEarth(PlanePoint point)
    {
        var (x, y) = (point.East / (2 * Radius), point.North / (2 * Radius));
        var square = (x * x) + (y * y);
        var spot = (east.Scale(2 * x) + north.Scale(2 * y) + up.Scale(1 - square)).Unit;
        return (Math.Atan2(spot.Z, Math.Sqrt((spot.X * spot.X) + (spot.Y * spot.Y))) * 180 / Math.PI, Math.Atan2(spot.Y, spot.X) * 180 / Math.PI);
    }

    private PlanePoint ToPlane(Vector spot)
    {
        var scale = 2 * Radius / (1 + spot.Dot(up));
        return new PlanePoint(scale * spot.Dot(east), scale * spot.Dot(north));
    }

    private readonly record struct Vector(double X, double Y, double Z)
    {
        public double Length => Math.Sqrt(Dot(this));

        public Vector Unit => Scale(1 / Length);

        public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

        public static Vector Of(double latitude, double longitude)
        {
            var (phi, lambda) = (Turn.FromDegrees(latitude), Turn.FromDegrees(longitude));
            return new Vector(phi.Cos * lambda.Cos, phi.Cos * lambda.Sin, phi.Sin);
        }

        public Vector Scale(double factor) => new(X * factor, Y * factor, Z * factor);

        public double Dot(Vector other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

        public Vector Cross(Vector other) => new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
    }
}
