using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Farms;

/// <summary>What there is: farm, soils, sources, strips, hazards.</summary>
internal static class GroundReading
{
    public static Farm Farm(JsonFacts facts, ImmutableArray<string> codes, DateTimeOffset now, PartReader reader) => new()
    {
        Name = facts.Text("name") ?? string.Empty,
        TimeZone = facts.Text("time_zone") ?? string.Empty,
        SeasonYear = facts.Whole("season_year") ?? now.Year,
        Units = Words.Units.Find(facts.Text("units")) ?? UnitSystem.UsCustomary,
        Language = Words.Languages.Find(facts.Text("language")) ?? Language.English,
        FinalPlanting = facts.Day("final_planting"),
        Fields = [.. facts.Entries("fields").Select((f, i) => FieldReading.Ground(f, codes[i]))],
        Soils = [.. facts.Entries("soils").Select(Soil)],
        Sources = [.. facts.Entries("sources").Select((s, i) => Source(s, i, reader))],
        SharedCaps = [.. facts.Entries("shared_caps").Select(SharedCap)],
        Strips = [.. facts.Entries("strips").Select(Strip)],
        Hazards = [.. facts.Entries("hazards").Select(Hazard)],
        HazardsKeep = Words.HazardKeeps.Find(facts.Text("hazards_keep")) ?? HazardKeep.TwelveMonths,
    };

    private static Soil Soil(JsonFacts facts) => new(
        facts.Text("code") ?? string.Empty,
        facts.Text("name") ?? string.Empty,
        WaterDepth.FromFeet(facts.Number(LandLimits.Fill) ?? 0),
        DepthRate.FromInchesPerDay(facts.Number(LandLimits.Seepage) ?? 0))
    {
        LearnedFrom = facts.Whole(LandLimits.LearnedFrom.Key) ?? 0,
    };

    private static WaterSource Source(JsonFacts facts, int index, PartReader reader)
    {
        var code = facts.Text("code") ?? string.Empty;
        return new WaterSource(code, Words.Sources.Find(facts.Text("kind")) ?? default, Cap(facts))
        {
            Name = facts.Text("name"),
            Notice = facts.Hours(LandLimits.Notice) ?? TimeSpan.Zero,
            ChangeHours = [.. facts.Entries("change_hours").Select(h => JsonFacts.HourOf(h.Element) ?? default)],
            MinStep = Flow(facts, LandLimits.MinStep),
            Running = Flow(facts, LandLimits.Running),
            Down = facts.Flag("down") ?? false,
            Turns = facts.Thing("turns") is { } turns ? Turns(turns, Place.Of("sources", index, code, "turns.from"), reader) : null,
            Curtailments = [.. facts.Entries("curtailed").Select(c => Curtailment(c, Place.Of("sources", index, code, "curtailed"), reader)).OfType<Curtailment>()],
            Needs = facts.Thing("needs_full") is { } needs ? new TailwaterNeed(needs.Texts("fields"), Area.FromAcres(needs.Number(LandLimits.NeedsFull) ?? 0)) : null,
        };
    }

    // What could not be read has been said; without all of it there are no turns to reckon with.
    private static SourceTurns? Turns(JsonFacts facts, string where, PartReader reader) =>
        reader.Moment(facts, "from", where) is { } from && facts.Hours(LandLimits.TurnOn) is { Ticks: > 0 } on && facts.Hours(LandLimits.TurnEvery) is { Ticks: > 0 } every
            ? new SourceTurns(from, on, every) { Flow = Flow(facts, LandLimits.TurnFlow) }
            : null;

    private static Curtailment? Curtailment(JsonFacts facts, string where, PartReader reader) => reader.Moment(facts, "from", where + ".from") is { } from
        ? new Curtailment(from)
        {
            Until = reader.Moment(facts, "until", where + ".until"),
            Flow = Flow(facts, LandLimits.Left),
            Share = facts.Number(LandLimits.LeftShare) is { } percent ? Fraction.FromPercent(percent) : null,
        }
        : null;

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
        Height = Feet(facts, LandLimits.HazardHeight),
        Confirmed = facts.Day("confirmed"),
        Near = facts.Texts("near"),
        Note = facts.Text("note"),
        Listing = facts.Thing("listed") is { } listed && listed.Day("file_of") is { } day ? Listing(listed, day) : null,
    };

    private static HazardListing Listing(JsonFacts facts, DateOnly day) => new(facts.Text("id") ?? string.Empty, day)
    {
        Verified = facts.Flag("verified") ?? false,
        Within = Feet(facts, LandLimits.HazardWithin),
        HeightWithin = Feet(facts, LandLimits.HazardHeightWithin),
        Top = Feet(facts, LandLimits.HazardTop),
        Light = Words.Lights.Find(facts.Text("light")) ?? HazardLight.Unknown,
        Marking = Words.Markings.Find(facts.Text("marking")) ?? HazardMarking.Unknown,
        Count = facts.Whole(LandLimits.HazardCount.Key) ?? 1,
        TakenDown = facts.Flag("taken_down") ?? false,
        Changed = facts.Day("changed"),
    };

    private static Length? Feet(JsonFacts facts, Limit limit) => facts.Number(limit) is { } feet ? Length.FromFeet(feet) : null;
}
