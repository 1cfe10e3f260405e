using Watersown.Documents.Json;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of harvest: what it is done with, samples, cuts and tickets.</summary>
internal static class HarvestForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<HarvestMeansTold>("harvest-means",
            [
                May(HarvestLimits.Combines, "how many combines"),
                May(HarvestLimits.EachDay, "land one of them cuts in a day"),
                May(HarvestLimits.Sets, "sets the dryer takes in a day"),
                May(HarvestLimits.SetWeight, "green grain in a set"),
                May(HarvestLimits.Expected, "grain expected, at 14 % moisture"),
                May(HarvestLimits.CutFrom, "not cut above this moisture"),
                May(HarvestLimits.CutTo, "at risk below this moisture"),
            ],
            (pen, f) =>
            {
                pen.Number(HarvestLimits.Combines.Key, f.Combines);
                pen.Number(HarvestLimits.EachDay.Key, f.EachDay?.Acres);
                pen.Number(HarvestLimits.Sets.Key, f.Sets);
                pen.Number(HarvestLimits.SetWeight.Key, f.SetWeight?.Pounds);
                pen.Number(HarvestLimits.Expected.Key, f.Expected?.HundredweightsPerAcre);
                pen.Number(HarvestLimits.CutFrom.Key, f.CutFrom?.Percent);
                pen.Number(HarvestLimits.CutTo.Key, f.CutTo?.Percent);
            },
            f => new HarvestMeansTold
            {
                Combines = f.Whole(HarvestLimits.Combines.Key),
                EachDay = Acres(f, HarvestLimits.EachDay),
                Sets = f.Whole(HarvestLimits.Sets.Key),
                SetWeight = f.Number(HarvestLimits.SetWeight) is { } pounds ? Mass.FromPounds(pounds) : null,
                Expected = f.Number(HarvestLimits.Expected) is { } grain ? GrainYield.FromHundredweightsPerAcre(grain) : null,
                CutFrom = Share(f, HarvestLimits.CutFrom),
                CutTo = Share(f, HarvestLimits.CutTo),
            }),
        Of<DryerRoomGiven>("dryer-room",
            [Need("from", new Outline.Day(), "first day"), Need("until", new Outline.Day(), "last day"), Need(HarvestLimits.Sets, "sets in a day"), May("dryer", Text, "whose room; the usual dryer's where not given"), May("variety", Text, "the only variety it takes")],
            (pen, f) =>
            {
                pen.Day("from", f.From);
                pen.Day("until", f.Until);
                pen.Number(HarvestLimits.Sets.Key, f.Sets);
                pen.Text("dryer", f.Dryer);
                pen.Text("variety", f.Variety);
            },
            f => new DryerRoomGiven(f.Day("from")!.Value, f.Day("until")!.Value, f.Whole(HarvestLimits.Sets.Key)!.Value) { Dryer = f.Text("dryer"), Variety = f.Text("variety") }),
        Of<MoistureSampled>("moisture",
            [OfField, Need(HarvestLimits.Moisture, "moisture of the grain, wet basis")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number(HarvestLimits.Moisture.Key, f.Moisture.Percent);
            },
            f => new MoistureSampled(f.Text("field")!, Share(f, HarvestLimits.Moisture)!.Value)),
        Of<CropLodged>("lodged",
            [OfField, May("stands", new Outline.Flag(), "it stands again")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Flag("stands", !f.Lies);
            },
            f => new CropLodged(f.Text("field")!, !(f.Flag("stands") ?? false))),
        Of<BoardsOut>("boards-out", [OfField], (pen, f) => pen.Text("field", f.Field), f => new BoardsOut(f.Text("field")!)),
        Of<FieldCut>("cut",
            [OfField, May(HarvestLimits.Land, "land cut; all that was left where not given")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number(HarvestLimits.Land.Key, f.Land?.Acres);
            },
            f => new FieldCut(f.Text("field")!) { Land = Acres(f, HarvestLimits.Land) }),
        Of<GrainTicketed>("grain-ticket",
            [
                Need("number", Text, "as printed"),
                Need(HarvestLimits.Gross, "truck and grain"),
                Need(HarvestLimits.Tare, "the truck"),
                Need(HarvestLimits.Moisture, "moisture of the grain, wet basis"),
                May(HarvestLimits.Foreign, "foreign matter"),
                May("dryer", Text, "whose scale"),
                May("variety", Text, "variety on the ticket"),
                May("truck", Text, "which truck"),
                May("parts", new Outline.Several(new Outline.Thing("part of a ticket", [OfField, Need(HarvestLimits.Share, "its share of the grain")]), 50), "which fields it came from, together all of it"),
                May(HarvestLimits.Head, "whole kernels, of the paddy"),
                May(HarvestLimits.Total, "all milled rice, of the paddy"),
            ],
            WriteTicket, ReadTicket),
        Of<CropShareTold>("crop-share",
            [OfField, Need("landlord", Text, "the farm's word for the landlord"), Need(HarvestLimits.Share, "the landlord's share of the grain")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("landlord", f.Landlord);
                pen.Number(HarvestLimits.Share.Key, f.Share.Percent);
            },
            f => new CropShareTold(f.Text("field")!, f.Text("landlord")!, Share(f, HarvestLimits.Share)!.Value)),
    ];

    private static void WriteTicket(JsonPen pen, GrainTicketed f)
    {
        pen.Text("number", f.Number);
        pen.Number(HarvestLimits.Gross.Key, f.Gross.Pounds);
        pen.Number(HarvestLimits.Tare.Key, f.Tare.Pounds);
        pen.Number(HarvestLimits.Moisture.Key, f.Moisture.Percent);
        if (f.Foreign > Fraction.Zero) pen.Number(HarvestLimits.Foreign.Key, f.Foreign.Percent);
        pen.Text("dryer", f.Dryer);
        pen.Text("variety", f.Variety);
        pen.Text("truck", f.Truck);
        pen.Things("parts", f.Parts.AsArray(), part =>
        {
            pen.Text("field", part.Field);
            pen.Number(HarvestLimits.Share.Key, part.Share.Percent);
        });
        pen.Number(HarvestLimits.Head.Key, f.Head?.Percent);
        pen.Number(HarvestLimits.Total.Key, f.Total?.Percent);
    }

    private static GrainTicketed ReadTicket(JsonFacts f) => new(
        f.Text("number")!, Mass.FromPounds(f.Number(HarvestLimits.Gross)!.Value), Mass.FromPounds(f.Number(HarvestLimits.Tare)!.Value), Share(f, HarvestLimits.Moisture)!.Value)
    {
        Foreign = Share(f, HarvestLimits.Foreign) ?? Fraction.Zero,
        Dryer = f.Text("dryer"),
        Variety = f.Text("variety"),
        Truck = f.Text("truck"),
        Parts = [.. f.Entries("parts").Select(p => new TicketPart(p.Text("field")!, Share(p, HarvestLimits.Share)!.Value))],
        Head = Share(f, HarvestLimits.Head),
        Total = Share(f, HarvestLimits.Total),
    };

    private static Fraction? Share(JsonFacts f, Limit limit) => f.Number(limit) is { } percent ? Fraction.FromPercent(percent) : null;

    private static Area? Acres(JsonFacts f, Limit limit) => f.Number(limit) is { } acres ? Area.FromAcres(acres) : null;
}
