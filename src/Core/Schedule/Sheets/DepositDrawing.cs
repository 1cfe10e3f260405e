using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Draws what was laid on a field, north up: darker is thinner, bare places numbered, thin ones lettered, passes as lines.</summary>
public static class DepositDrawing
{
    // The map is looked at so many times across the drawing.
    private const double Looks = 150;
    private const double Foot = 24;
    private const double Legend = 15;
    private const double Narrow = 400;
    private const int FewPlaces = 6;
    private const double Type = 11;

    /// <summary>As many places as find room on a drawing.</summary>
    [PlainNumber("places of each kind")]
    public const int MostPlaces = 12;

    public static Drawing Of(FlownReport report, Telling tell, [PlainNumber("points of paper")] double width, [PlainNumber("points of paper")] double height)
    {
        var (words, deposit) = (tell.Words.Flown, report.Deposit);
        var parts = report.Track.Plane.ToPlane(report.Question.Field);
        var (most, rows) = width < Narrow ? (FewPlaces, 2) : (MostPlaces, 1);
        var frame = new MapFrame(parts, width, height - Foot - (rows * Legend));
        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        items.AddRange(Shades(report, frame));
        items.AddRange(RunSketch.Of(report).Select(l => new DrawingItem.Path(frame.CutLine(l.Select(report.Track.Plane.ToPlane))) { Stroke = 0.35 }));
        items.Add(new DrawingItem.Path(frame.Cut(parts)) { Closed = true, Stroke = 2 });
        items.Add(new DrawingItem.Path([[new(0, 0), new(frame.Width, 0), new(frame.Width, frame.Height), new(0, frame.Height)]]) { Closed = true, Stroke = 0.75 });
        PassDrawing.Scale(items, tell, frame);
        items.AddRange(Key(words, frame, rows));
        foreach (var (place, i) in report.ThinPlaces.Take(most).Select((p, i) => (p, i)).Reverse()) items.AddRange(Mark(frame.Place(place.At), FlownTelling.Letter(i), square: true));
        foreach (var place in report.Cover.ThinPlaces.Take(most).Reverse()) items.AddRange(Mark(frame.Place(place.At), Telling.Count(place.Rank), square: false));
        return new Drawing(words.LaidTitle, Template.Fill(words.LaidSaid,
            ("mean", Say.Number(deposit.Mean * 100)), ("cv", Say.Number(deposit.Cv.Percent, 1)), ("near", Say.Number(deposit.Near.Percent, 1)), ("thin", Say.Number(deposit.Thin.Percent, 1))))
        { Width = width, Height = height, Items = items.ToImmutable() };
    }

    // Looks of one shade side by side are one rectangle.
    private static IEnumerable<DrawingItem> Shades(FlownReport report, MapFrame frame)
    {
        var step = frame.Width / Looks;
        var found = new Dictionary<Ink, ImmutableArray<ImmutableArray<PaperPoint>>.Builder>();
        for (var y = 0.0; y < frame.Height; y += step)
        {
            var (from, ink) = (0.0, Ink.None);
            for (var x = 0.0; ; x += step)
            {
                var next = x < frame.Width ? Shade(report.Deposit.At(frame.Under(new PaperPoint(x + (step / 2), y + (step / 2))))) : Ink.None;
                if (next != ink)
                {
                    if (ink != Ink.None) Rings(found, ink).Add([new(from, y), new(x, y), new(x, y + step), new(from, y + step)]);
                    (from, ink) = (x, next);
                }

                if (x >= frame.Width) break;
            }
        }

        return found.OrderBy(f => f.Key).Select(f => new DrawingItem.Path(f.Value.ToImmutable()) { Closed = true, Stroke = 0, Fill = f.Key });
    }

    private static ImmutableArray<ImmutableArray<PaperPoint>>.Builder Rings(Dictionary<Ink, ImmutableArray<ImmutableArray<PaperPoint>>.Builder> found, Ink ink)
    {
        if (!found.TryGetValue(ink, out var rings)) found.Add(ink, rings = ImmutableArray.CreateBuilder<ImmutableArray<PaperPoint>>());
        return rings;
    }

    // Seed as asked for is left white.
    private static Ink Shade(double? laid) => laid switch
    {
        null => Ink.None,
        < 0.4 => Ink.Black,
        < 0.85 => Ink.Gray,
        > 1.15 => Ink.Pale,
        _ => Ink.None,
    };

    // A triangle where it is bare, a square where it is thin; the mark stands on white so that it is read on any shade.
    private static IEnumerable<DrawingItem> Mark(PaperPoint at, string text, bool square)
    {
        ImmutableArray<PaperPoint> ring = square
            ? [new(at.X - 7, at.Y - 7), new(at.X + 7, at.Y - 7), new(at.X + 7, at.Y + 7), new(at.X - 7, at.Y + 7)]
            : [new(at.X, at.Y - 11), new(at.X + 10, at.Y + 7), new(at.X - 10, at.Y + 7)];
        yield return new DrawingItem.Path([ring]) { Closed = true, Stroke = 1.25, Fill = Ink.White };
        yield return new DrawingItem.Label(text, new PaperPoint(at.X, at.Y + (square ? 3.5 : 5)), text.Length > 1 ? 7.5 : 9) { Setting = Setting.Center, Bold = true };
    }

    private static IEnumerable<DrawingItem> Key(FlownWords words, MapFrame frame, int rows)
    {
        (Ink Ink, string Text)[] shades = [(Ink.Black, words.KeyThin), (Ink.Gray, words.KeyLess), (Ink.White, words.KeyAsked), (Ink.Pale, words.KeyMore)];
        for (var i = 0; i < shades.Length; i++)
        {
            var (ink, text) = shades[i];
            var across = shades.Length / rows;
            var (x, y) = (2 + (i % across * frame.Width / across), frame.Height + Foot + ((1 + (i / across)) * Legend) - 4);
            yield return new DrawingItem.Path([[new(x, y - 8), new(x + 10, y - 8), new(x + 10, y), new(x, y)]]) { Closed = true, Stroke = 0.75, Fill = ink };
            yield return new DrawingItem.Label(text, new PaperPoint(x + 14, y), Type - 1.5);
        }
    }
}
