using Watersown.Costs;
using Watersown.Documents.Farms;
using Watersown.Growth;
using Watersown.Holds;
using Watersown.Nutrition;
using Watersown.Season;

namespace Watersown.Documents.Logbooks;

/// <summary>The words a mark uses for one of a few things.</summary>
public static class MarkWords
{
    public static WordList<Sureness> Sureness { get; } = new(("measured", Season.Sureness.Measured), ("told", Season.Sureness.Told), ("guessed", Season.Sureness.Guessed));

    public static WordList<WaterSeen> Water { get; } = new(("wet", WaterSeen.Wet), ("full", WaterSeen.Full), ("dry", WaterSeen.Dry), ("reflooded", WaterSeen.Reflooded));

    public static WordList<OrderState> Orders { get; } = new(
        ("asked", OrderState.Asked), ("accepted", OrderState.Accepted), ("running", OrderState.Running), ("changed", OrderState.Changed), ("ended", OrderState.Ended));

    public static WordList<FaultKind> Faults { get; } = new(("levee", FaultKind.Levee), ("box", FaultKind.Box), ("pump", FaultKind.Pump), ("gate", FaultKind.Gate));

    public static WordList<StandDownReason> StandDowns { get; } = new(
        ("wind", StandDownReason.Wind),
        ("rain", StandDownReason.Rain),
        ("fog", StandDownReason.Fog),
        ("aeroplane", StandDownReason.Aeroplane),
        ("seed", StandDownReason.Seed),
        ("field", StandDownReason.Field),
        ("other", StandDownReason.Other));

    public static WordList<CropStage> CropStages { get; } = new(
        ("leaf", CropStage.Leaf), ("tillering", CropStage.Tillering), ("panicle-initiation", CropStage.PanicleInitiation), ("booting", CropStage.Booting), ("heading", CropStage.Heading), ("mature", CropStage.Mature));

    public static WordList<Pest> Pests { get; } = new(
        ("shrimp", Pest.Shrimp), ("midge", Pest.Midge), ("scum", Pest.Scum), ("weevil", Pest.Weevil), ("armyworm-leaf", Pest.ArmywormLeaf), ("armyworm-panicle", Pest.ArmywormPanicle));

    public static WordList<NitrogenTiming> Timings { get; } = new(("aqua", NitrogenTiming.Aqua), ("starter", NitrogenTiming.Starter), ("topdress", NitrogenTiming.Topdress));

    public static WordList<NutrientReading> Readings { get; } = new(
        ("olsen-p", NutrientReading.OlsenPhosphorus), ("leaf-p", NutrientReading.LeafPhosphorus), ("soil-k", NutrientReading.SoilPotassium), ("flag-leaf-k", NutrientReading.FlagLeafPotassium), ("n-strip", NutrientReading.NitrogenStrip));

    public static WordList<HazardSighting> Sightings { get; } = new(("new", HazardSighting.New), ("still-there", HazardSighting.StillThere), ("gone", HazardSighting.Gone));

    public static WordList<CostCategory> Costs { get; } = new(
        ("ground-work", CostCategory.GroundWork),
        ("nitrogen", CostCategory.Nitrogen),
        ("other-fertilizer", CostCategory.OtherFertilizer),
        ("water", CostCategory.Water),
        ("seed", CostCategory.Seed),
        ("soak-and-haul", CostCategory.SoakAndHaul),
        ("fly-seed", CostCategory.FlySeed),
        ("weeds-and-pests", CostCategory.WeedsAndPests),
        ("harvest", CostCategory.Harvest),
        ("drying", CostCategory.Drying),
        ("rent", CostCategory.Rent),
        ("overhead", CostCategory.Overhead),
        ("other", CostCategory.Other));

    public static WordList<TreatmentState> Treatments { get; } = new(("booked", TreatmentState.Booked), ("applied", TreatmentState.Applied), ("called-off", TreatmentState.CalledOff));

    public static WordList<WaterWish> Wishes { get; } = new(
        ("lower-for", WaterWish.LowerFor), ("drain-for", WaterWish.DrainFor), ("lower", WaterWish.Lower), ("peg", WaterWish.Peg), ("drain", WaterWish.Drain));

    public static WordList<ApplicationDay> Counting { get; } = new(("0", ApplicationDay.CountsAsZero), ("1", ApplicationDay.CountsAsOne));

    public static WordList<WaterNeeded> WaterNeeds { get; } = new(("as-it-is", WaterNeeded.AsItIs), ("lowered", WaterNeeded.Lowered), ("drained", WaterNeeded.Drained));

    public static WordList<ToldState> Told { get; } = new(("told", ToldState.Told), ("heard", ToldState.Heard), ("agreed", ToldState.Agreed), ("not-reached", ToldState.NotReached));
}
