using Watersown.Flight;
using Watersown.Flight.Laying;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Draws a field with its passes to scale, north up: open where the gate is open, broken where it is shut.</summary>
public static class PassDrawing
{
    private const double Foot = 24;

    /// <summary>The drawing of a board; its layout must be there.</summary>
    public static Drawing Of(PassBoard board, Telling tell, [PlainNumber("points of paper")] double width, [PlainNumber("points of paper")] double height)
    {
        var (layout, frame) = (board.Layout!, new MapFrame(board.Map.Parts, width, height - Foot));
        var labels = new MapLabels(frame.Width, frame.Height);
        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        items.Add(new DrawingItem.Path(frame.Cut(board.Map.Parts)) { Closed = true, Stroke = 2.5, Fill = Ink.Pale });
        if (layout.Cells.Length > 1 || layout.Unsown > Area.Zero)
            items.Add(new DrawingItem.Path(frame.Cut(layout.Cells.SelectMany(c => c.Land))) { Closed = true, Stroke = 0.75, Fill = Ink.White });
        else
            items.Add(new DrawingItem.Path(frame.Cut(board.Map.Parts)) { Closed = true, Stroke = 2.5, Fill = Ink.White });
        for (var i = 0; i < layout.Lines.Length; i++) Pass(items, frame, layout.Lines[i], i % 2 == 1);
        foreach (var round in board.Round) items.Add(new DrawingItem.Path(frame.Cut(LandCut.Around(round.Points, round.Reach))) { Closed = true, Stroke = 0.75, Dashed = true });
        Numbers(labels, frame, layout);
        foreach (var hazard in board.Map.Hazards) Hazard(items, labels, frame, hazard);
        items.Add(new DrawingItem.Path([[new(0, 0), new(frame.Width, 0), new(frame.Width, frame.Height), new(0, frame.Height)]]) { Closed = true, Stroke = 0.75 });
        Scale(items, tell, frame);
        return new Drawing(Template.Fill(tell.Words.Passes.Title, ("field", Telling.Name(board.Field))), Said(board, layout, tell)) { Width = width, Height = height, Items = [.. items, .. labels.Items] };
    }

    private static string Said(PassBoard board, FieldLayout layout, Telling tell)
    {
        var words = tell.Words.Passes;
        var cells = layout.Cells.Select(c => Template.Fill(words.CellSaid, ("n", Telling.Count(c.Plan.All.Length)), ("a", Telling.Toward(c.Plan.Heading)), ("b", Telling.Toward(c.Plan.Heading.Back))));
        return string.Join(' ', [tell.Words.Map.NorthUp, .. cells, board.Map.Hazards.IsEmpty ? tell.Words.Map.NoHazards : string.Empty]).TrimEnd();
    }

    // Flown by turns from either end; every so many bear an arrow, or arrows would be all there is to see.
    private static void Pass(ImmutableArray<DrawingItem>.Builder items, MapFrame frame, FlownLine line, bool back)
    {
        items.Add(new DrawingItem.Path(frame.CutLine([line.From, line.To])) { Stroke = 0.5, Dashed = true });
        foreach (var span in line.Spans) items.Add(new DrawingItem.Path(frame.CutLine([span.From, span.To])) { Stroke = 1.25 });
        if (line.Number % 8 is not (1 or 2) || line.Spans.IsEmpty) return;
        var (from, to) = (frame.Place(line.Spans[0].From), frame.Place(line.Spans[^1].To));
        items.Add(back ? MapDrawing.Arrow(to, from, 7) : MapDrawing.Arrow(from, to, 7));
    }

    // First and last of each cell, as the pilot would name them.
    private static void Numbers(MapLabels labels, MapFrame frame, FieldLayout layout)
    {
        foreach (var line in new[] { layout.Lines[0], layout.Lines[^1] })
        {
            var middle = new PlanePoint((line.From.East + line.To.East) / 2, (line.From.North + line.To.North) / 2);
            labels.Put(Telling.Count(line.Number), frame.Place(middle), 11, bold: true, must: true);
        }
    }

    private static void Hazard(ImmutableArray<DrawingItem>.Builder items, MapLabels labels, MapFrame frame, MapHazard hazard)
    {
        var lines = frame.CutLine(hazard.Points);
        if (!lines.IsEmpty) items.Add(new DrawingItem.Path(lines) { Stroke = 2.2, Dashed = true });
        var at = lines.IsEmpty ? frame.Place(MapGeometry.Nearest(hazard.Points)) : new PaperPoint((lines[0][0].X + lines[0][1].X) / 2, (lines[0][0].Y + lines[0][1].Y) / 2);
        if (!frame.Holds(at, 7)) return;
        items.Add(new DrawingItem.Path([[new(at.X, at.Y - 6), new(at.X + 6, at.Y + 5), new(at.X - 6, at.Y + 5)]]) { Closed = true, Stroke = 0.5, Fill = Ink.Black });
        labels.Take(at, 7);
        labels.Put(hazard.Mark, at, 12, bold: true, must: true);
    }

    internal static void Scale(ImmutableArray<DrawingItem>.Builder items, Telling tell, MapFrame frame)
    {
        var (length, words) = ScaleBar.For(tell, frame.Width * 0.45 / frame.PointsPerMeter);
        double y = frame.Height + 13, x = 2, end = 2 + (length * frame.PointsPerMeter);
        items.Add(new DrawingItem.Path([[new(x, y - 4), new(x, y + 4)], [new(x, y), new(end, y)], [new(end, y - 4), new(end, y + 4)]]) { Stroke = 1.5 });
        items.Add(new DrawingItem.Label(words, new PaperPoint(end + 6, y + 4), 11));
        var (tail, tip) = (new PaperPoint(frame.Width - 8, frame.Height + 23), new PaperPoint(frame.Width - 8, frame.Height + 3));
        items.Add(new DrawingItem.Path([[tail, tip]]) { Stroke = 1.75 });
        items.Add(MapDrawing.Arrow(tail, tip, 8));
        items.Add(new DrawingItem.Label(tell.Words.Map.North, new PaperPoint(tip.X - 8, frame.Height + 19), 14) { Setting = Setting.Right, Bold = true });
    }
}
