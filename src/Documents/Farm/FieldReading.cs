using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Documents.Farms;

/// <summary>One field: its ground, and how far its season has come.</summary>
internal static class FieldReading
{
    /// <summary>Keys that tell how far a field has come.</summary>
    internal static ImmutableArray<string> Telling { get; } = ["stage", "sown_at", "full_since", "first_water", "checks_wet", "aqua_on"];

    /// <summary>Codes of all fields in order, made from the name where the farm gave none.</summary>
    public static ImmutableArray<string> Codes(JsonFacts farm)
    {
        var fields = farm.Entries("fields").ToList();
        var nameless = fields.Where(f => f.Text("code") is null).ToList();
        var made = ShortCodes.For(nameless.Select(f => f.Text("name") ?? string.Empty), fields.Select(f => f.Text("code")).OfType<string>());
        var next = 0;
        return [.. fields.Select(f => f.Text("code") ?? made[next++])];
    }

    public static Field Ground(JsonFacts facts, string code)
    {
        var net = Acres(facts, LandLimits.Net) ?? Area.Zero;
        return new Field
        {
            Code = code,
            Name = facts.Text("name") ?? string.Empty,
            Net = net,
            Gross = Acres(facts, LandLimits.Gross),
            Certified = Acres(facts, LandLimits.Certified),
            Boundary = Boundary(facts),
            Center = PartReader.Point(facts.Thing("center")),
            Ferry = facts.Number(LandLimits.Ferry) is { } miles ? Length.FromMiles(miles) : null,
            LongAxis = facts.Number(LandLimits.LongAxis) is { } degrees ? Bearing.FromDegrees(degrees) : null,
            PassLength = facts.Number(LandLimits.PassLength) is { } feet ? Length.FromFeet(feet) : null,
            Soil = facts.Text("soil"),
            Sources = facts.Texts("sources"),
            Basins = Basins(facts, net),
            Boxes = [.. facts.Entries("boxes").Select(Box)],
            InletLimit = GroundReading.Flow(facts, LandLimits.InletLimit),
            BoxNotes = facts.Text("box_notes"),
            Note = facts.Text("note"),
        };
    }

    public static FieldSeason Season(JsonFacts facts, string code, int index, PartReader reader)
    {
        var name = facts.Text("name") ?? string.Empty;
        DateTimeOffset? Moment(string key) => reader.Moment(facts, key, Place.Of("fields", index, name, key));
        var (sown, full, water, wet, aqua) = (Moment("sown_at"), Moment("full_since"), Moment("first_water"), facts.Whole("checks_wet"), facts.Day("aqua_on"));
        var stage = Words.Stages.Find(facts.Text("stage")) ?? SeasonDefaults.StageFrom(sown, full, water, wet, aqua);
        return new FieldSeason(code, SeedRate.FromPoundsPerAcre(facts.Number(SeedLimits.Rate) ?? 0), stage)
        {
            StageUntold = !Telling.Any(facts.Has),
            Variety = facts.Text("variety"),
            WorkLeft = facts.Has("work_left") ? Work(facts, "work_left") : null,
            FitFrom = Moment("fit_from"),
            AquaOn = aqua,
            FirstWater = water,
            FullSince = full,
            ChecksWet = wet,
            SownAt = sown,
            Depth = facts.Number(ScheduleLimits.Depth) is { } inches ? WaterDepth.FromInches(inches) : null,
            NoSpill = facts.Flag("no_spill") ?? false,
            AsOf = Moment("as_of"),
        };
    }

    internal static ImmutableArray<GroundWork> Work(JsonFacts facts, string key) =>
        [.. facts.Texts(key).Select(w => Words.Work.Find(w)).OfType<GroundWork>()];

    private static Area? Acres(JsonFacts facts, Limit limit) => facts.Number(limit) is { } acres ? Area.FromAcres(acres) : null;

    private static Boundary? Boundary(JsonFacts facts) => facts.Thing("boundary") is { } geometry && BoundaryReading.Read(JsonFacts.DatumOf(geometry.Element), string.Empty) is { HasValue: true } read ? read.Value : null;

    /// <summary>A mere count of checks means equal parts of the net acres.</summary>
    private static ImmutableArray<Basin> Basins(JsonFacts facts, Area net)
    {
        if (facts.Whole("checks") is not { } count) return [.. facts.Entries("checks").Select((c, i) => Basin(c, i + 1))];
        return count is < 1 or > LandLimits.MaxBasinsPerField ? [] : [.. Enumerable.Range(1, count).Select(n => new Basin(n, net / count))];
    }

    private static Basin Basin(JsonFacts facts, int number) => new(facts.Whole("number") ?? number, Acres(facts, LandLimits.BasinArea) ?? Area.Zero)
    {
        Drop = facts.Number(LandLimits.Drop) is { } feet ? WaterDepth.FromFeet(feet) : null,
        HighSpot = facts.Number(LandLimits.HighSpot) is { } inches ? WaterDepth.FromInches(inches) : null,
        Boundary = Boundary(facts),
    };

    private static Box Box(JsonFacts facts) => new(facts.Whole("number") ?? 0, Words.Boxes.Find(facts.Text("kind")) ?? default)
    {
        FromCheck = facts.Whole("from_check"),
        ToCheck = facts.Whole("to_check"),
        Width = facts.Number(LandLimits.BoxWidth) is { } feet ? Length.FromFeet(feet) : null,
        Boards = facts.Number(LandLimits.Boards) is { } inches ? WaterDepth.FromInches(inches) : null,
        Leaks = facts.Flag("leaks") ?? false,
        DrainsTo = facts.Text("drains_to"),
        At = PartReader.Point(facts.Thing("at")),
    };
}
