using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Season;
using Watersown.Seed;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of fields, and words and pictures.</summary>
internal static class LandForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<StageReached>("field-stage",
            [OfField, Need("stage", new Outline.Word(Farms.Words.Stages.All), "how far it has come")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("stage", Farms.Words.Stages.Of(f.Stage));
            },
            f => new StageReached(f.Text("field")!, Farms.Words.Stages.Find(f.Text("stage"))!.Value)),
        Of<FieldCorrected>("field-facts",
            [OfField, May(LandLimits.Net, "net acres"), May(LandLimits.Gross, "gross acres"), May(LandLimits.Certified, "certified acres"), May(SeedLimits.Rate, "dry seed per acre"), May("variety", Text, "variety meant for it"), May("name", Text, "the farm's name for it")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number(LandLimits.Net.Key, f.Net?.Acres);
                pen.Number(LandLimits.Gross.Key, f.Gross?.Acres);
                pen.Number(LandLimits.Certified.Key, f.Certified?.Acres);
                pen.Number(SeedLimits.Rate.Key, f.Rate?.PoundsPerAcre);
                pen.Text("variety", f.Variety);
                pen.Text("name", f.Name);
            },
            f => new FieldCorrected(f.Text("field")!)
            {
                Net = Acres(f, LandLimits.Net),
                Gross = Acres(f, LandLimits.Gross),
                Certified = Acres(f, LandLimits.Certified),
                Rate = f.Number(SeedLimits.Rate) is { } pounds ? SeedRate.FromPoundsPerAcre(pounds) : null,
                Variety = f.Text("variety"),
                Name = f.Text("name"),
            }),
        Of<BoundaryDrawn>("boundary",
            [OfField, Need("edge", new Outline.Geometry(), "its edge")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                GeometryWriting.Write(pen, "edge", f.ToBoundary());
            },
            f => BoundaryDrawn.Of(f.Text("field")!, BoundaryReading.Read(JsonFacts.DatumOf(f.Thing("edge")!.Value.Element), "edge").Value)),
        Of<HazardSeen>("hazard",
            [
                Need("name", Text, "the farm's words for it"),
                Need("what", new Outline.Word(MarkWords.Sightings.All), "what was found"),
                May("kind", new Outline.Word(Farms.Words.Hazards.All), "what it is"),
                AnyField,
                May(LandLimits.HazardHeight, "its height above the ground"),
                May("at", Farms.FarmOutline.Point, "where it stands"),
            ],
            (pen, f) =>
            {
                pen.Text("name", f.Name);
                pen.Text("what", MarkWords.Sightings.Of(f.What));
                pen.Text("kind", f.Kind is { } kind ? Farms.Words.Hazards.Of(kind) : null);
                pen.Text("field", f.Field);
                pen.Number(LandLimits.HazardHeight.Key, f.Height?.Feet);
                Farms.FarmWriting.Point(pen, "at", f.At);
            },
            f => new HazardSeen(f.Text("name")!, MarkWords.Sightings.Find(f.Text("what"))!.Value)
            {
                Kind = Farms.Words.Hazards.Find(f.Text("kind")),
                Field = f.Text("field"),
                Height = f.Number(LandLimits.HazardHeight) is { } feet ? Length.FromFeet(feet) : null,
                At = Farms.PartReader.Point(f.Thing("at")),
            }),
        Of<RingsCounted>("count",
            [
                OfField,
                Need("zone", Text, "the farm's word for the zone"),
                May(SeasonLimits.Zone, "acres of the zone"),
                Need("rings", new Outline.Several(new Outline.Number(SeasonLimits.Rings), 500), "plants in each ring"),
                May(SeasonLimits.Ring, "land inside a ring; one square foot where not given"),
            ],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("zone", f.Zone);
                pen.Number("zone_ac", f.ZoneLand?.Acres);
                pen.List("rings", f.Rings, r => pen.Bare(r));
                pen.Number(SeasonLimits.Ring.Key, f.Ring?.SquareFeet);
            },
            f => new RingsCounted(f.Text("field")!, f.Text("zone")!, f.Number("zone_ac") is { } acres ? Area.FromAcres(acres) : null, [.. f.Entries("rings").Select(r => (int)JsonFacts.NumberOf(r.Element)!.Value)])
            {
                Ring = f.Number(SeasonLimits.Ring) is { } feet ? Area.FromSquareFeet(feet) : null,
            }),
        Of<Scouted>("scouting",
            [OfField, Need("what", Text, "what was looked for"), Need("seen", LongText, "what was seen")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("what", f.What);
                pen.Text("seen", f.Seen);
            },
            f => new Scouted(f.Text("field")!, f.Text("what")!, f.Text("seen")!)),
        Of<Noted>("note",
            [Need("text", LongText, "the words"), AnyField],
            (pen, f) =>
            {
                pen.Text("text", f.Text);
                pen.Text("field", f.Field);
            },
            f => new Noted(f.Text("text")!, f.Text("field"))),
        Of<Photographed>("photo",
            [Need("attachment", Text, "name the picture is kept under"), AnyField],
            (pen, f) =>
            {
                pen.Text("attachment", f.Attachment);
                pen.Text("field", f.Field);
            },
            f => new Photographed(f.Text("attachment")!, f.Text("field"))),
    ];

    private static Area? Acres(JsonFacts facts, Limit limit) => facts.Number(limit) is { } acres ? Area.FromAcres(acres) : null;
}
