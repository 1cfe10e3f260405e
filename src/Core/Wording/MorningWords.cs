namespace Watersown.Wording;

/// <summary>Words of the Morning page.</summary>
public sealed partial record MorningWords
{
    /// <summary>Heading of the page.</summary>
    public required string Title { get; init; }

    public required string TitleOf { get; init; }

    /// <summary>Said where no plan has been heard of yet.</summary>
    public required string NoPlan { get; init; }

    public required string PlanOf { get; init; }

    /// <summary>One morning with nothing to sow.</summary>
    public required string MorningNone { get; init; }

    public required string MorningOne { get; init; }

    public required string MorningMany { get; init; }

    /// <summary>Nothing stands against it, and the plan sows nothing.</summary>
    public required string NotPlanned { get; init; }

    public required string Today { get; init; }

    /// <summary>Above the last safe moment.</summary>
    public required string CannotAfter { get; init; }

    public required string NothingDue { get; init; }

    public required string Left { get; init; }

    public required string WentBy { get; init; }

    public required string DueNow { get; init; }

    public required string Passed { get; init; }

    public required string PassedWhy { get; init; }

    public required string ThenDecide { get; init; }

    /// <summary>Over those that have an hour of their own.</summary>
    public required string ByTheirHour { get; init; }

    public required string LaterOnes { get; init; }

    public required string IfYouWait { get; init; }

    public required string WithWhom { get; init; }

    public required string CannotFly { get; init; }

    public required string Wind { get; init; }

    public required string GustWord { get; init; }

    public required string FromWord { get; init; }

    public required string SeenBy { get; init; }

    public required string SeenFarm { get; init; }

    public required string ForecastNow { get; init; }

    public required string ForecastOf { get; init; }

    public required string ForecastNone { get; init; }

    public required string ToldBy { get; init; }

    public required string ToldByNobody { get; init; }

    public required string NobodySaid { get; init; }

    public required string None { get; init; }

    /// <summary>The limit on steady wind, in the drawing.</summary>
    public required string LimitWind { get; init; }

    public required string OverSince { get; init; }

    public required string OverNow { get; init; }

    public required string WithinNow { get; init; }

    public required string WithinFrom { get; init; }

    public required string Limits { get; init; }

    public required string Over { get; init; }

    public required string Within { get; init; }

    public required string NoWord { get; init; }

    public required string PartOver { get; init; }

    public required string Tape { get; init; }

    public required string TapeKeyDark { get; init; }

    public required string TapeKeyOver { get; init; }

    public required string TapeKeyHours { get; init; }

    public required string TapeKeyCan { get; init; }

    public required string HourTable { get; init; }

    public required string From { get; init; }

    public required string Until { get; init; }

    public required string Steady { get; init; }

    public required string Gust { get; init; }

    public required string Against { get; init; }

    public required string PilotDecides { get; init; }

    public required string Sowing { get; init; }

    public required string SowingLead { get; init; }

    public required string SowingNone { get; init; }

    public required string Sow { get; init; }

    public required string SownThen { get; init; }

    public required string Can { get; init; }

    public required string FarGround { get; init; }

    public required string FarWater { get; init; }

    public required string FarSeed { get; init; }

    public required string FarPlane { get; init; }

    public required string FarWind { get; init; }

    public required string SownSum { get; init; }

    public required string AllFields { get; init; }

    public required string WaitOrder { get; init; }

    public required string WaitCut { get; init; }

    public required string WaitCall { get; init; }

    public required string WaitSoak { get; init; }

    public required string WaitDrain { get; init; }

    public required string WaitFlight { get; init; }

    public required string WaitDump { get; init; }

    public required string SayWater { get; init; }

    /// <summary>One field's seed in a call.</summary>
    public required string SaySeed { get; init; }

    public required string SaySoak { get; init; }

    public required string SayForSowing { get; init; }

    public required string SayDrain { get; init; }

    public required string SayLongSoak { get; init; }

    public required string SayFlight { get; init; }

    public required string SayDump { get; init; }

    public required string Seed { get; init; }

    public required string SeedNone { get; init; }

    public required string SeedMore { get; init; }

    public required string Calls { get; init; }

    public required string CallsNone { get; init; }

    public required string CallsDone { get; init; }

    public required string Before { get; init; }

    public required string Ring { get; init; }

    public required string Text { get; init; }

    public required string Copy { get; init; }

    public required string Copied { get; init; }

    public required string NoPhone { get; init; }

    public required string StateToTell { get; init; }

    public required string StateTold { get; init; }

    public required string StateHeard { get; init; }

    public required string StateAgreed { get; init; }

    public required string StateNotReached { get; init; }

    /// <summary>How far a call has come, when and who put it down.</summary>
    public required string SaidAt { get; init; }

    public required string SaidVoice { get; init; }

    public required string CallChanged { get; init; }

    /// <summary>Before a line that was not said yet, where others were.</summary>
    public required string NewWords { get; init; }

    /// <summary>Over the buttons of a call, for those who listen.</summary>
    public required string HowFar { get; init; }

    public required string Odd { get; init; }

    public required string OddNone { get; init; }

    public required string OddMoved { get; init; }

    public required string OddDropped { get; init; }

    public required string OddOverdue { get; init; }

    public required string OddBlown { get; init; }

    public required string OddOldWater { get; init; }

    public required string OddFault { get; init; }

    public required string OddRefused { get; init; }

    public required string OddMore { get; init; }

    public required string LogbookDoubts { get; init; }

    /// <summary>Over the page of the last opening, until the desk is awake.</summary>
    public required string KeptLead { get; init; }

    /// <summary>A button that dials.</summary>
    public required string RingWho { get; init; }
}
