using System.Text.Json.Nodes;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;

namespace Watersown.Farms;

/// <summary>A document that has every key there is, made from the outline; its form is right, its meaning is not asked.</summary>
internal static class FullFarm
{
    public static JsonNode Json() => Sample(FarmOutline.Root)!;

    /// <summary>Every thing of the full document with its path; lists have one entry.</summary>
    public static IEnumerable<(object[] Path, Outline.Thing Thing)> Walk(Outline outline, object[] path)
    {
        switch (outline)
        {
            case Outline.Thing thing:
                yield return (path, thing);
                foreach (var key in thing.Keys)
                {
                    foreach (var below in Walk(key.Value, [.. path, key.Name])) yield return below;
                }

                break;
            case Outline.Several several:
                foreach (var below in Walk(several.Entry, [.. path, 0])) yield return below;
                break;
            case Outline.NumberOrSeveral either:
                foreach (var below in Walk(either.Many, path)) yield return below;
                break;
        }
    }

    public static JsonNode At(JsonNode node, object[] path) =>
        path.Aggregate(node, (at, step) => step is int index ? at[index]! : at[(string)step]!);

    private static JsonNode? Sample(Outline outline) => outline switch
    {
        Outline.Thing thing => new JsonObject(thing.Keys
            .Where(k => !thing.ExactlyOne.Skip(1).Contains(k.Name, StringComparer.Ordinal))
            .Select(k => KeyValuePair.Create(k.Name, Sample(k.Value)))),
        Outline.Several several => new JsonArray(Sample(several.Entry)),
        Outline.NumberOrSeveral either => Sample(either.Many),
        Outline.Number { Limit: { } limit } => Middle(limit),
        Outline.Text text => "word"[..Math.Min(4, text.Most)],
        Outline.Word word => word.Choices[0],
        Outline.Flag => true,
        Outline.Day => "2026-05-08",
        Outline.Moment => "2026-05-08T04:50",
        Outline.Hour => "07:00",
        Outline.Geometry => JsonNode.Parse("""{ "type": "Polygon", "coordinates": [ [ [0, 0], [0.01, 0], [0.01, 0.01], [0, 0] ] ] }"""),
        _ => throw new InvalidOperationException(),
    };

    private static double Middle(Limit limit)
    {
        var low = limit.UsualLeast ?? limit.Least ?? limit.Above ?? 0;
        var high = limit.UsualMost ?? limit.Most ?? (low + 2);
        return limit.Whole ? Math.Ceiling(low) : (low + high) / 2;
    }
}
