using System.Text.Json.Nodes;
using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

/// <summary>Real polygons that nobody here drew (their provenance: tests/Reference/fields/SOURCE.md), from file to plan.</summary>
public sealed class RealFieldsTests
{
    [Fact]
    public async Task Twenty_real_fields_become_a_farm_and_a_plan()
    {
        var folder = Directory.CreateTempSubdirectory("watersown-");
        try
        {
            var file = Path.Combine(folder.FullName, "fields.geojson");
            var polygons = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(ReferenceFile.RepositoryRoot, "tests", "Reference", "fields", "us_ca_crop_mapping_2023.geojson")))!.AsObject();
            polygons["features"] = new JsonArray([.. polygons["features"]!.AsArray().Take(20).Select(f => f!.DeepClone())]);
            await File.WriteAllTextAsync(file, polygons.ToJsonString());
            var farm = Path.Combine(folder.FullName, "farm.json");
            var imported = await AsksAsync("import", "fields", file, "--rate", "150", "--out", farm);
            Assert.Equal((ExitCode.Done, string.Empty), (imported.Code, imported.Code == ExitCode.Done ? string.Empty : imported.Error));
            var planned = await AsksAsync("plan", farm, "--seconds", "1", "--json", "--quiet");
            Assert.Equal(ExitCode.Done, planned.Code);
            var plan = JsonNode.Parse(planned.Out)!;
            Assert.Equal(20, plan["tasks"]!.AsArray().Count(t => t!["task"]!.GetValue<string>() == "sow"));
            Assert.All(plan["tasks"]!.AsArray().Where(t => t!["task"]!.GetValue<string>() == "sow"), t => Assert.True(t!["wet_lb"]!.GetValue<double>() > t["dry_lb"]!.GetValue<double>()));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
