namespace Watersown.Wording;

/// <summary>Words of the land page and of a field's page.</summary>
public sealed partial record LandScreenWords
{
    public required string Title { get; init; }

    public required string Fields { get; init; }

    public required string FieldsCount { get; init; }

    public required string MapTitle { get; init; }

    public required string MapLead { get; init; }

    public required string MapSpoken { get; init; }

    public required string Guessed { get; init; }

    public required string WithoutPlace { get; init; }

    public required string NoMap { get; init; }

    public required string OpenField { get; init; }

    public required string OnMap { get; init; }

    public required string Choose { get; init; }

    public required string Order { get; init; }

    public required string OrderFarm { get; init; }

    public required string OrderStage { get; init; }

    public required string OrderAcres { get; init; }

    public required string OrderDepthAge { get; init; }

    public required string Look { get; init; }

    public required string LookAll { get; init; }

    public required string LookDry { get; init; }

    public required string LookFilling { get; init; }

    public required string LookFull { get; init; }

    public required string LookSown { get; init; }

    public required string LookUnknown { get; init; }

    public required string Table { get; init; }

    public required string Field { get; init; }

    public required string Stage { get; init; }

    public required string Wet { get; init; }

    public required string WetOf { get; init; }

    public required string Depth { get; init; }

    public required string DepthSpan { get; init; }

    public required string DepthFarm { get; init; }

    public required string Net { get; init; }

    public required string Gross { get; init; }

    public required string Certified { get; init; }

    public required string NetAcres { get; init; }

    public required string GrossAcres { get; init; }

    public required string CertifiedAcres { get; init; }

    public required string Rate { get; init; }

    public required string RateWord { get; init; }

    public required string SeedDry { get; init; }

    public required string Seed { get; init; }

    public required string Block { get; init; }

    public required string NoBlock { get; init; }

    public required string BlockLine { get; init; }

    public required string Total { get; init; }

    public required string TotalShown { get; init; }

    public required string Missing { get; init; }

    public required string Broken { get; init; }

    public required string NoSpill { get; init; }

    public required string NoField { get; init; }

    public required string ToLand { get; init; }

    public required string RateLine { get; init; }

    public required string NetLine { get; init; }

    public required string GrossLine { get; init; }

    public required string CertifiedLine { get; init; }

    public required string Clocks { get; init; }

    public required string ClocksLead { get; init; }

    public required string Ground { get; init; }

    public required string Water { get; init; }

    public required string Air { get; init; }

    public required string ClockThen { get; init; }

    public required string ClockUnknown { get; init; }

    public required string ClockSoaking { get; init; }

    public required string ClockDrained { get; init; }

    public required string ClockSpent { get; init; }

    public required string ClockWork { get; init; }

    public required string ClockDry { get; init; }

    public required string ClockFilling { get; init; }

    public required string ClockFull { get; init; }

    public required string ClockSowing { get; init; }

    public required string ClockSown { get; init; }

    public required string ClockUnderWater { get; init; }

    public required string ClockNothing { get; init; }

    public required string Next { get; init; }

    public required string NextNone { get; init; }

    public required string NextNoPlan { get; init; }

    public required string NextUntil { get; init; }

    public required string NextOf { get; init; }

    public required string NextMore { get; init; }

    public required string NextFixed { get; init; }

    public required string NextPinned { get; init; }

    public required string Marks { get; init; }

    public required string MarksLead { get; init; }

    public required string MarkWater { get; init; }

    public required string MarkFull { get; init; }

    public required string MarkFlown { get; init; }

    public required string MarkSoak { get; init; }

    public required string MarkDrained { get; init; }

    public required string MarkDepth { get; init; }

    public required string MarkStage { get; init; }

    public required string MarkNote { get; init; }

    public required string NoteKeep { get; init; }

    public required string Story { get; init; }

    public required string StoryNone { get; init; }

    public required string StoryMore { get; init; }

    public required string StoryLate { get; init; }

    public required string StoryReplaced { get; init; }

    public required string StoryWithdrawn { get; init; }

    public required string StoryShowPhoto { get; init; }

    public required string StoryTold { get; init; }

    public required string StoryGuessed { get; init; }

    public required string PhotoNotHere { get; init; }

    public required string PhotoAlt { get; init; }

    public required string Figures { get; init; }

    public required string FiguresLead { get; init; }

    public required string FigureDry { get; init; }

    public required string FigureSoaked { get; init; }

    public required string FigureLoads { get; init; }

    public required string FigureLoadsSaid { get; init; }

    public required string FigureFlying { get; init; }

    public required string FigureFill { get; init; }

    public required string FigureHolding { get; init; }

    public required string FigureHeadAge { get; init; }

    public required string FigureEnclosed { get; init; }

    public required string Takes { get; init; }

    public required string TakesLead { get; init; }

    public required string TakesFill { get; init; }

    public required string TakesLoss { get; init; }

    public required string TakesComes { get; init; }

    public required string TakesSaid { get; init; }

    public required string TakesLossUnit { get; init; }

    public required string TakesFrom { get; init; }

    public required string TakesFromOne { get; init; }

    public required string TakesFloods { get; init; }

    public required string TakesFarm { get; init; }

    public required string TakesOdd { get; init; }

    public required string Correct { get; init; }

    public required string CorrectLead { get; init; }

    public required string CorrectNet { get; init; }

    public required string CorrectGross { get; init; }

    public required string CorrectCertified { get; init; }

    public required string CorrectRate { get; init; }

    public required string Faults { get; init; }

    public required string FaultsNone { get; init; }

    public required string FaultNew { get; init; }

    public required string FaultWhat { get; init; }

    public required string FaultLevee { get; init; }

    public required string FaultBox { get; init; }

    public required string FaultBetween { get; init; }

    public required string FaultPair { get; init; }

    public required string FaultWhichBox { get; init; }

    public required string FaultNotSure { get; init; }

    public required string FaultPhoto { get; init; }

    public required string FaultPhotoKept { get; init; }

    public required string FaultPhotoNone { get; init; }

    public required string FaultKeep { get; init; }

    public required string Mended { get; init; }

    public required string Tiles { get; init; }

    public required string TilesNone { get; init; }

    public required string TilesFrom { get; init; }
}
