namespace Watersown.Wording;

/// <summary>Words of a field's season record.</summary>
public sealed partial record RecordWords
{
    public required string Title { get; init; }

    public required string Kind { get; init; }

    public required string Lead { get; init; }

    public required string Complete { get; init; }

    public required string Missing { get; init; }

    public required string Doubts { get; init; }

    public required string LandTitle { get; init; }

    public required string SowingTitle { get; init; }

    public required string CropTitle { get; init; }

    public required string HarvestTitle { get; init; }

    public required string MoneyTitle { get; init; }

    public required string Facts { get; init; }

    public required string Signed { get; init; }

    public required string Untold { get; init; }

    public required string Net { get; init; }

    public required string Gross { get; init; }

    public required string Certified { get; init; }

    public required string CertifiedNote { get; init; }

    public required string Shares { get; init; }

    public required string Variety { get; init; }

    public required string LotUntold { get; init; }

    public required string FirstWater { get; init; }

    public required string Full { get; init; }

    public required string Sown { get; init; }

    public required string DrySeed { get; init; }

    public required string Stand { get; init; }

    public required string StandZones { get; init; }

    public required string Heading { get; init; }

    public required string Stages { get; init; }

    public required string StagesNote { get; init; }

    public required string BoardsOut { get; init; }

    public required string Cut { get; init; }

    public required string Moisture { get; init; }

    public required string Grain { get; init; }

    public required string GrainNote { get; init; }

    public required string GapGross { get; init; }

    public required string GapCertified { get; init; }

    public required string GapVariety { get; init; }

    public required string GapLot { get; init; }

    public required string GapFirstWater { get; init; }

    public required string GapFull { get; init; }

    public required string GapSown { get; init; }

    public required string GapDrySeed { get; init; }

    public required string GapStand { get; init; }

    public required string GapHeading { get; init; }

    public required string GapBoardsOut { get; init; }

    public required string GapCut { get; init; }

    public required string GapTickets { get; init; }

    public required string AllTitle { get; init; }

    public required string FieldsHead { get; init; }

    public required string StateHead { get; init; }

    public required string CompleteShort { get; init; }

    public required string OpenShort { get; init; }

    public required string Open { get; init; }

    public required string CsvFields { get; init; }

    public required string CsvMarks { get; init; }

    public required string SownByDay { get; init; }

    public required string SownByDayHead { get; init; }

    public required string SownSum { get; init; }

    public required string SeedTitle { get; init; }

    public required string SeedLot { get; init; }

    public required string SeedBought { get; init; }

    public required string SeedSoaked { get; init; }

    public required string SeedLoaded { get; init; }

    public required string SeedSpent { get; init; }

    public required string SeedHolds { get; init; }

    public required string SeedBreaks { get; init; }

    public required string FinalPlanting { get; init; }
}
