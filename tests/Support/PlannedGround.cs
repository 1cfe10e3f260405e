using Watersown.Land;

namespace Watersown;

/// <summary>Outlines for the fields of <see cref="PlannedMorning"/>: half a mile from north to south, as wide as their acres ask.</summary>
internal static class PlannedGround
{
    private const double MetersPerDegreeNorth = 111016; // 68.98 statute miles
    private const double MetersPerDegreeEast = 86631; // 53.83 statute miles
    private const double HalfLong = 402.336; // 1,320 ft

    public static Boundary Rectangle(GeoPoint middle, double acres)
    {
        var half = HalfWide(acres);
        return new Boundary([new BoundaryPart([P(middle, -half, HalfLong), P(middle, half, HalfLong), P(middle, half, -HalfLong), P(middle, -half, -HalfLong)], [])]);
    }

    public static Boundary Dogleg(GeoPoint middle, double acres)
    {
        var half = HalfWide(acres) * 1.2;
        return new Boundary([new BoundaryPart(
            [P(middle, -half, HalfLong), P(middle, half, HalfLong), P(middle, half, -50), P(middle, 0, -50), P(middle, 0, -HalfLong), P(middle, -half, -HalfLong)], [])]);
    }

    public static Boundary WithPatch(GeoPoint middle, double acres)
    {
        var part = Rectangle(middle, acres).Parts[0];
        return new Boundary([part with { Holes = [[P(middle, -60, 40), P(middle, 30, 70), P(middle, 60, -30), P(middle, -40, -60)]] }]);
    }

    public static Field CrookedBox(Field field)
    {
        var outer = field.Boundary!.Parts[0].Outer;
        double west = outer.Min(p => p.Longitude), east = outer.Max(p => p.Longitude), south = outer.Min(p => p.Latitude), north = outer.Max(p => p.Latitude);
        double[] cuts = [1, 0.81, 0.59, 0.4, 0.2, 0];
        double[] bends = [0, 0.02, -0.03, 0.025, -0.02, 0];
        GeoPoint Across(int cut, double share) => new(south + ((north - south) * (cuts[cut] + (bends[cut] * Math.Sin(Math.PI * share)))), west + ((east - west) * share));
        ImmutableArray<GeoPoint> Levee(int cut) => [.. Enumerable.Range(0, 9).Select(i => Across(cut, i / 8.0))];
        return field with
        {
            Basins = [.. Enumerable.Range(1, 5).Select(n => new Basin(n, field.Net / 5) { Boundary = new Boundary([new BoundaryPart([.. Levee(n - 1), .. Levee(n).Reverse()], [])]) })],
            Boxes =
            [
                new(1, BoxKind.Inlet) { ToCheck = 1, At = Across(0, 0.5) }, new(2, BoxKind.BetweenChecks) { FromCheck = 1, ToCheck = 2, Boards = WaterDepth.FromInches(6), At = Across(1, 0.3) },
                new(4, BoxKind.Drain) { FromCheck = 5, Leaks = true, DrainsTo = "public drain", At = Across(4, 1) },
            ],
            BoxNotes = "Boards are under the bridge.",
        };
    }

    private static double HalfWide(double acres) => acres * 4046.8564224 / (HalfLong * 2) / 2;

    private static GeoPoint P(GeoPoint middle, double east, double north) => new(middle.Latitude + (north / MetersPerDegreeNorth), middle.Longitude + (east / MetersPerDegreeEast));
}
