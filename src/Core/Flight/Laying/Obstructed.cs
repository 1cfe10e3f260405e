using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>What is left of a field once the ground round everything known is taken off.</summary>
internal static class Obstructed
{
    // A pass goes by where it is a hair outside the ground that is not flown over.
    private const double Hair = 0.01;

    public static ImmutableArray<PlanePart> Sown(ImmutableArray<PlanePart> field, ImmutableArray<NoDescent> round)
    {
        foreach (var ground in round) field = LandCut.Minus(field, LandCut.Around(ground.Points, ground.Reach));
        return field;
    }

    /// <summary>A pass as the aeroplane flies it: in two where it would go over what is not flown over.</summary>
    public static IEnumerable<FlownLine> Broken(FlownLine line, ImmutableArray<NoDescent> round)
    {
        var from = line.From;
        var spans = ImmutableArray.CreateBuilder<LineSpan>();
        for (var i = 0; i < line.Spans.Length; i++)
        {
            spans.Add(line.Spans[i]);
            var last = i + 1 == line.Spans.Length;
            if (!last && !round.Any(r => !r.FlownOver && IsOver(r, line.Spans[i].To, line.Spans[i + 1].From))) continue;
            ImmutableArray<LineSpan> open = [.. spans];
            var length = open.Aggregate(Length.Zero, (sum, s) => sum + s.Length);
            yield return line with { From = from, To = last ? line.To : line.Spans[i].To, Spans = open, Open = length, Seed = line.Open > Length.Zero ? line.Seed * (length / line.Open) : line.Seed };
            if (!last) from = line.Spans[i + 1].From;
            spans.Clear();
        }
    }

    private static bool IsOver(NoDescent round, PlanePoint from, PlanePoint to) =>
        MapGeometry.ToEdge([new PlanePart(round.Points, [])], [from, to]) < round.Reach + Length.FromMeters(Hair);
}
