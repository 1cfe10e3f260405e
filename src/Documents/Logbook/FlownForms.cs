using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of what was really flown.</summary>
internal static class FlownForms
{
    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<FlightBilled>("flight-billed",
            [OfField, May(FlownLimits.Billed, "acres on the invoice"), May(SeasonLimits.Soaked, "soaked seed on it"), May("invoice", Text, "its number or name")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number(FlownLimits.Billed.Key, f.Land?.Acres);
                pen.Number(SeasonLimits.Soaked.Key, f.Soaked?.Pounds);
                pen.Text("invoice", f.Invoice);
            },
            f => new FlightBilled(f.Text("field")!)
            {
                Land = f.Number(FlownLimits.Billed) is { } acres ? Area.FromAcres(acres) : null,
                Soaked = SeedForms.Soaked(f, SeasonLimits.Soaked.Key),
                Invoice = f.Text("invoice"),
            }),
        Of<TrackLooked>("track-looked",
            [
                OfField,
                Need(FlownLimits.Swath, "how wide a pass was taken to sow"),
                Need(FlownLimits.Net, "net land within the edge"),
                Need(FlownLimits.Skip, "land never flown over"),
                Need(FlownLimits.SkipError, "how far that can be off"),
                Need(FlownLimits.Overlap, "land flown twice or more"),
                Need(FlownLimits.OffField, "swept land off the field, over all swept"),
                Need(FlownLimits.Passes, "passes"),
                May(FlownLimits.Heading, "heading, there and back"),
                May(FlownLimits.Spacing, "mean distance of neighboring passes"),
                May("gate_told", new Outline.Flag(), "the track told where the gate was open"),
                May("places", new Outline.Several(new Outline.Thing("bare place",
                    [Need(FlownLimits.Latitude, "latitude"), Need(FlownLimits.Longitude, "longitude"), Need(FlownLimits.Bare, "bare land"), Need(FlownLimits.Run, "the way the passes run there")]), 200), "where to walk"),
                May("lines", new Outline.Several(new Outline.Several(new Outline.Number(FlownLimits.Degrees), 400), 1000), "the runs, each as longitude and latitude in turn"),
            ],
            Write, Read),
    ];

    private static void Write(JsonPen pen, TrackLooked f)
    {
        pen.Text("field", f.Field);
        pen.Number(FlownLimits.Swath.Key, f.Swath.Feet);
        pen.Number(FlownLimits.Net.Key, f.Net.Acres);
        pen.Number(FlownLimits.Skip.Key, f.Skip.Percent);
        pen.Number(FlownLimits.SkipError.Key, f.SkipError.Percent);
        pen.Number(FlownLimits.Overlap.Key, f.Overlap.Percent);
        pen.Number(FlownLimits.OffField.Key, f.OffField.Percent);
        pen.Number(FlownLimits.Passes.Key, f.Passes);
        pen.Number(FlownLimits.Heading.Key, f.Heading?.Degrees);
        pen.Number(FlownLimits.Spacing.Key, f.Spacing?.Feet);
        pen.Flag("gate_told", f.GateTold);
        pen.Things("places", f.Places.AsArray(), place =>
        {
            pen.Number(FlownLimits.Latitude.Key, place.At.Latitude);
            pen.Number(FlownLimits.Longitude.Key, place.At.Longitude);
            pen.Number(FlownLimits.Bare.Key, place.Land.Acres);
            pen.Number(FlownLimits.Run.Key, place.Run.Degrees);
        });
        if (!f.Lines.IsEmpty) pen.List("lines", f.Lines, line => pen.List(null, line.SelectMany(p => new[] { p.Longitude, p.Latitude }), pen.Bare));
    }

    private static TrackLooked Read(JsonFacts f) => new(f.Text("field")!, Length.FromFeet(f.Number(FlownLimits.Swath)!.Value), Area.FromAcres(f.Number(FlownLimits.Net)!.Value))
    {
        Skip = Fraction.FromPercent(f.Number(FlownLimits.Skip)!.Value),
        SkipError = Fraction.FromPercent(f.Number(FlownLimits.SkipError)!.Value),
        Overlap = Fraction.FromPercent(f.Number(FlownLimits.Overlap)!.Value),
        OffField = Fraction.FromPercent(f.Number(FlownLimits.OffField)!.Value),
        Passes = f.Whole(FlownLimits.Passes.Key)!.Value,
        Heading = f.Number(FlownLimits.Heading) is { } heading ? Bearing.FromDegrees(heading) : null,
        Spacing = f.Number(FlownLimits.Spacing) is { } feet ? Length.FromFeet(feet) : null,
        GateTold = f.Flag("gate_told") ?? false,
        Places = [.. f.Entries("places").Select(p => new BarePlace(
            new GeoPoint(p.Number(FlownLimits.Latitude)!.Value, p.Number(FlownLimits.Longitude)!.Value), Area.FromAcres(p.Number(FlownLimits.Bare)!.Value), Bearing.FromDegrees(p.Number(FlownLimits.Run)!.Value)))],
        Lines = [.. f.Entries("lines").Select(l => (FactList<GeoPoint>)[.. Places(l)])],
    };

    // An odd number at the end has no partner and is no place.
    private static IEnumerable<GeoPoint> Places(JsonFacts line) => line.Element.EnumerateArray().Select(n => JsonFacts.NumberOf(n)!.Value).Chunk(2).Where(p => p.Length == 2).Select(p => new GeoPoint(p[1], p[0]));
}
