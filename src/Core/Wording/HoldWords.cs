namespace Watersown.Wording;

/// <summary>Words of treatments and holds. None of them gives leave: what is typed is reckoned with, and who decides is named.</summary>
public sealed partial record HoldWords
{
    public required string Title { get; init; }

    public required string Open { get; init; }

    public required string Governs { get; init; }

    public required string Seepage { get; init; }

    public required string CountsAs { get; init; }

    public required string Ledger { get; init; }

    public required string NoneHeld { get; init; }

    public required string NotBefore { get; init; }

    public required string StandsLatest { get; init; }

    public required string HeldThrough { get; init; }

    public required string WouldHold { get; init; }

    public required string NoHoldTold { get; init; }

    public required string HoldsNothing { get; init; }

    public required string NoSpillNow { get; init; }

    public required string NoPhoto { get; init; }

    public required string NoReader { get; init; }

    public required string LongHold { get; init; }

    public required string NoticeOpen { get; init; }

    public required string NoticeLate { get; init; }

    public required string LetGoEarly { get; init; }

    public required string WentOut { get; init; }

    public required string Why { get; init; }

    public required string Reference { get; init; }

    public required string Collisions { get; init; }

    public required string CollisionsNone { get; init; }

    public required string Meets { get; init; }

    public required string HoldsOver { get; init; }

    public required string DaysLeft { get; init; }

    public required string NoDayLeft { get; init; }

    public required string Within { get; init; }

    public required string WantLowerFor { get; init; }

    public required string WantDrainFor { get; init; }

    public required string WantLower { get; init; }

    public required string WantPeg { get; init; }

    public required string WantDrain { get; init; }

    public required string To { get; init; }

    public required string Calendar { get; init; }

    public required string CalendarSaid { get; init; }

    public required string KeyHeld { get; init; }

    public required string KeyBooked { get; init; }

    public required string KeyWanted { get; init; }

    public required string KeyFree { get; init; }

    public required string KeyToday { get; init; }

    public required string Book { get; init; }

    public required string BookLead { get; init; }

    public required string AskField { get; init; }

    public required string AskProduct { get; init; }

    public required string AskFrom { get; init; }

    public required string AskUntil { get; init; }

    public required string AskDays { get; init; }

    public required string AskNeeds { get; init; }

    public required string NeedsNone { get; init; }

    public required string NeedsLower { get; init; }

    public required string NeedsDrain { get; init; }

    public required string AskWithin { get; init; }

    public required string RuleYes { get; init; }

    public required string RuleNo { get; init; }

    public required string AskNotice { get; init; }

    public required string MoreTyped { get; init; }

    public required string Registration { get; init; }

    public required string Active { get; init; }

    public required string Amount { get; init; }

    public required string LandTreated { get; init; }

    public required string Method { get; init; }

    public required string Applicator { get; init; }

    public required string HiredAsk { get; init; }

    public required string HiredYes { get; init; }

    public required string HiredNo { get; init; }

    public required string Recommendation { get; init; }

    public required string Permit { get; init; }

    public required string Reentry { get; init; }

    public required string PreHarvest { get; init; }

    public required string Leaves { get; init; }

    public required string Releases { get; init; }

    public required string LeastDepth { get; init; }

    public required string Buffer { get; init; }

    public required string WindLeast { get; init; }

    public required string WindMost { get; init; }

    public required string RuleText { get; init; }

    public required string EnteredBy { get; init; }

    public required string LabelPhoto { get; init; }

    public required string AsTyped { get; init; }

    public required string LeastDepthSaid { get; init; }

    public required string WindLeastSaid { get; init; }

    public required string WindMostSaid { get; init; }

    public required string Correct { get; init; }

    public required string KeepCorrected { get; init; }

    public required string BookButton { get; init; }

    public required string AppliedButton { get; init; }

    public required string AppliedToday { get; init; }

    public required string CallOff { get; init; }

    public required string Filed { get; init; }

    public required string Before { get; init; }

    public required string BringsNone { get; init; }

    public required string NotYet { get; init; }

    public required string Wish { get; init; }

    public required string WishKind { get; init; }

    public required string WishKeep { get; init; }

    public required string WishOver { get; init; }

    public required string Notices { get; init; }

    public required string NoticesLead { get; init; }

    public required string NoticesNone { get; init; }

    public required string FileBy { get; init; }

    public required string FiledAt { get; init; }

    public required string ReportBy { get; init; }

    public required string Settings { get; init; }

    public required string SetCounting { get; init; }

    public required string DayZero { get; init; }

    public required string DayOne { get; init; }

    public required string SetOffice { get; init; }

    public required string SetOfficeUntil { get; init; }

    public required string SetOwn { get; init; }

    public required string SetHired { get; init; }

    public required string SetKeep { get; init; }

    public required string MarkBooked { get; init; }

    public required string MarkApplied { get; init; }

    public required string MarkCalledOff { get; init; }

    public required string MarkHold { get; init; }

    public required string MarkWish { get; init; }

    public required string MarkWishOver { get; init; }

    public required string MarkGone { get; init; }

    public required string MarkSettings { get; init; }
}
