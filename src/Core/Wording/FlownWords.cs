namespace Watersown.Wording;

/// <summary>Words of holding a track against a field: what was flown, what was skipped, what was dropped.</summary>
public sealed partial record FlownWords
{
    public required string Title { get; init; }

    public required string NetLand { get; init; }

    public required string FlownLand { get; init; }

    public required string Skipped { get; init; }

    public required string Overlapped { get; init; }

    public required string OffField { get; init; }

    public required string PassCount { get; init; }

    public required string Heading { get; init; }

    public required string Spacing { get; init; }

    public required string SpacingOff { get; init; }

    public required string LineOff { get; init; }

    public required string LineOffSaid { get; init; }

    public required string EndsOff { get; init; }

    public required string SeedMissing { get; init; }

    public required string GiveOrTake { get; init; }

    public required string ThinTitle { get; init; }

    public required string ThinNone { get; init; }

    public required string ThinSaid { get; init; }

    public required string ThinMore { get; init; }

    public required string DroppedTitle { get; init; }

    public required string DroppedSaid { get; init; }

    public required string BadChecksum { get; init; }

    public required string NoPosition { get; init; }

    public required string Unreadable { get; init; }

    public required string OffTheEarth { get; init; }

    public required string NoTime { get; init; }

    public required string SameTime { get; init; }

    public required string TimeBack { get; init; }

    public required string Jump { get; init; }

    public required string FarSaid { get; init; }

    public required string ColumnsTitle { get; init; }

    public required string KnowTitle { get; init; }

    public required string CautionAlways { get; init; }

    public required string CautionSwath { get; init; }

    public required string CautionWorkedOut { get; init; }

    public required string CautionDrawnApart { get; init; }

    public required string CautionStuck { get; init; }

    public required string CautionNoTime { get; init; }

    public required string CautionUnknown { get; init; }

    public required string CautionUnknownOne { get; init; }

    public required string CautionOther { get; init; }

    public required string CautionOtherOne { get; init; }

    public required string WorkingTitle { get; init; }

    public required string Reading { get; init; }

    public required string NoEdge { get; init; }

    public required string DrawEdge { get; init; }

    public required string Lead { get; init; }

    public required string SwathAsk { get; init; }

    public required string FileAsk { get; init; }

    public required string TooLarge { get; init; }

    public required string ReadDone { get; init; }

    public required string Keep { get; init; }

    public required string DrawingSpoken { get; init; }

    public required string DrawingSpokenOne { get; init; }

    public required string What { get; init; }

    public required string HowMuch { get; init; }

    public required string HowSure { get; init; }

    public required string KeptTitle { get; init; }

    public required string KeptSaid { get; init; }

    public required string BilledAsk { get; init; }

    public required string MatchTitle { get; init; }

    public required string OneSays { get; init; }

    public required string OtherSays { get; init; }

    public required string Verdict { get; init; }

    public required string MatchBilled { get; init; }

    public required string MatchMissing { get; init; }

    public required string RateFlown { get; init; }

    public required string Agree { get; init; }

    public required string Differ { get; init; }

    public required string SeedNotTold { get; init; }

    public required string ToTrack { get; init; }

    public required string SwathRight { get; init; }

    public required string SwathLeft { get; init; }

    public required string ExactTitle { get; init; }

    public required string ExactSaid { get; init; }

    public required string ExactAsk { get; init; }

    public required string PlaceMark { get; init; }

    public required string PlaceBare { get; init; }

    public required string PlaceThin { get; init; }

    public required string PlaceLand { get; init; }

    public required string PlaceAt { get; init; }

    public required string PlaceLong { get; init; }

    public required string PlaceWide { get; init; }

    public required string BilledSeedAsk { get; init; }

    public required string InvoiceAsk { get; init; }

    public required string InvoiceKeep { get; init; }

    public required string BilledSaid { get; init; }

    public required string PageLead { get; init; }

    public required string PageFlown { get; init; }

    public required string MatchSeed { get; init; }

    public required string LaidMean { get; init; }

    public required string LaidUneven { get; init; }

    public required string LaidNear { get; init; }

    public required string LaidThin { get; init; }

    public required string LaidOff { get; init; }

    public required string LaidTitle { get; init; }

    public required string LaidPlaces { get; init; }

    public required string LaidNone { get; init; }

    public required string LaidPlace { get; init; }

    public required string LaidSaid { get; init; }

    public required string KeyThin { get; init; }

    public required string KeyLess { get; init; }

    public required string KeyAsked { get; init; }

    public required string KeyMore { get; init; }

    public required string CautionTested { get; init; }

    public required string CautionSupposed { get; init; }
}
