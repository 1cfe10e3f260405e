using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Farms;

/// <summary>What there is: farm, soils, sources, strips, hazards.</summary>
internal static class GroundReading
{
    public static Farm Farm(JsonFacts facts, ImmutableArray<string> codes, DateTimeOffset now) => new()
    {
        Name = facts.Text("name") ?? string.Empty,
        TimeZone = facts.Text("time_zone") ?? string.Empty,
        SeasonYear = facts.Whole("season_year") ?? now.Year,
        Units = Words.Units.Find(facts.Text("units")) ?? UnitSystem.UsCustomary,
        Language = Words.Languages.Find(facts.Text("language")) ?? Language.English,
        FinalPlanting = facts.Day("final_planting"),
        Fields = [.. facts.Entries("fields").Select((f, i) => FieldReading.Ground(f, codes[i]))],
        Soils = [.. facts.Entries("soils").Select(Soil)],
        Sources = [.. facts.Entries("sources").Select(Source)],
        SharedCaps = [.. facts.Entries("shared_caps").Select(SharedCap)],
        Strips = [.. facts.Entries("strips").Select(Strip)],
        Hazards = [.. facts.Entries("hazards").Select(Hazard)],
    };

    private static Soil Soil(JsonFacts facts) => new(
        facts.Text("code") ?? string.Empty,
        facts.Text("name") ?? string.Empty,
        WaterDepth.FromFeet(facts.Number(LandLimits.Fill) ?? 0),
        DepthRate.FromInchesPerDay(facts.Number(LandLimits.Seepage) ?? 0))
    {
        LearnedFrom = facts.Whole(LandLimits.LearnedFrom.Key) ?? 0,
    };

    private static WaterSource Source(JsonFacts facts)
    {
        return new WaterSource(facts.Text("code") ?? string.Empty, Words.Sources.Find(facts.Text("kind")) ?? default, Cap(facts))
        {
            Name = facts.Text("name"),
            Notice = facts.Hours(LandLimits.Notice) ?? TimeSpan.Zero,
            ChangeHours = [.. facts.Entries("change_hours").Select(h => JsonFacts.HourOf(h.Element) ?? default)],
            MinStep = Flow(facts, LandLimits.MinStep),
            Running = Flow(facts, LandLimits.Running),
            Down = facts.Flag("down") ?? false,
            Needs = facts.Thing("needs_full") is { } needs ? new TailwaterNeed(needs.Texts("fields"), Area.FromAcres(needs.Number(LandLimits.NeedsFull) ?? 0)) : null,
        };
    }

    private static FlowRate Cap(JsonFacts facts) =>
        Flow(facts, LandLimits.Cap) ?? (facts.Number(LandLimits.CapGallons) is { } gallons ? FlowRate.FromGallonsPerMinute(gallons) : FlowRate.Zero);

    internal static FlowRate? Flow(JsonFacts facts, Limit limit) => facts.Number(limit) is { } cfs ? FlowRate.FromCubicFeetPerSecond(cfs) : null;

    private static SharedCap SharedCap(JsonFacts facts) =>
        new(facts.Text("name") ?? string.Empty, facts.Texts("sources"), Flow(facts, LandLimits.Cap) ?? FlowRate.Zero);

    private static Strip Strip(JsonFacts facts) => new(facts.Text("name") ?? string.Empty, facts.Whole("pad_trailers") ?? 1)
    {
        At = PartReader.Point(facts.Thing("at")),
        RunwayLength = facts.Number(LandLimits.Runway) is { } feet ? Length.FromFeet(feet) : null,
    };

    private static Hazard Hazard(JsonFacts facts) => new(Words.Hazards.Find(facts.Text("kind")) ?? HazardKind.Other, facts.Text("name") ?? string.Empty)
    {
        Points = [.. facts.Entries("points").Select(p => PartReader.Point(p)).OfType<GeoPoint>()],
        Height = facts.Number(LandLimits.HazardHeight) is { } feet ? Length.FromFeet(feet) : null,
        Confirmed = facts.Day("confirmed"),
        Near = facts.Texts("near"),
        Note = facts.Text("note"),
    };
}
