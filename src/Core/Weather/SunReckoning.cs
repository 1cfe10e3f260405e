using System.Globalization;
using Watersown.Land;
using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>When it is light.</summary>
internal static class SunReckoning
{
    /// <summary>Nearer the poles than this the sun grazes the horizon, and minutes become unsure.</summary>
    private const double UnsureLatitude = 60;

    private const double DegreesPerHour = 15;

    public static Reckoning Reckoning => new(
        "sun",
        "When does the sun rise and set, and when is it light enough to fly?",
        [
            new("lat_deg", KeyKind.Number, "°", "latitude, north positive") { Least = -90, Most = 90 },
            new("lon_deg", KeyKind.Number, "°", "longitude, east positive") { Least = -180, Most = 180 },
            new("date", KeyKind.Date, string.Empty, "day at the place"),
            new("utc_offset_h", KeyKind.Number, "h", "hours that the clock at the place is ahead of UTC") { Least = -12, Most = 14 },
        ],
        [
            new("sunrise", KeyKind.Text, string.Empty, "upper edge of the sun on a flat horizon") { NullMeans = "it does not rise or set" },
            new("sunset", KeyKind.Text, string.Empty, "the same in the evening") { NullMeans = "it does not rise or set" },
            new("civil_dawn", KeyKind.Text, string.Empty, "sun 6° under the horizon") { NullMeans = "it does not cross that" },
            new("civil_dusk", KeyKind.Text, string.Empty, "the same in the evening") { NullMeans = "it does not cross that" },
            new("day_length_h", KeyKind.Number, "h", "sunrise to sunset"),
        ],
        Sources.Meeus1998,
        "lat_deg=39.0 lon_deg=-122.0 date=2026-05-08 utc_offset_h=-7",
        Work)
    { Limits = "Years 1901 to 2099, flat horizon, within 40 s up to 50° of latitude. Times are local by the offset given; summer time is part of the offset." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var day = given.Date("date");
        if (!Sun.Holds(day)) return Outcome<Reckoned>.Refuse(WeatherProblems.YearOutside.At("date", ("value", given.Text("date"))));
        double latitude = given.Number("lat_deg"), longitude = given.Number("lon_deg");
        var offset = TimeSpan.FromHours(given.Number("utc_offset_h"));
        // Beyond the date line a clock may keep another day than its longitude would: the noon of the clock's day is wanted.
        var turns = Math.Round(((offset.TotalHours * DegreesPerHour) - longitude) / 360);
        var sun = Sun.On(day, new GeoPoint(latitude, longitude + (360 * turns)));
        var midnight = new DateTimeOffset(day.Year, day.Month, day.Day, 0, 0, 0, TimeSpan.Zero) - offset;
        var times = new Times(midnight, sun);
        var working = Working.Empty
            .Given("φ", "latitude", latitude, "°", "typed")
            .Given("λ", "longitude, east positive", longitude, "°", "typed")
            .Given("z", "clock ahead of UTC", offset.TotalHours, "h", "typed")
            .Step("δ", "declination of the sun at local noon", sun.AtNoon.Declination, "°", "sin δ = sin ε sin λs", Sources.Meeus1998.At("ch. 25"))
            .Step("E", "equation of time", sun.AtNoon.EquationOfTime.TotalMinutes, "min", "4° (y sin 2L − 2e sin M + 4ey sin M cos 2L − y²/2 sin 4L − 5/4 e² sin 2M)", Sources.Meeus1998.At("ch. 28"))
            .Step("N", "solar noon", times.Local(sun.Noon), string.Empty, "720 − 4 λ − E + 60 z, min", Sources.Meeus1998)
            .Step("H", "half of the day", sun.DayLength.TotalHours / 2, "h", "cos H = cos 90.833° / (cos φ cos δ) − tan φ tan δ", Sources.Meeus1998)
            .Step("T", "civil dawn to noon", sun.CivilLength.TotalHours / 2, "h", "the same with 96°", Sources.Definition.At("civil twilight"));
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("sunrise", times.Local(sun.Sunrise)),
                ("sunset", times.Local(sun.Sunset)),
                ("civil_dawn", times.Local(sun.CivilDawn)),
                ("civil_dusk", times.Local(sun.CivilDusk)),
                ("day_length_h", sun.DayLength.TotalHours),
            ],
            working)
        { Cautions = [.. Cautions(times, latitude)] });
    }

    private static IEnumerable<string> Cautions(Times times, double latitude)
    {
        var sun = times.Sun;
        if (sun.Sunrise is null) yield return sun.DayLength > TimeSpan.Zero ? "The sun stays up all day: it neither rises nor sets." : "The sun stays down all day: it neither rises nor sets.";
        if (sun.CivilDawn is null) yield return sun.CivilLength > TimeSpan.Zero ? "It stays light all night: there is no civil dawn or dusk." : "It does not grow light: there is no civil dawn or dusk.";
        foreach (var (moment, name) in new[] { (sun.CivilDawn, "Civil dawn"), (sun.Sunrise, "Sunrise"), (sun.Sunset, "Sunset"), (sun.CivilDusk, "Civil dusk") })
        {
            if (times.DayOf(moment) is var other and not 0) yield return name + (other > 0 ? " falls after midnight, on the next day." : " falls before midnight, on the day before.");
        }

        if (Math.Abs(latitude) > UnsureLatitude) yield return "So near the pole the sun grazes the horizon: take these times as within some minutes.";
        yield return "Hills, trees and fog are not in it.";
    }

    /// <summary>Moments as the clock at the place shows them on its day.</summary>
    /// <param name="Midnight">When that day begins.</param>
    /// <param name="Sun">The day's sun.</param>
    private sealed record Times(DateTimeOffset Midnight, SunDay Sun)
    {
        public Datum Local(DateTimeOffset? moment) => moment is null ? Datum.None : TimeOnly.MinValue.Add(Rounded(moment.Value)).ToString("HH:mm:ss", CultureInfo.InvariantCulture);

        /// <summary>Which day the moment falls on: 0 the day itself, 1 the next.</summary>
        public int DayOf(DateTimeOffset? moment) => moment is null ? 0 : (int)Math.Floor(Rounded(moment.Value).TotalDays);

        private TimeSpan Rounded(DateTimeOffset moment) => TimeSpan.FromSeconds(Math.Round((moment - Midnight).TotalSeconds));
    }
}
