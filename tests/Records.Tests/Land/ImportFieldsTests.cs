using System.Text.Json;
using System.Text.Json.Nodes;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;

namespace Watersown.Records.Land;

public sealed class ImportFieldsTests : IDisposable
{
    private static readonly ImportFieldsOptions Options = new("Crops", "America/Los_Angeles", SeedRate.FromPoundsPerAcre(150)) { Clock = new DateTimeOffset(2026, 5, 8, 12, 0, 0, TimeSpan.Zero) };

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    public void Dispose() => folder.Delete(recursive: true);

    /// <summary>The twenty largest of the real fields, as a file of their own.</summary>
    private string Twenty()
    {
        var all = JsonNode.Parse(File.ReadAllBytes(ReferenceFile.PathOf("fields", "us_ca_crop_mapping_2023.geojson")))!;
        var largest = all["features"]!.AsArray().OrderByDescending(f => f!["properties"]!["ACRES"]!.GetValue<double>()).Take(20).Select(f => f!.DeepClone()).ToArray();
        var path = Path.Combine(folder.FullName, "twenty.geojson");
        File.WriteAllText(path, new JsonObject { ["type"] = "FeatureCollection", ["features"] = new JsonArray(largest) }.ToJsonString());
        return path;
    }

    [Fact]
    public void Twenty_real_fields_become_a_farm_that_opens_again()
    {
        var run = ImportFields.Run(Twenty(), Options);
        Assert.Empty(run.Refusals);
        Assert.Equal(20, run.Value.State.Farm.Fields.Length);
        Assert.Equal(20, run.Value.State.Farm.Fields.Select(f => f.Code).Distinct(StringComparer.Ordinal).Count());

        var path = Path.Combine(folder.FullName, "farm.json");
        File.WriteAllBytes(path, run.Value.Document.ToArray());
        var again = OpenFarm.Run(path);
        Assert.Empty(again.Refusals);
        var told = MapFile.Open(Twenty()).Value;
        foreach (var (field, boundary) in again.Value.Farm.Fields.Zip(told))
        {
            Assert.Equal(boundary["id"], field.Name);
            Assert.Equal(double.Parse(boundary["ACRES"], System.Globalization.CultureInfo.InvariantCulture), field.Gross!.Value.Acres, 0.02);
            Assert.Equal(GeodesicArea.Of(field.Boundary!).Acres, field.Gross!.Value.Acres, 0.0051);
            Assert.Equal(5, field.Basins.Length);
            Assert.Equal(150, again.Value.Season(field.Code).Rate.PoundsPerAcre, 1e-9);
        }
    }

    [Fact]
    public void The_checks_and_the_code_of_the_file_are_taken_where_it_has_them()
    {
        var path = Path.Combine(folder.FullName, "two.geojson");
        const string Ring = "[[[-122,39],[-121.99,39],[-121.99,39.01],[-122,39.01],[-122,39]]]";
        string Feature(string properties) => "{\"type\":\"Feature\",\"properties\":" + properties + ",\"geometry\":{\"type\":\"Polygon\",\"coordinates\":" + Ring + "}}";
        File.WriteAllText(path, "{\"type\":\"FeatureCollection\",\"features\":[" + Feature("""{"code":"N4","name":"Two Gates","checks":7}""") + "," + Feature("{}") + "]}");
        var fields = ImportFields.Run(path, Options with { Checks = 3 }).Value.State.Farm.Fields;
        Assert.Equal(["N4", "F2"], fields.Select(f => f.Code));
        Assert.Equal(["Two Gates", "Field 2"], fields.Select(f => f.Name));
        Assert.Equal([7, 3], fields.Select(f => f.Basins.Length));
    }

    [Fact]
    public void Fields_of_the_same_name_are_refused_by_name()
    {
        var path = Path.Combine(folder.FullName, "same.geojson");
        var feature = JsonNode.Parse("""{"type":"Feature","properties":{"name":"Two Gates"},"geometry":{"type":"Polygon","coordinates":[[[-122,39],[-121.99,39],[-121.99,39.01],[-122,39.01],[-122,39]]]}}""")!;
        File.WriteAllText(path, new JsonObject { ["type"] = "FeatureCollection", ["features"] = new JsonArray(feature.DeepClone(), feature) }.ToJsonString(JsonSerializerOptions.Web));
        var run = ImportFields.Run(path, Options);
        Assert.Contains(run.Refusals, p => p.Kind == LandProblems.NameTwice);
    }
}
