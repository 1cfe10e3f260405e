using System.Numerics;
using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

/// <summary>What was laid on a field. A ratio of one is the rate asked for.</summary>
public sealed class FieldDeposit
{
    private readonly DepositLook look;

    private FieldDeposit(DepositLook look) => this.look = look;

    /// <summary>How a pass was taken to lay.</summary>
    public required LateralShape Shape { get; init; }

    /// <summary>Side of a cell.</summary>
    public Length Cell => look.Grid.Cell;

    /// <summary>Land of the field, in cells.</summary>
    public required Area Land { get; init; }

    /// <summary>Mean over the field.</summary>
    [PlainNumber("over the rate asked for")]
    public required double Mean { get; init; }

    /// <summary>Standard deviation over mean, from cell to cell, population form.</summary>
    public required Fraction Cv { get; init; }

    /// <summary>Share of the field that got the rate asked for, more or less.</summary>
    public required Fraction Near { get; init; }

    /// <summary>Share of the field that got next to nothing.</summary>
    public required Fraction Thin { get; init; }

    /// <summary>Land that all the seed would sow at the rate asked for, on the field and off it.</summary>
    public Area Laid => look.Laid;

    /// <summary>Share of the seed that came down off the field.</summary>
    public Fraction OffField => Laid > Area.Zero ? Fraction.FromShare(Math.Clamp(1 - (Mean * Land / Laid), 0, 1)) : Fraction.FromShare(0);

    /// <summary>Thin places, the largest first; nearest runs are not told.</summary>
    public required ImmutableArray<ThinPlace> Places { get; init; }

    /// <summary>Places of the track left out of it.</summary>
    public int LeftOut => look.LeftOut;

    /// <summary>What was laid at a place of the plane; none off the field.</summary>
    [return: PlainNumber("over the rate asked for")]
    public double? At(PlanePoint place)
    {
        var (along, across) = look.Grid.ToCells(look.Turned.To(place));
        if (!(along >= 0 && along < look.Grid.Along && across >= 0 && across < look.Grid.Across)) return null;
        var (line, cell) = ((int)along, (int)across);
        var before = 0;
        foreach (var end in look.Lines[line])
        {
            if (end <= cell) before++;
        }

        return before % 2 == 1 ? look.Cells[line, cell] : null;
    }

    internal static FieldDeposit Of(DepositLook look, LateralShape shape, DepositOptions options, bool wide)
    {
        var tally = DepositTally.Of(look.Cells, look.Lines, (options.Near.Share, options.Thin.Share), wide);
        var any = tally.Cells > 0;
        return new FieldDeposit(look)
        {
            Shape = shape,
            Land = tally.Cells * look.Grid.CellArea,
            Mean = any ? tally.Mean : 0,
            Cv = Fraction.FromShare(any ? tally.Cv : 0),
            Near = Fraction.FromShare(any ? (double)tally.Near / tally.Cells : 0),
            Thin = Fraction.FromShare(any ? (double)tally.Thin / tally.Cells : 0),
            Places = any ? look.ThinPlaces(options) : [],
        };
    }
}

/// <summary>A map of cells with what is needed to look at it.</summary>
internal sealed record DepositLook(DepositCells Cells, CoverGrid Grid, FieldLines Lines, TurnedPlane Turned, Area Laid, int LeftOut)
{
    /// <summary>Thin places, told on the plane as it lies.</summary>
    public ImmutableArray<ThinPlace> ThinPlaces(DepositOptions options)
    {
        var strips = new List<CellStrip>();
        var row = new float[Cells.Columns * DepositCells.Lanes];
        for (var line = 0; line < Grid.Along; line++)
        {
            var ends = Lines[line];
            if (ends.IsEmpty) continue;
            Cells.Read(line, row);
            for (var i = 0; i + 1 < ends.Length; i += 2) Strips(row.AsSpan(0, ends[i + 1]), (line, ends[i]), (float)options.Thin.Share, strips);
        }

        var turned = Turned;
        return
        [
            .. Cover.ThinPlaces.Find(strips, Grid, [], options.Places).Select(p => p with
            {
                Middle = turned.From(p.Middle),
                At = turned.From(p.At),
                Heading = Bearing.FromDegrees((p.Heading.Degrees + turned.Heading.Degrees) % 180),
            }),
        ];
    }

    private static void Strips(ReadOnlySpan<float> laid, (int Line, int From) land, float thin, List<CellStrip> strips)
    {
        var cell = land.From;
        while (cell < laid.Length)
        {
            cell += FirstThin(laid[cell..], thin);
            var from = cell;
            while (cell < laid.Length && laid[cell] < thin) cell++;
            if (cell > from) strips.Add(new CellStrip(land.Line, from, cell));
        }
    }

    // Most of a line is not thin: it is passed over many cells at a time.
    private static int FirstThin(ReadOnlySpan<float> laid, float thin)
    {
        var i = 0;
        var limit = new Vector<float>(thin);
        while (i + Vector<float>.Count <= laid.Length && !Vector.LessThanAny(new Vector<float>(laid[i..]), limit)) i += Vector<float>.Count;
        while (i < laid.Length && !(laid[i] < thin)) i++;
        return i;
    }
}
