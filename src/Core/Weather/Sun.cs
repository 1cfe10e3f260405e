using Watersown.Land;

namespace Watersown.Weather;

/// <summary>Where the sun stands at a moment.</summary>
/// <param name="Declination">Degrees north of the equator.</param>
/// <param name="EquationOfTime">What a sundial is ahead of a clock.</param>
public sealed record SunPlace([property: PlainNumber("degrees")] double Declination, TimeSpan EquationOfTime);

/// <summary>
/// The sun over one day at a place, in UTC. A time is none where the sun does not cross that height: then
/// <see cref="DayLength"/> tells whether it stays up (24 h) or down (0 h).
/// </summary>
public sealed record SunDay
{
    public required DateTimeOffset Noon { get; init; }

    public DateTimeOffset? CivilDawn { get; init; }

    public DateTimeOffset? Sunrise { get; init; }

    public DateTimeOffset? Sunset { get; init; }

    public DateTimeOffset? CivilDusk { get; init; }

    /// <summary>Sunrise to sunset.</summary>
    public required TimeSpan DayLength { get; init; }

    /// <summary>Civil dawn to civil dusk.</summary>
    public required TimeSpan CivilLength { get; init; }

    public required SunPlace AtNoon { get; init; }
}

/// <summary>
/// Sunrise, sunset and civil twilight for flying and field work, on a flat horizon. The sun's place is reckoned once, at local
/// noon, as almanac tables do: within 40 s of following it through the day up to 50° of latitude (120 places and days, see
/// tests/Reference/sun), less sure near the polar circles. Hills, and air that bends light more than usual, are not in it.
/// </summary>
public static class Sun
{
    /// <summary>The middle of the sun this far from overhead has its upper edge on the horizon, bent light counted.</summary>
    [Source(nameof(Sources.Meeus1998), "34′ bending + 16′ half width")]
    private const double RiseZenith = 90.833;

    /// <summary>Civil twilight: six degrees under the horizon.</summary>
    [Source(nameof(Sources.Definition), "civil twilight")]
    private const double CivilZenith = 96;

    private const double MinutesPerDegree = 4;
    private const int FirstYear = 1901;
    private const int LastYear = 2099;

    // The epoch J2000.0: noon of 2000 January 1.
    private static readonly DateTimeOffset J2000 = new(2000, 1, 1, 12, 0, 0, TimeSpan.Zero);

    /// <summary>Whether the equations hold for a day.</summary>
    public static bool Holds(DateOnly day) => day.Year is >= FirstYear and <= LastYear;

    /// <summary>The sun on the solar day whose noon lies nearest to noon of <paramref name="day"/> at that longitude.</summary>
    /// <param name="day">From 1901 to 2099.</param>
    /// <param name="place">A longitude beyond 180 reaches over the date line.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year is outside 1901 to 2099.</exception>
    [Source(nameof(Sources.Meeus1998), "ch. 25 and 28")]
    public static SunDay On(DateOnly day, GeoPoint place)
    {
        if (!Holds(day)) throw new ArgumentOutOfRangeException(nameof(day), day, "The sun is told from 1901 to 2099.");
        var midnight = new DateTimeOffset(day.Year, day.Month, day.Day, 0, 0, 0, TimeSpan.Zero);
        var sun = At(midnight.AddMinutes(720 - (MinutesPerDegree * place.Longitude)));
        var noon = midnight.AddMinutes(720 - (MinutesPerDegree * place.Longitude) - sun.EquationOfTime.TotalMinutes);
        var rise = HalfDay(RiseZenith, place.Latitude, sun.Declination);
        var civil = HalfDay(CivilZenith, place.Latitude, sun.Declination);
        return new SunDay
        {
            Noon = noon,
            CivilDawn = noon - civil.Crossing,
            Sunrise = noon - rise.Crossing,
            Sunset = noon + rise.Crossing,
            CivilDusk = noon + civil.Crossing,
            DayLength = rise.Length * 2,
            CivilLength = civil.Length * 2,
            AtNoon = sun,
        };
    }

    /// <summary>Where the sun stands at a moment; declination within 0.01°, equation of time within 2 s, from 1901 to 2099.</summary>
    [Source(nameof(Sources.Meeus1998), "ch. 25 and 28")]
    public static SunPlace At(DateTimeOffset moment)
    {
        var (declination, minutes) = Place((moment - J2000).TotalDays / 36525);
        return new SunPlace(declination, TimeSpan.FromMinutes(minutes));
    }

    // After Meeus ch. 25 and 28 in the NOAA form. g Julian centuries from J2000.0. Degrees: l0 mean longitude, m mean anomaly,
    // c equation of center, om moon's node, lam apparent longitude, eps obliquity; e eccentricity. Equation of time in minutes.
    private static (double Declination, double Minutes) Place(double g)
    {
        var l0 = 280.46646 + (g * (36000.76983 + (0.0003032 * g)));
        var m = 357.52911 + (g * (35999.05029 - (0.0001537 * g)));
        var e = 0.016708634 - (g * (0.000042037 + (0.0000001267 * g)));
        var c = (Sin(m) * (1.914602 - (g * (0.004817 + (0.000014 * g))))) + (Sin(2 * m) * (0.019993 - (0.000101 * g))) + (0.000289 * Sin(3 * m));
        var om = 125.04 - (1934.136 * g);
        var lam = l0 + c - 0.00569 - (0.00478 * Sin(om));
        var eps = 23 + ((26 + ((21.448 - (g * (46.815 + (g * (0.00059 - (0.001813 * g)))))) / 60)) / 60) + (0.00256 * Cos(om));
        var y = Math.Pow(Math.Tan(Radians(eps / 2)), 2);
        var time = (y * Sin(2 * l0)) - (2 * e * Sin(m)) + (4 * e * y * Sin(m) * Cos(2 * l0)) - (0.5 * y * y * Sin(4 * l0)) - (1.25 * e * e * Sin(2 * m));
        return (Math.Asin(Sin(eps) * Sin(lam)) * 180 / Math.PI, MinutesPerDegree * time * 180 / Math.PI);
    }

    // cos HA = cos z / (cos f cos d) − tan f tan d, with z, f, d the zenith, latitude and declination. Beyond 1 the sun stays
    // below that height all day; beyond −1 above it.
    private static (TimeSpan? Crossing, TimeSpan Length) HalfDay(double zenith, double latitude, double declination)
    {
        var cosine = (Cos(zenith) / (Cos(latitude) * Cos(declination))) - (Math.Tan(Radians(latitude)) * Math.Tan(Radians(declination)));
        if (cosine > 1) return (null, TimeSpan.Zero);
        if (cosine < -1) return (null, TimeSpan.FromHours(12));
        var half = TimeSpan.FromMinutes(MinutesPerDegree * Math.Acos(cosine) * 180 / Math.PI);
        return (half, half);
    }

    private static double Sin(double degrees) => Math.Sin(Radians(degrees));

    private static double Cos(double degrees) => Math.Cos(Radians(degrees));

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
