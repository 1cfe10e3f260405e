using Watersown.Flight;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The foot of a flight sheet: hazards as far as the farm knows them, cautions, and what is told back.</summary>
internal static class FlightFoot
{
    public static ImmutableArray<Block> Blocks(SeasonPlan plan, FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var tag = sheet.Seed.Lot ?? sheet.Seed.Variety;
        return
        [
            new Block.Heading(Template.Fill(words.Hazards, ("day", tell.ShortDay(plan.State.Now)))),
            .. Hazards(sheet, tell),
            new Block.Paragraph([new Run(Wires(sheet, words), Bold: true), .. Farther(sheet, tell)]),
            new Block.Banner(
            [
                new Run(words.Propeller, Bold: true), new Run(" " + words.NoPeople + " "),
                new Run(tag is null ? words.TagUnknown : Template.Fill(words.Tag, ("tag", tag)), Bold: true), new Run(" " + words.Planning),
            ]),
            new Block.Ticks(
            [
                new Tick(words.Done), new Tick(words.NotDone), new Tick(words.PartDone) { Line = 30 },
                new Tick(words.LeftOver) { HasBox = false, Line = 50, After = tell.MassUnit + " " + tell.Words.Common.Wet },
                new Tick(words.WindSeen) { HasBox = false, Line = 30 }, new Tick(words.GustSeen) { HasBox = false, Line = 30 },
                new Tick(words.Pilot) { HasBox = false, Line = 110 },
            ]),
        ];
    }

    private static IEnumerable<Block> Hazards(FlightSheet sheet, Telling tell)
    {
        if (sheet.Hazards.IsEmpty) yield break;
        var words = tell.Words.Flight;
        yield return new Block.Grid(words.HazardWhat,
            [new Column(words.Mark, Setting.Center), new Column(words.HazardWhat), new Column(words.HazardHeight, Setting.Right), new Column(words.HazardWhere), new Column(words.HazardSeen)],
            [.. sheet.Hazards.Select(h => Row(h, tell))]);
    }

    private static ImmutableArray<Cell> Row(HazardSight sight, Telling tell)
    {
        var (words, hazard) = (tell.Words.Flight, sight.Hazard);
        return
        [
            Cell.Strong(sight.Mark.Length == 0 ? "–" : sight.Mark),
            Cell.Of(new Run(hazard.Name, Bold: true), new Run(", " + MapSpeech.Kind(hazard.Kind, tell.Words.Map) + (hazard.Note is { } note ? "; " + note : string.Empty))),
            Cell.Of(hazard.Height is { } height ? tell.Long(height) : tell.Words.Common.NotTold),
            Cell.Of(Where(sight, tell)),
            Cell.Of(hazard.Confirmed is { } day ? tell.DayAndYear(day) : words.Unconfirmed),
        ];
    }

    private static string Where(HazardSight sight, Telling tell)
    {
        var words = tell.Words.Flight;
        if (sight.Inside) return words.InField;
        var near = sight.Near is { } field ? Template.Fill(words.NearField, ("field", Telling.Name(field))) : string.Empty;
        if (sight is { Distance: { } far, Direction: { } toward })
            return (near.Length > 0 ? near + ", " : string.Empty) + tell.Far(far) + ", " + Telling.Toward(toward);
        return near.Length > 0 ? near + "; " + words.PlaceUnknown : words.PlaceUnknown;
    }

    private static string Wires(FlightSheet sheet, FlightWords words) =>
        sheet.Hazards.Any(h => h.Hazard.Kind == HazardKind.Wire) ? words.SomeWires : words.NoWires;

    private static IEnumerable<Run> Farther(FlightSheet sheet, Telling tell)
    {
        if (sheet.HazardsElsewhere > 0)
            yield return new Run(" " + Template.Fill(tell.Words.Flight.Farther, ("n", Telling.Count(sheet.HazardsElsewhere))));
    }
}
