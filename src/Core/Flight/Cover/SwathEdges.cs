using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>
/// Room for the left and right edges of one stretch that was flown, in cells: one place each for every fix, where the edges of the
/// two straight pieces beside it meet, so that neighboring pieces share a border and no ground between them counts twice.
/// </summary>
internal sealed class SwathEdges
{
    private readonly CoverGrid grid;
    private readonly double left;
    private readonly double right;
    private readonly bool wide;
    private double[] wayAlong = [];
    private double[] wayAcross = [];

    /// <summary>Edges of swaths over cells.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="reach">How far the swath reaches to either side.</param>
    /// <param name="wide">Eight at a time where the machine can.</param>
    public SwathEdges(CoverGrid grid, Reach reach, bool wide)
    {
        (this.grid, this.wide) = (grid, wide && Vector512.IsHardwareAccelerated);
        (left, right) = (reach.Left / grid.CellMeters * grid.Turn, reach.Right / grid.CellMeters * grid.Turn);
    }

    /// <summary>Width from edge to edge.</summary>
    public Length Swath => grid.Cell * Math.Abs(left + right);

    /// <summary>Fixes of the stretch laid last.</summary>
    public int Places { get; private set; }

    public double[] Along { get; private set; } = [];

    public double[] Across { get; private set; } = [];

    public double[] LeftAlong { get; private set; } = [];

    public double[] LeftAcross { get; private set; } = [];

    public double[] RightAlong { get; private set; } = [];

    public double[] RightAcross { get; private set; } = [];

    /// <summary>
    /// The stretch counted once more for each time it turns round along the lines of cells: no cell is covered more often than this.
    /// </summary>
    public int OneWays
    {
        get
        {
            var ways = 1;
            for (var i = 1; i < Places - 1; i++)
            {
                if (!(wayAlong[i] * wayAlong[i - 1] > 0)) ways++;
            }

            return ways;
        }
    }

    /// <summary>Land between the edges, in cells; ground the line comes back over counts again.</summary>
    public double Swept
    {
        get
        {
            // Pieces are quadrilaterals: half the product of their diagonals, taken square to one another.
            var twice = 0.0;
            for (var i = 0; i + 1 < Places; i++)
            {
                twice += ((RightAlong[i + 1] - LeftAlong[i]) * (RightAcross[i] - LeftAcross[i + 1]))
                    - ((RightAcross[i + 1] - LeftAcross[i]) * (RightAlong[i] - LeftAlong[i + 1]));
            }

            return Math.Abs(twice) / 2;
        }
    }

    /// <summary>The way of a piece of the line, of length one.</summary>
    public (double Along, double Across) Way(int piece) => (wayAlong[piece], wayAcross[piece]);

    /// <summary>Lays both edges; false where the line stands still, turns by more than a right angle, or an edge runs backwards.</summary>
    public bool TryLay(ReadOnlySpan<PlanePoint> line)
    {
        if (line.Length < 2) return false;
        Read(line);
        Ways(line.Length - 1);
        return Meet(line.Length - 1) && RunsOn(line.Length - 1);
    }

    /// <summary>Whether both edges of a piece of the line run its own way.</summary>
    public bool IsSound(int piece) =>
        ((LeftAlong[piece + 1] - LeftAlong[piece]) * wayAlong[piece]) + ((LeftAcross[piece + 1] - LeftAcross[piece]) * wayAcross[piece]) > 0
        && ((RightAlong[piece + 1] - RightAlong[piece]) * wayAlong[piece]) + ((RightAcross[piece + 1] - RightAcross[piece]) * wayAcross[piece]) > 0;

    private void Read(ReadOnlySpan<PlanePoint> line)
    {
        if (line.Length > Along.Length) Grow(line.Length);
        Places = line.Length;
        var norths = (grid.Northward ? Along : Across).AsSpan(0, line.Length);
        var easts = (grid.Northward ? Across : Along).AsSpan(0, line.Length);
        var (east, north, per) = (grid.Corner.East, grid.Corner.North, 1 / grid.CellMeters);
        for (var i = 0; i < line.Length; i++)
        {
            norths[i] = (line[i].North - north) * per;
            easts[i] = (line[i].East - east) * per;
        }
    }

    private void Grow(int places)
    {
        places = Math.Max(256, 2 * places);
        (Along, Across, LeftAlong, LeftAcross, RightAlong, RightAcross) = (new double[places], new double[places], new double[places], new double[places], new double[places], new double[places]);
        (wayAlong, wayAcross) = (new double[places], new double[places]);
    }

    private void Ways(int pieces)
    {
        var i = 0;
        if (wide)
        {
            for (; i + Vector512<double>.Count <= pieces; i += Vector512<double>.Count)
            {
                Vector512<double> a = Load(Along, i + 1) - Load(Along, i), b = Load(Across, i + 1) - Load(Across, i);
                var per = Vector512<double>.One / Vector512.Sqrt((a * a) + (b * b));
                Store(a * per, wayAlong, i);
                Store(b * per, wayAcross, i);
            }
        }

        for (; i < pieces; i++)
        {
            var (a, b) = (Along[i + 1] - Along[i], Across[i + 1] - Across[i]);
            var per = 1 / Math.Sqrt((a * a) + (b * b));
            (wayAlong[i], wayAcross[i]) = (a * per, b * per);
        }
    }

    // The sum of two directions, turned and divided by 1 + their product, is where edges one off both meet.
    private bool Meet(int last)
    {
        Place(0, wayAlong[0], wayAcross[0]);
        Place(last, wayAlong[last - 1], wayAcross[last - 1]);
        var i = 1;
        var sound = true;
        if (wide)
        {
            var (toLeft, toRight) = (Vector512.Create(left), Vector512.Create(right));
            for (; i + Vector512<double>.Count <= last; i += Vector512<double>.Count)
            {
                Vector512<double> a = Load(wayAlong, i - 1), b = Load(wayAcross, i - 1), c = Load(wayAlong, i), d = Load(wayAcross, i);
                var together = (a * c) + (b * d);
                sound &= Vector512.GreaterThanOrEqualAll(together, Vector512<double>.Zero);
                var per = Vector512<double>.One / (Vector512<double>.One + together);
                var (along, across) = ((a + c) * per, (b + d) * per);
                Vector512<double> t = Load(Along, i), u = Load(Across, i);
                Store(t + (across * toLeft), LeftAlong, i);
                Store(u - (along * toLeft), LeftAcross, i);
                Store(t - (across * toRight), RightAlong, i);
                Store(u + (along * toRight), RightAcross, i);
            }
        }

        for (; i < last; i++)
        {
            var (a, b, c, d) = (wayAlong[i - 1], wayAcross[i - 1], wayAlong[i], wayAcross[i]);
            var together = (a * c) + (b * d);
            sound &= together >= 0;
            var per = 1 / (1 + together);
            Place(i, (a + c) * per, (b + d) * per);
        }

        return sound;
    }

    private void Place(int i, double along, double across)
    {
        (LeftAlong[i], LeftAcross[i]) = (Along[i] + (across * left), Across[i] - (along * left));
        (RightAlong[i], RightAcross[i]) = (Along[i] - (across * right), Across[i] + (along * right));
    }

    private bool RunsOn(int pieces)
    {
        var i = 0;
        if (wide)
        {
            for (; i + Vector512<double>.Count <= pieces; i += Vector512<double>.Count)
            {
                Vector512<double> a = Load(wayAlong, i), b = Load(wayAcross, i);
                var onLeft = ((Load(LeftAlong, i + 1) - Load(LeftAlong, i)) * a) + ((Load(LeftAcross, i + 1) - Load(LeftAcross, i)) * b);
                var onRight = ((Load(RightAlong, i + 1) - Load(RightAlong, i)) * a) + ((Load(RightAcross, i + 1) - Load(RightAcross, i)) * b);
                if (!Vector512.GreaterThanAll(Vector512.MinNative(onLeft, onRight), Vector512<double>.Zero)) return false;
            }
        }

        for (; i < pieces; i++)
        {
            if (!IsSound(i)) return false;
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Load(double[] list, int at) => Vector512.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(list), (nuint)at);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(Vector512<double> values, double[] list, int at) => values.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(list), (nuint)at);
}
