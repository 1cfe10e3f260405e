using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

/// <summary>The plane turned so that passes run north on it: lines of cells then lie square to the flying, whatever its heading.</summary>
internal readonly struct TurnedPlane
{
    private readonly double sin;
    private readonly double cos;

    public TurnedPlane(Bearing heading)
    {
        Heading = heading;
        (sin, cos) = Math.SinCos(heading.Radians);
    }

    public Bearing Heading { get; }

    public PlanePoint To(PlanePoint p) => new((p.East * cos) - (p.North * sin), (p.East * sin) + (p.North * cos));

    public PlanePoint From(PlanePoint p) => new((p.East * cos) + (p.North * sin), (p.North * cos) - (p.East * sin));

    public ImmutableArray<PlanePart> To(ImmutableArray<PlanePart> field)
    {
        var turned = this;
        return [.. field.Select(part => new PlanePart(turned.To(part.Outer), [.. part.Holes.Select(turned.To)]))];
    }

    public ImmutableArray<PlanePoint> To(ImmutableArray<PlanePoint> line)
    {
        var turned = new PlanePoint[line.Length];
        for (var i = 0; i < turned.Length; i++) turned[i] = To(line[i]);
        return System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(turned);
    }
}
