using System.Runtime.Intrinsics;

namespace Watersown.Flight.Deposit;

/// <summary>
/// A lateral shape made ready to be looked up: straight pieces a + b t, t counted in spacings from one before the first knot, so that
/// the first piece and the last are nothing.
/// </summary>
internal sealed class ShapeTable
{
    /// <summary>As many pieces as two vectors hold.</summary>
    public const int MostPieces = 32;

    private readonly float[] bases;
    private readonly float[] slopes;

    /// <summary>A table for one pass.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="cell">Side of a cell, m.</param>
    /// <param name="width">What the pass lays for each meter over the rate asked for: a width of land sown just so, m.</param>
    public ShapeTable(LateralShape shape, double cell, double width)
    {
        Pieces = shape.Shares.Length + 1;
        PerCell = cell / shape.Spacing.Meters;
        Start = 1 - (shape.From / shape.Spacing);
        var room = Math.Max(MostPieces, Pieces);
        (bases, slopes) = (new float[room], new float[room]);
        for (var i = 1; i < Pieces - 1; i++)
        {
            var slope = (shape.Shares[i] - shape.Shares[i - 1]) * width;
            (bases[i], slopes[i]) = ((float)((shape.Shares[i - 1] * width) - (slope * i)), (float)slope);
        }
    }

    public int Pieces { get; }

    /// <summary>Pieces from one cell to the next, square to the line.</summary>
    public double PerCell { get; }

    /// <summary>Where the line itself lies.</summary>
    public double Start { get; }

    /// <summary>The middle of the last piece: beyond it lies nothing more.</summary>
    public float Top => Pieces - 0.5f;

    /// <summary>Vectors can look it up.</summary>
    public bool FitsVectors => Pieces <= MostPieces;

    public Vector512<float> Bases(int half) => Vector512.Create<float>(bases.AsSpan(half * 16, 16));

    public Vector512<float> Slopes(int half) => Vector512.Create<float>(slopes.AsSpan(half * 16, 16));

    public float At(double t)
    {
        if (!(t > 1 && t < Pieces - 1)) return 0;
        var piece = (int)t;
        return bases[piece] + (slopes[piece] * (float)t);
    }
}
