using Watersown.Flight.Cover;

namespace Watersown.Flight.Deposit;

/// <summary>A stretch that runs along the lines of cells and never turns round on them, in the order of the lines, whichever way it was flown.</summary>
internal sealed class RunSweep
{
    private (int From, int End)[] lines = [];
    private PatternPlace[] places = [];
    private LeaningEdge[] leaning = [];
    private bool backward;
    private int at;

    public RunSweep(CoverGrid grid, Reach reach, bool wide) => Edges = new SwathEdges(grid, reach, wide);

    /// <summary>Its places and borders as they were flown.</summary>
    public SwathEdges Edges { get; }

    public int Pieces => Edges.Places - 1;

    /// <summary>How long it is, in cells.</summary>
    public double Cells
    {
        get
        {
            var cells = 0.0;
            for (var i = 0; i < Pieces; i++)
            {
                var (a, b) = (Edges.Along[i + 1] - Edges.Along[i], Edges.Across[i + 1] - Edges.Across[i]);
                cells += Math.Sqrt((a * a) + (b * b));
            }

            return cells;
        }
    }

    /// <summary>Whether a stretch just laid can be swept.</summary>
    public bool Prepare(DepositLayer layer, ShapeTable table)
    {
        backward = Edges.Way(0).Along < 0;
        for (var i = 0; i < Pieces; i++)
        {
            if (!(Edges.Way(i).Along * (backward ? -1 : 1) >= DepositLayer.MostlyAlong)) return false;
        }

        if (lines.Length < Edges.Places) (lines, places, leaning) = (new (int, int)[2 * Edges.Places], new PatternPlace[2 * Edges.Places], new LeaningEdge[2 * Edges.Places]);
        for (var i = 0; i < Edges.Places; i++)
        {
            var border = Border(i);
            lines[i] = (layer.Row(border.Least), layer.Row(border.Most));
            leaning[i] = new LeaningEdge(border);
            if (i < Pieces) places[i] = Piece(i).Place(table);
        }

        at = 0;
        return true;
    }

    /// <summary>The lines of cells that a border crosses: from, up to an end.</summary>
    public (int From, int End) Lines(int border) => lines[border];

    /// <summary>The first piece on a line; lines are asked for in order.</summary>
    public int From(int line)
    {
        while (at + 1 < Pieces && lines[at + 1].End <= line) at++;
        return at;
    }

    public ref readonly PatternPlace Place(int piece) => ref places[piece];

    public ref readonly LeaningEdge Leaning(int border) => ref leaning[border];

    private AcrossEdge Border(int border) => Flown(backward ? Pieces - border : border);

    public DepositPiece Piece(int piece)
    {
        var i = backward ? Pieces - 1 - piece : piece;
        var way = Edges.Way(i);
        return new DepositPiece(Edges.Along[i], Edges.Across[i], way.Along, way.Across, Flown(i), Flown(i + 1));
    }

    private AcrossEdge Flown(int i) => new(Edges.LeftAlong[i], Edges.LeftAcross[i], Edges.RightAlong[i], Edges.RightAcross[i]);
}
