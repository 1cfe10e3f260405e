using System.Net;
using System.Text.RegularExpressions;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

public sealed partial class HtmlSheetTests
{
    private static readonly string[] Void = ["meta", "col", "br", "path", "rect"];

    [Fact]
    public void Every_sheet_is_a_whole_page_with_its_language_title_and_headings()
    {
        foreach (var page in PrintedPages.All)
        {
            var html = HtmlSheet.Write(Fitter.Fit(page));
            Balanced(html);
            Assert.StartsWith($"<!doctype html>\n<html lang=\"{Words.In(page.Language).Common.Tag}\">", html, StringComparison.Ordinal);
            Assert.Contains($"<title>{page.Kind}: ", html, StringComparison.Ordinal);
            Assert.Single(Regex.Matches(html, "<h1[ >]", RegexOptions.None, TimeSpan.FromSeconds(5)));
            Assert.Contains("@page{size:letter;", html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_page_needs_nothing_but_itself()
    {
        foreach (var page in PrintedPages.All)
        {
            var html = HtmlSheet.Write(Fitter.Fit(page)).Replace("http://www.w3.org/2000/svg", string.Empty, StringComparison.Ordinal);
            foreach (var outside in new[] { "<script", "http:", "https:", "<link", "<img", "url(", "@import", "javascript" }) Assert.DoesNotContain(outside, html, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Tables_have_captions_and_every_head_says_what_it_heads()
    {
        foreach (var page in PrintedPages.All)
        {
            var html = HtmlSheet.Write(Fitter.Fit(page));
            Assert.Equal(Count(html, "<table"), Count(html, "<caption"));
            Assert.Equal(Count(html, "<th"), Count(html, "<thead") + Count(html, "<th scope=\""));
        }
    }

    [Fact]
    public void A_map_speaks()
    {
        var html = HtmlSheet.Write(PrintedPages.Fitted("flight-2026-05-09-s2-en"));
        Assert.Contains("<svg role=\"img\" aria-labelledby=\"p1d1t p1d1d\"", html, StringComparison.Ordinal);
        Assert.Contains("<title id=\"p1d1t\">Map of Crooked Box (S2)</title>", html, StringComparison.Ordinal);
        Assert.Contains("<desc id=\"p1d1d\">North is up. Outline from the farm's boundary.", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_and_the_pdf_say_the_same()
    {
        foreach (var page in PrintedPages.All)
        {
            var fitted = Fitter.Fit(page);
            var said = WebUtility.HtmlDecode(Tags().Replace(HtmlSheet.Write(fitted), string.Empty));
            var arranged = page with { Arrangements = [[.. PrintedPages.Blocks(fitted).Where(b => b is not Block.Picture)]] };
            foreach (var word in PageText.Words(arranged, 0).Where(w => w.Any(char.IsLetterOrDigit))) Assert.Contains(word.Trim('[', ']', '_'), said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Names_that_look_like_markup_stay_names()
    {
        var page = PrintedPages.All[0] with { Title = "<b>Box</b> & \"Sons\"", Lead = "</main><script>", Arrangements = [[new Block.Paragraph([new Run("a < b & c")])]] };
        var html = HtmlSheet.Write(Fitter.Fit(page));
        Balanced(html);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;Box&lt;/b&gt; &amp; &quot;Sons&quot;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_of_another_language_say_which()
    {
        var html = HtmlSheet.Write(PrintedPages.Fitted("day-2026-05-08-es"));
        Assert.Contains("<span lang=\"en\">Call the soak for Lower Sink (R4) and Tin Barn (N3)</span>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void No_sheet_gives_leave_that_is_not_ours()
    {
        foreach (var page in PrintedPages.All)
        {
            var html = HtmlSheet.Write(Fitter.Fit(page));
            foreach (var forbidden in new[] { "safe to fly", "approved", "clear of hazards", "legal", "eligible", "aprobado", "seguro para volar" }) Assert.DoesNotContain(forbidden, html, StringComparison.OrdinalIgnoreCase);
        }
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    // Every opened element is closed in order.
    private static void Balanced(string html)
    {
        var open = new Stack<string>();
        foreach (Match tag in Element().Matches(html))
        {
            var name = tag.Groups["name"].Value;
            if (Void.Contains(name, StringComparer.Ordinal) || tag.Value.EndsWith("/>", StringComparison.Ordinal)) continue;
            if (tag.Value[1] != '/') open.Push(name);
            else Assert.Equal(open.Pop(), name);
        }

        Assert.Empty(open);
    }

    [GeneratedRegex("</?(?<name>[a-z][a-z0-9]*)(\\s[^<>]*)?>", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Element();

    [GeneratedRegex("<style>[^<]*</style>|<[^<>]*>", RegexOptions.NonBacktracking)]
    private static partial Regex Tags();
}
