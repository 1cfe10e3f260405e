using Watersown.Wording;

namespace Watersown.Costs;

/// <summary>Names of what money goes to.</summary>
public static class CostNames
{
    public static string Of(CostCategory category, CostWords words) => category switch
    {
        CostCategory.GroundWork => words.GroundWork,
        CostCategory.Nitrogen => words.Nitrogen,
        CostCategory.OtherFertilizer => words.OtherFertilizer,
        CostCategory.Water => words.Water,
        CostCategory.Seed => words.Seed,
        CostCategory.SoakAndHaul => words.SoakAndHaul,
        CostCategory.FlySeed => words.FlySeed,
        CostCategory.WeedsAndPests => words.WeedsAndPests,
        CostCategory.Harvest => words.Harvest,
        CostCategory.Drying => words.Drying,
        CostCategory.Rent => words.Rent,
        CostCategory.Overhead => words.Overhead,
        _ => words.Other,
    };
}
