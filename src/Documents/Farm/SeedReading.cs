using Watersown.Documents.Json;
using Watersown.Seed;

namespace Watersown.Documents.Farms;

/// <summary>Lots, batches and the soak place.</summary>
internal static class SeedReading
{
    public static SeedLot Lot(JsonFacts facts) => new(facts.Text("code") ?? string.Empty, facts.Text("variety") ?? string.Empty)
    {
        Maturity = Words.Maturities.Find(facts.Text("maturity")) ?? Maturity.Other,
        InHand = facts.Number(SeedLimits.InHand) is { } pounds ? DrySeed.FromPounds(pounds) : null,
        Germination = facts.Number(SeedLimits.Germination) is { } percent ? Fraction.FromPercent(percent) : null,
        SeedsPerPound = facts.Number(SeedLimits.SeedsPerPound),
        WetFactor = facts.Number(SeedLimits.WetFactor),
    };

    public static SoakBatch Batch(JsonFacts facts, int index, PartReader reader)
    {
        var code = facts.Text("code") ?? string.Empty;
        DateTimeOffset? Moment(string key) => reader.Moment(facts, key, Watersown.Place.Of("batches", index, code, key));
        return new SoakBatch(code, facts.Text("lot") ?? string.Empty, facts.Text("variety") ?? string.Empty, DrySeed.FromPounds(facts.Number(SeedLimits.BatchDry) ?? 0), Moment("in_soak") ?? default)
        {
            Drained = facts.Has("in_soak") ? Moment("drained") : null,
            MeantFor = facts.Texts("meant_for"),
            Weighed = facts.Number(SeedLimits.Weighed) is { } pounds ? SoakedSeed.FromPounds(pounds) : null,
            Trailers = facts.Texts("trailers"),
        };
    }

    public static SoakPlace Place(JsonFacts facts)
    {
        var usual = new SoakPlace { Name = facts.Text("name") ?? string.Empty };
        return usual with
        {
            Phone = facts.Text("phone"),
            Road = facts.Number(SeedLimits.Road) is { } miles ? Length.FromMiles(miles) : null,
            Trailers = facts.Whole("trailers"),
            HaulLimit = facts.Number(SeedLimits.HaulLimit) is { } pounds ? SoakedSeed.FromPounds(pounds) : null,
            CallsUntil = facts.Hour("calls_until") ?? usual.CallsUntil,
            SoakHour = facts.Hour("soak_hour") ?? usual.SoakHour,
            SoakLeast = facts.Hours(SeedLimits.SoakLeast) ?? usual.SoakLeast,
            SoakMost = facts.Hours(SeedLimits.SoakMost) ?? usual.SoakMost,
            SoakLost = facts.Hours(SeedLimits.SoakLost) ?? usual.SoakLost,
            Drain = facts.Hours(SeedLimits.Drain) ?? usual.Drain,
            TrailerReturn = facts.Hours(SeedLimits.TrailerReturn) ?? usual.TrailerReturn,
            Haul = facts.Hours(SeedLimits.Haul) ?? usual.Haul,
        };
    }
}
