using System.Globalization;
using Watersown.Season;

namespace Watersown;

/// <summary>Marks for a test, one line each.</summary>
internal static class Marks
{
    /// <summary>A mark put down when it happened, named by a number.</summary>
    public static Mark At(int id, DateTimeOffset happened, MarkFact fact) => new()
    {
        Id = AnyMark.Id(id),
        Happened = happened,
        Entered = happened,
        By = "Tamsin Wexcombe",
        Device = "phone-a",
        Fact = fact,
    };

    public static Mark By(this Mark mark, string person) => mark with { By = person };

    public static Mark Entered(this Mark mark, DateTimeOffset moment) => mark with { Entered = moment };

    public static Mark Replacing(this Mark mark, int id) => mark with { Replaces = AnyMark.Id(id) };

    /// <summary>Everything of a book that a person or a plan could see, as text.</summary>
    public static string Seen(SeasonBook book) => string.Join('\n', Lines(book));

    private static IEnumerable<string> Lines(SeasonBook book)
    {
        var state = book.State;
        foreach (var f in state.Farm.Fields) yield return string.Create(CultureInfo.InvariantCulture, $"{f.Code} {f.Name} {f.Net.Acres:0.######} {string.Join(",", f.Boxes)} {string.Join(",", f.Basins.Select(b => b.Area.Acres.ToString("0.######", CultureInfo.InvariantCulture)))}");
        foreach (var f in state.Fields) yield return (f with { WorkLeft = null }) + " " + (f.WorkLeft is { } left ? string.Join(",", left) : "-");
        foreach (var s in state.Farm.Sources) yield return (s with { ChangeHours = [] }).ToString();
        foreach (var b in state.Batches) yield return (b with { MeantFor = [], Trailers = [] }) + " " + string.Join(",", b.MeantFor) + " " + string.Join(",", b.Trailers);
        foreach (var l in state.Lots) yield return l.ToString();
        foreach (var h in state.Farm.Hazards) yield return (h with { Points = [], Near = [] }) + " " + string.Join(",", h.Points) + " " + string.Join(",", h.Near);
        foreach (var p in state.Aeroplanes) yield return p.Name + " " + (p.Tested is { } test ? test.Day + test.Seed + string.Join(";", test.Passes.Select(r => string.Join(",", r))) : "-");
        foreach (var w in state.Wind) yield return w.ToString();
        foreach (var w in state.Warmth) yield return w.ToString();
        yield return book.Harvest.Means.ToString();
        foreach (var f in book.Harvest.Fields) yield return (f with { Samples = [] }) + " " + string.Join(",", f.Samples);
        foreach (var r in book.Harvest.Rooms) yield return r.ToString();
        foreach (var (mark, t) in book.Harvest.Tickets) yield return mark.Id + " " + (t with { Parts = [] }) + " " + string.Join(",", t.Parts);
        foreach (var p in book.Costs.Planned) yield return p.ToString();
        foreach (var (mark, b) in book.Costs.Bills) yield return mark.Id + " " + (b with { Fields = [] }) + " " + string.Join(",", b.Fields);
        foreach (var c in book.Harvest.Shares) yield return c.ToString();
        foreach (var s in state.Slots) yield return s.ToString();
        foreach (var p in state.Pins) yield return p.ToString();
        foreach (var p in state.People) yield return p.ToString();
        yield return "plan " + state.PlanNumber + " " + state.Now;
        foreach (var f in book.Fields.Where(f => !f.Unknown || f.Story.Any(l => l.Standing == Standing.Stands))) yield return f.Code + " " + f.Sown + f.Left + f.ScoutedAt + f.Depth + string.Join(";", f.Checks) + string.Join(";", f.Sowings) + string.Join(";", f.Loads) + string.Join(";", f.Counts.Select(c => c.Count));
        foreach (var t in book.Trailers) yield return t.ToString();
        foreach (var b in book.Batches) yield return b.Code + b.Place + b.Dry + b.Sown + b.Dumped + b.Remaining + b.Assumed;
        foreach (var s in book.Sources) yield return s.Code + s.Seen + s.SwitchedAt + string.Join(";", s.Orders);
        foreach (var f in book.Faults) yield return f.Fault.ToString();
        foreach (var m in book.Messages) yield return m.Message + m.Last;
        foreach (var c in book.CalledOff) yield return c.ToString();
        foreach (var p in book.Plans) yield return p.ToString();
        foreach (var k in book.Weather.Known) yield return k.ToString();
        foreach (var f in book.Fields.Where(f => !f.Unknown)) yield return f.Code + string.Join(";", f.Stages.Select(s => s.Seen)) + string.Join(";", f.Looks.Select(l => l.Look)) + string.Join(";", f.Flood);
        foreach (var t in book.Targets.Own) yield return t.ToString();
        foreach (var i in book.Weather.Imports) yield return i.ToString();
        if (!ReferenceEquals(book.Weather, WeatherBook.Empty)) yield return book.Weather.Normals.Source + string.Join(";", book.Weather.Normals.Months);
    }

    /// <summary>The same with stories, doubts and what can be undone.</summary>
    public static string All(SeasonBook book) => Seen(book) + "\n" + string.Join('\n',
        book.Story.Select(l => l.Mark.Id + " " + l.Standing + " " + l.By)
            .Concat(book.Fields.SelectMany(f => f.Story.Select(l => f.Code + l.Mark.Id + l.Standing + string.Join(",", l.Changes))))
            .Concat(book.Doubts.Select(d => d.Problem.Kind.Code + " " + d.Problem.Where + " " + string.Join(",", d.Marks) + string.Join(",", d.Problem.Facts.OrderBy(f => f.Key, StringComparer.Ordinal))))
            .Concat(book.Undoable.Select(m => "undo " + m.Id)));
}
