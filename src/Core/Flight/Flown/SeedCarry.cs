using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>What carries seed on from where the aeroplane was when the gate was told to turn.</summary>
/// <param name="Lag">From the signal to seed leaving.</param>
/// <param name="Height">Above the water; above zero.</param>
/// <param name="Terminal">Speed at which the seed would fall in still air; above zero.</param>
/// <param name="WindFrom">Where the wind comes from.</param>
/// <param name="Wind">How hard it blows.</param>
public sealed record SeedCarry(TimeSpan Lag, Length Height, Speed Terminal, Bearing WindFrom, Speed Wind)
{
    /// <summary>Taken where neither clock nor receiver tells how fast it flew.</summary>
    public Speed Ground { get; init; } = Speed.FromMilesPerHour(120);

    /// <summary>A run as it came down: on along its way by lag and throw, aside with the wind. A run that bends is moved as a whole.</summary>
    /// <param name="run">As flown.</param>
    /// <param name="known">Where the ends were worked out from the field's edge they already lie where seed was meant to fall: then aside alone.</param>
    [Source(nameof(Sources.QuadraticDrag), "ground speed × lag + throw along; drift across")]
    public FlownRun Landed(FlownRun run, GateKnown known)
    {
        var heading = Bearing.FromDegrees(Headings.Of(run.Line[0], run.Line[^1]));
        var ground = run.Speed ?? Ground;
        var off = WindFrom.Back.Radians - heading.Radians;
        var along = Wind * Math.Cos(off);
        if (ground <= along) return run;
        var landing = Throw.Of(new SeedRelease(Height, ground - along, Terminal) { WindAlong = along, WindAcross = Wind * Math.Sin(off) });
        var ahead = known == GateKnown.Told ? (ground * Lag).Meters + landing.Along.Meters : 0;
        var (sin, cos) = Math.SinCos(heading.Radians);
        var (east, north) = ((ahead * sin) + (landing.Drift.Meters * cos), (ahead * cos) - (landing.Drift.Meters * sin));
        return run with { Line = [.. run.Line.Select(p => new PlanePoint(p.East + east, p.North + north))] };
    }
}
