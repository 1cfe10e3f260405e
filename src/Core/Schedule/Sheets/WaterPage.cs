using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Puts a water sheet on paper: where no water may go first and largest, then the route, then what to ask for.</summary>
public static class WaterPage
{
    public static SheetPage Of(SeasonPlan plan, WaterSheet sheet, Language language)
    {
        var tell = new Telling(plan.State, language);
        var words = tell.Words.Water;
        var key = "water-" + PageParts.DaySlug(sheet.Day) + (sheet.For is { } person ? "-" + PageParts.Slug(person) : string.Empty);
        return PageParts.Start(plan, tell, key, words.Kind, Telling.Capital(tell.LongDay(sheet.Day))) with
        {
            Lead = Template.Fill(words.Lead, ("person", sheet.For ?? words.Irrigator)),
            Arrangements = [Arranged(sheet, tell, Routes(sheet, tell)), Arranged(sheet, tell, OneTable(sheet, tell))],
        };
    }

    private static ImmutableArray<Block> Arranged(WaterSheet sheet, Telling tell, IEnumerable<Block> routes)
    {
        var words = tell.Words.Water;
        return
        [
            NoSpill(sheet, words),
            .. sheet.Routes.IsEmpty && sheet.Loose.IsEmpty ? [new Block.Paragraph([new Run(words.Nothing)])] : routes,
            .. WaterNotes.Blocks(sheet, tell),
            .. Changes(sheet, tell),
            new Block.Paragraph(
            [
                new Run(tell.Metric ? words.TellBackMetric : words.TellBack, Bold: true),
                new Run(" " + Template.Fill(words.TargetNote, ("depth", tell.Depth(WaterTargets.Sowing)), ("least", tell.Depth(WaterTargets.SowingLeast)), ("most", tell.Depth(WaterTargets.SowingMost))) + " " + words.Alone),
            ]),
        ];
    }

    private static Block NoSpill(WaterSheet sheet, WaterWords words) => sheet.NoSpill.IsEmpty
        ? new Block.Banner([new Run(words.NoSpillNone, Bold: true)])
        : new Block.Alarm(words.NoSpill, [string.Join(" · ", sheet.NoSpill.Select(f => f.Code + " " + f.Name))]);

    private static IEnumerable<Block> Routes(WaterSheet sheet, Telling tell)
    {
        foreach (var route in sheet.Routes)
        {
            yield return new Block.Heading(Head(route, tell) + Due(route, "; ", string.Empty, tell));
            yield return Grid(route.Stops, Head(route, tell), tell);
        }

        if (sheet.Loose.IsEmpty) yield break;
        yield return new Block.Heading(tell.Words.Water.NoSource);
        yield return Grid(sheet.Loose, tell.Words.Water.NoSource, tell);
    }

    // Tighter: one table, the source in its first column.
    private static IEnumerable<Block> OneTable(WaterSheet sheet, Telling tell)
    {
        var words = tell.Words.Water;
        if (!sheet.Routes.IsEmpty) yield return new Block.Paragraph([new Run(words.RunningNow, Bold: true), new Run(" " + string.Join(" · ", sheet.Routes.Select(r => Running(r, tell))) + ".")]);
        var rows = sheet.Routes.SelectMany(r => r.Stops.Select(s => (Source: r.Source.Code, Stop: s))).Concat(sheet.Loose.Select(s => (Source: words.NoSource, Stop: s)));
        yield return new Block.Grid(words.From,
            [
                new Column(words.From) { Most = 60 }, new Column(tell.Words.Common.Field), new Column(words.Do), new Column(words.Checks, Setting.Center) { Most = 52 },
                new Column(words.Depth, Setting.Right) { Most = 60 }, new Column(words.Aim, Setting.Right) { Most = 56 }, new Column(words.Write) { Room = 34 },
            ],
            [.. rows.Select(r => (ImmutableArray<Cell>)
            [
                Cell.Of(r.Source), Name(r.Stop), Cell.Of([.. Doing(r.Stop, tell), .. Filling(r.Stop, tell)]), Cell.Of(Checks(r.Stop, tell)), Depth(r.Stop, tell), Aim(r.Stop, tell), Cell.Blank,
            ])]);
    }

    private static string Running(SourceRoute route, Telling tell) => route.Source.Code + " "
        + (route.Source.Down ? tell.Words.Water.Down : route.Now is { } flow ? tell.Flow(flow) : tell.Words.Common.NotTold) + Due(route, " (", ")", tell);

    // The checks that get wet next stand with their source: in a cell of its field's row they would cost the sheet its one page.
    private static string Due(SourceRoute route, string before, string after, Telling tell)
    {
        var due = string.Join(", ", route.Stops.Where(s => s.NextCheck is not null).Select(s => s.Field.Code + " " + Next(s.NextCheck!, tell)));
        return due.Length == 0 ? due : before + due + after;
    }

    /// <summary>A source, and what runs from it.</summary>
    public static string Head(SourceRoute route, Telling tell)
    {
        var words = tell.Words.Water;
        (string, string) source = ("source", route.Source.Name is { } name ? route.Source.Code + ", " + name : route.Source.Code);
        if (route.Source.Down) return Template.Fill(words.SourceDown, source);
        return route.Now is { } flow ? Template.Fill(words.Source, source, ("flow", tell.Flow(flow))) : Template.Fill(words.SourceUnknown, source);
    }

    private static Block.Grid Grid(ImmutableArray<WaterStop> stops, string caption, Telling tell) => new(caption, Columns(tell), [.. stops.Select(s => Row(s, tell))]);

    private static ImmutableArray<Column> Columns(Telling tell)
    {
        var words = tell.Words.Water;
        return
        [
            new Column(tell.Words.Common.Field), new Column(words.Do), new Column(words.Checks, Setting.Center) { Most = 52 }, new Column(words.Depth, Setting.Right) { Most = 60 },
            new Column(words.Aim, Setting.Right) { Most = 56 }, new Column(words.Flow, Setting.Right), new Column(words.FullAbout), new Column(words.Write) { Room = 40 },
        ];
    }

    private static ImmutableArray<Cell> Row(WaterStop stop, Telling tell) =>
    [
        Name(stop), Cell.Of([.. Doing(stop, tell)]), Cell.Of(Checks(stop, tell)), Depth(stop, tell), Aim(stop, tell),
        Cell.Of(stop.Flow is { } flow ? tell.Flow(flow) : "–"), Cell.Of(stop.FullBy is { } by ? tell.NearMoment(by) : "–"), Cell.Blank,
    ];

    /// <summary>The check that is wet next, and when.</summary>
    public static string Next(CheckDue next, Telling tell) => Template.Fill(tell.Words.Water.NextCheck, ("n", Telling.Count(next.Number)), ("when", tell.NearMoment(next.At)));

    private static Cell Name(WaterStop stop) => Cell.Strong(stop.Field.Code + " " + stop.Field.Name);

    private static Cell Depth(WaterStop stop, Telling tell) => Cell.Of(stop.Depth is { } depth ? tell.Depth(depth) : tell.Words.Common.NotTold);

    private static Cell Aim(WaterStop stop, Telling tell) => stop.Target is { } target ? Cell.Strong(tell.Depth(target)) : Cell.Of(tell.Words.Water.AsItStands);

    /// <summary>How many of its checks are wet.</summary>
    public static string Checks(WaterStop stop, Telling tell)
    {
        var (words, all) = (tell.Words.Water, stop.Field.Basins.Length);
        if (stop.Task is WaterTask.HoldForSeed or WaterTask.HoldSown) return words.FullNow;
        int? wet = stop.Task == WaterTask.Open ? 0 : stop.ChecksWet;
        return wet is { } n && all > 0 ? Template.Fill(words.OfChecks, ("wet", Telling.Count(n)), ("all", Telling.Count(all))) : tell.Words.Common.NotTold;
    }

    // Flow and end of the fill, where they have no columns of their own.
    private static IEnumerable<Run> Filling(WaterStop stop, Telling tell)
    {
        if (stop.Flow is { } flow) yield return new Run(" " + tell.Flow(flow));
        if (stop.FullBy is { } by) yield return new Run(", " + Template.Fill(tell.Words.Water.FullBy, ("when", tell.NearMoment(by))));
    }

    /// <summary>What is to be done at a stop.</summary>
    public static IEnumerable<Run> Doing(WaterStop stop, Telling tell)
    {
        var words = tell.Words.Water;
        yield return stop.Task switch
        {
            WaterTask.Open => new Run(Template.Fill(words.Open, ("time", tell.NearMoment(stop.At!.Value))), Bold: true),
            WaterTask.Fill => new Run(words.Fill),
            WaterTask.HoldForSeed => new Run(words.HoldForSeed),
            WaterTask.HoldSown => new Run(words.HoldSown),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        if (stop.Task == WaterTask.HoldForSeed && stop.Sow is { } sow) yield return new Run(" " + tell.NearMoment(sow));
        if (stop.NoSpill) yield return new Run(" " + words.NoSpillShort, Bold: true);
    }

    private static IEnumerable<Block> Changes(WaterSheet sheet, Telling tell)
    {
        var words = tell.Words.Water;
        yield return new Block.Heading(words.Orders);
        if (sheet.Changes.IsEmpty)
        {
            yield return new Block.Paragraph([new Run(words.OrdersNone)]);
            yield break;
        }

        yield return new Block.Grid(words.Orders,
            [
                new Column(words.SendBy), new Column(words.From), new Column(words.Change), new Column(words.At),
                new Column(words.OrderNo) { Room = 70 }, new Column(words.Asked, Setting.Center), new Column(words.Agreed, Setting.Center),
            ],
            [.. sheet.Changes.Select(c => (ImmutableArray<Cell>)
            [
                Cell.Strong(tell.NearMoment(c.SendBy)), Cell.Of(c.Source.Code), Cell.Strong(Template.Fill(words.FromTo, ("before", tell.Flow(c.Before)), ("after", tell.Flow(c.After)))),
                Cell.Of(tell.NearMoment(c.At)), Cell.Blank, Cell.Box, Cell.Box,
            ])]);
    }
}
