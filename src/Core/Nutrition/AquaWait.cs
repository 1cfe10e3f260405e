namespace Watersown.Nutrition;

/// <summary>How long injected aqua has waited for water.</summary>
public enum AquaWaitBand
{
    Fine,
    Warn,
    Alarm,
}

/// <summary>Nitrogen in the ground and no water on it.</summary>
public static class AquaWait
{
    /// <summary>Longer than this is said.</summary>
    [Source(nameof(Sources.FarmDefault), "7 days")]
    public const int WarnDays = 7;

    /// <summary>Longer than this is an alarm.</summary>
    [Source(nameof(Sources.FarmDefault), "10 days")]
    public const int AlarmDays = 10;

    public static AquaWaitBand Of(int days) => days > AlarmDays ? AquaWaitBand.Alarm : days > WarnDays ? AquaWaitBand.Warn : AquaWaitBand.Fine;
}
