using System.Text;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>A sheet as markup for a page that says more around it, such as one behind a link with its buttons.</summary>
public static class SheetMarkup
{
    /// <summary>The look that the markup needs.</summary>
    public static string Css { get; } = HtmlStyle.Css + """
        .page{position:relative}
        @media screen and (max-width:620pt){
        .grid,.grid tbody,.grid tr,.grid td,.grid th{display:block;height:auto!important;text-align:left!important;padding:0}
        .grid tbody tr{padding:6pt 0;border-bottom:1.5pt solid #000}
        .grid thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .grid td,.grid th{display:inline-block;margin-right:9pt;font-size:13pt;line-height:18pt;vertical-align:top}
        .grid [data-of]:before{content:attr(data-of) ": ";font-size:10.5pt}
        .grid [data-paper],.grid colgroup{display:none}
        .facts th,.facts td{display:block;padding:0}
        .facts tr{display:block;padding:3pt 0}
        }

        """;

    /// <summary>One section for each sheet of paper.</summary>
    public static string Sections(SheetPage page)
    {
        var html = new StringBuilder(16 * 1024);
        HtmlSheet.AppendPages(html, Fitter.Fit(page), named: true);
        return html.ToString();
    }

    /// <summary>Words as they may stand in a web page, whatever is in them.</summary>
    public static string Text(string words) => Html.Text(words).Replace("'", "&#39;", StringComparison.Ordinal);
}
