namespace Watersown.Costs;

/// <summary>What money goes to, in the order of the season; the headings that cost studies of the crop use.</summary>
public enum CostCategory
{
    GroundWork,
    Nitrogen,
    OtherFertilizer,
    Water,
    Seed,
    SoakAndHaul,
    FlySeed,
    WeedsAndPests,
    Harvest,
    Drying,
    Rent,
    Overhead,
    Other,
}

/// <summary>What the farm means to spend on one thing, by land or by grain.</summary>
/// <param name="Category">What on.</param>
public sealed record PlannedCost(CostCategory Category)
{
    /// <summary>The one field it is meant for; all where not given.</summary>
    public string? Field { get; init; }

    /// <summary>For each acre of net land.</summary>
    public Money PerAcre { get; init; }

    /// <summary>For each hundredweight of grain at the moisture it is paid at.</summary>
    public Money PerHundredweight { get; init; }
}

/// <summary>What was spent.</summary>
/// <param name="Category">What on.</param>
/// <param name="Amount">How much.</param>
/// <param name="Fields">Fields it falls on; all of the farm's where none is named.</param>
public sealed record SpentCost(CostCategory Category, Money Amount, ImmutableArray<string> Fields);
