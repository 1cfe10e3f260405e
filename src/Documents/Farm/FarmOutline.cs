using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

/// <summary>What a farm document may hold: every key, its unit, its limits and what it means.</summary>
public static partial class FarmOutline
{
    /// <summary>The key that says what document it is, and its version.</summary>
    public const string VersionKey = "watersown_farm";

    public const int Version = 1;

    public static Outline.Thing Root { get; } = new("farm",
    [
        new("$schema", Text(), "where the schema of this document is, for an editor's sake"),
        Need(OutlineKey.Of(new Limit(VersionKey, string.Empty) { Least = 1, Most = Version, Whole = true }, "the version of the farm document")),
        Need("name", Text(), "the farm's name"),
        Need("time_zone", Text(), "the farm's time zone by its IANA name, such as America/Los_Angeles"),
        OutlineKey.Of(LandLimits.SeasonYear, "the year of the season; the year of now where not given"),
        new("units", new Outline.Word(Words.Units.All), "which units people see first"),
        new("language", new Outline.Word(Words.Languages.All), "the language of the screens"),
        new("final_planting", new Outline.Day(), "the final planting date of the farm's own policy"),
        new("now", new Outline.Moment(), "the moment the document was true; the moment of reading where not given"),
        new("horizon", new Outline.Day(), "the last day the plan looks at; 60 days from now or 30 June, whichever is later, where not given"),
        OutlineKey.Of(ScheduleLimits.PlanNumber, "the number the next plan carries"),
        OutlineKey.Of(SeedLimits.Anchoring, "how long seed lies loose after sowing, until roots hold; three days where not given"),
        OutlineKey.Of(WeatherLimits.Evaporation, "water lost to the air from a flooded field"),
        OutlineKey.Of(SeedLimits.WetFactor, "soaked weight over dry weight where a lot has none of its own"),
        new("boundaries", Text(), "name of a GeoJSON file beside this one, its features matched to the fields by code or name"),
        new("soils", new Outline.Several(Soil), "how the soils take and lose water"),
        new("sources", new Outline.Several(Source), "where water comes from"),
        new("shared_caps", new Outline.Several(SharedCap), "sources that together may not give more than one cap"),
        new("strips", new Outline.Several(Strip), "where the aeroplane loads"),
        new("hazards", new Outline.Several(Hazard), "what may be hit, hurt or spoilt near a pass"),
        new("hazards_keep", new Outline.Word(Words.HazardKeeps.All), "how long a look at a hazard holds; 12-months where not given"),
        Need("fields", new Outline.Several(Field, LandLimits.MaxFields), "the fields"),
        new("lots", new Outline.Several(Lot), "seed of one variety and one tag"),
        new("batches", new Outline.Several(Batch), "seed soaked together"),
        new("soak_place", SoakPlace, "who soaks the seed, and the rules of the house"),
        new("aeroplanes", new Outline.Several(Aeroplane), "the hired aeroplanes as the flying service described them"),
        new("flying_hours", Hours, "the flying service's hours on a day without a slot of its own"),
        new("slots", new Outline.Several(Slot), "dated slots of the flying service"),
        new("wind", new Outline.Several(Wind), "wind seen and forecast"),
        new("warmth", new Outline.Several(Warmth), "high and low of the days"),
        new("normals", Normals, "what days are like as a rule"),
        new("tractors", new Outline.Several(Tractor), "tractors by what they pull"),
        new("crew", Crew, "people who limit how much goes on at once"),
        new("prices", Prices, "what the farm says things cost"),
        new("pins", new Outline.Several(Pin), "steps that a person has fixed"),
        new("people", new Outline.Several(Person), "who is rung or handed a sheet"),
    ]);

    private static OutlineKey Need(string name, Outline value, string meaning) => new(name, value, meaning) { Required = true };

    private static OutlineKey Need(OutlineKey key) => key with { Required = true };

    private static Outline.Text Text() => new();

    private static Outline.Text Note() => new(4000);

    private static Outline.Several Codes() => new(Text());
}
