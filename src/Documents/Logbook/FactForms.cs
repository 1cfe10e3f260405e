using Watersown.Season;

namespace Watersown.Documents.Logbooks;

/// <summary>Every kind of fact that this desk knows.</summary>
internal static class FactForms
{
    public static ImmutableArray<FactForm> All { get; } =
        [.. WaterForms.All, .. DitchForms.All, .. HoldForms.All, .. LandForms.All, .. SeedForms.All, .. FlightForms.All, .. FlownForms.All, .. WeatherForms.All, .. DayForms.All, .. FeedForms.All, .. TalkForms.All, .. HarvestForms.All, .. CostForms.All];

    private static readonly ImmutableDictionary<string, FactForm> byKind = All.ToImmutableDictionary(f => f.Kind, StringComparer.Ordinal);

    private static readonly ImmutableDictionary<Type, FactForm> byType = All.ToImmutableDictionary(f => f.Type);

    public static FactForm? Find(string kind) => byKind.GetValueOrDefault(kind);

    public static FactForm Of(MarkFact fact) => byType[fact.GetType()];
}
