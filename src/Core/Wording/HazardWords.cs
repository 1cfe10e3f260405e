namespace Watersown.Wording;

/// <summary>Words of hazards: how fresh a look at them is, and what a public file says.</summary>
public sealed partial record HazardWords
{
    public required string Title { get; init; }

    public required string Lead { get; init; }

    public required string NoneKnown { get; init; }

    public required string What { get; init; }

    public required string Height { get; init; }

    public required string Near { get; init; }

    public required string Looked { get; init; }

    public required string Fresh { get; init; }

    public required string Old { get; init; }

    public required string Never { get; init; }

    public required string OldCount { get; init; }

    public required string FromFile { get; init; }

    public required string Around { get; init; }

    public required string AroundUnknown { get; init; }

    public required string HeightOff { get; init; }

    public required string HeightOffUnknown { get; init; }

    public required string Verified { get; init; }

    public required string Unverified { get; init; }

    public required string TakenDown { get; init; }

    public required string Several { get; init; }

    public required string FileCaution { get; init; }

    public required string FileRead { get; init; }

    public required string WrittenTo { get; init; }

    public required string LightUnknown { get; init; }

    public required string LightNone { get; init; }

    public required string LightRed { get; init; }

    public required string LightMediumWhiteAndRed { get; init; }

    public required string LightHighWhiteAndRed { get; init; }

    public required string LightMediumWhite { get; init; }

    public required string LightHighWhite { get; init; }

    public required string LightFlood { get; init; }

    public required string LightCatenary { get; init; }

    public required string LightRedTogether { get; init; }

    public required string LightLit { get; init; }

    public required string MarkingUnknown { get; init; }

    public required string MarkingNone { get; init; }

    public required string MarkingOrangeAndWhite { get; init; }

    public required string MarkingWhite { get; init; }

    public required string MarkingMarked { get; init; }

    public required string MarkingFlag { get; init; }

    public required string MarkingSpheres { get; init; }

    public required string StillThere { get; init; }

    public required string Gone { get; init; }

    public required string NewTitle { get; init; }

    public required string NameAsk { get; init; }

    public required string KindAsk { get; init; }

    public required string NearAsk { get; init; }

    public required string HeightAsk { get; init; }

    public required string HeightKey { get; init; }

    public required string Keep { get; init; }

    public required string SeenMark { get; init; }

    public required string ThereMark { get; init; }

    public required string GoneMark { get; init; }

    public required string Open { get; init; }
}
