using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

/// <summary>
/// What is laid on a field while it is flown: takes places one at a time and holds the same map as the whole flight gives afterwards,
/// short of the piece that the last place only begins.
/// </summary>
public sealed class LiveDeposit
{
    private readonly TurnedPlane turned;
    private readonly ImmutableArray<PlanePart> field;
    private readonly LateralShape shape;
    private readonly DepositLayer layer;
    private readonly List<RunSweep> sweeps = [];
    private readonly Reach across;
    private readonly (double Left, double Right) reach;
    private readonly bool wide;
    private FieldLines? lines;
    private ShapeTable? last;
    private Open open;
    private double width;

    internal LiveDeposit(ImmutableArray<PlanePart> field, Bearing heading, LateralShape shape, CoverGrid grid, bool wide)
    {
        turned = new TurnedPlane(heading);
        (this.field, this.shape, this.wide, Grid) = (field, shape, wide, grid);
        Cells = new DepositCells(grid);
        layer = new DepositLayer(Cells, grid, wide);
        across = new Reach(-shape.From.Meters, shape.Until.Meters);
        reach = (across.Left / grid.CellMeters, across.Right / grid.CellMeters);
    }

    internal CoverGrid Grid { get; }

    internal DepositCells Cells { get; }

    /// <summary>Places that tell no way of the line, or at which it bends back within the pattern.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Land that all the seed laid so far would sow at the rate asked for, on the field and off it.</summary>
    public Area Laid { get; private set; }

    /// <summary>A map with nothing on it yet.</summary>
    /// <param name="field">The field on a plane in meters: pieces and holes.</param>
    /// <param name="heading">The way most of it is flown; another way costs time alone.</param>
    /// <param name="shape">How a pass lays.</param>
    /// <param name="cell">Side of a cell; coarser where there would be more than <see cref="DepositMap.MostCells"/>.</param>
    public static LiveDeposit Over(ImmutableArray<PlanePart> field, Bearing heading, LateralShape shape, Length cell) =>
        new(field, heading, shape, DepositMap.GridOver(new TurnedPlane(heading).To(field), cell), wide: true);

    /// <summary>The gate opens.</summary>
    /// <param name="sown">What is laid for each meter flown, as the width of land that it sows at the rate asked for.</param>
    public void Begin(Length sown)
    {
        End();
        layer.Take(Table(sown));
    }

    /// <summary>The next place flown over with the gate open.</summary>
    public void Add(PlanePoint at)
    {
        var cell = InCells(at);
        if (!double.IsFinite(cell.Along) || !double.IsFinite(cell.Across))
        {
            LeftOut++;
            return;
        }

        if (open.Places == 0) open = new Open { Places = 1, Last = cell };
        else GoOn(cell);
    }

    /// <summary>The gate shuts.</summary>
    public void End()
    {
        if (open.Places > 1) Lay(Edge(open.Last, open.Way, open.Way));
        open = default;
    }

    /// <summary>
    /// All of a flight at once, in place of what was there: band after band of the cells, each while a processor has it at hand.
    /// </summary>
    internal void Whole(ImmutableArray<DepositRun> runs)
    {
        (open, Laid, LeftOut) = (default, Area.Zero, 0);
        var swept = new List<(RunSweep Sweep, ShapeTable Table)>(runs.Length);
        var single = new List<DepositRun>();
        foreach (var run in runs)
        {
            if (sweeps.Count == swept.Count) sweeps.Add(new RunSweep(Grid, across, wide));
            var sweep = sweeps[swept.Count];
            var table = Table(run.Sown);
            if (!sweep.Edges.TryLay(turned.To(run.Line).AsSpan()) || !sweep.Prepare(layer, table))
            {
                single.Add(run);
                continue;
            }

            swept.Add((sweep, table));
            Laid += Length.FromMeters(sweep.Cells * Grid.CellMeters) * run.Sown;
        }

        for (var band = 0; band < Cells.Bands; band++)
        {
            Cells.Clear(band);
            foreach (var (sweep, table) in swept)
            {
                layer.Take(table);
                layer.Lay(sweep, band);
            }
        }

        foreach (var run in single)
        {
            Begin(run.Sown);
            foreach (var at in run.Line) Add(at);
            End();
        }
    }

    /// <summary>Land on which at least a share of the rate asked for lies now.</summary>
    public Area Sown(Fraction least)
    {
        lines ??= FieldLines.Of(Grid, turned.To(field));
        var tally = DepositTally.Of(Cells, lines, (0, least.Share), wide);
        return (tally.Cells - tally.Thin) * Grid.CellArea;
    }

    /// <summary>What lies on the field now.</summary>
    public FieldDeposit Look(DepositOptions options)
    {
        lines ??= FieldLines.Of(Grid, turned.To(field));
        return FieldDeposit.Of(new DepositLook(Cells, Grid, lines, turned, Laid, LeftOut), shape, options, wide);
    }

    private ShapeTable Table(Length sown)
    {
        if (last is null || width != sown.Meters) (last, width) = (new ShapeTable(shape, Grid.CellMeters, sown.Meters), sown.Meters);
        return last;
    }

    private (double Along, double Across) InCells(PlanePoint at)
    {
        var (p, per) = (turned.To(at), 1 / Grid.CellMeters);
        return ((p.North - Grid.Corner.North) * per, (p.East - Grid.Corner.East) * per);
    }

    // The piece before the last place is laid once it is known which way the line goes on.
    private void GoOn((double Along, double Across) at)
    {
        var way = Way(open.Last, at);
        if (!double.IsFinite(way.Along))
        {
            LeftOut++;
            return;
        }

        if (open.Places == 1)
        {
            open = open with { Places = 2, From = open.Last, Back = Edge(open.Last, way, way), Way = way, Last = at };
            return;
        }

        if ((open.Way.Along * way.Along) + (open.Way.Across * way.Across) < 0)
        {
            // It turns round: one stretch ends here and the next begins.
            var turn = open.Last;
            End();
            open = new Open { Places = 2, From = turn, Back = Edge(turn, way, way), Way = way, Last = at };
            return;
        }

        var front = Edge(open.Last, open.Way, way);
        if (Lay(front)) open = open with { From = open.Last, Back = front, Way = way, Last = at };
        else if (Way(open.From, at) is var straight && double.IsFinite(straight.Along)) open = open with { Way = straight, Last = at };
    }

    private bool Lay(AcrossEdge front)
    {
        var piece = new DepositPiece(open.From.Along, open.From.Across, open.Way.Along, open.Way.Across, open.Back, front);
        if (!piece.IsSound)
        {
            LeftOut++;
            return false;
        }

        layer.Lay(piece);
        Laid += Length.FromMeters(Distance(open.From, open.Last) * Grid.CellMeters) * Length.FromMeters(width);
        return true;
    }

    private AcrossEdge Edge((double Along, double Across) place, (double Along, double Across) before, (double Along, double Across) after) => AcrossEdge.At(place, before, after, reach);

    private static (double Along, double Across) Way((double Along, double Across) from, (double Along, double Across) to)
    {
        var (a, b) = (to.Along - from.Along, to.Across - from.Across);
        var per = 1 / Math.Sqrt((a * a) + (b * b));
        return (a * per, b * per);
    }

    private static double Distance((double Along, double Across) from, (double Along, double Across) to)
    {
        var (a, b) = (to.Along - from.Along, to.Across - from.Across);
        return Math.Sqrt((a * a) + (b * b));
    }

    // The stretch that is being flown: its last piece is not laid yet.
    private readonly record struct Open
    {
        public int Places { get; init; }

        public (double Along, double Across) From { get; init; }

        public (double Along, double Across) Last { get; init; }

        public (double Along, double Across) Way { get; init; }

        public AcrossEdge Back { get; init; }
    }
}
