using Watersown.Flight;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Puts one flight on paper: what the pilot reads before the engine starts, and what the loader ticks.</summary>
public static class FlightPage
{
    /// <summary>The page of a flight.</summary>
    /// <param name="plan">The plan that it belongs to.</param>
    /// <param name="sheet">The flight.</param>
    /// <param name="language">Whom it is for.</param>
    public static SheetPage Of(SeasonPlan plan, FlightSheet sheet, Language language)
    {
        var tell = new Telling(plan.State, language);
        var words = tell.Words.Flight;
        var key = string.Join('-', "flight", PageParts.DaySlug(tell.Day(sheet.From)), PageParts.Slug(sheet.Field.Code)) + (sheet.Part.Of > 1 ? "-" + Telling.Count(sheet.Part.Number) : string.Empty);
        (string, string) day = ("day", tell.LongDay(tell.Day(sheet.From))), time = ("time", tell.Clock(sheet.From));
        return PageParts.Start(plan, tell, key, words.Kind, sheet.Field.Name) with
        {
            TitleNote = sheet.Field.Code,
            Lead = sheet.Part.Of == 1
                ? Template.Fill(words.Lead, day, time)
                : Template.Fill(words.LeadPart, day, time, ("part", Telling.Count(sheet.Part.Number)), ("parts", Telling.Count(sheet.Part.Of))),
            Arrangements = Arranged(plan, sheet, tell),
        };
    }

    private static ImmutableArray<ImmutableArray<Block>> Arranged(SeasonPlan plan, FlightSheet sheet, Telling tell)
    {
        Block banner = new Block.Banner([new Run(tell.Words.Flight.PilotDecides, Bold: true)]);
        ImmutableArray<Block> map = [Map(sheet, tell)];
        Block figures = FlightFacts.Rates(sheet, tell), facts = FlightFacts.All(sheet, tell);
        var sum = FlightLoads.Sum(sheet, tell);
        ImmutableArray<Block> notes = Notes(sheet, tell), foot = FlightFoot.Blocks(plan, sheet, tell), tight = FlightFoot.TightBlocks(plan, sheet, tell);
        var left = Fraction.FromPercent(39);
        return
        [
            [banner, new Block.Side(map, [figures, facts, FlightLoads.Grid(sheet, tell, 1)], left), sum, .. notes, .. foot],
            [banner, new Block.Side(map, [figures, facts], left), .. notes, sum, FlightLoads.Grid(sheet, tell, 2), .. foot],
            [banner, new Block.Side(map, [figures, facts], left), .. notes, sum, FlightLoads.Grid(sheet, tell, 3), .. foot],
            [banner, new Block.Side(map, [figures, facts], left), .. notes, sum, FlightLoads.Grid(sheet, tell, 3), .. tight],
        ];
    }

    private static Block Map(FlightSheet sheet, Telling tell) => sheet.Map is null
        ? new Block.Banner([new Run(tell.Words.Map.NoMap)])
        : new Block.Picture((width, height) => MapDrawing.Draw(sheet, tell, width, height), 150, 420);

    private static ImmutableArray<Block> Notes(FlightSheet sheet, Telling tell)
    {
        if (sheet.Map is not { } map) return [];
        var words = tell.Words.Map;
        var told = MapSpeech.RunNote(map, tell) + "; "
            + Template.Fill(words.Passes, ("length", tell.Long(map.Across)), ("n", Telling.Count(map.Passes)), ("swath", tell.Long(sheet.Aeroplane.Swath))) + ".";
        if (map.Outline != MapOutline.Boundary) told += " " + MapSpeech.OutlineNote(map.Outline, words) + ".";
        if (map.Parts.Any(p => !p.Holes.IsEmpty)) told += " " + words.HasHole;
        if (!sheet.Field.Basins.IsEmpty && map.Checks.IsEmpty) told += " " + Template.Fill(words.LeveesUnknown, ("n", Telling.Count(sheet.Field.Basins.Length)));
        return [new Block.Paragraph([new Run(told), .. Neighbors(sheet, tell)])];
    }

    // What seed must be kept off comes first.
    private static IEnumerable<Run> Neighbors(FlightSheet sheet, Telling tell)
    {
        string Since(Neighbor n) => n.Since is { } since ? " " + tell.ShortDay(since) : string.Empty;
        var (words, map) = (tell.Words.Flight, tell.Words.Map);
        var sown = sheet.Neighbors.Where(n => n.Cover == GroundCover.Sown).Select(n => Telling.Name(n.Field) + " " + MapSpeech.Cover(n.Cover, map) + Since(n)).ToList();
        var others = sheet.Neighbors.Where(n => n.Cover != GroundCover.Sown).GroupBy(n => MapSpeech.Cover(n.Cover, map) + Since(n), StringComparer.Ordinal)
            .Select(g => string.Join(", ", g.Select(n => Telling.Name(n.Field))) + " " + g.Key).ToList();
        if (sown.Count > 0)
        {
            yield return new Run(" " + words.KeepOff, Bold: true);
            yield return new Run(" " + string.Join(", ", sown) + ".");
        }

        if (others.Count == 0) yield break;
        yield return new Run(" " + words.NextTo, Bold: true);
        yield return new Run(" " + string.Join("; ", others) + ".");
    }
}
