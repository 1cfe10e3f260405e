using Watersown.Documents.Json;
using Watersown.Season;
using Watersown.Seed;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of seed: every weight says dry or wet in its key.</summary>
internal static class SeedForms
{
    private static OutlineKey Batch => Need("batch", Text, "batch code");

    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<BatchInSoak>("batch-in-soak",
            [Batch, May("lot", Text, "code of its lot"), May("variety", Text, "variety code"), May(SeedLimits.BatchDry, "dry weight put in"), May("meant_for", new Outline.Several(Text, 100), "codes of the fields it is meant for")],
            (pen, f) =>
            {
                pen.Text("batch", f.Batch);
                pen.Text("lot", f.Lot);
                pen.Text("variety", f.Variety);
                pen.Number("dry_lb", f.Dry?.Pounds);
                pen.Texts("meant_for", f.MeantFor.AsArray());
            },
            f => new BatchInSoak(f.Text("batch")!)
            {
                Lot = f.Text("lot"),
                Variety = f.Text("variety"),
                Dry = f.Number("dry_lb") is { } pounds ? DrySeed.FromPounds(pounds) : null,
                MeantFor = [.. f.Texts("meant_for")],
            }),
        Of<BatchDrained>("batch-drained", [Batch], (pen, f) => pen.Text("batch", f.Batch), f => new BatchDrained(f.Text("batch")!)),
        Of<BatchDumped>("batch-dumped",
            [Batch, May(SeedLimits.BatchDry, "dry weight thrown away; all that is left where not given")],
            (pen, f) =>
            {
                pen.Text("batch", f.Batch);
                pen.Number("dry_lb", f.Dry?.Pounds);
            },
            f => new BatchDumped(f.Text("batch")!, f.Number("dry_lb") is { } pounds ? DrySeed.FromPounds(pounds) : null)),
        Of<TrailerSeen>("trailer",
            [Need("trailer", Text, "the trailer's number"), May("batch", Text, "batch in it"), May(SeasonLimits.Soaked, "soaked weight by the scale"), AnyField, May("place", Text, "where it stands")],
            (pen, f) =>
            {
                pen.Text("trailer", f.Number);
                pen.Text("batch", f.Batch);
                pen.Number("wet_lb", f.Weighed?.Pounds);
                pen.Text("field", f.Field);
                pen.Text("place", f.Place);
            },
            f => new TrailerSeen(f.Text("trailer")!) { Batch = f.Text("batch"), Weighed = Soaked(f, "wet_lb"), Field = f.Text("field"), Place = f.Text("place") }),
        Of<SeedLeft>("leftover",
            [Need("trailer", Text, "the trailer's number"), Need(SeasonLimits.Left, "soaked seed left in it"), AnyField],
            (pen, f) =>
            {
                pen.Text("trailer", f.Trailer);
                pen.Number("left_wet_lb", f.Left.Pounds);
                pen.Text("field", f.Field);
            },
            f => new SeedLeft(f.Text("trailer")!, Soaked(f, "left_wet_lb")!.Value) { Field = f.Text("field") }),
    ];

    internal static SoakedSeed? Soaked(JsonFacts facts, string key) => facts.Number(key) is { } pounds ? SoakedSeed.FromPounds(pounds) : null;
}
