namespace Watersown.Schedule;

/// <summary>The word for how far a field has come, as written in a farm document.</summary>
public static class StageWords
{
    public static string Of(FieldStage stage) => stage switch
    {
        FieldStage.TooWet => "too-wet",
        FieldStage.Unworked => "unworked",
        FieldStage.Chiselled => "chiseled",
        FieldStage.Disced => "disced",
        FieldStage.Planed => "planed",
        FieldStage.AquaOn => "aqua-on",
        FieldStage.Rolled => "rolled",
        FieldStage.Flooding => "flooding",
        FieldStage.Full => "full",
        FieldStage.Sown => "sown",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
