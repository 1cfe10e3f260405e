using Watersown.Documents.Json;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of nutrition.</summary>
internal static class FeedForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<NitrogenOn>("nitrogen",
            [OfField, Need("timing", new Outline.Word(MarkWords.Timings.All), "when in the season"), Need(CropLimits.Nitrogen, "nitrogen itself"), May(CropLimits.Ticket, "gallons of the ticket")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("timing", MarkWords.Timings.Of(f.Timing));
                pen.Number(CropLimits.Nitrogen.Key, f.Rate.PoundsPerAcre);
                pen.Number(CropLimits.Ticket.Key, f.Ticket?.Gallons);
            },
            f => new NitrogenOn(f.Text("field")!, MarkWords.Timings.Find(f.Text("timing"))!.Value, Rate(f)!.Value) { Ticket = f.Number(CropLimits.Ticket) is { } gallons ? Volume.FromGallons(gallons) : null }),
        Of<NutrientRead>("nutrient-reading",
            [OfField, Need("reading", new Outline.Word(MarkWords.Readings.All), "what was read"), Need(CropLimits.Reading, "in the unit of the reading")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Text("reading", MarkWords.Readings.Of(f.Reading));
                pen.Number(CropLimits.Reading.Key, f.Value);
            },
            f => new NutrientRead(f.Text("field")!, MarkWords.Readings.Find(f.Text("reading"))!.Value, f.Number(CropLimits.Reading)!.Value)),
        Of<TopdressDecided>("topdress",
            [OfField, May(CropLimits.Nitrogen, "what is to go on; none where it was decided against")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number(CropLimits.Nitrogen.Key, f.Rate?.PoundsPerAcre);
            },
            f => new TopdressDecided(f.Text("field")!, Rate(f))),
    ];

    private static NutrientRate? Rate(JsonFacts facts) => facts.Number(CropLimits.Nitrogen) is { } pounds ? NutrientRate.FromPoundsPerAcre(pounds) : null;
}
