namespace Watersown.Wording;

/// <summary>Words of money: plans, bills, break-even.</summary>
public sealed partial record CostWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string ByField { get; init; }

    public required string ByCategory { get; init; }

    public required string Field { get; init; }

    public required string Category { get; init; }

    public required string Planned { get; init; }

    public required string Spent { get; init; }

    public required string PlannedAcre { get; init; }

    public required string SpentAcre { get; init; }

    public required string SpentGrain { get; init; }

    public required string All { get; init; }

    public required string None { get; init; }

    public required string EvenTitle { get; init; }

    public required string EvenPlanned { get; init; }

    public required string EvenSpent { get; init; }

    public required string EvenNeeds { get; init; }

    public required string EvenPrice { get; init; }

    public required string EvenShare { get; init; }

    public required string WhatIf { get; init; }

    public required string Price { get; init; }

    public required string Yield { get; init; }

    public required string PlanTitle { get; init; }

    public required string PlanAcre { get; init; }

    public required string PlanGrain { get; init; }

    public required string PlanFor { get; init; }

    public required string BillTitle { get; init; }

    public required string BillAmount { get; init; }

    public required string BillBack { get; init; }

    public required string BillFields { get; init; }

    public required string BillWhat { get; init; }

    public required string BillInvoice { get; init; }

    public required string BillKeep { get; init; }

    public required string Bills { get; init; }

    public required string BillsNone { get; init; }

    public required string PerAcre { get; init; }

    public required string PerHundredweight { get; init; }

    public required string MarkPlanned { get; init; }

    public required string MarkPaid { get; init; }

    public required string Said { get; init; }

    public required string GroundWork { get; init; }

    public required string Nitrogen { get; init; }

    public required string OtherFertilizer { get; init; }

    public required string Water { get; init; }

    public required string Seed { get; init; }

    public required string SoakAndHaul { get; init; }

    public required string FlySeed { get; init; }

    public required string WeedsAndPests { get; init; }

    public required string Harvest { get; init; }

    public required string Drying { get; init; }

    public required string Rent { get; init; }

    public required string Overhead { get; init; }

    public required string Other { get; init; }
}
