using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Puts a day on paper for the grower: what must be decided first, then wind, seed, calls, the board, and what is in the way.</summary>
public static class DayPage
{
    public static SheetPage Of(SeasonPlan plan, DaySheet sheet, Language language)
    {
        var tell = new Telling(plan.State, language);
        var words = tell.Words.Day;
        (string, string) Count(string name, int value) => (name, Telling.Count(value));
        return PageParts.Start(plan, tell, "day-" + PageParts.DaySlug(sheet.Day), words.Kind, Telling.Capital(tell.LongDay(sheet.Day))) with
        {
            Lead = Template.Fill(words.Lead, Count("sown", sheet.Fields.Sown), Count("all", sheet.Fields.All), Count("full", sheet.Fields.Full), Count("filling", sheet.Fields.Filling)),
            Arrangements =
            [
                [
                    .. DayDecisions.Blocks(sheet, tell),
                    .. DaySky.Wind(plan, sheet, tell),
                    .. DaySky.Seed(plan, sheet, tell),
                    .. Calls(sheet, tell),
                    .. DayBoard.Blocks(sheet, tell),
                    .. Conflicts(sheet, tell),
                    new Block.Paragraph([new Run(words.Derived)]),
                ],
            ],
        };
    }

    /// <summary>The same day as sheets of one page each: what to decide, wind and seed, whom to call, which mornings, what is in the way.</summary>
    public static IEnumerable<SheetPage> Pages(SeasonPlan plan, DaySheet sheet, Language language)
    {
        var whole = Of(plan, sheet, language);
        var tell = new Telling(plan.State, language);
        (string Name, ImmutableArray<Block> Blocks)[] parts =
        [
            (string.Empty, [.. DayDecisions.Blocks(sheet, tell)]),
            ("-wind-and-seed", [.. DaySky.Wind(plan, sheet, tell), .. DaySky.Seed(plan, sheet, tell)]),
            ("-calls", [.. Calls(sheet, tell)]),
            ("-mornings", [.. DayBoard.Blocks(sheet, tell)]),
            ("-in-the-way", [.. Conflicts(sheet, tell), new Block.Paragraph([new Run(tell.Words.Day.Derived)])]),
        ];
        foreach (var (name, blocks) in parts.Where(p => !p.Blocks.IsEmpty)) yield return whole with
        {
            Key = whole.Key + name,
            // Told apart by the heading each begins with: in a list of sheets five of one name would be no help.
            Kind = blocks[0] is Block.Heading heading ? whole.Kind + ": " + heading.Text.ToLowerInvariant() : whole.Kind,
            Arrangements = [blocks],
        };
    }

    private static IEnumerable<Block> Calls(DaySheet sheet, Telling tell)
    {
        var words = tell.Words.Day;
        yield return new Block.Heading(words.Calls);
        if (sheet.Calls.IsEmpty)
        {
            yield return new Block.Paragraph([new Run(words.CallsNone)]);
            yield break;
        }

        yield return new Block.Grid(words.Calls,
            [
                new Column(words.Who) { Most = 96 }, new Column(words.Say), new Column(words.Told, Setting.Center), new Column(words.Heard, Setting.Center),
                new Column(words.Agreed, Setting.Center), new Column(words.NotReached, Setting.Center) { Most = 50 },
            ],
            [.. sheet.Calls.GroupBy(c => (c.Role, c.Name)).Select(person => (ImmutableArray<Cell>)
            [
                Cell.Of(new Run(person.Key.Name, Bold: true), new Run(person.First().Phone is { } phone ? " " + phone : string.Empty)),
                Cell.Of([.. person.Select((c, i) => new Run((i == 0 ? string.Empty : " ") + "• " + c.Text) { Speech = c.Language })]), Cell.Box, Cell.Box, Cell.Box, Cell.Box,
            ])]);
    }

    private static IEnumerable<Block> Conflicts(DaySheet sheet, Telling tell)
    {
        var words = tell.Words.Day;
        if (!sheet.Conflicts.IsEmpty)
        {
            yield return new Block.Heading(words.Conflicts);
            yield return new Block.Grid(words.Conflicts,
                [new Column(tell.Words.Common.Field) { Most = 62 }, new Column(words.What), new Column(words.Remedy)],
                [.. sheet.Conflicts.Select(c => (ImmutableArray<Cell>)[Cell.Strong(string.Join(", ", c.Fields)), Cell.Of(DayDecisions.Planned(c.What)), Cell.Of(DayDecisions.Planned(c.Remedy))])]);
        }

        if (sheet.Assumptions.IsEmpty) yield break;
        yield return new Block.Paragraph([new Run(words.Assumed + ":", Bold: true), new Run(" "), DayDecisions.Planned(string.Join(' ', sheet.Assumptions))]);
    }
}
