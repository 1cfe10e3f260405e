using Watersown.Documents.Json;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Handout;

/// <summary>A handout as GeoJSON (RFC 7946): one feature for each field, pass, hazard, strip and stretch flown.</summary>
public static class GeoJsonHandout
{
    public static ReadOnlyMemory<byte> Write(FarmHandout handout, Language language)
    {
        var speech = new HandoutSpeech(handout, Wording.Words.In(language).Handout);
        using var pen = new JsonPen();
        pen.Thing(null, () =>
        {
            pen.Text("type", "FeatureCollection");
            pen.Text("name", speech.Title);
            pen.Instant("made", handout.Made);
            pen.Texts("cautions", speech.Words.Cautions);
            pen.List("features", Features(handout, speech), write => write(pen));
        });
        return pen.Finish();
    }

    private static IEnumerable<Action<JsonPen>> Features(FarmHandout handout, HandoutSpeech speech)
    {
        foreach (var field in handout.Fields)
        {
            yield return pen => Feature(pen, "field", () => GeometryWriting.Write(pen, "geometry", HandoutRings.Turned(field.Land)), () =>
            {
                pen.Text("field", field.Field.Code);
                pen.Text("name", field.Field.Name);
                pen.Number("net_ac", field.Field.Net.Acres);
                pen.Number("drawn_ac", field.Drawn.Acres);
                pen.Number("rate_dry_lb_ac", field.Dry?.PoundsPerAcre);
                pen.Number("rate_wet_lb_ac", field.Soaked?.PoundsPerAcre);
                pen.Number("swath_ft", field.Swath.Feet);
            });
            foreach (var pass in field.Passes)
            {
                yield return pen => Feature(pen, "pass", () => Lines(pen, pass.Open.Select(s => (ImmutableArray<GeoPoint>)[s.From, s.To])), () =>
                {
                    pen.Text("field", field.Field.Code);
                    pen.Number("pass", pass.Number);
                    pen.Number("heading_deg", pass.Heading.Degrees);
                });
            }

            foreach (var run in field.Flown)
            {
                yield return pen => Feature(pen, "flown", () => Lines(pen, [[.. run.Fixes.Select(f => f.At)]]), () =>
                {
                    pen.Text("field", field.Field.Code);
                    pen.Number("pass", run.Pass);
                    pen.Instant("from", run.Fixes[0].Time);
                    pen.Instant("until", run.Fixes[^1].Time);
                    pen.Flag("gate_inferred", run.GateInferred);
                });
            }
        }

        foreach (var hazard in handout.Hazards)
        {
            yield return pen => Feature(pen, "hazard", () => Place(pen, hazard.Points), () =>
            {
                pen.Text("hazard", Farms.Words.Hazards.Of(hazard.Kind));
                pen.Text("name", hazard.Name);
                pen.Number("height_ft", hazard.Height?.Feet);
                pen.Day("confirmed", hazard.Confirmed);
                pen.Text("about", speech.About(hazard));
            });
        }

        foreach (var strip in handout.Strips)
            yield return pen => Feature(pen, "strip", () => Place(pen, [strip.At!.Value]), () => pen.Text("name", strip.Name));
    }

    private static void Feature(JsonPen pen, string kind, Action geometry, Action properties) => pen.Thing(null, () =>
    {
        pen.Text("type", "Feature");
        geometry();
        pen.Thing("properties", () =>
        {
            pen.Text("kind", kind);
            properties();
        });
    });

    private static void Lines(JsonPen pen, IEnumerable<ImmutableArray<GeoPoint>> lines) => pen.Thing("geometry", () =>
    {
        ImmutableArray<ImmutableArray<GeoPoint>> all = [.. lines];
        var single = all.Length == 1;
        pen.Text("type", single ? "LineString" : "MultiLineString");
        if (single) pen.List("coordinates", all[0], at => Position(pen, null, at));
        else pen.List("coordinates", all, line => pen.List(null, line, at => Position(pen, null, at)));
    });

    private static void Place(JsonPen pen, ImmutableArray<GeoPoint> points)
    {
        if (points.Length > 1)
        {
            Lines(pen, [points]);
            return;
        }

        pen.Thing("geometry", () =>
        {
            pen.Text("type", "Point");
            Position(pen, "coordinates", points[0]);
        });
    }

    private static void Position(JsonPen pen, string? key, GeoPoint at) => pen.List(key, [at.Longitude, at.Latitude], pen.Bare);
}
