using System.Globalization;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Land;

/// <summary>
/// The only way from rings as drawn to a boundary: corners on the earth, edges that run once around, holes inside, pieces
/// apart. Every problem at once, each with its place on the ground.
/// </summary>
public static class BoundaryDrawing
{
    /// <summary>
    /// Checks rings as drawn, either way round, closed or not, and puts them in order: outer rings counter-clockwise, holes
    /// clockwise, no corner twice in a row, longitudes from −180 to 180.
    /// </summary>
    /// <param name="drawn">Rings as drawn.</param>
    /// <param name="where">What is being read, for its problems: a file and the field in it.</param>
    [Source(nameof(Sources.Rfc7946), "section 3.1.6")]
    public static Outcome<Boundary> Create(ImmutableArray<BoundaryPart> drawn, string where)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (drawn.IsEmpty) return Outcome<Boundary>.Refuse(BoundaryProblems.NoPart.At(where));
        if (TooMuch(drawn, where) is { } tooMuch) return Outcome<Boundary>.Refuse(tooMuch);

        var parts = ImmutableArray.CreateBuilder<BoundaryPart>(drawn.Length);
        for (var i = 0; i < drawn.Length; i++)
        {
            var part = i;
            var outer = RingReading.Clean(drawn[i].Outer, RingName(where, part, null, drawn.Length), problems);
            ImmutableArray<ImmutableArray<GeoPoint>> holes =
                [.. drawn[i].Holes.Select((hole, h) => RingReading.Clean(hole, RingName(where, part, h, drawn.Length), problems))];
            parts.Add(new BoundaryPart(outer, holes));
        }

        if (Refused(problems)) return Outcome<Boundary>.Refuse(problems);
        AddFaults(parts.ToImmutable(), where, problems);
        if (Refused(problems)) return Outcome<Boundary>.Refuse(problems);
        return Finish(parts.ToImmutable(), where, problems);
    }

    private static Problem? TooMuch(ImmutableArray<BoundaryPart> drawn, string where)
    {
        var rings = drawn.Sum(p => 1L + p.Holes.Length);
        if (rings > BoundaryLimits.MaxRings) return BoundaryProblems.TooManyRings.At(where, ("value", Say.Number(rings)), ("limit", Say.Number(BoundaryLimits.MaxRings)));
        var corners = drawn.Sum(p => (long)p.Outer.Length + p.Holes.Sum(h => h.Length));
        return corners <= BoundaryLimits.MaxCorners
            ? null
            : BoundaryProblems.TooManyCorners.At(where, ("value", Say.Number(corners)), ("limit", Say.Number(BoundaryLimits.MaxCorners)));
    }

    private static void AddFaults(ImmutableArray<BoundaryPart> parts, string where, ImmutableArray<Problem>.Builder problems)
    {
        var plane = SpherePlane.Over(parts.SelectMany(p => p.Outer).Select(p => (p.Latitude, p.Longitude)));
        var drawn = ImmutableArray.CreateBuilder<PlanePart>(parts.Length);
        foreach (var part in parts)
        {
            var outer = Draw(plane, part.Outer);
            ImmutableArray<ImmutableArray<PlanePoint>?> holes = [.. part.Holes.Select(h => Draw(plane, h))];
            if (outer is null || holes.Any(h => h is null))
            {
                problems.Add(BoundaryProblems.AroundTheEarth.At(where));
                return;
            }

            drawn.Add(new PlanePart(outer.Value, [.. holes.Select(h => h!.Value)]));
        }

        foreach (var fault in RingCheck.Find(drawn.ToImmutable()))
        {
            var (latitude, longitude) = plane.ToEarth(fault.At);
            problems.Add(KindOf(fault.Kind).At(RingName(where, fault.Part, fault.Hole, parts.Length), ("place", PlaceWords.Of(new GeoPoint(latitude, longitude)))));
        }
    }

    private static ImmutableArray<PlanePoint>? Draw(SpherePlane plane, ImmutableArray<GeoPoint> ring) =>
        plane.Draw([.. ring.Select(p => (p.Latitude, p.Longitude))]);

    private static ProblemKind KindOf(RingFaultKind kind) => kind switch
    {
        RingFaultKind.CrossesItself => BoundaryProblems.CrossesItself,
        RingFaultKind.TouchesItself => BoundaryProblems.TouchesItself,
        RingFaultKind.HoleOutside => BoundaryProblems.HoleOutside,
        RingFaultKind.HolesOverlap => BoundaryProblems.HolesOverlap,
        RingFaultKind.PartsOverlap => BoundaryProblems.PartsOverlap,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Outcome<Boundary> Finish(ImmutableArray<BoundaryPart> parts, string where, ImmutableArray<Problem>.Builder problems)
    {
        var ordered = ImmutableArray.CreateBuilder<BoundaryPart>(parts.Length);
        for (var i = 0; i < parts.Length; i++)
        {
            var outer = GeodesicArea.Measure(parts[i].Outer).SignedArea;
            if (outer == Area.Zero) problems.Add(BoundaryProblems.NoLand.At(RingName(where, i, null, parts.Length)));
            ordered.Add(new BoundaryPart(
                outer >= Area.Zero ? parts[i].Outer : Reversed(parts[i].Outer),
                [.. parts[i].Holes.Select(h => GeodesicArea.Measure(h).SignedArea <= Area.Zero ? h : Reversed(h))]));
        }

        if (Refused(problems)) return Outcome<Boundary>.Refuse(problems);
        var boundary = new Boundary(ordered.ToImmutable());
        var area = GeodesicArea.Of(boundary);
        if (area < BoundaryLimits.LeastUsual || area > BoundaryLimits.MostUsual)
        {
            problems.Add(BoundaryProblems.UnlikelySize.At(where, ("value", Say.Figure(area.Acres) + " ac"),
                ("least", Say.Figure(BoundaryLimits.LeastUsual.Acres) + " ac"), ("most", Say.Figure(BoundaryLimits.MostUsual.Acres) + " ac")));
        }

        return Outcome<Boundary>.Of(boundary, problems);
    }

    // Starts at the same corner, runs the other way.
    private static ImmutableArray<GeoPoint> Reversed(ImmutableArray<GeoPoint> ring) => [ring[0], .. ring.Skip(1).Reverse()];

    private static bool Refused(ImmutableArray<Problem>.Builder problems) => problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse);

    private static string RingName(string where, int part, int? hole, int parts)
    {
        var name = where;
        if (parts > 1) name += string.Create(CultureInfo.InvariantCulture, $", piece {part + 1}");
        if (hole is { } h) name += string.Create(CultureInfo.InvariantCulture, $", hole {h + 1}");
        return name;
    }
}
