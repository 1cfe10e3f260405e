using System.Text.Json;
using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

/// <summary>
/// From the bytes of a farm document to the season as it stands, with everything that is wrong said at once. What could
/// not be read is passed over so that the rest is still checked; then nothing is handed out.
/// </summary>
public static class FarmReading
{
    public static Outcome<SeasonState> Read(ReadOnlyMemory<byte> bytes, FarmContext context)
    {
        var text = JsonText.Read(bytes);
        if (text.IsRefused) return Outcome<SeasonState>.Refuse(text.Problems);
        using var document = text.Value;
        return Read(document.RootElement, context);
    }

    private static Outcome<SeasonState> Read(JsonElement root, FarmContext context)
    {
        if (WrongDocument(root) is { } wrong) return Outcome<SeasonState>.Refuse(wrong);
        var problems = ImmutableArray.CreateBuilder<Problem>();
        problems.AddRange(OutlineCheck.Check(root, FarmOutline.Root));
        var facts = new JsonFacts(root);
        var clock = FarmClock.Find(facts.Text("time_zone") ?? string.Empty);
        if (clock is null && facts.Text("time_zone") is { } zone) problems.Add(FarmProblems.UnknownZone.At("time_zone", ("value", zone)));
        var reader = new PartReader(clock ?? FarmClock.Utc, problems);
        var state = ReadState(facts, reader, context);
        // A place that could not be read has been said; what follows from its absence has not to be.
        var said = problems.Where(p => p.Kind.Weight == ProblemWeight.Refuse).Select(p => p.Where).ToHashSet(StringComparer.Ordinal);
        problems.AddRange(StateChecks.Check(state).Where(p => !said.Contains(p.Where)));
        return problems.Any(p => p.Kind.Weight == ProblemWeight.Refuse)
            ? Outcome<SeasonState>.Refuse([.. problems, .. reader.Aside])
            : Outcome<SeasonState>.Of(state, [.. problems, .. reader.Aside]);
    }

    private static Problem? WrongDocument(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty(FarmOutline.VersionKey, out var version))
            return JsonProblems.NotThisDocument.At(string.Empty, ("value", FarmOutline.VersionKey), ("meaning", "a farm document"), ("limit", "1"));
        return JsonFacts.NumberOf(version) is { } number && number > FarmOutline.Version
            ? JsonProblems.NewerVersion.At(FarmOutline.VersionKey, ("value", version.GetRawText()), ("limit", "1"))
            : null;
    }

    private static SeasonState ReadState(JsonFacts facts, PartReader reader, FarmContext context)
    {
        var now = context.Now is { } asked ? reader.Clock.Local(asked) : reader.Moment(facts, "now", "now") ?? reader.Clock.Local(context.Clock);
        var codes = FieldReading.Codes(facts);
        var farm = GroundReading.Farm(facts, codes, now, reader);
        farm = BoundaryJoining.Apply(farm, facts.Text("boundaries"), context, reader);
        var hours = facts.Thing("flying_hours");
        var bare = new SeasonState
        {
            Farm = farm,
            Now = now,
            Offset = now.Offset,
            Fields = [.. facts.Entries("fields").Select((f, i) => FieldReading.Season(f, codes[i], i, reader))],
            Horizon = facts.Day("horizon") ?? SeasonDefaults.Horizon(now),
        };
        SayUnknownStages(facts, farm, reader);
        return bare with
        {
            PlanNumber = facts.Whole("plan_number") ?? bare.PlanNumber,
            Lots = [.. facts.Entries("lots").Select(SeedReading.Lot)],
            Batches = [.. facts.Entries("batches").Select((b, i) => SeedReading.Batch(b, i, reader))],
            SoakPlace = facts.Thing("soak_place") is { } place ? SeedReading.Place(place) : null,
            WetFactor = facts.Number(SeedLimits.WetFactor) ?? bare.WetFactor,
            Aeroplanes = [.. facts.Entries("aeroplanes").Select((p, i) => AirReading.Aeroplane(p, i, reader))],
            UsualFrom = hours?.Hour("from") ?? bare.UsualFrom,
            UsualUntil = hours?.Hour("until") ?? bare.UsualUntil,
            Slots = [.. facts.Entries("slots").Select(AirReading.Slot)],
            Wind = [.. facts.Entries("wind").Select((w, i) => AirReading.Wind(w, i, reader)).OrderBy(w => w.At)],
            Warmth = [.. facts.Entries("warmth").Select(AirReading.Warmth).OrderBy(w => w.Day)],
            Normals = facts.Thing("normals") is { } normals ? AirReading.Normals(normals, reader) : bare.Normals,
            Tractors = [.. facts.Entries("tractors").Select(WorkReading.Tractors)],
            Crew = facts.Thing("crew") is { } crew ? WorkReading.Crew(crew) : bare.Crew,
            Anchoring = facts.Days(SeedLimits.Anchoring) is { Ticks: > 0 } loose ? loose : null,
            Evaporation = facts.Number(WeatherLimits.Evaporation) is { } lost ? DepthRate.FromInchesPerDay(lost) : bare.Evaporation,
            Prices = facts.Thing("prices") is { } prices ? WorkReading.Prices(prices) : bare.Prices,
            Pins = [.. facts.Entries("pins").Select((p, i) => WorkReading.Pin(p, i, reader))],
            People = [.. facts.Entries("people").Select(WorkReading.Person)],
        };
    }

    /// <summary>One warning for all fields of which nothing tells how far they have come.</summary>
    private static void SayUnknownStages(JsonFacts facts, Farm farm, PartReader reader)
    {
        var silent = facts.Entries("fields").Select((f, i) => (Facts: f, Index: i)).Where(f => !FieldReading.Telling.Any(f.Facts.Has)).ToList();
        if (silent.Count == 0) return;
        var names = string.Join(", ", silent.Take(6).Select(f => farm.Fields[f.Index].Name));
        if (silent.Count > 6) names += string.Create(System.Globalization.CultureInfo.InvariantCulture, $" and {silent.Count - 6} more");
        reader.Problems.Add(FarmProblems.StageUnknown.At("fields", ("value", names)));
    }
}
