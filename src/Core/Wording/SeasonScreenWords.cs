namespace Watersown.Wording;

/// <summary>Words of the season screens: the logbook, its search, corrections, plans side by side.</summary>
public sealed partial record SeasonScreenWords
{
    public required string Title { get; init; }

    public required string ToPlans { get; init; }

    public required string Search { get; init; }

    public required string SearchHint { get; init; }

    public required string Filters { get; init; }

    public required string FiltersOn { get; init; }

    public required string FiltersOff { get; init; }

    public required string AllFields { get; init; }

    public required string AllChecks { get; init; }

    public required string AllKinds { get; init; }

    public required string AllPeople { get; init; }

    public required string AllDevices { get; init; }

    public required string KindWord { get; init; }

    public required string PersonWord { get; init; }

    public required string DeviceWord { get; init; }

    public required string SureWord { get; init; }

    public required string AnySure { get; init; }

    public required string UnsentOnly { get; init; }

    public required string DoubtsOnly { get; init; }

    public required string OrderWord { get; init; }

    public required string ByHappened { get; init; }

    public required string ByEntered { get; init; }

    public required string KindWater { get; init; }

    public required string KindFaults { get; init; }

    public required string KindGround { get; init; }

    public required string KindHolds { get; init; }

    public required string KindSeed { get; init; }

    public required string KindFlight { get; init; }

    public required string KindWeather { get; init; }

    public required string KindScouting { get; init; }

    public required string KindHarvest { get; init; }

    public required string KindMoney { get; init; }

    public required string KindTold { get; init; }

    public required string KindPlans { get; init; }

    public required string KindNotes { get; init; }

    public required string KindTakenBack { get; init; }

    public required string KindNewer { get; init; }

    public required string Found { get; init; }

    public required string FoundOne { get; init; }

    public required string FoundNone { get; init; }

    public required string Nothing { get; init; }

    public required string Older { get; init; }

    public required string ShownOf { get; init; }

    public required string ThisDevice { get; init; }

    public required string LateBy { get; init; }

    public required string NotSent { get; init; }

    public required string Replaced { get; init; }

    public required string Withdrawn { get; init; }

    public required string LookAgain { get; init; }

    public required string InsteadOf { get; init; }

    public required string NowSays { get; init; }

    public required string TookBack { get; init; }

    public required string TakenBackBy { get; init; }

    public required string NotHere { get; init; }

    public required string NotUnderstood { get; init; }

    public required string More { get; init; }

    public required string MoreOf { get; init; }

    public required string Close { get; init; }

    public required string Happened { get; init; }

    public required string Entered { get; init; }

    public required string By { get; init; }

    public required string Device { get; init; }

    public required string Sure { get; init; }

    public required string Note { get; init; }

    public required string SentWord { get; init; }

    public required string SentYes { get; init; }

    public required string SentNo { get; init; }

    public required string Correct { get; init; }

    public required string TakeBack { get; init; }

    public required string PutBack { get; init; }

    public required string SaidTakeBack { get; init; }

    public required string SaidPutBack { get; init; }

    public required string SaidCorrect { get; init; }

    public required string NotYours { get; init; }

    public required string NotYourRole { get; init; }

    public required string CorrectLead { get; init; }

    public required string CorrectSays { get; init; }

    public required string CorrectNoText { get; init; }

    public required string CorrectWhen { get; init; }

    public required string CorrectWhenSame { get; init; }

    public required string CorrectWhenOther { get; init; }

    public required string CorrectNote { get; init; }

    public required string CorrectKeep { get; init; }

    public required string CorrectSame { get; init; }

    public required string CorrectOne { get; init; }

    public required string PlansTitle { get; init; }

    public required string PlansLead { get; init; }

    public required string PlansBack { get; init; }

    public required string PlansKept { get; init; }

    public required string PlansHeard { get; init; }

    public required string PlansNeverHeard { get; init; }

    public required string PlansTooFew { get; init; }

    public required string PlansNone { get; init; }

    public required string PlanOlder { get; init; }

    public required string PlanNewer { get; init; }

    public required string PlanNumber { get; init; }

    public required string PlanOption { get; init; }

    public required string PlanOptionAway { get; init; }

    public required string PlanAway { get; init; }

    public required string PlanFetch { get; init; }

    public required string PlanMade { get; init; }

    public required string PlanBy { get; init; }

    public required string PlanWhy { get; init; }

    public required string PlanCosts { get; init; }

    public required string PlanProved { get; init; }

    public required string PlanWithin { get; init; }

    public required string PlanSteps { get; init; }

    public required string SideBySide { get; init; }

    public required string Moved { get; init; }

    public required string MovedSum { get; init; }

    public required string MovedNone { get; init; }

    public required string Step { get; init; }

    public required string SowingMoved { get; init; }

    public required string SowingNone { get; init; }

    public required string OtherSteps { get; init; }

    public required string DecisionWord { get; init; }

    public required string InPlan { get; init; }

    public required string Difference { get; init; }

    public required string Later { get; init; }

    public required string Earlier { get; init; }

    public required string Altered { get; init; }

    public required string Added { get; init; }

    public required string Dropped { get; init; }

    public required string Passed { get; init; }

    public required string PassedFold { get; init; }

    public required string CostsWhat { get; init; }

    public required string CostDelay { get; init; }

    public required string CostHeadAge { get; init; }

    public required string CostIdleWater { get; init; }

    public required string CostSeedLost { get; init; }

    public required string CostFerry { get; init; }

    public required string CostUnsown { get; init; }

    public required string CostTotal { get; init; }

    public required string CostMore { get; init; }

    public required string CostLess { get; init; }

    public required string CostSame { get; init; }

    public required string DecisionsWhat { get; init; }

    public required string DecisionsNone { get; init; }

    public required string KnewTitle { get; init; }

    public required string KnewLead { get; init; }

    public required string KnewLate { get; init; }

    public required string KnewLateNone { get; init; }

    public required string KnewAfter { get; init; }

    public required string KnewAfterUpTo { get; init; }

    public required string KnewFields { get; init; }

    public required string KnewFieldsNone { get; init; }

    public required string KnownThen { get; init; }

    public required string KnownNow { get; init; }

    public required string ChecksWet { get; init; }

    public required string ToldTitle { get; init; }

    public required string ToldNone { get; init; }

    public required string ToldPerson { get; init; }

    public required string ToldWas { get; init; }

    public required string ToldNow { get; init; }

    public required string ToldSame { get; init; }

    public required string ToldGone { get; init; }

    public required string ShowMore { get; init; }

    public required string TextTitle { get; init; }

    public required string TextLead { get; init; }

    public required string TextLabel { get; init; }

    public required string TextFrom { get; init; }

    public required string TextMe { get; init; }

    public required string TextUnderstood { get; init; }

    public required string TextNothing { get; init; }

    public required string TextLost { get; init; }

    public required string TextKeepOne { get; init; }

    public required string TextKeep { get; init; }

    public required string TextKept { get; init; }

    public required string TextKeptOne { get; init; }

    public required string Doubts { get; init; }

    public required string DoubtsLead { get; init; }

    public required string DoubtsMore { get; init; }

    public required string DoubtsFewer { get; init; }
}
