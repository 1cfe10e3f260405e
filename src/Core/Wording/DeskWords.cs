namespace Watersown.Wording;

/// <summary>Words of the desk itself: its pages, its controls, what is sent and what is kept.</summary>
public sealed partial record DeskWords
{
    public required string Ways { get; init; }

    public required string Skip { get; init; }

    public required string Morning { get; init; }

    public required string Land { get; init; }

    public required string Water { get; init; }

    public required string Seed { get; init; }

    public required string Flight { get; init; }

    public required string Schedule { get; init; }

    public required string Season { get; init; }

    public required string Settings { get; init; }

    public required string More { get; init; }

    public required string Less { get; init; }

    public required string Somebody { get; init; }

    public required string Unsent { get; init; }

    public required string AllSent { get; init; }

    public required string HostHeard { get; init; }

    public required string HostNever { get; init; }

    public required string SignIn { get; init; }

    public required string RefusedCount { get; init; }

    public required string NotKept { get; init; }

    public required string Newer { get; init; }

    public required string NewerUse { get; init; }

    public required string Undo { get; init; }

    public required string JustKept { get; init; }

    public required string KeptOn { get; init; }

    public required string AgeMinutes { get; init; }

    public required string AgeHours { get; init; }

    public required string AgeDays { get; init; }

    public required string Old { get; init; }

    public required string Ago { get; init; }

    public required string Ahead { get; init; }

    public required string KeptMorning { get; init; }

    public required string Working { get; init; }

    public required string WorkingOf { get; init; }

    public required string Open { get; init; }

    public required string Close { get; init; }

    public required string When { get; init; }

    public required string Now { get; init; }

    public required string HourAgo { get; init; }

    public required string ThreeHoursAgo { get; init; }

    public required string LastNight { get; init; }

    public required string Pick { get; init; }

    public required string PickLabel { get; init; }

    public required string PadBack { get; init; }

    public required string PadKeep { get; init; }

    public required string PadKeepNothing { get; init; }

    public required string PadShown { get; init; }

    public required string Sure { get; init; }

    public required string Measured { get; init; }

    public required string ToldSure { get; init; }

    public required string Guessed { get; init; }

    public required string DryWeight { get; init; }

    public required string WetWeight { get; init; }

    public required string StateDry { get; init; }

    public required string StateGround { get; init; }

    public required string StateFilling { get; init; }

    public required string StateFull { get; init; }

    public required string StateSoaking { get; init; }

    public required string StateDrained { get; init; }

    public required string StateSown { get; init; }

    public required string StateCan { get; init; }

    public required string StateWind { get; init; }

    public required string StateSpent { get; init; }

    public required string StatePlane { get; init; }

    public required string StateWater { get; init; }

    public required string StateSeed { get; init; }

    public required string StateUnknown { get; init; }

    public required string EmptyTitle { get; init; }

    public required string EmptyLead { get; init; }

    public required string EmptyTry { get; init; }

    public required string FarmUnread { get; init; }

    public required string NoPage { get; init; }

    public required string ToMorning { get; init; }

    public required string Look { get; init; }

    public required string Theme { get; init; }

    public required string ThemeSun { get; init; }

    public required string ThemeDay { get; init; }

    public required string ThemeNight { get; init; }

    public required string LanguageChoice { get; init; }

    public required string LanguageEnglish { get; init; }

    public required string LanguageSpanish { get; init; }

    public required string UnitsChoice { get; init; }

    public required string UnitsUs { get; init; }

    public required string UnitsMetric { get; init; }

    public required string SoundChoice { get; init; }

    public required string SoundOn { get; init; }

    public required string SoundOff { get; init; }

    public required string NameChoice { get; init; }

    public required string NameFromHost { get; init; }

    public required string NameKeep { get; init; }

    public required string Device { get; init; }

    public required string DeviceName { get; init; }

    public required string DeviceHolds { get; init; }

    public required string DeviceToSend { get; init; }

    public required string DeviceHost { get; init; }

    public required string DevicePlan { get; init; }

    public required string DevicePlanSaid { get; init; }

    public required string SendNow { get; init; }

    public required string Heard { get; init; }

    public required string HeardNobody { get; init; }

    public required string Person { get; init; }

    public required string LastMark { get; init; }

    public required string Refused { get; init; }

    public required string RefusedLead { get; init; }

    public required string RefusedWhy { get; init; }

    public required string RefusedAgain { get; init; }

    public required string RefusedLet { get; init; }

    public required string Mark { get; init; }
}
