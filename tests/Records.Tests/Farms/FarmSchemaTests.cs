using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;

namespace Watersown.Farms;

public sealed class FarmSchemaTests
{
    private static readonly string file = Path.Combine(ReferenceFile.RepositoryRoot, "docs", "schema", "farm.schema.json");

    private static readonly Lazy<JsonSchema> schema = new(() => JsonSchema.FromText(File.ReadAllText(file)));

    [Fact]
    public void The_published_schema_is_the_one_the_reader_works_by()
    {
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1") File.WriteAllText(file, FarmSchema.Write());
        Assert.Equal(FarmSchema.Write(), File.ReadAllText(file));
    }

    [Fact]
    public void The_schema_is_a_schema() =>
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(File.ReadAllText(file)).RootElement).IsValid);

    [Fact]
    public void Marrowfen_is_valid() =>
        Assert.True(IsValid(JsonNode.Parse(File.ReadAllText(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")))!));

    [Theory]
    [InlineData("watersown_farm", "2")]
    [InlineData("name", "7")]
    [InlineData("season_year", "1989")]
    [InlineData("season_year", "2026.5")]
    [InlineData("final_planting", "\"1 June\"")]
    [InlineData("now", "\"2026-05-08T25:00\"")]
    [InlineData("wet_factor", "0.9")]
    [InlineData("units", "\"imperial\"")]
    [InlineData("fields", "{}")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 0, "rate_dry_lb_ac": 150 } ]""")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 10, "rate_dry_lb_ac": 150, "checks": 0 } ]""")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 10, "rate_dry_lb_ac": 150, "checks": [ { "ac": "5" } ] } ]""")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 10, "rate_dry_lb_ac": 150, "stage": "wet" } ]""")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 10, "rate_dry_lb_ac": 150, "work_left": ["weld"] } ]""")]
    [InlineData("fields", """[ { "name": "A", "net_ac": 10, "rate_dry_lb_ac": 150, "boundary": { "type": "Point", "coordinates": [0, 0] } } ]""")]
    [InlineData("sources", """[ { "code": "W-1", "kind": "well" } ]""")]
    [InlineData("sources", """[ { "code": "W-1", "kind": "well", "cap_cfs": 4, "cap_gpm": 1800 } ]""")]
    [InlineData("sources", """[ { "code": "W-1", "kind": "spring", "cap_cfs": 4 } ]""")]
    [InlineData("slots", """[ { "day": "2026-05-09", "from": "24:30", "until": "10:00" } ]""")]
    [InlineData("strips", """[ { "name": "Elbow", "pad_trailers": 2, "at": { "lat_deg": 91, "lon_deg": 0 } } ]""")]
    public void What_the_reader_refuses_the_schema_refuses(string key, string json)
    {
        var farm = SmallFarm.Json;
        farm[key] = JsonNode.Parse(json);
        Assert.False(IsValid(farm));
        Assert.True(SmallFarm.Read(farm.ToJsonString()).IsRefused);
    }

    [Fact]
    public void Every_thing_of_the_schema_has_the_keys_the_reader_knows_and_needs()
    {
        var root = JsonNode.Parse(File.ReadAllText(file))!;
        foreach (var thing in OutlineSchema.Things(FarmOutline.Root))
        {
            var said = thing.Name == "farm" ? root : root["$defs"]![thing.Name.Replace(' ', '-')]!;
            Assert.Equal(Names(thing.Keys.Select(k => k.Name)), Names(said["properties"]!.AsObject().Select(p => p.Key)));
            Assert.Equal(Names(thing.Keys.Where(k => k.Required).Select(k => k.Name)), Names(said["required"]?.AsArray().Select(n => n!.GetValue<string>()) ?? []));
            Assert.False(said["additionalProperties"]!.GetValue<bool>());
        }
    }

    [Fact]
    public void Reader_and_schema_agree_on_every_required_and_every_unknown_key_everywhere()
    {
        var full = FullFarm.Json();
        Assert.True(IsValid(full));
        Assert.Empty(Refused(full));
        var walked = 0;
        foreach (var (path, thing) in FullFarm.Walk(FarmOutline.Root, []))
        {
            var stranger = full.DeepClone();
            FullFarm.At(stranger, path).AsObject()["zzz"] = 1;
            Assert.False(IsValid(stranger));
            Assert.Contains("DOC-008", SmallFarm.Said(SmallFarm.Read(stranger.ToJsonString())), StringComparison.Ordinal);
            foreach (var key in thing.Keys.Where(k => k.Name != FarmOutline.VersionKey))
            {
                var without = full.DeepClone();
                Assert.True(FullFarm.At(without, path).AsObject().Remove(key.Name) || thing.ExactlyOne.Contains(key.Name, StringComparer.Ordinal));
                var needed = key.Required || thing.ExactlyOne.FirstOrDefault() == key.Name;
                Assert.Equal(!needed, IsValid(without));
                Assert.Equal(needed, Refused(without).Any());
                walked++;
            }
        }

        Assert.True(walked > 150, $"only {walked} keys were walked");
    }

    private static bool IsValid(JsonNode document) => schema.Value.Evaluate(JsonSerializer.SerializeToElement(document)).IsValid;

    /// <summary>What the reader refuses for its form; what things mean together is another matter.</summary>
    private static IEnumerable<string> Refused(JsonNode document) =>
        SmallFarm.Read(document.ToJsonString()).Refusals.Select(p => p.Kind.Code + " " + p.Where).Where(p => p.StartsWith("DOC", StringComparison.Ordinal) || p.StartsWith("LIMIT", StringComparison.Ordinal) || p.StartsWith("LAND-1", StringComparison.Ordinal));

    private static string Names(IEnumerable<string> names) => string.Join(' ', names.Order(StringComparer.Ordinal));
}
