using Watersown.Flight;
using Watersown.Land;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Draws a field map to scale, north up, with everything that is known inside its frame.</summary>
internal sealed class MapDrawing
{
    private const double ScaleStrip = 24;
    private const double Type = 10;

    private readonly FieldMap map;
    private readonly Telling tell;
    private readonly MapFrame frame;
    private readonly MapLabels labels;
    private readonly ImmutableArray<DrawingItem>.Builder items = ImmutableArray.CreateBuilder<DrawingItem>();

    private MapDrawing(FieldMap map, Telling tell, double width, double height)
    {
        (this.map, this.tell) = (map, tell);
        frame = new MapFrame(map.Parts, width, height - ScaleStrip);
        labels = new MapLabels(frame.Width, frame.Height);
    }

    private MapWords Words => tell.Words.Map;

    /// <summary>The drawing of a map for a piece of paper.</summary>
    /// <param name="sheet">What the map belongs to.</param>
    /// <param name="tell">Units and language.</param>
    /// <param name="width">Points.</param>
    /// <param name="height">Points.</param>
    public static Drawing Draw(FlightSheet sheet, Telling tell, double width, double height)
    {
        var drawing = new MapDrawing(sheet.Map!, tell, width, height);
        drawing.DrawAll();
        return new Drawing(Template.Fill(tell.Words.Map.Title, ("field", Telling.Name(sheet.Field))), MapSpeech.Of(sheet, tell))
        {
            Width = width,
            Height = height,
            Items = [.. drawing.items, .. drawing.labels.Items],
        };
    }

    private void DrawAll()
    {
        foreach (var neighbor in map.Neighbors) items.Add(new DrawingItem.Path(frame.Cut(neighbor.Parts)) { Closed = true, Stroke = 0.75, Fill = Ink.Pale });
        items.Add(new DrawingItem.Path(frame.Cut(map.Parts)) { Closed = true, Stroke = 2.5, Fill = Ink.White });
        DrawHoles();
        foreach (var check in map.Checks) items.Add(new DrawingItem.Path(frame.Cut(check.Parts)) { Closed = true, Stroke = 1 });
        DrawRun();
        DrawNorth();
        DrawHazards();
        DrawStrip();
        foreach (var check in map.Checks) labels.Put(tell.Words.Common.Check + " " + Telling.Count(check.Number), MiddleOf(frame.Cut(check.Parts)), Type, bold: true, must: false);
        DrawBoxes();
        foreach (var neighbor in map.Neighbors) LabelNeighbor(neighbor);
        items.Add(new DrawingItem.Path([[new(0, 0), new(frame.Width, 0), new(frame.Width, frame.Height), new(0, frame.Height)]]) { Closed = true, Stroke = 0.75 });
        DrawScale();
    }

    private void DrawHoles()
    {
        foreach (var hole in map.Parts.SelectMany(p => p.Holes))
        {
            var rings = frame.Cut([new PlanePart(hole, [])]);
            items.Add(new DrawingItem.Path(rings) { Closed = true, Stroke = 1.5, Fill = Ink.Pale });
            labels.Take(MiddleOf(rings), Math.Min(12, rings.SelectMany(r => r).Select(p => p.X).DefaultIfEmpty().Max() - MiddleOf(rings).X));
            labels.Put(Words.NotSown, MiddleOf(rings), Type, bold: true, must: true);
        }
    }

    private void DrawRun()
    {
        if (map.Run is not { } run) return;
        foreach (var side in new[] { -0.28, 0.28 })
        {
            if (RunLine.Through(map.Parts, run, map.Across.Meters * side) is not { } line) continue;
            var (from, to) = (frame.Place(line.From), frame.Place(line.To));
            if (side > 0) (from, to) = (to, from);
            items.Add(new DrawingItem.Path([[from, to]]) { Stroke = 2 });
            items.Add(Arrow(from, to, 8));
            labels.Take(new PaperPoint((from.X + to.X) / 2, (from.Y + to.Y) / 2), 4);
        }
    }

    private void DrawNorth()
    {
        // Beside the scale bar, where nothing of the map can lie under it.
        var x = frame.Width - 8;
        var (tail, tip) = (new PaperPoint(x, frame.Height + 23), new PaperPoint(x, frame.Height + 3));
        items.Add(new DrawingItem.Path([[tail, tip]]) { Stroke = 1.75 });
        items.Add(Arrow(tail, tip, 8));
        items.Add(new DrawingItem.Label(Words.North, new PaperPoint(x - 8, frame.Height + 19), 14) { Setting = Setting.Right, Bold = true });
    }

    private void DrawHazards()
    {
        foreach (var hazard in map.Hazards)
        {
            if (hazard.Within is { } within) items.Add(new DrawingItem.Path(frame.Cut([MapGeometry.Disc(hazard.Points[0], within)])) { Closed = true, Stroke = 1, Dashed = true });
            var lines = frame.CutLine(hazard.Points);
            if (!lines.IsEmpty) items.Add(new DrawingItem.Path(lines) { Stroke = 2.2, Dashed = true });
            var nearest = frame.Place(MapGeometry.Nearest(hazard.Points));
            var at = lines.IsEmpty ? nearest : new PaperPoint((lines[0][0].X + lines[0][1].X) / 2, (lines[0][0].Y + lines[0][1].Y) / 2);
            if (frame.Holds(at, 7)) MarkHazard(hazard, at);
            else PointOut(hazard.Mark, at, Ink.Black);
        }
    }

    private void MarkHazard(MapHazard hazard, PaperPoint at)
    {
        var (x, y) = (at.X, at.Y);
        ImmutableArray<PaperPoint> sign = hazard.Kind is HazardKind.Tower or HazardKind.Pole or HazardKind.Wire
            ? [new(x, y - 6), new(x + 6, y + 5), new(x - 6, y + 5)]
            : [new(x, y - 6), new(x + 6, y), new(x, y + 6), new(x - 6, y)];
        items.Add(new DrawingItem.Path([sign]) { Closed = true, Stroke = 0.5, Fill = Ink.Black });
        labels.Take(at, 7);
        labels.Put(hazard.Mark, at, 12, bold: true, must: true);
    }

    private void DrawStrip()
    {
        if (map.Strip is not { } strip) return;
        var at = frame.Place(strip);
        var words = Template.Fill(Words.Strip, ("distance", tell.Far(MapGeometry.Distance(strip))));
        if (!frame.Holds(at, 7))
        {
            PointOut(words, at, Ink.White);
            return;
        }

        items.Add(new DrawingItem.Path([[new(at.X - 5, at.Y - 3), new(at.X + 5, at.Y - 3), new(at.X + 5, at.Y + 3), new(at.X - 5, at.Y + 3)]]) { Closed = true, Stroke = 1.5, Fill = Ink.White });
        labels.Take(at, 7);
        labels.Put(words, at, Type, bold: false, must: true);
    }

    // An arrowhead at the frame's edge, toward something outside it.
    private void PointOut(string words, PaperPoint toward, Ink fill)
    {
        var tip = frame.Edge(toward, 2);
        items.Add(Arrow(frame.Middle, tip, 9) with { Fill = fill, Stroke = 1.2 });
        labels.Take(tip, 8);
        labels.Put(words, frame.Edge(toward, 20), Type, bold: true, must: true);
    }

    private void DrawBoxes()
    {
        foreach (var box in map.Boxes)
        {
            var at = frame.Place(box.At);
            if (!frame.Holds(at, 5)) continue;
            items.Add(new DrawingItem.Path([[new(at.X - 4, at.Y - 4), new(at.X + 4, at.Y + 4)], [new(at.X + 4, at.Y - 4), new(at.X - 4, at.Y + 4)]]) { Stroke = 2 });
            labels.Take(at, 5);
            labels.Put(tell.Words.Common.Box + " " + Telling.Count(box.Number) + (box.Leaks ? " " + Words.Leaks : string.Empty), at, Type, box.Leaks, must: true);
        }
    }

    private void LabelNeighbor(MapNeighbor neighbor)
    {
        var rings = frame.Cut(neighbor.Parts);
        if (rings.IsEmpty) return;
        var (left, right) = (rings.SelectMany(r => r).Min(p => p.X), rings.SelectMany(r => r).Max(p => p.X));
        var full = neighbor.Code + " " + MapSpeech.Cover(neighbor.Cover, Words);
        if (!labels.PutThere(full, MiddleOf(rings), Type, right - left)) labels.PutThere(neighbor.Code, MiddleOf(rings), Type, right - left);
    }

    private void DrawScale()
    {
        var (length, words) = ScaleBar.For(tell, frame.Width * 0.45 / frame.PointsPerMeter);
        double y = frame.Height + 13, x = 2, end = 2 + (length * frame.PointsPerMeter);
        items.Add(new DrawingItem.Path([[new(x, y - 4), new(x, y + 4)], [new(x, y), new(end, y)], [new(end, y - 4), new(end, y + 4)]]) { Stroke = 1.5 });
        items.Add(new DrawingItem.Label(words, new PaperPoint(end + 6, y + 4), 11));
    }

    internal static DrawingItem.Path Arrow(PaperPoint from, PaperPoint tip, double size)
    {
        double x = tip.X - from.X, y = tip.Y - from.Y, length = Math.Max(1e-9, double.Hypot(x, y));
        (x, y) = (x / length * size, y / length * size);
        return new DrawingItem.Path([[tip, new(tip.X - x - (y / 2), tip.Y - y + (x / 2)), new(tip.X - x + (y / 2), tip.Y - y - (x / 2))]]) { Closed = true, Stroke = 0.5, Fill = Ink.Black };
    }

    private static PaperPoint MiddleOf(ImmutableArray<ImmutableArray<PaperPoint>> rings)
    {
        var points = rings.SelectMany(r => r).DefaultIfEmpty().ToArray();
        return new PaperPoint((points.Min(p => p.X) + points.Max(p => p.X)) / 2, (points.Min(p => p.Y) + points.Max(p => p.Y)) / 2);
    }
}
