using System.Globalization;
using System.Text;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Writes the blocks of one page as web-page elements.</summary>
/// <param name="html">Where to.</param>
/// <param name="page">The sheet.</param>
/// <param name="pageIndex">Which of its pages.</param>
/// <param name="named">Each cell carries the heading of its column, for a screen too narrow for columns.</param>
internal sealed class HtmlBlocks(StringBuilder html, SheetPage page, int pageIndex, bool named = false)
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private int pictures;

    private CommonWords Common => Words.In(page.Language).Common;

    public void Append(Block block, double width)
    {
        switch (block)
        {
            case Block.Banner banner:
                html.Append(Plain, $"<p class=\"banner\">{Html.Of(banner.Runs)}</p>\n");
                return;
            case Block.Alarm alarm:
                Append(alarm);
                return;
            case Block.Heading heading:
                html.Append(Plain, $"<h2>{Html.Text(heading.Text)}</h2>\n");
                return;
            case Block.Paragraph paragraph:
                html.Append(Plain, $"<p>{Html.Of(paragraph.Runs)}</p>\n");
                return;
            case Block.Figures figures:
                Append(figures, width);
                return;
            case Block.Facts facts:
                Append(facts, width);
                return;
            case Block.Grid grid:
                Append(grid, width);
                return;
            case Block.Picture picture:
                HtmlDrawing.Append(html, picture.Draw(width, picture.Most), string.Create(Plain, $"p{pageIndex + 1}d{++pictures}"));
                return;
            case Block.Side side:
                Append(side, width);
                return;
            case Block.Ticks ticks:
                Append(ticks);
                return;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private void Append(Block.Alarm alarm)
    {
        html.Append(Plain, $"<div class=\"alarm\"><h2>{Html.Text(alarm.Shout)}</h2>");
        if (!alarm.Lines.IsEmpty) html.Append(Plain, $"<ul>{string.Concat(alarm.Lines.Select(l => "<li>" + Html.Text(l) + "</li>"))}</ul>");
        html.Append("</div>\n");
    }

    private void Append(Block.Figures figures, double width)
    {
        var widths = FiguresLayout.Widths(figures, width);
        html.Append("<div class=\"figures\">");
        for (var i = 0; i < widths.Length; i++)
        {
            var figure = figures.Items[i];
            html.Append(Plain, $"<p{(figure.Heavy ? " class=\"heavy\"" : string.Empty)} style=\"width:{Html.Points(widths[i])}\"><b class=\"big\">{Html.Text(figure.Number)}</b> <span>{Html.Of(figure.Caption)}</span></p>");
        }

        html.Append("</div>\n");
    }

    private void Append(Block.Facts facts, double width)
    {
        html.Append(Plain, $"<table class=\"facts\"><caption class=\"sr\">{Html.Text(facts.Caption)}</caption>{Columns(FactsLayout.Widths(facts, width))}<tbody>\n");
        foreach (var row in facts.Rows)
            html.Append(Plain, $"<tr><th scope=\"row\">{Html.Text(row.Name)}</th><td class=\"value\">{Html.Text(row.Value)}</td><td class=\"note\">{Html.Text(row.Note)}</td></tr>\n");
        html.Append("</tbody></table>\n");
    }

    private void Append(Block.Grid grid, double width)
    {
        var fold = GridLayout.FoldWidth(grid, width);
        var columns = Columns(GridLayout.Widths(grid, fold));
        if (grid.Folds > 1) html.Append(Plain, $"<div class=\"folds\" style=\"gap:{Html.Points(GridLayout.FoldGap)}\">");
        foreach (var rows in GridLayout.Folded(grid))
        {
            html.Append(Plain, $"<table class=\"grid\" style=\"width:{Html.Points(fold)}\"><caption class=\"sr\">{Html.Text(grid.Caption)}</caption>{columns}<thead><tr>");
            foreach (var column in grid.Columns) html.Append(Plain, $"<th scope=\"col\"{Class(column.Setting)}>{Html.Text(column.Head)}</th>");
            html.Append("</tr></thead><tbody>\n");
            foreach (var row in rows) Append(grid, row);
            html.Append("</tbody></table>\n");
        }

        if (grid.Folds > 1) html.Append("</div>\n");
    }

    private void Append(Block.Grid grid, ImmutableArray<Cell> row)
    {
        var roomy = row.Any(c => c.IsBox) || grid.Columns.Any(c => c.Room > 0);
        html.Append(roomy ? "<tr class=\"roomy\">" : "<tr>");
        for (var c = 0; c < row.Length; c++)
        {
            var (element, scope) = c == 0 && !row[c].IsBox && !row[c].Runs.IsEmpty ? ("th", " scope=\"row\"") : ("td", string.Empty);
            html.Append(Plain, $"<{element}{scope}{Class(grid.Columns[c].Setting)}{Name(grid.Columns[c], row[c])}>{Content(row[c])}</{element}>");
        }

        html.Append("</tr>\n");
    }

    // What is ticked or written by hand is for paper.
    private string Name(Column column, Cell cell)
    {
        if (!named) return string.Empty;
        return cell.IsBox || cell.Runs.IsEmpty ? " data-paper" : " data-of=\"" + Html.Text(column.Head) + "\"";
    }

    private string Content(Cell cell)
    {
        if (cell.IsBox) return "<span class=\"box\"></span><span class=\"sr\">" + Html.Text(Common.ToTick) + "</span>";
        return cell.Runs.IsEmpty ? "<span class=\"sr\">" + Html.Text(Common.ToFillIn) + "</span>" : Html.Of(cell.Runs);
    }

    private void Append(Block.Side side, double width)
    {
        var (left, right) = BlockLayout.SideWidths(side, width);
        html.Append(Plain, $"<div class=\"side\"><div style=\"width:{Html.Points(left)}\">\n");
        foreach (var block in side.Left) Append(block, left);
        html.Append(Plain, $"</div><div style=\"width:{Html.Points(right)}\">\n");
        foreach (var block in side.Right) Append(block, right);
        html.Append("</div></div>\n");
    }

    private void Append(Block.Ticks ticks)
    {
        html.Append("<ul class=\"ticks\">");
        foreach (var tick in ticks.Items)
        {
            html.Append(tick.HasBox ? "<li><span class=\"box\"></span>" : "<li>").Append(Html.Text(tick.Text));
            if (tick.Line > 0) html.Append(Plain, $"<span class=\"line\" style=\"width:{Html.Points(tick.Line)}\"></span>");
            if (tick.After.Length > 0) html.Append(Html.Text(tick.After));
            html.Append("</li>");
        }

        html.Append("</ul>\n");
    }

    private static string Columns(ImmutableArray<double> widths) =>
        "<colgroup>" + string.Concat(widths.Select(w => "<col style=\"width:" + Html.Points(w) + "\">")) + "</colgroup>";

    private static string Class(Setting setting) => setting switch
    {
        Setting.Right => " class=\"right\"",
        Setting.Center => " class=\"center\"",
        _ => string.Empty,
    };
}
