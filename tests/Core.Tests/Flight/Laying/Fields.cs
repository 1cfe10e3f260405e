using CsCheck;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>Invented fields.</summary>
internal static class Fields
{
    /// <summary>Stars round a middle, convex or not, some with a hole.</summary>
    public static Gen<ImmutableArray<PlanePart>> Stars { get; } = Gen.Select(Gen.Double[200, 600].Array[4, 14], Gen.Bool, Gen.Double[20, 60]).Select((radii, hole, reach) =>
        ImmutableArray.Create(new PlanePart(Ring(radii), hole ? [Ring([.. Enumerable.Repeat(reach, 6)])] : [])));

    public static ImmutableArray<PlanePart> Rectangle(double wide, double high) => [new([new(0, 0), new(wide, 0), new(wide, high), new(0, high)], [])];

    public static FieldLayout Lay(ImmutableArray<PlanePart> field, LayingAsk ask) => FieldLaying.Lay(field, ask) ?? throw new InvalidOperationException("Nothing is left of the field.");

    public static ImmutableArray<PlanePart> Turned(ImmutableArray<PlanePart> field, double clockwise)
    {
        var (sin, cos) = Math.SinCos(clockwise * Math.PI / 180);
        ImmutableArray<PlanePoint> Ring(ImmutableArray<PlanePoint> ring) => [.. ring.Select(p => new PlanePoint((p.East * cos) + (p.North * sin), (p.North * cos) - (p.East * sin)))];
        return [.. field.Select(p => new PlanePart(Ring(p.Outer), [.. p.Holes.Select(Ring)]))];
    }

    private static ImmutableArray<PlanePoint> Ring(double[] radii) =>
        [.. radii.Select((r, i) => new PlanePoint(r * Math.Cos(2 * Math.PI * i / radii.Length), r * Math.Sin(2 * Math.PI * i / radii.Length)))];
}
