using System.Globalization;
using System.Text;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>
/// Writes fitted sheets as one web page that needs nothing else: no script, no font, no picture from elsewhere. Headings,
/// tables and lists are what they say they are; each drawing has a spoken title and description.
/// </summary>
internal static class HtmlSheet
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Write(FittedSheet sheet)
    {
        var page = sheet.Page;
        var html = new StringBuilder();
        html.Append(Plain, $"<!doctype html>\n<html lang=\"{Words.In(page.Language).Common.Tag}\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n");
        html.Append(Plain, $"<title>{Html.Text(page.Kind)}: {Html.Text(page.Title)}. {Html.Text(page.Lead)}</title>\n<style>\n{HtmlStyle.Css}</style>\n</head>\n<body>\n<main>\n");
        AppendPages(html, sheet);
        html.Append("</main>\n</body>\n</html>\n");
        return html.ToString();
    }

    /// <summary>The pages of a sheet alone, for a document that has more to say around them.</summary>
    public static void AppendPages(StringBuilder html, FittedSheet sheet, bool named = false)
    {
        for (var i = 0; i < sheet.Pages.Length; i++) AppendPage(html, sheet, i, named);
    }

    private static void AppendPage(StringBuilder html, FittedSheet sheet, int index, bool named)
    {
        var (page, folio) = (sheet.Page, sheet.Folio(index));
        html.Append(folio.Length > 0 ? string.Create(Plain, $"<section class=\"page\" aria-label=\"{Html.Text(folio)}\">\n") : "<section class=\"page\">\n");
        var size = HeadLayout.TitleSize(page, folio);
        var title = index == 0 ? "h1" : "p"; // one first heading for a document
        html.Append(Plain, $"<header><div><{title} class=\"title\" style=\"font-size:{Html.Points(size)}\">{Html.Text(page.Title)}");
        if (page.TitleNote.Length > 0) html.Append(Plain, $" <span>{Html.Text(page.TitleNote)}</span>");
        html.Append(Plain, $"</{title}>\n<p class=\"lead\">{Html.Text(page.Lead)}</p></div>\n<div class=\"corner\">");
        foreach (var line in HeadLayout.CornerLines(page, folio)) html.Append(Plain, $"<p>{Html.Of([line])}</p>");
        html.Append("</div></header>\n");
        var blocks = new HtmlBlocks(html, page, index, named);
        foreach (var block in sheet.Pages[index]) blocks.Append(block, Paper.Inner);
        if (sheet.GoesOn(index) is { Length: > 0 } words) html.Append(Plain, $"<p class=\"goes-on\"><b>{Html.Text(words)}</b></p>\n");
        html.Append("</section>\n");
    }
}

/// <summary>Words and numbers as they may stand in a web page.</summary>
internal static class Html
{
    public static string Text(string words) => words
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal);

    public static string Of(IEnumerable<Run> runs) => string.Concat(runs.Select(r =>
    {
        var words = r.Bold ? "<b>" + Text(r.Text) + "</b>" : Text(r.Text);
        return r.Speech is { } speech ? "<span lang=\"" + Words.In(speech).Common.Tag + "\">" + words + "</span>" : words;
    }));

    public static string Points(double value) => Number(value) + "pt";

    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
