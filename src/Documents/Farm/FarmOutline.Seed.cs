using Watersown.Documents.Json;
using Watersown.Seed;

namespace Watersown.Documents.Farms;

public static partial class FarmOutline
{
    private static Outline.Thing Lot => new("lot",
    [
        Need("code", Text(), "the farm's name for the lot"),
        Need("variety", Text(), "variety code"),
        new("maturity", new Outline.Word(Words.Maturities.All), "how early it ripens"),
        OutlineKey.Of(SeedLimits.InHand, "dry seed bought and not yet soaked; enough where not given"),
        OutlineKey.Of(SeedLimits.Germination, "germination by the tag"),
        OutlineKey.Of(SeedLimits.SeedsPerPound, "seeds in one pound"),
        OutlineKey.Of(SeedLimits.WetFactor, "soaked weight over dry weight, from scale tickets of this lot"),
    ]);

    private static Outline.Thing Batch => new("batch",
    [
        Need("code", Text(), "the farm's code for the batch"),
        Need("lot", Text(), "code of its lot"),
        Need("variety", Text(), "variety code"),
        Need(OutlineKey.Of(SeedLimits.BatchDry, "dry weight put in")),
        Need("in_soak", new Outline.Moment(), "when it went, or is due to go, under water"),
        new("drained", new Outline.Moment(), "when it was taken off the water; still under where not given"),
        new("meant_for", Codes(), "codes of the fields it was meant for"),
        OutlineKey.Of(SeedLimits.Weighed, "weight after draining, from the scale"),
        new("trailers", Codes(), "trailers it sits in"),
    ]);

    private static Outline.Thing SoakPlace => new("soak place",
    [
        Need("name", Text(), "its name"),
        new("phone", Text(), "its phone number"),
        OutlineKey.Of(SeedLimits.Road, "road distance to the strip"),
        OutlineKey.Of(SeedLimits.Trailers, "trailers kept for this farm; no limit where not given"),
        OutlineKey.Of(SeedLimits.HaulLimit, "soaked seed one trailer may carry on the road"),
        new("calls_until", new Outline.Hour(), "soak calls for the day are taken until this hour"),
        new("soak_hour", new Outline.Hour(), "hour at which a batch goes under water"),
        OutlineKey.Of(SeedLimits.SoakLeast, "least time under water"),
        OutlineKey.Of(SeedLimits.SoakMost, "longest usual time under water"),
        OutlineKey.Of(SeedLimits.SoakLost, "time under water at which seed is lost"),
        OutlineKey.Of(SeedLimits.Drain, "time to drain"),
        OutlineKey.Of(SeedLimits.TrailerReturn, "hauling, washing and return after sowing"),
        OutlineKey.Of(SeedLimits.Haul, "road time and weighing before the trailer stands at the strip"),
    ]);
}
