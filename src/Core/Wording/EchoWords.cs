namespace Watersown.Wording;

/// <summary>
/// Words that answer a text message. They are few, and chosen so that a text message written in them is understood again.
/// </summary>
public sealed partial record EchoWords
{
    public required string Check { get; init; }

    public required string Wet { get; init; }

    public required string Full { get; init; }

    public required string Dry { get; init; }

    public required string Reflooded { get; init; }

    public required string DepthCheck { get; init; }

    public required string Boards { get; init; }

    public required string Flow { get; init; }

    public required string SourceOn { get; init; }

    public required string SourceOff { get; init; }

    public required string Curtailed { get; init; }

    public required string LeveeOut { get; init; }

    public required string LeveeOutAt { get; init; }

    public required string LeveeOutCheck { get; init; }

    public required string BoxLeaks { get; init; }

    public required string BoxLeaksSome { get; init; }

    public required string Broken { get; init; }

    public required string PumpWord { get; init; }

    public required string GateWord { get; init; }

    public required string Shrimp { get; init; }

    public required string Leaf { get; init; }

    public required string SeenNone { get; init; }

    public required string SeenSmall { get; init; }

    public required string SeenLarge { get; init; }

    public required string Note { get; init; }

    public required string NoteField { get; init; }

    public required string InSoak { get; init; }

    public required string Drained { get; init; }

    public required string Dumped { get; init; }

    public required string Trailer { get; init; }

    public required string Left { get; init; }

    public required string WithBatch { get; init; }

    public required string WithDry { get; init; }

    public required string WithWet { get; init; }

    public required string WithField { get; init; }

    public required string WithLoads { get; init; }

    public required string WithTrailer { get; init; }

    public required string Loaded { get; init; }

    public required string Sown { get; init; }

    public required string Resown { get; init; }

    public required string LoadGone { get; init; }

    public required string LoadGoneSome { get; init; }

    public required string StoodDown { get; init; }

    public required string StoodDownField { get; init; }

    public required string Wind { get; init; }

    public required string WindFrom { get; init; }

    public required string ToldWord { get; init; }

    public required string HeardWord { get; init; }

    public required string AgreedWord { get; init; }

    public required string NotReachedWord { get; init; }

    public required string Got { get; init; }

    public required string NotGot { get; init; }

    public required string WhichField { get; init; }

    public required string WhichOf { get; init; }

    public required string NoSuchField { get; init; }

    public required string WhichTrailer { get; init; }

    public required string WhichBatch { get; init; }

    public required string WhichCheck { get; init; }

    public required string WhichBox { get; init; }

    public required string WhichMessage { get; init; }

    public required string Nothing { get; init; }

    public required string Example { get; init; }

    public required string InchWord { get; init; }
}
