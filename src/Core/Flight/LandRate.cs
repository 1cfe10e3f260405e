namespace Watersown.Flight;

/// <summary>Land covered while the gate is open.</summary>
public static class LandRate
{
    /// <summary>Land swept in time at a ground speed: turns, ferry and loading are not in it.</summary>
    [Source(nameof(Sources.UsArmyAcreageChart), "acres a minute = mph × ft / 495")]
    public static AreaRate Of(Speed ground, Length swath) => ground * swath;
}
