namespace Watersown.Flight;

/// <summary>Seed let go from a level pass.</summary>
/// <param name="Height">Above the water; above zero.</param>
/// <param name="Airspeed">Through the air, along the track; above zero.</param>
/// <param name="Terminal">Speed at which the seed would fall in still air; above zero.</param>
public sealed record SeedRelease(Length Height, Speed Airspeed, Speed Terminal)
{
    /// <summary>Positive from behind.</summary>
    public Speed WindAlong { get; init; }

    /// <summary>Positive from left to right of the track; the aeroplane holds its line.</summary>
    public Speed WindAcross { get; init; }

    public Speed Ground => Airspeed + WindAlong;
}

/// <summary>Where the seed comes down, from where it was let go.</summary>
/// <param name="Along">Over the ground ahead.</param>
/// <param name="Drift">Over the ground with the cross-wind.</param>
/// <param name="Fall">Time in the air.</param>
public sealed record Landing(Length Along, Length Drift, TimeSpan Fall);

/// <summary>
/// How far seed is thrown ahead and how far it drifts. The seed only: the spreader's vanes throw it sideways and slow it,
/// wing and propeller stir it in its first second, and only a measurement in the field fixes the real lead.
/// </summary>
public static class Throw
{
    private const double Gravity = 9.80665;
    private const double LongestStep = 0.001;

    // Share of the drag's own time scale that one step may span while the seed is still fast.
    private const double StepShare = 0.05;

    /// <summary>
    /// Falls with drag as the square of its speed through the air, coupled in all directions. Within 1 mm of the
    /// equations' own solution; the equations know still air layers only.
    /// </summary>
    [Source(nameof(Sources.QuadraticDrag), "dv/dt = g − (g / vt²) |v − w| (v − w)")]
    public static Landing Of(SeedRelease release)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(release.Height.Meters, 0, nameof(release));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(release.Terminal.MetersPerSecond, 0, nameof(release));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(release.Ground.MetersPerSecond, 0, nameof(release));
        var (k, h) = (Gravity / (release.Terminal.MetersPerSecond * release.Terminal.MetersPerSecond), release.Height.Meters);

        // In the moving air the seed starts with the airspeed along, and against the wind across. Sink is positive down.
        var motion = new Motion(release.Airspeed.MetersPerSecond, -release.WindAcross.MetersPerSecond, 0);
        double x = 0, y = 0, z = 0, t = 0;
        while (true)
        {
            var step = Math.Min(LongestStep, StepShare / (k * motion.Speed));
            var (next, path) = Advance(motion, k, step);
            if (z + path.Down >= h)
            {
                // The last step is cut at the water; over a millisecond the path is straight to far below a millimeter.
                var share = (h - z) / path.Down;
                (x, y, t) = (x + (share * path.Along), y + (share * path.Across), t + (share * step));
                break;
            }

            (x, y, z, t, motion) = (x + path.Along, y + path.Across, z + path.Down, t + step, next);
        }

        return new Landing(
            Length.FromMeters(x + (release.WindAlong.MetersPerSecond * t)),
            Length.FromMeters(y + (release.WindAcross.MetersPerSecond * t)),
            TimeSpan.FromSeconds(t));
    }

    /// <summary>How far before the edge the gate is commanded, to open or to shut, so that seed lands at the edge.</summary>
    /// <param name="release">The release, with the wind of this pass: opposite passes need different leads.</param>
    /// <param name="lag">From command to seed leaving.</param>
    [Source(nameof(Sources.Arithmetic), "ground speed × lag + throw over the ground")]
    public static Length GateLead(SeedRelease release, TimeSpan lag) => (release.Ground * lag) + Of(release).Along;

    /// <summary>Rate laid down over rate set, when the gate stays put and the airspeed is held while the wind is along.</summary>
    [Source(nameof(Sources.Arithmetic), "airspeed / ground speed")]
    [return: PlainNumber("rate laid down over rate set")]
    public static double FixedGateRate(SeedRelease release) => release.Airspeed / release.Ground;

    private static (Motion Next, Motion Path) Advance(Motion v, double k, double step)
    {
        var a1 = Pull(v, k);
        var v2 = v.Plus(a1, step / 2);
        var a2 = Pull(v2, k);
        var v3 = v.Plus(a2, step / 2);
        var a3 = Pull(v3, k);
        var v4 = v.Plus(a3, step);
        var a4 = Pull(v4, k);
        return (v.Plus(Weigh(a1, a2, a3, a4), step), default(Motion).Plus(Weigh(v, v2, v3, v4), step));
    }

    private static Motion Weigh(Motion a, Motion b, Motion c, Motion d) =>
        default(Motion).Plus(a, 1.0 / 6).Plus(b, 1.0 / 3).Plus(c, 1.0 / 3).Plus(d, 1.0 / 6);

    private static Motion Pull(Motion v, double k)
    {
        var drag = -k * v.Speed;
        return new Motion(drag * v.Along, drag * v.Across, Gravity + (drag * v.Down));
    }

    private readonly record struct Motion(double Along, double Across, double Down)
    {
        public double Speed => Math.Sqrt((Along * Along) + (Across * Across) + (Down * Down));

        public Motion Plus(Motion other, double times) =>
            new(Along + (other.Along * times), Across + (other.Across * times), Down + (other.Down * times));
    }
}
