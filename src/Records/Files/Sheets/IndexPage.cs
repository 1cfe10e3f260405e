using System.Globalization;
using System.Text;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>The list of everything that was printed, as a web page beside the sheets.</summary>
internal static class IndexPage
{
    public const string Name = "index.html";

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>Writes the list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="set">What was chosen.</param>
    /// <param name="files">Names of the files written, the list itself not among them.</param>
    public static string Write(SeasonPlan plan, SheetSet set, IReadOnlyCollection<string> files)
    {
        var tell = new Telling(plan.State, plan.State.Farm.Language);
        var words = tell.Words.Index;
        var title = Template.Fill(tell.Words.Common.Plan, ("farm", plan.State.Farm.Name), ("plan", Telling.Count(plan.Number)));
        var html = new StringBuilder();
        html.Append(Plain, $"<!doctype html>\n<html lang=\"{tell.Words.Common.Tag}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<title>{Html.Text(words.Title)}: {Html.Text(title)}</title>\n");
        html.Append("<style>body{font:17px/1.4 \"Liberation Sans\",Arial,Helvetica,sans-serif;margin:1.5em auto;max-width:52em;padding:0 1em;background:#fff;color:#000}table{border-collapse:collapse;width:100%}th,td{text-align:left;padding:.5em .6em .5em 0;border-bottom:1px solid #000;vertical-align:top}thead th{border-bottom-width:2px}a{color:#0a4a73}</style>\n</head>\n<body>\n<main>\n");
        html.Append(Plain, $"<h1>{Html.Text(words.Title)}</h1>\n<p>{Html.Text(title)}, {Html.Text(Template.Fill(tell.Words.Common.Made, ("when", tell.Moment(plan.MadeAt))))}. {Html.Text(Template.Fill(words.ForDay, ("day", tell.LongDay(set.Day))))}</p>\n");
        if (!set.Pages.IsEmpty) AppendSheets(html, set, files, words);
        AppendOthers(html, files, words);
        html.Append("</main>\n</body>\n</html>\n");
        return html.ToString();
    }

    private static void AppendSheets(StringBuilder html, SheetSet set, IReadOnlyCollection<string> files, IndexWords words)
    {
        html.Append(Plain, $"<table>\n<caption>{Html.Text(words.Sheets)}</caption>\n<thead><tr><th scope=\"col\">{Html.Text(words.Sheet)}</th><th scope=\"col\">{Html.Text(words.What)}</th><th scope=\"col\">{Html.Text(words.Open)}</th></tr></thead>\n<tbody>\n");
        foreach (var page in set.Pages)
        {
            var links = new[] { "html", "pdf" }.Where(form => files.Contains(page.Key + "." + form, StringComparer.Ordinal))
                .Select(form => "<a href=\"" + Html.Text(page.Key) + "." + form + "\" aria-label=\"" + Html.Text(form.ToUpperInvariant() + ", " + page.Kind + ", " + page.Title) + "\">" + form.ToUpperInvariant() + "</a>");
            var tag = Words.In(page.Language).Common.Tag;
            html.Append(Plain, $"<tr lang=\"{tag}\"><th scope=\"row\">{Html.Text(page.Kind)}</th><td>{Html.Text((page.Title + " " + page.TitleNote).TrimEnd())}<br>{Html.Text(page.Lead)}</td><td>{string.Join(" · ", links)}</td></tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static void AppendOthers(StringBuilder html, IReadOnlyCollection<string> files, IndexWords words)
    {
        (string File, string Said)[] others = [(SheetFiles.Texts, words.Texts), (SheetFiles.TextsJson, words.TextsJson), (SheetFiles.Calendar, words.Calendar)];
        var there = others.Where(o => files.Contains(o.File, StringComparer.Ordinal)).ToList();
        if (there.Count == 0) return;
        html.Append(Plain, $"<h2>{Html.Text(words.Others)}</h2>\n<ul>\n");
        foreach (var (file, said) in there) html.Append(Plain, $"<li><a href=\"{file}\">{file}</a>: {Html.Text(said)}</li>\n");
        html.Append("</ul>\n");
    }
}
