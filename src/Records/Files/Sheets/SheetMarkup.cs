using System.Text;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>A sheet as markup for a page that says more around it, such as one behind a link with its buttons.</summary>
public static class SheetMarkup
{
    /// <summary>The look that the markup needs.</summary>
    public static string Css => HtmlStyle.Css;

    /// <summary>One section for each sheet of paper.</summary>
    public static string Sections(SheetPage page)
    {
        var html = new StringBuilder(16 * 1024);
        HtmlSheet.AppendPages(html, Fitter.Fit(page));
        return html.ToString();
    }

    /// <summary>Words as they may stand in a web page, whatever is in them.</summary>
    public static string Text(string words) => Html.Text(words).Replace("'", "&#39;", StringComparison.Ordinal);
}
