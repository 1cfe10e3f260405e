using System.Globalization;
using System.Text;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>
/// The irrigator's route as a screen shows it: where no water may go first, then each stop in two lines, with its answers and
/// notes folded behind it. On paper the sheet itself is printed, so that nothing is said twice.
/// </summary>
/// <param name="scope">What the link shows.</param>
/// <param name="forms">Writes the answers of a field.</param>
/// <param name="open">Code of the field that was just answered, which stays open.</param>
internal sealed class LinkRoute(LinkScope scope, LinkForms forms, string? open)
{
    /// <summary>The look that the route needs.</summary>
    public const string Css = """
        .route details{border-top:1px solid #000}.route summary{display:block;padding:8px 0;min-height:56px;cursor:pointer;list-style:none;position:relative;padding-right:2rem}
        .route summary::-webkit-details-marker{display:none}
        .route summary:after{content:"+";position:absolute;right:4px;top:8px;font:700 26px/1 Arial,sans-serif}
        .route details[open]>summary:after{content:"\2212"}
        .route summary:focus-visible{outline:4px solid #000;outline-offset:2px}
        .route b{font-size:1.15rem}.route .spill{border:3px solid #000;padding:0 6px;font-weight:700;white-space:nowrap}
        .route h2{border-bottom:3px double #000;margin-top:1.2rem!important}
        .route .stop-alarm{border:8px solid #000;padding:6px 10px;margin:8px 0}.route .stop-alarm h2{border:0;margin:0!important;font-size:1.5rem!important}
        .route form{margin:0 0 10px}.route fieldset{border:0;padding:0}.route legend{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        .route .orders li{padding:8px 0;border-top:1px solid #000}
        @media screen{.paper-only{display:none}}

        """;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private readonly StringBuilder html = new(16 * 1024);

    private readonly Telling tell = scope.Tell;

    private WaterWords Words => tell.Words.Water;

    public string Write()
    {
        var sheet = scope.WaterSheet;
        html.Append(Plain, $"<div class=\"around route\">\n<h1>{Text(Words.Kind)}, {Text(tell.LongDay(sheet.Day))}</h1>\n");
        html.Append(sheet.NoSpill.IsEmpty
            ? $"<p><b>{Text(Words.NoSpillNone)}</b></p>\n"
            : $"<div class=\"stop-alarm\"><h2>{Text(Words.NoSpill)}</h2><p><b>{Text(string.Join(" · ", sheet.NoSpill.Select(f => f.Code + " " + f.Name)))}</b></p></div>\n");
        if (sheet.Routes.IsEmpty && sheet.Loose.IsEmpty) html.Append(Plain, $"<p>{Text(Words.Nothing)}</p>\n");
        html.Append(Plain, $"<p id=\"answer\">{Text(tell.Words.Link.RouteLead)} {Text(tell.Words.Link.AnswerRule)}</p>\n");
        foreach (var route in sheet.Routes) Stops(WaterPage.Head(route, tell), route.Stops);
        if (!sheet.Loose.IsEmpty) Stops(Words.NoSource, sheet.Loose);
        Orders(sheet);
        html.Append(Plain, $"<p>{Text(Words.Alone)}</p>\n</div>\n");
        return html.ToString();
    }

    private void Stops(string head, ImmutableArray<WaterStop> stops)
    {
        html.Append(Plain, $"<section><h2>{Text(head)}</h2>\n");
        foreach (var stop in stops) Stop(stop);
        html.Append("</section>\n");
    }

    private void Stop(WaterStop stop)
    {
        var opened = string.Equals(open, stop.Field.Code, StringComparison.OrdinalIgnoreCase);
        html.Append(Plain, $"<details{(opened ? " open" : string.Empty)}><summary><b>{Text(stop.Field.Code)} {Text(stop.Field.Name)}</b>{(stop.NoSpill ? $" <span class=\"spill\">{Text(Words.NoSpillShort)}</span>" : string.Empty)}<br>{Text(string.Join(" · ", Facts(stop)))}</summary>\n");
        html.Append(forms.Stop(stop.Field));
        var notes = WaterNotes.Notes(stop.Field, tell);
        if (!notes.IsEmpty) html.Append(Plain, $"<p>{string.Concat(notes.Select(n => n.Bold ? $"<b>{Text(n.Text)}</b>" : Text(n.Text)))}</p>\n");
        html.Append("</details>\n");
    }

    /// <summary>What to do, and only what is known.</summary>
    private IEnumerable<string> Facts(WaterStop stop)
    {
        yield return string.Concat(WaterPage.Doing(stop with { NoSpill = false }, tell).Select(r => r.Text));
        var filling = stop.Task is WaterTask.Open or WaterTask.Fill;
        if (filling) yield return Words.Checks + ": " + WaterPage.Checks(stop, tell);
        if (stop.Depth is { } depth) yield return Words.Depth + ": " + tell.Depth(depth);
        if (stop.Target is { } target) yield return Words.Aim + ": " + tell.Depth(target);
        if (stop.Flow is { } flow) yield return tell.Flow(flow);
        if (stop.NextCheck is { } next) yield return WaterPage.Next(next, tell);
        if (stop.FullBy is { } by) yield return Template.Fill(Words.FullBy, ("when", tell.NearMoment(by)));
    }

    private void Orders(WaterSheet sheet)
    {
        if (sheet.Changes.IsEmpty) return;
        html.Append(Plain, $"<section><h2>{Text(Words.Orders)}</h2>\n<ul class=\"orders\">\n");
        foreach (var change in sheet.Changes)
        {
            html.Append(Plain, $"<li><b>{Text(change.Source.Code)}: {Text(Template.Fill(Words.FromTo, ("before", tell.Flow(change.Before)), ("after", tell.Flow(change.After))))}</b><br>");
            html.Append(Plain, $"{Text(Words.SendBy)}: {Text(tell.NearMoment(change.SendBy))} · {Text(Words.At)}: {Text(tell.NearMoment(change.At))}</li>\n");
        }

        html.Append("</ul></section>\n");
    }

    private static string Text(string words) => SheetMarkup.Text(words);
}
