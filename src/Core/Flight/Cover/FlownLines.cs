using System.Runtime.InteropServices;
using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>
/// Goes through what was flown, stretch by stretch, with both edges of each laid. A fix at which the line bends back on itself within
/// the swath is left out; a line that turns by more than a right angle is cut in two there.
/// </summary>
internal struct FlownLines
{
    private readonly ImmutableArray<ImmutableArray<PlanePoint>> runs;
    private readonly Queue<List<PlanePoint>> pieces = new();
    private int next;

    public FlownLines(ImmutableArray<ImmutableArray<PlanePoint>> runs, SwathEdges edges)
    {
        this.runs = runs;
        Edges = edges;
    }

    /// <summary>The stretch that was come to.</summary>
    public SwathEdges Edges { get; }

    /// <summary>The run it belongs to, from 0.</summary>
    public readonly int Run => next - 1;

    /// <summary>Fixes left out so far.</summary>
    public int LeftOut { get; private set; }

    public bool Next()
    {
        while (true)
        {
            if (pieces.Count > 0)
            {
                if (LayCleaned(pieces.Dequeue())) return true;
                continue;
            }

            if (next == runs.Length) return false;
            var run = runs[next++];
            if (Edges.TryLay(run.AsSpan())) return true;
            foreach (var piece in LineCleaning.Pieces(run, Edges.Swath)) pieces.Enqueue(piece);
            LeftOut += Math.Max(0, run.Length - pieces.Sum(p => p.Count));
        }
    }

    private bool LayCleaned(List<PlanePoint> line)
    {
        while (line.Count > 1)
        {
            if (Edges.TryLay(CollectionsMarshal.AsSpan(line))) return true;
            var kept = LineCleaning.WithoutFolds(line, Edges);
            LeftOut += line.Count - kept.Count;
            line = kept;
        }

        LeftOut += line.Count;
        return false;
    }
}
