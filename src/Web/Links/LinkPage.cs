using System.Globalization;
using System.Text;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>
/// The page behind a link: one sheet of one person, what a newer plan has moved on it, and the answers. No script, no font,
/// nothing from elsewhere; printed, only the sheet is left.
/// </summary>
internal static class LinkPage
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private const string Css = """
        .around{font:17px/1.45 "Liberation Sans",Arimo,Arial,Helvetica,sans-serif;max-width:40rem;margin:12px auto;padding:0 12px}
        .top{display:block;border:0}.around h2{font-family:inherit;font-size:1.15rem;line-height:1.4;margin:1rem 0 .3rem}
        .moved,.kept,.refused{border:3px solid #000;padding:8px 12px;margin:10px 0}
        .moved{border-style:double;border-width:6px}
        .moved li,.said li{margin:.3rem 0}
        form{margin:10px 0}
        fieldset{min-width:0;border:2px solid #000;padding:8px 12px;display:flex;flex-wrap:wrap;gap:10px;align-items:end}
        .row{flex-basis:100%}
        legend{font-weight:700;padding:0 6px}
        button{font-family:inherit;font-weight:700;font-size:18px;line-height:1.2;min-height:56px;min-width:56px;padding:8px 14px;border:3px solid #000;border-radius:0;background:#fff;color:#000}
        button:focus-visible,input:focus-visible,select:focus-visible,a:focus-visible{outline:4px solid #000;outline-offset:2px}
        label{display:flex;flex-direction:column;font-weight:700}
        input,select{font-family:inherit;font-weight:700;font-size:20px;line-height:1.2;min-height:56px;width:7.5rem;padding:4px 8px;border:2px solid #000;background:#fff;color:#000}
        select{width:auto}
        nav a,.top a{display:inline-block;min-height:56px;padding:16px 10px;color:#000;font-weight:700}
        .said form,.said fieldset{display:inline;border:0;padding:0;margin:0}
        @media print{.around{display:none!important}}

        """;

    /// <summary>The page.</summary>
    /// <param name="scope">What the link shows.</param>
    /// <param name="view">How it is asked for.</param>
    public static string Write(LinkScope scope, LinkView view)
    {
        var words = scope.Tell.Words;
        var html = new StringBuilder(24 * 1024);
        html.Append(Plain, $"<!doctype html>\n<html lang=\"{words.Common.Tag}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<meta name=\"robots\" content=\"noindex\">\n<link rel=\"icon\" href=\"data:,\">\n");
        html.Append(Plain, $"<title>{Text(Template.Fill(words.Link.For, ("person", scope.Person.Name), ("farm", scope.Plan.State.Farm.Name)))}</title>\n<style>\n{SheetMarkup.Css}{Css}{(scope.Sheet.Kind == LinkKind.Water ? LinkRoute.Css : string.Empty)}</style>\n</head>\n<body>\n");
        Top(html, scope, view);
        var pages = scope.Pages.IsEmpty ? scope.IssuedPages : scope.Pages;
        html.Append("<main>\n");
        // A route is walked with a phone in the hand: it is shown as one, and printed as the sheet.
        var route = scope.Sheet.Kind == LinkKind.Water && !scope.Pages.IsEmpty;
        if (route) html.Append(new LinkRoute(scope, new LinkForms(scope, view.Path, view.NewName), view.Kept?.Fact.AboutField).Write());
        if (!pages.IsEmpty) html.Append(Plain, $"<div{(route ? " class=\"paper-only\"" : string.Empty)}>\n{SheetMarkup.Sections(pages[Math.Clamp(view.Sheet, 0, pages.Length - 1)])}</div>\n");
        html.Append("<div class=\"around\">\n");
        Others(html, scope, view, pages);
        Answers(html, scope, view);
        Said(html, scope, view);
        html.Append(Plain, $"<p>{Text(words.Link.Print)}</p>\n<p>{Text(Template.Fill(words.Link.Until, ("when", scope.Tell.Moment(view.Expires))))}</p>\n</div>\n</main>\n</body>\n</html>\n");
        return html.ToString();
    }

    /// <summary>The page of a link that does not work, whatever the reason.</summary>
    public static string Gone(Language language)
    {
        var words = Words.In(language);
        return $"<!doctype html>\n<html lang=\"{words.Common.Tag}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<link rel=\"icon\" href=\"data:,\">\n<title>{Text(words.Link.Gone)}</title>\n"
            + $"<style>body{{font:18px/1.5 Arial,Helvetica,sans-serif;max-width:34rem;margin:2rem auto;padding:0 1rem;color:#000;background:#fff}}</style>\n</head>\n<body>\n<main>\n<h1>{Text(words.Link.Gone)}</h1>\n<p>{Text(words.Link.GoneWhat)}</p>\n</main>\n</body>\n</html>\n";
    }

    private static void Top(StringBuilder html, LinkScope scope, LinkView view)
    {
        var (tell, words) = (scope.Tell, scope.Tell.Words.Link);
        html.Append(Plain, $"<header class=\"around top\">\n<p><b>{Text(Template.Fill(words.For, ("person", scope.Person.Name), ("farm", scope.Plan.State.Farm.Name)))}</b><br>");
        html.Append(Plain, $"{Text(Template.Fill(words.PlanNow, ("plan", Telling.Count(scope.Plan.Number)), ("when", tell.Moment(scope.Plan.MadeAt))))}</p>\n");
        if (view.Refused is { } why) html.Append(Plain, $"<div class=\"refused\" role=\"alert\"><p>{Text(Template.Fill(words.NotUnderstood, ("why", Wording.Say.Sentence(why, scope.Language))))}</p></div>\n");
        if (view.Kept is { } kept) html.Append(Plain, $"<div class=\"kept\" role=\"status\"><p>{Text(Template.Fill(words.Thanks, ("when", tell.Clock(kept.Entered)), ("what", LinkSaid.Of(kept.Fact, tell))))}</p></div>\n");
        var moves = LinkMoves.Of(scope);
        if (!moves.IsEmpty)
        {
            html.Append(Plain, $"<section class=\"moved\"><h2>{Text(Template.Fill(words.Moved, ("plan", Telling.Count(scope.Issued.Number))))}</h2><ul>");
            foreach (var line in moves) html.Append(Plain, $"<li>{Text(line)}</li>");
            html.Append("</ul></section>\n");
        }

        if (scope.Pages.IsEmpty)
        {
            html.Append(scope.IssuedPages.IsEmpty
                ? $"<p class=\"moved\"><b>{Text(Template.Fill(words.NoSheet, ("day", tell.LongDay(scope.Sheet.Day))))}</b></p>\n"
                : $"<section class=\"moved\"><h2>{Text(words.Withdrawn)}</h2><p>{Text(words.WithdrawnWhat)}</p></section>\n");
        }

        if (scope.CanAnswer && scope.Sheet.Kind != LinkKind.Water) html.Append(Plain, $"<p><a href=\"#answer\">{Text(words.Answer)}</a></p>\n");
        html.Append("</header>\n");
    }

    private static void Others(StringBuilder html, LinkScope scope, LinkView view, ImmutableArray<SheetPage> pages)
    {
        if (pages.Length < 2) return;
        html.Append(Plain, $"<nav aria-label=\"{Text(scope.Tell.Words.Link.OtherFlights)}\"><h2>{Text(scope.Tell.Words.Link.OtherFlights)}</h2>\n");
        for (var i = 0; i < pages.Length; i++)
            html.Append(Plain, $"<a href=\"{view.Path}?sheet={i}\"{(i == view.Sheet ? " aria-current=\"page\"" : string.Empty)}>{Text(pages[i].Title)}</a>\n");
        html.Append("</nav>\n");
    }

    private static void Answers(StringBuilder html, LinkScope scope, LinkView view)
    {
        var forms = new LinkForms(scope, view.Path, view.NewName).Write();
        if (forms.Length == 0) return;
        var words = scope.Tell.Words.Link;
        html.Append(Plain, $"<h2 id=\"answer\">{Text(words.Answer)}</h2>\n<p>{Text(words.AnswerRule)}</p>\n{forms}");
    }

    private static void Said(StringBuilder html, LinkScope scope, LinkView view)
    {
        var said = scope.Said.Take(12).ToList();
        if (said.Count == 0) return;
        var (tell, words) = (scope.Tell, scope.Tell.Words.Link);
        html.Append(Plain, $"<h2>{Text(words.Said)}</h2>\n<ul class=\"said\">\n");
        foreach (var line in said)
        {
            html.Append(Plain, $"<li>{Text(tell.Moment(line.Mark.Happened))} · {Text(LinkSaid.Of(line.Mark.Fact, tell))}");
            if (line.Standing != Standing.Stands) html.Append(Plain, $" ({Text(words.Undone)})");
            else if (scope.Now - line.Mark.Entered <= SeasonLimits.UndoFor)
                html.Append(Plain, $" <form method=\"post\" action=\"{view.Path}\"><input type=\"hidden\" name=\"id\" value=\"{view.NewName()}\"><button name=\"answer\" value=\"undo:{line.Mark.Id}\">{Text(words.Undo)}</button></form>");
            html.Append("</li>\n");
        }

        html.Append("</ul>\n");
    }

    private static string Text(string words) => SheetMarkup.Text(words);
}

/// <summary>How the page of a link is asked for.</summary>
/// <param name="Path">Its address on this desk.</param>
/// <param name="Expires">When it stops working.</param>
/// <param name="NewName">Makes names for forms.</param>
internal sealed record LinkView(string Path, DateTimeOffset Expires, Func<string> NewName)
{
    /// <summary>Which of the sheets is shown, where there is more than one.</summary>
    public int Sheet { get; init; }

    /// <summary>The answer that was just kept.</summary>
    public Mark? Kept { get; init; }

    /// <summary>Why the last answer was not kept.</summary>
    public Problem? Refused { get; init; }
}
