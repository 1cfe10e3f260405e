using Watersown.Flight;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The load table of a flight: whole weights that add up to the flight's exactly, and a box to tick for each.</summary>
internal static class FlightLoads
{
    /// <summary>The table, folded so many times; the room to write in shrinks with every fold.</summary>
    public static Block.Grid Grid(FlightSheet sheet, Telling tell, int folds)
    {
        var words = tell.Words.Flight;
        var wet = Shares(sheet, tell);
        var dry = LoadTally.SoFar(tell.Whole(sheet.Dry), wet);
        var rows = wet.Select((w, i) => (ImmutableArray<Cell>)
            [Cell.Of(Telling.Count(i + 1)), Cell.Strong(Telling.Count(w)), Cell.Of(Telling.Count(dry[i])), Cell.Box, Cell.Blank]);
        (string, string) unit = ("unit", tell.MassUnit);
        return new Block.Grid(words.Loads,
            [
                new Column(words.LoadNo, Setting.Right), new Column(folds > 2 ? words.LoadWetShort : Template.Fill(words.LoadWet, unit), Setting.Right), new Column(folds > 2 ? words.LoadDryShort : Template.Fill(words.LoadDry, unit), Setting.Right),
                new Column(words.Gone, Setting.Center), new Column(folds > 2 ? words.TimeShort : words.TimeGate) { Room = folds > 2 ? 20 : 50 },
            ],
            [.. rows])
        { Folds = folds };
    }

    /// <summary>The sum of the loads, the limits told, and what one load fewer would weigh.</summary>
    public static Block.Paragraph Sum(FlightSheet sheet, Telling tell) =>
        new([new Run(tell.Words.Flight.Loads + ":", Bold: true), new Run(" " + string.Join(' ', [Sum(Shares(sheet, tell), tell), Limits(sheet.Aeroplane, tell), .. Fewer(sheet, tell), tell.Words.Flight.TellLoader]))]);

    private static ImmutableArray<int> Shares(FlightSheet sheet, Telling tell) => LoadTally.Shares(tell.Whole(sheet.Soaked), sheet.Loads.Count);

    private static string Sum(ImmutableArray<int> wet, Telling tell)
    {
        var words = tell.Words.Flight;
        var odd = wet.Count(w => w != wet[0]);
        (string, string) each = ("each", Telling.Count(wet[0])), unit = ("unit", tell.MassUnit);
        return odd == 0
            ? Template.Fill(words.LoadSum, ("loads", Telling.Count(wet.Length)), each, unit)
            : Template.Fill(words.LoadSumOdd, ("loads", Telling.Count(wet.Length - odd)), each, ("last", Telling.Count(odd)),
                ("more", Telling.Count(wet[^1])), unit, ("all", Telling.Count(wet.Sum())));
    }

    private static string Limits(Aeroplane plane, Telling tell)
    {
        var words = tell.Words.Flight;
        (string, string) working = ("working", Telling.Count(tell.Whole(plane.WorkingLoad))), unit = ("unit", tell.MassUnit);
        return plane.TopLoad is { } top
            ? Template.Fill(words.WorkingLoad, working, ("top", Telling.Count(tell.Whole(top))), unit)
            : Template.Fill(words.WorkingLoadOnly, working, unit);
    }

    private static IEnumerable<string> Fewer(FlightSheet sheet, Telling tell)
    {
        if (sheet.Loads.EachWithOneFewer is not { } each) yield break;
        var words = tell.Words.Flight;
        var sentence = sheet.Aeroplane.TopLoad is not { } top ? words.FewerUnknown : each <= top ? words.FewerWithin : words.FewerOver;
        yield return Template.Fill(sentence, ("loads", Telling.Count(sheet.Loads.Count - 1)), ("each", Telling.Count(tell.Whole(each))));
    }
}
