using System.Globalization;
using System.Text;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Writes a drawing as SVG inside a web page, with its spoken title and description.</summary>
internal static class HtmlDrawing
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>Appends the drawing.</summary>
    /// <param name="html">The page so far.</param>
    /// <param name="drawing">What is drawn.</param>
    /// <param name="id">Unique in the page.</param>
    public static void Append(StringBuilder html, Drawing drawing, string id)
    {
        string width = Html.Number(drawing.Width), height = Html.Number(drawing.Height);
        html.Append(Plain, $"<figure><svg role=\"img\" aria-labelledby=\"{id}t {id}d\" viewBox=\"0 0 {width} {height}\" style=\"width:{width}pt;height:{height}pt\" xmlns=\"http://www.w3.org/2000/svg\">");
        html.Append(Plain, $"<title id=\"{id}t\">{Html.Text(drawing.Title)}</title><desc id=\"{id}d\">{Html.Text(drawing.Description)}</desc>\n");
        foreach (var item in drawing.Items)
        {
            switch (item)
            {
                case DrawingItem.Path path:
                    Append(html, path);
                    break;
                case DrawingItem.Label label:
                    Append(html, label);
                    break;
                default:
                    throw new System.Diagnostics.UnreachableException();
            }
        }

        html.Append("</svg></figure>\n");
    }

    private static void Append(StringBuilder html, DrawingItem.Path path)
    {
        html.Append("<path d=\"");
        foreach (var ring in path.Rings)
        {
            for (var i = 0; i < ring.Length; i++) html.Append(Plain, $"{(i == 0 ? 'M' : 'L')}{Html.Number(ring[i].X)} {Html.Number(ring[i].Y)}");
            if (path.Closed) html.Append('Z');
        }

        html.Append(Plain, $"\" fill=\"{Fill(path.Fill)}\" fill-rule=\"evenodd\"");
        if (path.Stroke > 0) html.Append(Plain, $" stroke=\"#000\" stroke-width=\"{Html.Number(path.Stroke)}\"");
        if (path.Dashed) html.Append(Plain, $" stroke-dasharray=\"{Html.Number(path.Stroke * 3)} {Html.Number(path.Stroke)}\"");
        html.Append("/>\n");
    }

    private static void Append(StringBuilder html, DrawingItem.Label label)
    {
        var width = SheetFonts.Width(label.Text, label.Bold ? Face.WordBold : Face.Word, label.Size);
        var left = label.At.X - (label.Setting switch { Setting.Center => width / 2, Setting.Right => width, _ => 0 });
        if (label.Clear) html.Append(Plain, $"<rect x=\"{Html.Number(left - 1)}\" y=\"{Html.Number(label.At.Y - (label.Size * 0.78))}\" width=\"{Html.Number(width + 2)}\" height=\"{Html.Number(label.Size)}\" fill=\"#fff\"/>");
        html.Append(Plain, $"<text x=\"{Html.Number(left)}\" y=\"{Html.Number(label.At.Y)}\" font-size=\"{Html.Number(label.Size)}\"{(label.Bold ? " font-weight=\"700\"" : string.Empty)}>{Html.Text(label.Text)}</text>\n");
    }

    private static string Fill(Ink ink) => ink switch
    {
        Ink.None => "none",
        Ink.White => "#fff",
        Ink.Pale => "#e6e6e6",
        Ink.Gray => "#a0a0a0",
        Ink.Black => "#000",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
