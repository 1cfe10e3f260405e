using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Watersown.Documents.Plan;
using Watersown.Records.Land;
using Watersown.Schedule;

namespace Watersown.Records.Schedule;

public sealed class PlanDocumentTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(ReferenceFile.RepositoryRoot, "docs", "plan.schema.json")));

    private static readonly Lazy<SeasonPlan> Plan = new(() => PlanSeason.Run(
        OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value,
        new PlanOptions { Budget = TimeSpan.FromSeconds(0.5) }));

    [Fact]
    public void A_plan_on_the_wire_is_as_its_schema_says()
    {
        using var document = JsonDocument.Parse(PlanDocument.Write(Plan.Value));
        var result = Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("; ", (result.Details ?? []).Where(d => d.Errors is not null).Select(d => d.InstanceLocation + " " + string.Join(",", d.Errors!.Values))));
    }

    [Theory]
    [InlineData("objective")]
    [InlineData("tasks")]
    [InlineData("decisions")]
    public void The_schema_wants_every_part(string part)
    {
        var node = JsonNode.Parse(PlanDocument.Write(Plan.Value))!.AsObject();
        node.Remove(part);
        using var document = JsonDocument.Parse(node.ToJsonString());
        Assert.False(Schema.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Objective_is_the_sum_of_its_parts_and_the_gap_follows_from_the_bound()
    {
        var root = JsonNode.Parse(PlanDocument.Write(Plan.Value))!;
        var parts = root["cost"]!.AsObject().Sum(p => p.Value!.GetValue<decimal>());
        var objective = root["objective"]!.GetValue<decimal>();
        Assert.Equal(parts, objective);
        Assert.Equal((double)((objective - root["bound"]!.GetValue<decimal>()) / objective) * 100, root["gap_pct"]!.GetValue<double>(), 0.001);
    }
}
