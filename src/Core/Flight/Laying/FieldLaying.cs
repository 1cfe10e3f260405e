using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Lays a field out in straight passes: heading, passes, order, loads. Knows land, swath, speeds and what was told of them;
/// nothing of the sun, of what stands in the way and nobody told, or of what the pilot sees.
/// </summary>
public static class FieldLaying
{
    /// <summary>The layout of a field on a plane; none where the ground round what stands there takes all of it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More than <see cref="Passes.Most"/> passes.</exception>
    [Source(nameof(Sources.WholePassCount), "length / speed + turns × turn, least over headings")]
    public static FieldLayout? Lay(ImmutableArray<PlanePart> field, LayingAsk ask)
    {
        if (ask.Order == PassOrderKind.Racetrack) ask = ask with { Pace = ask.Pace with { Reach = TurnReach.Of(ask.Pace.Turn, ask.Pace.Speed, ask.Pace.Swath) } };
        var sown = Obstructed.Sown(field, ask.Round);
        if (sown.IsEmpty) return null;
        var free = Quickest(sown, ask);
        var chosen = ask.Run is { } run ? Laid([(sown, run)], ask) : free;
        var lines = chosen.Lines;
        var loads = ask.Hopper is { } hopper ? Loads(lines, ask.Pace, hopper) : null;
        return new FieldLayout
        {
            Cells = chosen.Cells,
            Pace = ask.Pace,
            Lines = lines,
            AlongWires = chosen.Along,
            Passing = chosen.Time,
            Bound = LayingBound.Of(sown, ask.Pace),
            OneHeading = HeadingSearch.Quickest(sown, ask.Pace),
            RunCosts = chosen.Time - free.Time,
            Unsown = Area.FromSquareMeters(Math.Max(0, FieldRings.Of(field).Area - FieldRings.Of(sown).Area)),
            Loads = loads,
            Job = loads is null ? null : TimeSpan.FromSeconds(lines.Sum(line => (line.Flown / ask.Pace.Speed).TotalSeconds)) + loads.Whole.Time,
        };
    }

    // The quickest cells, or the whole along a wire where the climbs that saves are worth more.
    private static Lying Quickest(ImmutableArray<PlanePart> sown, LayingAsk ask)
    {
        var best = Laid(CellSplitting.Split(sown, ask.Pace).Select(c => (c.Land, c.Best.Heading)), ask);
        if (best.Along == 0) return best;
        foreach (var wire in ask.Round.Where(r => r.IsLine))
        {
            var (from, to) = (wire.Points[0], wire.Points[^1]);
            var beside = Laid([(sown, Bearing.FromDegrees(((Math.Atan2(to.East - from.East, to.North - from.North) * 180 / Math.PI) + 180) % 180))], ask);
            if (beside.Time < best.Time) best = beside;
        }

        return best;
    }

    private static Lying Laid(IEnumerable<(ImmutableArray<PlanePart> Land, Bearing Heading)> pieces, LayingAsk ask)
    {
        ImmutableArray<LaidCell> cells = [.. pieces.Select((p, i) => new LaidCell(i + 1, p.Land, Passes.Lay(p.Land, ask.Pace.Swath, p.Heading), Passes.Count(Passes.Narrowest(p.Land).Width, ask.Pace.Swath)))];
        var (lines, along) = ClimbEnds.Of(LineOrder.Of(cells, ask), ask);
        ImmutableArray<FlownLine> all = [.. lines, .. along];
        return new Lying(cells, all, along.Length, LineOrder.Time(all, ask.Pace));
    }

    private sealed record Lying(ImmutableArray<LaidCell> Cells, ImmutableArray<FlownLine> Lines, int Along, TimeSpan Time);

    private static LoadChoice? Loads(ImmutableArray<FlownLine> lines, PassPace passes, HopperAsk hopper)
    {
        var pace = new LoadPace { Limit = hopper.Limit, Strip = hopper.Strip, Ferry = hopper.Ferry, Turnaround = hopper.Turnaround, Passes = passes };
        if (LoadSplitting.Whole(lines, pace) is not { } whole || LoadSplitting.FilledUp(lines, pace) is not { } filled) return null;
        var fewer = LoadSplitting.ForOneFewer(lines, hopper.Limit);
        return new LoadChoice(whole, filled)
        {
            ForOneFewer = fewer,
            WithOneFewer = fewer is { } limit ? LoadSplitting.Whole(lines, pace with { Limit = limit }) : null,
        };
    }
}
