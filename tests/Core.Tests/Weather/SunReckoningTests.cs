using CsCheck;
using Watersown.Land;
using Watersown.Reckon;

namespace Watersown.Weather;

public sealed class SunReckoningTests
{
    // Common practice, no source: what a crew at 39° N 122° W expects on 8 May, UTC−7: sunrise about 06:02, civil dawn about 05:33.
    [Fact]
    public void A_day_of_sowing_starts_when_the_crew_expects_it()
    {
        var answer = Day(39, -122, "2026-05-08", -7);
        Assert.StartsWith("06:0", answer.Text("sunrise"), StringComparison.Ordinal);
        Assert.StartsWith("05:3", answer.Text("civil_dawn"), StringComparison.Ordinal);
        Assert.True(string.CompareOrdinal(answer.Text("sunset"), answer.Text("civil_dusk")) < 0);
    }

    // Derived: at 75° north the midsummer sun stays up and the midwinter sun stays under −6° too.
    [Fact]
    public void Where_the_sun_stays_up_there_is_no_sunrise()
    {
        var answer = Day(75, 20, "2026-06-21", 2);
        foreach (var key in new[] { "sunrise", "sunset", "civil_dawn", "civil_dusk" }) Assert.Equal(Datum.None, answer.Answer(key));
        Assert.Equal(24, answer.Number("day_length_h"));
        Assert.Contains("The sun stays up all day: it neither rises nor sets.", answer.Value.Cautions, StringComparer.Ordinal);
        Assert.Contains("It stays light all night: there is no civil dawn or dusk.", answer.Value.Cautions, StringComparer.Ordinal);
    }

    [Fact]
    public void Where_the_sun_stays_down_there_is_no_sunrise()
    {
        var answer = Day(75, 20, "2026-12-21", 1);
        foreach (var key in new[] { "sunrise", "sunset", "civil_dawn", "civil_dusk" }) Assert.Equal(Datum.None, answer.Answer(key));
        Assert.Equal(0, answer.Number("day_length_h"));
        Assert.Contains("The sun stays down all day: it neither rises nor sets.", answer.Value.Cautions, StringComparer.Ordinal);
        Assert.Contains("It does not grow light: there is no civil dawn or dusk.", answer.Value.Cautions, StringComparer.Ordinal);
    }

    // Derived: at 69° north in December the sun stays down, but it grows light at noon.
    [Fact]
    public void A_sunless_day_can_still_grow_light()
    {
        var answer = Day(69, 20, "2026-12-21", 1);
        Assert.Equal(Datum.None, answer.Answer("sunrise"));
        Assert.NotEqual(Datum.None, answer.Answer("civil_dawn"));
        Assert.DoesNotContain(answer.Value.Cautions, c => c.Contains("civil dawn or dusk", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    public void At_the_poles_there_is_an_answer_every_day(double latitude)
    {
        for (var day = new DateOnly(2026, 1, 1); day.Year == 2026; day = day.AddDays(1))
            Assert.InRange(Sun.On(day, new GeoPoint(latitude, 0)).DayLength.TotalHours, 0, 24);
    }

    // Derived: at 64.5° north in June the sun sets after midnight by a clock an hour ahead of its zone.
    [Fact]
    public void A_sunset_after_midnight_is_told_as_the_next_day()
    {
        var answer = Day(64.5, -20, "2026-06-21", 0);
        Assert.StartsWith("00:", answer.Text("sunset"), StringComparison.Ordinal);
        Assert.Contains("Sunset falls after midnight, on the next day.", answer.Value.Cautions, StringComparer.Ordinal);
    }

    // Derived: 13 h ahead of UTC at 175° west is a whole turn and 10 degrees from the clock's own meridian, so noon comes 40
    // minutes after 12:00 less the 3½ of the equation of time; a May day at 21° south is 11.2 h.
    [Fact]
    public void Beyond_the_date_line_the_clock_tells_which_day()
    {
        var answer = Day(-21, -175, "2026-05-08", 13);
        Assert.StartsWith("12:36", ((Datum.Text)answer.Value.Working.Lines.Single(l => l.Symbol == "N").Value).Value, StringComparison.Ordinal);
        Assert.StartsWith("06:59", answer.Text("sunrise"), StringComparison.Ordinal);
        Assert.DoesNotContain(answer.Value.Cautions, c => c.Contains("midnight", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1900-12-31")]
    [InlineData("2100-01-01")]
    public void A_year_out_of_reach_is_refused(string date)
    {
        Day(39, -122, date, -7).Refuses((WeatherProblems.YearOutside, "date"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Sun.On(DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture), new GeoPoint(39, -122)));
    }

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("sun", ("lat_deg", 95), ("lon_deg", -200), ("date", "8 May"), ("utc_offset_h", 15)).Refuses(
            (ReckonProblems.TooLarge, "lat_deg"),
            (ReckonProblems.TooSmall, "lon_deg"),
            (ReckonProblems.WrongSort, "date"),
            (ReckonProblems.TooLarge, "utc_offset_h"));

    [Fact]
    public void Dawn_sunrise_noon_sunset_and_dusk_come_in_that_order() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-180, 180], Gen.Int[0, 70000]).Sample((latitude, longitude, days) =>
        {
            var sun = Sun.On(new DateOnly(1905, 1, 1).AddDays(days), new GeoPoint(latitude, longitude));
            return sun.CivilDawn < sun.Sunrise && sun.Sunrise < sun.Noon && sun.Noon < sun.Sunset && sun.Sunset < sun.CivilDusk;
        });

    [Fact]
    public void The_two_hemispheres_share_out_the_day() =>
        Gen.Select(Gen.Double[0, 50], Gen.Int[0, 70000]).Sample((latitude, days) =>
        {
            // Bent light and the sun's own width lengthen both days, by less than half an hour together up to 50°.
            var day = new DateOnly(1905, 1, 1).AddDays(days);
            var both = Sun.On(day, new GeoPoint(latitude, 0)).DayLength + Sun.On(day, new GeoPoint(-latitude, 0)).DayLength;
            return both.TotalHours is > 24 and < 24.5;
        });

    private static Outcome<Reckoned> Day(double latitude, double longitude, string date, double offset) =>
        Ask.For("sun", ("lat_deg", latitude), ("lon_deg", longitude), ("date", date), ("utc_offset_h", offset));
}
