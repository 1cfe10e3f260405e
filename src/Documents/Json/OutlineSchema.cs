using System.Text;

namespace Watersown.Documents.Json;

/// <summary>The same outline as a JSON Schema (draft 2020-12), for editors and for other people's programs.</summary>
public static class OutlineSchema
{
    /// <summary>The schema as text.</summary>
    /// <param name="root">The document.</param>
    /// <param name="title">Its title.</param>
    /// <param name="description">What it is, in a sentence.</param>
    public static string Write(Outline.Thing root, string title, string description)
    {
        using var pen = new JsonPen();
        var things = Collect(root, []);
        pen.Thing(null, () =>
        {
            pen.Text("$schema", "https://json-schema.org/draft/2020-12/schema");
            pen.Text("title", title);
            pen.Text("description", description);
            Body(pen, root);
            pen.Thing("$defs", () =>
            {
                foreach (var thing in things.Where(t => t.Name != root.Name)) pen.Thing(Id(thing), () => Body(pen, thing));
                pen.Thing("boundary", () => Geometry(pen));
            });
        });
        return Encoding.UTF8.GetString(pen.Finish().Span);
    }

    /// <summary>Every thing below and with the root, each once, outermost first.</summary>
    public static ImmutableArray<Outline.Thing> Things(Outline.Thing root) => [.. Collect(root, [])];

    private static List<Outline.Thing> Collect(Outline outline, List<Outline.Thing> found)
    {
        switch (outline)
        {
            case Outline.Thing thing when found.All(t => t.Name != thing.Name):
                found.Add(thing);
                foreach (var key in thing.Keys) Collect(key.Value, found);
                break;
            case Outline.Several several:
                Collect(several.Entry, found);
                break;
            case Outline.NumberOrSeveral either:
                Collect(either.Many, found);
                break;
        }

        return found;
    }

    private static string Id(Outline.Thing thing) => thing.Name.Replace(' ', '-');

    private static void Body(JsonPen pen, Outline.Thing thing)
    {
        pen.Text("type", "object");
        pen.Texts("required", [.. thing.Keys.Where(k => k.Required).Select(k => k.Name)]);
        if (!thing.ExactlyOne.IsEmpty) pen.Things("oneOf", thing.ExactlyOne, key => pen.Texts("required", [key]));
        pen.No("additionalProperties");
        pen.Thing("properties", () =>
        {
            foreach (var key in thing.Keys)
            {
                pen.Thing(key.Name, () =>
                {
                    pen.Text("description", Description(key));
                    Value(pen, key.Value);
                });
            }
        });
    }

    private static string Description(OutlineKey key)
    {
        var unit = key.Value is Outline.Number { Limit.Unit: { Length: > 0 } said } ? ", " + said : string.Empty;
        return char.ToUpperInvariant(key.Meaning[0]) + key.Meaning[1..] + unit + ".";
    }

    private static void Value(JsonPen pen, Outline outline)
    {
        switch (outline)
        {
            case Outline.Thing thing:
                pen.Text("$ref", "#/$defs/" + Id(thing));
                break;
            case Outline.Geometry:
                pen.Text("$ref", "#/$defs/boundary");
                break;
            case Outline.NumberOrSeveral either:
                pen.Things("anyOf", [either.One, either.Many], (Outline one) => Value(pen, one));
                break;
            case Outline.Several several:
                pen.Text("type", "array");
                pen.Number("maxItems", several.Most);
                pen.Thing("items", () => Value(pen, several.Entry));
                break;
            case Outline.Number { Limit: { } limit }:
                Number(pen, limit);
                break;
            case Outline.Word word:
                pen.Texts("enum", word.Choices);
                break;
            case Outline.Flag:
                pen.Text("type", "boolean");
                break;
            case Outline.Anything:
                break;
            default:
                Text(pen, outline);
                break;
        }
    }

    private static void Number(JsonPen pen, Limit limit)
    {
        pen.Text("type", limit.Whole ? "integer" : "number");
        pen.Number("exclusiveMinimum", limit.Above);
        if (limit.Above is null) pen.Number("minimum", limit.Least ?? -JsonFacts.MaxNumber);
        pen.Number("maximum", limit.Most ?? JsonFacts.MaxNumber);
    }

    private static void Text(JsonPen pen, Outline outline)
    {
        pen.Text("type", "string");
        if (outline is Outline.Text text) pen.Number("maxLength", text.Most);
        pen.Text("pattern", outline switch
        {
            Outline.Text { MayBeEmpty: true } => null,
            Outline.Text => "\\S",
            Outline.Day => "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
            Outline.Hour => "^([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?$",
            Outline.Moment => "^[0-9]{4}-[0-9]{2}-[0-9]{2}([T ]([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?(Z|[+-][0-9]{2}:[0-9]{2})?)?$",
            Outline.Instant => "^[0-9]{4}-[0-9]{2}-[0-9]{2}T([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9](\\.[0-9]{1,7})?)?(Z|[+-][0-9]{2}:[0-9]{2})$",
            _ => throw new System.Diagnostics.UnreachableException(),
        });
    }

    private static void Geometry(JsonPen pen)
    {
        pen.Text("description", "A GeoJSON Polygon or MultiPolygon, longitude before latitude, WGS 84.");
        pen.Text("type", "object");
        pen.Texts("required", ["type", "coordinates"]);
        pen.Things("anyOf", [("Polygon", 1), ("MultiPolygon", 2)], ((string Type, int Depth) sort) => pen.Thing("properties", () =>
        {
            pen.Thing("type", () => pen.Texts("enum", [sort.Type]));
            pen.Thing("coordinates", () => Nested(pen, sort.Depth));
        }));
    }

    /// <summary>A ring inside as many lists as the geometry needs.</summary>
    private static void Nested(JsonPen pen, int depth)
    {
        pen.Text("type", "array");
        pen.Number("minItems", depth == 0 ? 3 : 1);
        pen.Thing("items", () =>
        {
            if (depth > 0)
            {
                Nested(pen, depth - 1);
                return;
            }

            pen.Text("type", "array");
            pen.Number("minItems", 2);
            pen.Thing("items", () => pen.Text("type", "number"));
        });
    }
}
