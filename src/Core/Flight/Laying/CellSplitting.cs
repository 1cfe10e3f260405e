using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>A piece of a field and the heading on which it is quickest.</summary>
internal readonly record struct Cell(ImmutableArray<PlanePart> Land, FlownHeading Best);

/// <summary>
/// Cuts a field with bays into pieces flown on headings of their own. Cuts are guessed at by what no two pieces could beat and
/// worked out the least first, until no guess is below the best found: of all cuts looked at the best is taken, whichever way
/// the field lies. A cut stands only if both pieces, the turn between them and a pass flown along the cut together still take
/// less time.
/// </summary>
internal static class CellSplitting
{
    private const int Deepest = 3;

    // More are not worked out; the guesses come the least first.
    private const int MostWorkedOut = 12;

    public static ImmutableArray<Cell> Split(ImmutableArray<PlanePart> field, PassPace pace)
    {
        if (field.Length == 1) return [.. Split(new Cell(field, HeadingSearch.Quickest(field, pace)), pace, Deepest)];

        // Pieces that lie apart are flown together where that saves turns, else one after another.
        var together = HeadingSearch.Quickest(field, pace);
        ImmutableArray<Cell> each = [.. field.SelectMany(part => Split(new Cell([part], HeadingSearch.Quickest([part], pace)), pace, Deepest))];
        return Seconds(each, pace) < together.Time.TotalSeconds ? each : [new Cell(field, together)];
    }

    private static IEnumerable<Cell> Split(Cell whole, PassPace pace, int depth) => depth > 0 && Cut(whole, pace) is { } sides
        ? Split(sides.Left, pace, depth - 1).Concat(Split(sides.Right, pace, depth - 1))
        : [whole];

    private static (Cell Left, Cell Right)? Cut(Cell whole, PassPace pace)
    {
        if (whole.Land.Length != 1) return null;
        var (sowing, ring) = (LayingBound.LeastLength(whole.Land, pace), whole.Land[0].Outer.ToArray());
        var (best, seconds) = ((GuessedCut?)null, whole.Best.Time.TotalSeconds);
        foreach (var cut in CutGuesses.Of(whole.Land[0], whole.Best, pace, sowing).Take(MostWorkedOut))
        {
            if (cut.Seconds >= seconds) break;
            var both = cut.Sides(ring).Sum(side => HeadingSearch.Quickest([new PlanePart([.. side], [])], pace).Time.TotalSeconds) + pace.Turn.TotalSeconds + cut.Seam;
            if (both < seconds) (best, seconds) = (cut, both);
        }

        if (best is not { } found) return null;
        var laid = found.BesideIt.Select(through => Worked(whole, through, found, pace)).MinBy(sides => sides.Seconds);
        return laid.Seconds < whole.Best.Time.TotalSeconds ? (laid.Left, laid.Right) : null;
    }

    private static (Cell Left, Cell Right, double Seconds) Worked(Cell whole, PlanePoint through, GuessedCut cut, PassPace pace)
    {
        var (left, right) = LandCut.Split(whole.Land, through, cut.Way);
        if (left.IsEmpty || right.IsEmpty) return (whole, whole, double.PositiveInfinity);
        var (a, b) = (new Cell(left, HeadingSearch.Quickest(left, pace)), new Cell(right, HeadingSearch.Quickest(right, pace)));
        return (a, b, Seconds([a, b], pace) + cut.Seam);
    }

    private static double Seconds(ImmutableArray<Cell> cells, PassPace pace) => cells.Sum(c => c.Best.Time.TotalSeconds) + ((cells.Length - 1) * pace.Turn.TotalSeconds);
}
