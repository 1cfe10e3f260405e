using Watersown.Flight;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The foot of a flight sheet: hazards as far as the farm knows them, cautions, and what is told back.</summary>
internal static class FlightFoot
{
    /// <summary>Hazards in a table.</summary>
    public static ImmutableArray<Block> Blocks(SeasonPlan plan, FlightSheet sheet, Telling tell) =>
        [Heading(plan, tell), .. Table(sheet, tell), new Block.Paragraph([.. Wires(sheet, tell)]), .. Close(sheet, tell)];

    /// <summary>The same, hazards in running words where a table takes too much paper.</summary>
    public static ImmutableArray<Block> TightBlocks(SeasonPlan plan, FlightSheet sheet, Telling tell) =>
        [Heading(plan, tell), new Block.Paragraph([.. sheet.Hazards.SelectMany(h => Said(h, tell)), .. Wires(sheet, tell)]), .. Close(sheet, tell)];

    private static Block.Heading Heading(SeasonPlan plan, Telling tell) =>
        new(Template.Fill(tell.Words.Flight.Hazards, ("day", tell.ShortDay(plan.State.Now))));

    private static ImmutableArray<Block> Close(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var tag = sheet.Seed.Lot ?? sheet.Seed.Variety;
        return
        [
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

    private static IEnumerable<Block> Table(FlightSheet sheet, Telling tell)
    {
        if (sheet.Hazards.IsEmpty) yield break;
        var words = tell.Words.Flight;
        yield return new Block.Grid(words.HazardWhat,
            [new Column(words.Mark, Setting.Center), new Column(words.HazardWhat), new Column(words.HazardHeight, Setting.Right), new Column(words.HazardWhere), new Column(words.HazardSeen)],
            [.. sheet.Hazards.Select(h => (ImmutableArray<Cell>)
                [Cell.Strong(h.Mark.Length == 0 ? "–" : h.Mark), Cell.Of(new Run(h.Hazard.Name, Bold: true), new Run(", " + Sort(h, tell))), Cell.Of(Height(h, tell)), Cell.Of(Where(h, tell)), Cell.Of(Seen(h, tell))])]);
    }

    private static IEnumerable<Run> Said(HazardSight sight, Telling tell)
    {
        yield return new Run((sight.Mark.Length == 0 ? string.Empty : sight.Mark + " ") + sight.Hazard.Name, Bold: true);
        yield return new Run(", " + Sort(sight, tell) + ", " + tell.Words.Flight.HazardHeight.ToLowerInvariant() + " " + Height(sight, tell) + ", " + Where(sight, tell) + ", "
            + (sight.Hazard.Confirmed is null ? string.Empty : tell.Words.Flight.HazardSeen.ToLowerInvariant() + " ") + Seen(sight, tell) + ". ");
    }

    private static string Sort(HazardSight sight, Telling tell) =>
        MapSpeech.Kind(sight.Hazard.Kind, tell.Words.Map) + (sight.Hazard.Note is { } note ? "; " + note : string.Empty)
        + (sight.Hazard.Listing is { } listing ? "; " + HazardSaid.ListedShort(listing, tell) : string.Empty);

    private static string Height(HazardSight sight, Telling tell) => sight.Hazard.Height is { } height ? tell.Long(height) : tell.Words.Common.NotTold;

    // An old look is told in capitals and behind a mark, so that nobody takes it for a fresh one.
    private static string Seen(HazardSight sight, Telling tell) => sight.Look switch
    {
        HazardLook.Fresh => tell.DayAndYear(sight.Hazard.Confirmed!.Value),
        HazardLook.Old => "! " + HazardSaid.Seen(sight.Hazard, sight.Look, tell),
        _ => tell.Words.Flight.Unconfirmed,
    };

    private static string Where(HazardSight sight, Telling tell)
    {
        var words = tell.Words.Flight;
        if (sight.Inside) return words.InField;
        var near = sight.Near is { } field ? Template.Fill(words.NearField, ("field", Telling.Name(field))) : string.Empty;
        if (sight is { Distance: { } far, Direction: { } toward })
            return (near.Length > 0 ? near + ", " : string.Empty) + tell.Far(far) + ", " + Telling.Toward(toward);
        return near.Length > 0 ? near + "; " + words.PlaceUnknown : words.PlaceUnknown;
    }

    private static IEnumerable<Run> Wires(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;

        // A pole carries a wire, whatever the farm called it.
        yield return new Run(sheet.Hazards.Any(h => h.Hazard.Kind is HazardKind.Wire or HazardKind.Pole) ? words.SomeWires : words.NoWires, Bold: true);
        if (sheet.Hazards.Select(h => h.Hazard.Listing?.FileOf).Max() is { } file) yield return new Run(" " + Template.Fill(tell.Words.Hazard.FileCaution, ("day", tell.DayAndYear(file))));
        if (sheet.HazardsElsewhere > 0) yield return new Run(" " + Template.Fill(words.Farther, ("n", Telling.Count(sheet.HazardsElsewhere))));
    }
}
