namespace Watersown.Wording;

/// <summary>Words of the page for a morning that nobody can fly.</summary>
public sealed partial record ReplanWords
{
    public required string Title { get; init; }

    public required string Open { get; init; }

    public required string Back { get; init; }

    public required string Why { get; init; }

    public required string WhyHelp { get; init; }

    public required string Wind { get; init; }

    public required string Rain { get; init; }

    public required string Fog { get; init; }

    public required string Aeroplane { get; init; }

    public required string Marked { get; init; }

    public required string Other { get; init; }

    public required string WindNow { get; init; }

    public required string NextOpen { get; init; }

    public required string NoneOpen { get; init; }

    public required string SeedHead { get; init; }

    public required string SeedNone { get; init; }

    public required string Drained { get; init; }

    public required string UnderWater { get; init; }

    public required string Due { get; init; }

    public required string AtFirstLoad { get; init; }

    public required string PastSum { get; init; }

    public required string StillCheap { get; init; }

    public required string StillGood { get; init; }

    public required string NoField { get; init; }

    public required string CallOffFree { get; init; }

    public required string DrainHead { get; init; }

    public required string DrainAt { get; init; }

    public required string DrainUnder { get; init; }

    public required string DrainFirst { get; init; }

    public required string DrainSays { get; init; }

    public required string DrainUsual { get; init; }

    public required string DrainTop { get; init; }

    public required string DrainLong { get; init; }

    public required string DrainLost { get; init; }

    public required string DrainShort { get; init; }

    public required string Plans { get; init; }

    public required string PlansHelp { get; init; }

    public required string PlansNone { get; init; }

    public required string PlanName { get; init; }

    public required string Cheapest { get; init; }

    public required string Dearer { get; init; }

    public required string Chosen { get; init; }

    public required string Field { get; init; }

    public required string When { get; init; }

    public required string Seed { get; init; }

    public required string Age { get; init; }

    public required string AgeDays { get; init; }

    public required string AgeUnknown { get; init; }

    public required string NewSeed { get; init; }

    public required string Later { get; init; }

    public required string Cost { get; init; }

    public required string SeedLost { get; init; }

    public required string Delay { get; init; }

    public required string DelayUnit { get; init; }

    public required string WaterAge { get; init; }

    public required string WaterAgeUnit { get; init; }

    public required string CallBefore { get; init; }

    public required string CallItem { get; init; }

    public required string DrainOf { get; init; }

    public required string CallOff { get; init; }

    public required string InAir { get; init; }

    public required string Moves { get; init; }

    public required string MovesFrom { get; init; }

    public required string MovesGone { get; init; }

    public required string Choose { get; init; }

    public required string ChooseHelp { get; init; }

    public required string Undo { get; init; }

    public required string Flips { get; init; }

    public required string FlipsNone { get; init; }

    public required string FlipAge { get; init; }

    public required string FlipDelay { get; init; }

    public required string Above { get; init; }

    public required string Below { get; init; }

    public required string PriceAge { get; init; }

    public required string PriceAgeUnit { get; init; }

    public required string PriceDelay { get; init; }

    public required string PriceDelayUnit { get; init; }

    public required string PriceFarm { get; init; }

    public required string Tell { get; init; }

    public required string TellHelp { get; init; }

    public required string TellNone { get; init; }

    public required string Send { get; init; }

    public required string Copy { get; init; }

    public required string Copied { get; init; }

    public required string ToldVoice { get; init; }

    public required string ToldText { get; init; }

    public required string NotReached { get; init; }

    public required string KnowsThis { get; init; }

    public required string LeftOut { get; init; }

    public required string Caution { get; init; }

    public required string Took { get; init; }

    public required string TextOff { get; init; }

    public required string TextDrainHead { get; init; }

    public required string TextDrain { get; init; }

    public required string TextSowHead { get; init; }

    public required string TextShallowHead { get; init; }

    public required string TextShallowTail { get; init; }
}
