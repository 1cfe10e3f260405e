namespace Watersown.Wording;

/// <summary>Words of the page behind a link: what stands around the sheet, and the answers that can be tapped.</summary>
public sealed partial record LinkWords
{
    public required string For { get; init; }

    public required string PlanNow { get; init; }

    public required string Until { get; init; }

    public required string Moved { get; init; }

    public required string MovedFrom { get; init; }

    public required string NoLonger { get; init; }

    public required string NewStep { get; init; }

    public required string StepSow { get; init; }

    public required string StepFill { get; init; }

    public required string StepOrder { get; init; }

    public required string StepCall { get; init; }

    public required string StepSoak { get; init; }

    public required string StepDrain { get; init; }

    public required string StepHaul { get; init; }

    public required string Withdrawn { get; init; }

    public required string WithdrawnWhat { get; init; }

    public required string NoSheet { get; init; }

    public required string OtherFlights { get; init; }

    public required string Answer { get; init; }

    public required string RouteLead { get; init; }

    public required string AnswerRule { get; init; }

    public required string LoadGone { get; init; }

    public required string LoadsDone { get; init; }

    public required string Flown { get; init; }

    public required string Loads { get; init; }

    public required string PartFlown { get; init; }

    public required string ToCheck { get; init; }

    public required string NotFlying { get; init; }

    public required string Wind { get; init; }

    public required string Rain { get; init; }

    public required string Fog { get; init; }

    public required string OtherReason { get; init; }

    public required string InSoak { get; init; }

    public required string Drained { get; init; }

    public required string TrailerLeft { get; init; }

    public required string TrailerNumber { get; init; }

    public required string ScaleWeight { get; init; }

    public required string Check { get; init; }

    public required string Wet { get; init; }

    public required string Full { get; init; }

    public required string Depth { get; init; }

    public required string Agreed { get; init; }

    public required string Heard { get; init; }

    public required string Cannot { get; init; }

    public required string When { get; init; }

    public required string Now { get; init; }

    public required string HourAgo { get; init; }

    public required string ThreeHoursAgo { get; init; }

    public required string LastNight { get; init; }

    public required string Said { get; init; }

    public required string Undo { get; init; }

    public required string Undone { get; init; }

    public required string Thanks { get; init; }

    public required string NotUnderstood { get; init; }

    public required string Gone { get; init; }

    public required string GoneWhat { get; init; }

    public required string Print { get; init; }
}
