using System.Globalization;
using Watersown.Land;

namespace Watersown.Weather;

public sealed class SunReference
{
    // Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, 2004, rev. 2008, Table A5.1, read in a document that reproduces
    // it: 17 October 2003, 12:30:30, UTC−7, 105.1786° W. The product's equations are the low-precision ones, hence the tolerance.
    [Fact]
    public void The_sun_stands_where_a_precise_algorithm_puts_it()
    {
        var sun = Sun.At(new DateTimeOffset(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7)));
        Assert.Equal(-9.31434, sun.Declination, 0.002);
        Assert.Equal(14.6415, sun.EquationOfTime.TotalMinutes, 0.006);
        var minutes = (12 * 60) + 30.5 + sun.EquationOfTime.TotalMinutes + (4 * -105.1786) + (7 * 60);
        Assert.Equal(11.1059, (minutes / 4) - 180, 0.003);
    }

    // Meeus, Astronomical Algorithms, 2nd ed. 1998, Example 25.a, from memory: 13 October 1992, 0 h.
    [Fact]
    public void The_declination_of_a_textbook_day_agrees() =>
        Assert.Equal(-7.78507, Sun.At(new DateTimeOffset(1992, 10, 13, 0, 0, 0, TimeSpan.Zero)).Declination, 0.0001);

    // NOAA solar calculation sheet, first row of its day form, derived: 21 June 2010, 00:06, UTC−7.
    [Fact]
    public void The_declination_of_midsummer_agrees()
    {
        var sun = Sun.At(new DateTimeOffset(2010, 6, 21, 0, 6, 0, TimeSpan.FromHours(-7)));
        Assert.Equal(23.43837, sun.Declination, 0.00001);
        Assert.Equal(-1.71537, sun.EquationOfTime.TotalMinutes, 0.00001);
    }

    // The same day at 40° N 105° W, derived: rise 04:31:16, noon 12:01:43, set 19:32:09 with the sun's place of shortly after
    // midnight; twelve hours later the equation of time is 6.5 s more.
    [Fact]
    public void Midsummer_at_forty_north_agrees()
    {
        var answer = Ask.For("sun", ("lat_deg", 40), ("lon_deg", -105), ("date", "2010-06-21"), ("utc_offset_h", -7));
        Near("04:31:16", answer.Text("sunrise"), 8);
        Near("19:32:09", answer.Text("sunset"), 8);
    }

    // NOAA solar calculation sheet, year form, read in a public program that tabulates it: sunrise on the 8th of each month of 2022
    // at 50.50° N 3.16° E, UTC+1, in minutes after midnight.
    [Theory]
    [InlineData(1, 526)]
    [InlineData(2, 491)]
    [InlineData(3, 436)]
    [InlineData(4, 368)]
    [InlineData(5, 310)]
    [InlineData(6, 277)]
    [InlineData(7, 286)]
    [InlineData(8, 325)]
    [InlineData(9, 372)]
    [InlineData(10, 419)]
    [InlineData(11, 470)]
    [InlineData(12, 515)]
    public void A_year_of_sunrises_agrees(int month, int minutes)
    {
        var sunrise = Sun.On(new DateOnly(2022, month, 8), new GeoPoint(50.50, 3.16)).Sunrise!.Value;
        Assert.Equal(minutes, (sunrise.TimeOfDay + TimeSpan.FromHours(1)).TotalMinutes, 0.6);
    }

    // Derived from the NOAA equations at noon: 39.4° N 122.0° W, UTC−8, 1 May 2025, 05:08:20 to 19:01:44, 13.890 h; day lengths of
    // 20 April and 21 June.
    [Fact]
    public void A_rice_valley_agrees()
    {
        var answer = Ask.For("sun", ("lat_deg", 39.4), ("lon_deg", -122.0), ("date", "2025-05-01"), ("utc_offset_h", -8));
        Near("05:08:20", answer.Text("sunrise"), 3);
        Near("19:01:44", answer.Text("sunset"), 3);
        Assert.Equal(13.890, answer.Number("day_length_h"), 0.001);
        Assert.Equal(13.469, Sun.On(new DateOnly(2025, 4, 20), new GeoPoint(39.4, -122)).DayLength.TotalHours, 0.001);
        Assert.Equal(14.950, Sun.On(new DateOnly(2025, 6, 21), new GeoPoint(39.4, -122)).DayLength.TotalHours, 0.001);
    }

    // PyEphem, which follows the sun through the day; see tests/Reference/sun/SOURCE.md.
    [Fact]
    public void Drawn_places_and_days_agree_with_an_independent_almanac()
    {
        var rows = 0;
        foreach (var row in ReferenceFile.Rows("sun"))
        {
            rows++;
            var day = DateOnly.ParseExact(row["date"], "yyyy-MM-dd", CultureInfo.InvariantCulture);
            var sun = Sun.On(day, new GeoPoint(Figure(row, "lat_deg"), Figure(row, "lon_deg")));
            var midnight = new DateTimeOffset(day.Year, day.Month, day.Day, 0, 0, 0, TimeSpan.Zero);
            Assert.Equal(Figure(row, "noon_s"), (sun.Noon - midnight).TotalSeconds, 5.0);
            Assert.Equal(Figure(row, "civil_dawn_s"), (sun.CivilDawn!.Value - midnight).TotalSeconds, 45.0);
            Assert.Equal(Figure(row, "sunrise_s"), (sun.Sunrise!.Value - midnight).TotalSeconds, 45.0);
            Assert.Equal(Figure(row, "sunset_s"), (sun.Sunset!.Value - midnight).TotalSeconds, 45.0);
            Assert.Equal(Figure(row, "civil_dusk_s"), (sun.CivilDusk!.Value - midnight).TotalSeconds, 45.0);
        }

        Assert.Equal(120, rows);
    }

    private static double Figure(IReadOnlyDictionary<string, string> row, string column) => double.Parse(row[column], CultureInfo.InvariantCulture);

    private static void Near(string expected, string actual, double seconds) =>
        Assert.Equal(TimeSpan.Parse(expected, CultureInfo.InvariantCulture).TotalSeconds, TimeSpan.Parse(actual, CultureInfo.InvariantCulture).TotalSeconds, seconds);
}
