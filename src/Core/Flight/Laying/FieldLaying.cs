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
        var chosen = ask.Run is { } run ? Laid([(sown, run)], ask) : WithFerry(sown, free, ask);
        var (lines, loads) = ask.Hopper is { } hopper ? Loads(chosen, ask, hopper) : (chosen.Lines, null);
        return new FieldLayout
        {
            Cells = chosen.Cells,
            Pace = ask.Pace,
            Lines = lines,
            AlongWires = chosen.Along,
            Passing = chosen.Time,
            Bound = LayingBound.Of(sown, ask.Pace),
            OneHeading = HeadingSearch.Quickest(sown, ask.Pace),
            RunCosts = ask.Run is null ? TimeSpan.Zero : chosen.Time - free.Time,
            ForFerry = ask.Run is null ? chosen.Time - free.Time : TimeSpan.Zero,
            Unsown = Area.FromSquareMeters(Math.Max(0, FieldRings.Of(field).Area - FieldRings.Of(sown).Area)),
            Loads = loads,
            Job = loads is null ? null : LineOrder.Flying(lines, ask.Pace) + loads.Chosen.Time,
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

    // Another heading where the ferry of its loads saves more than its passes and turns cost.
    private static Lying WithFerry(ImmutableArray<PlanePart> sown, Lying free, LayingAsk ask)
    {
        if (ask.Hopper is not { } hopper || free.Cells.Length > 1 || free.Along > 0 || Job(free) is not { } job) return free;
        var best = (Lying: free, Job: job);
        var quickest = HeadingSearch.On(sown, ask.Pace, free.Cells[0].Plan.Heading);
        foreach (var heading in HeadingSearch.Near(sown, ask.Pace, quickest, 2 * ask.Pace.Turn))
        {
            var other = Laid([(sown, heading.Heading)], ask);
            if (Job(other) is { } time && time < best.Job - Worth) best = (other, time);
        }

        return best.Lying;

        TimeSpan? Job(Lying lying) => LoadSplitting.Whole(lying.Lines, PaceOf(ask, hopper)) is { } split ? LineOrder.Flying(lying.Lines, ask.Pace) + split.Time : null;
    }

    // Nobody turns a field round for less.
    private static readonly TimeSpan Worth = TimeSpan.FromSeconds(1);

    private static LoadPace PaceOf(LayingAsk ask, HopperAsk hopper) =>
        new() { Limit = hopper.Limit, Strip = hopper.Strip, Ferry = hopper.Ferry, Turnaround = hopper.Turnaround, Passes = ask.Pace };

    private static Lying Laid(IEnumerable<(ImmutableArray<PlanePart> Land, Bearing Heading)> pieces, LayingAsk ask)
    {
        ImmutableArray<LaidCell> cells = [.. pieces.Select((p, i) => new LaidCell(i + 1, p.Land, Passes.Lay(p.Land, ask.Pace.Swath, p.Heading), Passes.Count(Passes.Narrowest(p.Land).Width, ask.Pace.Swath)))];
        var (lines, along) = ClimbEnds.Of(LineOrder.Of(cells, ask), ask);
        ImmutableArray<FlownLine> all = [.. lines, .. along];
        return new Lying(cells, all, along.Length, LineOrder.Time(all, ask.Pace));
    }

    private sealed record Lying(ImmutableArray<LaidCell> Cells, ImmutableArray<FlownLine> Lines, int Along, TimeSpan Time);

    private static (ImmutableArray<FlownLine> Lines, LoadChoice? Choice) Loads(Lying laid, LayingAsk ask, HopperAsk hopper)
    {
        var pace = PaceOf(ask, hopper);
        if (LoadSplitting.Whole(laid.Lines, pace) is not { } inOrder || LoadSplitting.FilledUp(laid.Lines, pace) is not { } filled) return (laid.Lines, null);
        var lines = ask.Order == PassOrderKind.Racetrack || ask.Round.Any(r => !r.FlownOver) ? laid.Lines : OrderSearch.Best(laid.Lines, laid.Along, pace);
        var fewer = LoadSplitting.ForOneFewer(lines, hopper.Limit);
        return (lines, new LoadChoice(LoadSplitting.Whole(lines, pace) ?? inOrder, filled)
        {
            InOrder = inOrder,
            Parted = hopper.LineUp is { } lineUp ? PartLoads.Of(lines, pace, lineUp) : null,
            LeastFerry = LoadSplitting.LeastFerry(lines, pace),
            ForOneFewer = fewer,
            WithOneFewer = fewer is { } limit ? LoadSplitting.Whole(lines, pace with { Limit = limit }) : null,
        });
    }
}
