using PdfSharp.Drawing;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Puts marks on a PDF page.</summary>
internal static class PdfMarks
{
    private static readonly XColor Pale = XColor.FromGrayScale(0.9);
    private static readonly XColor Gray = XColor.FromGrayScale(0.63);

    public static void Draw(XGraphics paper, Mark mark)
    {
        switch (mark)
        {
            case Mark.Words words:
                paper.DrawString(words.Text, SheetFonts.Font(words.Face, words.Size), XBrushes.Black, words.X, words.Y, XStringFormats.Default);
                return;
            case Mark.Rule rule:
                paper.DrawLine(new XPen(XColors.Black, rule.Width), rule.X1, rule.Y1, rule.X2, rule.Y2);
                return;
            case Mark.Frame frame:
                if (Brush(frame.Fill) is { } brush) paper.DrawRectangle(brush, frame.X, frame.Y, frame.Width, frame.Height);
                if (frame.Stroke > 0) paper.DrawRectangle(new XPen(XColors.Black, frame.Stroke), frame.X, frame.Y, frame.Width, frame.Height);
                return;
            case Mark.Picture picture:
                foreach (var item in picture.Drawing.Items) Draw(paper, item, picture.X, picture.Y);
                return;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static void Draw(XGraphics paper, DrawingItem item, double right, double down)
    {
        switch (item)
        {
            case DrawingItem.Path path:
                Draw(paper, path, right, down);
                return;
            case DrawingItem.Label label:
                Draw(paper, label, right, down);
                return;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static void Draw(XGraphics paper, DrawingItem.Path path, double right, double down)
    {
        var figure = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var ring in path.Rings)
        {
            figure.StartFigure();
            figure.AddLines([.. ring.Select(p => new XPoint(p.X + right, p.Y + down))]);
            if (path.Closed) figure.CloseFigure();
        }

        if (Brush(path.Fill) is { } brush) paper.DrawPath(brush, figure);
        if (path.Stroke <= 0) return;
        var pen = new XPen(XColors.Black, path.Stroke) { LineJoin = XLineJoin.Miter };
        if (path.Dashed) pen.DashStyle = XDashStyle.Dash;
        paper.DrawPath(pen, figure);
    }

    private static void Draw(XGraphics paper, DrawingItem.Label label, double right, double down)
    {
        var face = label.Bold ? Face.WordBold : Face.Word;
        var width = SheetFonts.Width(label.Text, face, label.Size);
        var x = label.At.X + right - (label.Setting switch { Setting.Center => width / 2, Setting.Right => width, _ => 0 });
        var y = label.At.Y + down;
        if (label.Clear) paper.DrawRectangle(XBrushes.White, x - 1, y - (label.Size * 0.78), width + 2, label.Size);
        paper.DrawString(label.Text, SheetFonts.Font(face, label.Size), XBrushes.Black, x, y, XStringFormats.Default);
    }

    private static XSolidBrush? Brush(Ink ink) => ink switch
    {
        Ink.None => null,
        Ink.White => XBrushes.White,
        Ink.Pale => new XSolidBrush(Pale),
        Ink.Gray => new XSolidBrush(Gray),
        Ink.Black => XBrushes.Black,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
