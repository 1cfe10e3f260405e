using System.Text;
using System.Text.Json.Nodes;
using Watersown.Documents.Farms;
using Watersown.Schedule;

namespace Watersown.Farms;

/// <summary>The smallest useful farm, for tests that change one thing of it.</summary>
internal static class SmallFarm
{
    public static readonly FarmContext Context = new(new DateTimeOffset(2026, 5, 8, 11, 50, 0, TimeSpan.Zero));

    private const string Text = """
        {
          "watersown_farm": 1, "name": "Small", "time_zone": "America/Los_Angeles", "now": "2026-05-08T04:50",
          "fields": [
            { "code": "TG", "name": "Two Gates", "net_ac": 118, "rate_dry_lb_ac": 150, "stage": "full" },
            { "code": "SO", "name": "Split Oak", "net_ac": 156, "rate_dry_lb_ac": 150, "stage": "rolled" }
          ]
        }
        """;

    public static JsonObject Json => JsonNode.Parse(Text)!.AsObject();

    public static Outcome<SeasonState> Read(string text) => FarmReading.Read(Encoding.UTF8.GetBytes(text), Context);

    /// <summary>The farm with something of it changed.</summary>
    public static Outcome<SeasonState> With(Action<JsonObject> change)
    {
        var farm = Json;
        change(farm);
        return Read(farm.ToJsonString());
    }

    /// <summary>With one key of the first field set, as JSON.</summary>
    public static Outcome<SeasonState> WithField(string key, string json) => With(f => f["fields"]![0]![key] = JsonNode.Parse(json));

    /// <summary>With one key of the document set, as JSON.</summary>
    public static Outcome<SeasonState> WithKey(string key, string json) => With(f => f[key] = JsonNode.Parse(json));

    /// <summary>Every problem as "CODE place", in order of code, one a line.</summary>
    public static string Said<T>(Outcome<T> outcome)
        where T : notnull => string.Join('\n', outcome.Problems.Select(p => p.Kind.Code + " " + p.Where).Order(StringComparer.Ordinal));
}
