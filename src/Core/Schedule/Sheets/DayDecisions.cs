using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The decisions of a day, soonest first, each with what waiting costs.</summary>
internal static class DayDecisions
{
    // What one page holds; the rest is counted below it and stands in the calendar.
    private const int Most = 11;

    public static IEnumerable<Block> Blocks(DaySheet sheet, Telling tell)
    {
        var words = tell.Words.Day;
        yield return new Block.Heading(words.Decide);
        if (sheet.Decisions.IsEmpty) yield return new Block.Paragraph([new Run(words.NoDecision)]);
        else
        {
            yield return new Block.Grid(words.Decide,
                [new Column(words.By), new Column(words.What), new Column(words.Who) { Most = 66 }, new Column(words.IfYouWait), new Column(words.DecidedTick, Setting.Center)],
                [.. sheet.Decisions.Take(Most).Select(d => (ImmutableArray<Cell>)[Cell.Strong(tell.NearMoment(d.By)), Cell.Of([.. What(d, tell)]), Cell.Of(d.Who), Cell.Of([.. Cost(d, words)]), Cell.Box])]);
        }

        var more = sheet.Later.Count + Math.Max(0, sheet.Decisions.Length - Most);
        if (more > 0)
            yield return new Block.Paragraph([new Run(Template.Fill(words.MoreDecisions, ("n", Telling.Count(more)), ("when", tell.ShortDay(sheet.Later.Until))))]);
    }

    /// <summary>Words of the planner, which speaks English.</summary>
    public static Run Planned(string words) => new(words) { Speech = Language.English };

    // The plan's own sentence; in another language the kind and the fields go before it.
    private static IEnumerable<Run> What(Decision decision, Telling tell)
    {
        if (tell.Words != Words.English)
            yield return new Run(Kind(decision.Kind, tell.Words.Day) + (decision.Fields.IsEmpty ? ". " : " " + string.Join(", ", decision.Fields) + ". "), Bold: true);
        yield return Planned(decision.What);
    }

    private static IEnumerable<Run> Cost(Decision decision, DayWords words)
    {
        yield return Planned(decision.CostOfWaiting);
        if (decision.Cost is { } cost && !decision.CostOfWaiting.Contains('$', StringComparison.Ordinal)) yield return new Run(", " + Template.Fill(words.About, ("money", Telling.Dollars(cost))), Bold: true);
    }

    private static string Kind(string kind, DayWords words) => kind switch
    {
        "order-water" => words.OrderWater,
        "cut-water" => words.CutWater,
        "call-soak" => words.CallSoak,
        "put-in-soak" => words.PutInSoak,
        "drain" => words.DrainSeed,
        "list-flight" => words.ListFlight,
        "dump-seed" => words.DumpSeed,
        _ => words.Decision,
    };
}
