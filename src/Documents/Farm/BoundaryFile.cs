using System.Globalization;
using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>
/// The boundaries of a GeoJSON file (RFC 7946) with the code and name of each. What can be used is given even where other
/// features are broken; each of those is named.
/// </summary>
public static class BoundaryFile
{
    private const int MaxFeatures = 10_000;

    private static readonly ImmutableArray<string> codeKeys = ["code", "short_code", "field_code", "field"];

    private static readonly ImmutableArray<string> nameKeys = ["name", "field_name"];

    public static Outcome<ImmutableArray<NamedBoundary>> Read(ReadOnlyMemory<byte> bytes, string file)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<ImmutableArray<NamedBoundary>>.Refuse(text.Problems.Select(p => p with { Where = p.Where.Length == 0 ? file : file + " " + p.Where }));
        using var document = text.Value;
        if (Features(document.RootElement) is not { } features)
            return Outcome<ImmutableArray<NamedBoundary>>.Refuse(FarmProblems.NotFeatures.At(file));
        var problems = ImmutableArray.CreateBuilder<Problem>();
        var found = ImmutableArray.CreateBuilder<NamedBoundary>();
        var index = -1;
        foreach (var feature in features.Take(MaxFeatures))
        {
            index++;
            var facts = new JsonFacts(feature);
            var (code, name) = (Property(facts, codeKeys), Property(facts, nameKeys));
            var path = string.Create(CultureInfo.InvariantCulture, $"{file} features[{index}]");
            var read = BoundaryReading.Read(JsonFacts.DatumOf(feature), Place.Named(path, name.Length > 0 ? name : code));
            problems.AddRange(read.Problems);
            if (read.HasValue) found.Add(new NamedBoundary(code, name, read.Value));
        }

        return Outcome<ImmutableArray<NamedBoundary>>.Of(found.ToImmutable(), problems);
    }

    private static IEnumerable<JsonElement>? Features(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("type", out var type) || type.ValueKind != JsonValueKind.String) return null;
        return type.GetString() switch
        {
            "Feature" => [root],
            "FeatureCollection" when root.TryGetProperty("features", out var list) && list.ValueKind == JsonValueKind.Array => list.EnumerateArray(),
            _ => null,
        };
    }

    /// <summary>The first property under one of the keys, written large or small.</summary>
    private static string Property(JsonFacts feature, ImmutableArray<string> keys)
    {
        if (feature.Thing("properties") is not { } properties) return string.Empty;
        foreach (var key in keys)
        {
            foreach (var property in properties.Element.EnumerateObject())
            {
                if (string.Equals(property.Name, key, StringComparison.OrdinalIgnoreCase) && property.Value.ValueKind == JsonValueKind.String)
                    return property.Value.GetString()!.Trim();
            }
        }

        return string.Empty;
    }
}
