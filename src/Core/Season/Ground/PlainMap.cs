using Watersown.Land;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Season.Ground;

/// <summary>One field on the plain map.</summary>
/// <param name="Row">The field and how it stands.</param>
/// <param name="Rings">Its pieces and holes, each as a ring of paper points.</param>
/// <param name="Middle">Where its code is written.</param>
public sealed record PlainField(LandRow Row, ImmutableArray<ImmutableArray<PaperPoint>> Rings, PaperPoint Middle)
{
    /// <summary>Somebody drew its edge; otherwise it is a rectangle of its acres.</summary>
    public bool Drawn { get; init; }

    /// <summary>Its pieces as they would be written for a drawing: each corner once, each ring closed.</summary>
    public ImmutableArray<BoundaryPart> Land { get; init; } = [];
}

/// <summary>A place with a name that is no field: a strip.</summary>
public sealed record PlainSpot(string Name, PaperPoint At);

/// <summary>A length of the ground, and how long it is on the paper.</summary>
/// <param name="Ground">In round miles or kilometers.</param>
/// <param name="Paper">On the paper.</param>
public sealed record MapBar(Length Ground, [property: PlainNumber("points of paper")] double Paper);

/// <summary>
/// A map of the farm's fields that needs nothing but the farm: outlines to scale with north up. It stands wherever a richer map
/// cannot be shown, and says the same.
/// </summary>
public sealed record PlainMap
{
    /// <summary>Width of the paper that is drawn on.</summary>
    [PlainNumber("points of paper")]
    public const double Width = 1000;

    private const double Edge = 24;
    private const double HeightLeast = 300;
    private const double HeightMost = 1100;

    [PlainNumber("points of paper")]
    public required double Height { get; init; }

    public required ImmutableArray<PlainField> Fields { get; init; }

    public ImmutableArray<PlainSpot> Strips { get; init; } = [];

    /// <summary>Fields of which neither an edge nor a middle is known: they are in the table only.</summary>
    public ImmutableArray<LandRow> Without { get; init; } = [];

    /// <summary>How long things are.</summary>
    public required MapBar Bar { get; init; }

    /// <summary>Draws rows; none where no field of them has a place.</summary>
    /// <param name="farm">Where the strips are, and in which units the bar is drawn.</param>
    /// <param name="rows">The fields.</param>
    [Source(nameof(Sources.Karney2011), "section 4")]
    public static PlainMap? Of(Farm farm, ImmutableArray<LandRow> rows)
    {
        ImmutableArray<(LandRow Row, GroundOutline Outline)> placed = [.. rows.Select(r => (r, GroundOutline.Of(r.Field)!)).Where(p => p.Item2 is not null)];
        if (placed.IsEmpty) return null;
        var plane = FarmPlane.Over(placed.Select(p => p.Outline.Edge));
        ImmutableArray<(string Name, PlanePoint At)> strips = [.. farm.Strips.Where(s => s.At is not null).Select(s => (s.Name, plane.ToPlane(s.At!.Value)))];
        var land = placed.Select(p => (p.Row, p.Outline, Parts: plane.ToPlane(p.Outline.Edge))).ToImmutableArray();
        var corners = land.SelectMany(l => l.Parts).SelectMany(p => p.Outer).ToList();
        var frame = Frame.Over(corners, Near(strips, corners));
        return new PlainMap
        {
            Height = frame.Height,
            Fields = [.. land.Select(l => Field(l.Row, l.Outline, l.Parts, frame))],
            Strips = [.. strips.Select(s => new PlainSpot(s.Name, frame.At(s.At))).Where(s => s.At.X is >= 0 and <= Width && s.At.Y >= 0 && s.At.Y <= frame.Height)],
            Without = [.. rows.Where(r => GroundOutline.Of(r.Field) is null)],
            Bar = BarOf(farm.Units, frame.Scale),
        };
    }

    private static PlainField Field(LandRow row, GroundOutline outline, ImmutableArray<PlanePart> parts, Frame frame)
    {
        var largest = parts.MaxBy(p => p.Outer.Max(c => c.East) - p.Outer.Min(c => c.East))!;
        var middle = new PlanePoint((largest.Outer.Min(c => c.East) + largest.Outer.Max(c => c.East)) / 2, (largest.Outer.Min(c => c.North) + largest.Outer.Max(c => c.North)) / 2);
        return new PlainField(row, [.. parts.SelectMany(p => p.Holes.Prepend(p.Outer)).Select(r => r.Select(frame.At).ToImmutableArray())], frame.At(middle))
        {
            Drawn = outline.Drawn,
            Land = outline.Edge.Parts,
        };
    }

    // A strip far off would shrink every field to a stamp; it is then left out.
    private static IEnumerable<PlanePoint> Near(ImmutableArray<(string Name, PlanePoint At)> strips, List<PlanePoint> corners)
    {
        double west = corners.Min(c => c.East), east = corners.Max(c => c.East), south = corners.Min(c => c.North), north = corners.Max(c => c.North);
        double wide = (east - west) / 2, high = (north - south) / 2;
        return strips.Select(s => s.At).Where(p => p.East > west - wide && p.East < east + wide && p.North > south - high && p.North < north + high);
    }

    private static MapBar BarOf(UnitSystem units, double scale)
    {
        ImmutableArray<Length> round = units == UnitSystem.Metric
            ? [Length.FromMeters(200), Length.FromMeters(500), Length.FromMeters(1000), Length.FromMeters(2000), Length.FromMeters(5000)]
            : [Length.FromMiles(0.1), Length.FromMiles(0.25), Length.FromMiles(0.5), Length.FromMiles(1), Length.FromMiles(2), Length.FromMiles(5)];
        var bar = round.LastOrDefault(l => l.Meters * scale <= Width / 4, round[0]);
        return new MapBar(bar, bar.Meters * scale);
    }

    private sealed record Frame(double West, double North, double Scale, double Height, double Left, double Top)
    {
        public static Frame Over(List<PlanePoint> corners, IEnumerable<PlanePoint> also)
        {
            var all = corners.Concat(also).ToList();
            double west = all.Min(c => c.East), north = all.Max(c => c.North);
            double wide = Math.Max(1, all.Max(c => c.East) - west), high = Math.Max(1, north - all.Min(c => c.North));
            var scale = Math.Min((Width - (2 * Edge)) / wide, (HeightMost - (2 * Edge)) / high);
            var height = Math.Max(HeightLeast, (high * scale) + (2 * Edge));
            return new Frame(west, north, scale, height, (Width - (wide * scale)) / 2, (height - (high * scale)) / 2);
        }

        public PaperPoint At(PlanePoint point) => new(Left + ((point.East - West) * Scale), Top + ((North - point.North) * Scale));
    }
}
