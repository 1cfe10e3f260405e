using Watersown.Wording;

namespace Watersown.Season.FieldRecords;

/// <summary>Words for what a field's season page lacks.</summary>
public static class RecordSpeech
{
    public static string Of(RecordGap gap, RecordWords words) => gap switch
    {
        RecordGap.Gross => words.GapGross,
        RecordGap.Certified => words.GapCertified,
        RecordGap.Variety => words.GapVariety,
        RecordGap.Lot => words.GapLot,
        RecordGap.FirstWater => words.GapFirstWater,
        RecordGap.Full => words.GapFull,
        RecordGap.Sown => words.GapSown,
        RecordGap.DrySeed => words.GapDrySeed,
        RecordGap.Stand => words.GapStand,
        RecordGap.Heading => words.GapHeading,
        RecordGap.BoardsOut => words.GapBoardsOut,
        RecordGap.Cut => words.GapCut,
        _ => words.GapTickets,
    };
}
