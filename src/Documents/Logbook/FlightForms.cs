using Watersown.Documents.Json;
using Watersown.Season;
using Watersown.Seed;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of sowing and flying.</summary>
internal static class FlightForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<FieldSown>("sown",
            [
                OfField,
                May(SeasonLimits.Part, "acres of the part; the whole field where not given"),
                May("part", Text, "the farm's word for the part"),
                May("batch", Text, "batch sown"),
                May(SeedLimits.BatchDry, "dry weight sown"),
                May(SeasonLimits.Loads, "loads flown"),
                May("resow", new Outline.Flag(), "sown a second time on purpose"),
            ],
            WriteSown,
            f => new FieldSown(f.Text("field")!)
            {
                Land = f.Number("part_ac") is { } acres ? Area.FromAcres(acres) : null,
                Part = f.Text("part"),
                Batch = f.Text("batch"),
                Dry = f.Number("dry_lb") is { } pounds ? DrySeed.FromPounds(pounds) : null,
                Loads = f.Whole("loads"),
                Resow = f.Flag("resow") ?? false,
            }),
        Of<LoadGone>("load-gone",
            [OfField, May(SeasonLimits.LoadNumber, "number of the load on that field"), May("trailer", Text, "the trailer's number"), May(SeasonLimits.Load, "soaked weight of the load")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number("number", f.Number);
                pen.Text("trailer", f.Trailer);
                pen.Number("wet_lb", f.Soaked?.Pounds);
            },
            f => new LoadGone(f.Text("field")!, f.Whole("number")) { Trailer = f.Text("trailer"), Soaked = SeedForms.Soaked(f, "wet_lb") }),
        Of<SlotGiven>("slot",
            [Day, Need("from", new Outline.Hour(), "first hour"), Need("until", new Outline.Hour(), "last hour"), May("aeroplane", Text, "which aeroplane; any where not given")],
            (pen, f) =>
            {
                pen.Day("day", f.Day);
                pen.Hour("from", f.From);
                pen.Hour("until", f.Until);
                pen.Text("aeroplane", f.Aeroplane);
            },
            f => new SlotGiven(f.Day("day")!.Value, f.Hour("from")!.Value, f.Hour("until")!.Value) { Aeroplane = f.Text("aeroplane") }),
        Of<PatternTested>("pattern-test",
            [.. Farms.TrayTestForm.Keys, May("aeroplane", Text, "which aeroplane; the farm's only one where not given")],
            (pen, f) =>
            {
                Farms.TrayTestForm.Write(pen, f.ToTest());
                pen.Text("aeroplane", f.Aeroplane);
            },
            f => PatternTested.Of(Farms.TrayTestForm.All(f) with { Aeroplane = f.Text("aeroplane") })),
        Of<StoodDown>("stood-down",
            [Day, Need("who", Text, "who called it off"), Need("why", new Outline.Word(MarkWords.StandDowns.All), "why"), May("field", Text, "field code, where only its flight is off")],
            (pen, f) =>
            {
                pen.Day("day", f.Day);
                pen.Text("who", f.Who);
                pen.Text("why", MarkWords.StandDowns.Of(f.Why));
                pen.Text("field", f.Field);
            },
            f => new StoodDown(f.Day("day")!.Value, f.Text("who")!, MarkWords.StandDowns.Find(f.Text("why"))!.Value) { Field = f.Text("field") }),
    ];

    private static OutlineKey Day => Need("day", new Outline.Day(), "the day");

    private static void WriteSown(JsonPen pen, FieldSown f)
    {
        pen.Text("field", f.Field);
        pen.Number("part_ac", f.Land?.Acres);
        pen.Text("part", f.Part);
        pen.Text("batch", f.Batch);
        pen.Number("dry_lb", f.Dry?.Pounds);
        pen.Number("loads", f.Loads);
        pen.Flag("resow", f.Resow);
    }
}
