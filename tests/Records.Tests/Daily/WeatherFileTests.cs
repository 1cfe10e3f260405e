using System.Globalization;
using Watersown.Documents.Daily;
using Watersown.Weather;

namespace Watersown.Daily;

public sealed class WeatherFileTests
{
    private static Outcome<WeatherRead> Read(WeatherOptions options, params string[] lines) => WeatherFile.Read(lines, "days.csv", options);

    private static WeatherRead Good(params string[] lines) => Read(new WeatherOptions(), lines).Value;

    [Fact]
    public void Four_years_of_an_open_table_come_in_whole_and_in_its_own_units()
    {
        // Sums by Python's csv module from the same file: see SOURCE.md beside it.
        var read = WeatherFile.Read(File.ReadLines(ReferenceFile.PathOf("weather", "seattle-weather.csv")), "seattle-weather.csv", new WeatherOptions()).Value;
        Assert.Equal((1461, 0), (read.Days.Length, read.Missing.Length));
        var july = read.Days.Where(d => d.Day is { Year: 2012, Month: 7 }).ToList();
        Assert.Equal(22.906451612903226, july.Average(d => d.High!.Value.Celsius), 1e-9);
        Assert.Equal(12.93225806451613, july.Average(d => d.Low!.Value.Celsius), 1e-9);
        Assert.Equal(26.3, july.Sum(d => d.Rain!.Value.Millimeters), 1e-9);
        var may = FarmNormals.Of(read.Days, "x").Months.First(m => m.Month == 5);
        Assert.Equal((19.295967741935485, 9.614516129032259), (may.High.Celsius, may.Low.Celsius), Near);
    }

    [Fact]
    public void Warmth_above_ten_degrees_of_a_summer_of_that_table_adds_up()
    {
        // 784.4 °C·d from 10 May to 31 July 2015, by Python: sum of max(0, (max + min)/2 - 10).
        var read = WeatherFile.Read(File.ReadLines(ReferenceFile.PathOf("weather", "seattle-weather.csv")), "seattle-weather.csv", new WeatherOptions()).Value;
        var rule = new Watersown.Growth.WarmthRule(Watersown.Growth.WarmthMethod.Simple, Temperature.FromCelsius(10));
        var sum = read.Days.Where(d => d.Day >= new DateOnly(2015, 5, 10) && d.Day <= new DateOnly(2015, 7, 31)).Sum(d => Watersown.Growth.Warmth.OfDay(d.Low!.Value, d.High!.Value, null, rule).Celsius);
        Assert.Equal(784.4, sum, 1e-6);
    }

    [Theory]
    [InlineData("Date,Tmax (°F),Tmin (°F),Rain (in)", "2026-05-08,77,50,0.5")]
    [InlineData("fecha;máxima °C;mínima °C;lluvia mm", "2026-05-08;25;10;12.7")]
    [InlineData("station\tobservation date\tHigh degF\tlow degf\tprecip inches", "KX\t5/8/2026\t77\t50\t0.5")]
    [InlineData("day,min_temp_c,max_temp_c,precip_mm", "20260508,10,25,12.7")]
    [InlineData("\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\",\"TMAX\",\"TMAX_ATTRIBUTES\",\"TMIN\"", "\"US1\",\"2026-05-08\",\"127\",\",,N\",\"250\",\",,W\",\"100\"")]
    public void Headings_and_units_of_many_kinds_mean_the_same_day(string head, string line)
    {
        var day = Assert.Single(Good(head, line).Days);
        Assert.Equal(new DateOnly(2026, 5, 8), day.Day);
        Assert.Equal((25, 10), (day.High!.Value.Celsius, day.Low!.Value.Celsius), Near);
        Assert.Equal(12.7, day.Rain!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void A_scale_that_nothing_tells_is_asked_for_and_not_guessed()
    {
        Assert.Equal(WeatherFileProblems.NoScale, Assert.Single(Read(new WeatherOptions(), "date,tmax,tmin", "2026-05-08,77,50").Problems).Kind);
        Assert.Equal(25, Read(new WeatherOptions { Scale = WarmthScale.Fahrenheit }, "date,tmax,tmin", "2026-05-08,77,50").Value.Days[0].High!.Value.Celsius, 1e-9);
        Assert.Equal(WeatherFileProblems.NoColumn, Assert.Single(Read(new WeatherOptions(), "date,tmax_f", "2026-05-08,77").Problems).Kind);
    }

    [Fact]
    public void What_is_wrong_with_a_line_is_said_with_its_number_and_the_rest_is_read()
    {
        var read = Read(new WeatherOptions(), "date,tmax_f,tmin_f", "2026-05-08,77,50", "soon,1,2", "2026-05-09,x,51", "2026-05-10,50,77", "2026-05-11,300,50", "2026-05-12,,M", "2026-05-08,78,50");
        Assert.Equal(
            [(WeatherFileProblems.NotADay, "days.csv, line 3"), (WeatherFileProblems.NotANumber, "days.csv, line 4"), (WeatherFileProblems.Beyond, "days.csv, line 6"), (WeatherFileProblems.Twice, "days.csv, line 8"), (WeatherFileProblems.LowAboveHigh, "days.csv")],
            read.Problems.Select(p => (p.Kind, p.Where)));
        Assert.Equal(78, read.Value.Days[0].High!.Value.Fahrenheit, 1e-9);
        Assert.Equal([new DayRun(new DateOnly(2026, 5, 9), new DateOnly(2026, 5, 11))], read.Value.Missing);
    }

    [Fact]
    public void A_thousand_bad_lines_are_five_problems_and_a_number()
    {
        var read = Read(new WeatherOptions(), ["date,tmax_f,tmin_f", "2026-05-08,77,50", .. Enumerable.Repeat("never,1,1", 1000)]);
        Assert.Equal(6, read.Problems.Length);
        Assert.Equal((WeatherFileProblems.MoreLike, "995"), (read.Problems[^1].Kind, read.Problems[^1].Facts["value"]));
    }

    [Fact]
    public void Nothing_and_several_stations_are_refused()
    {
        Assert.Equal(WeatherFileProblems.NoDays, Assert.Single(Good2("").Problems).Kind);
        Assert.Equal(WeatherFileProblems.NoDays, Assert.Single(Good2("date,tmax_c,tmin_c").Problems).Kind);
        string[] two = ["station,date,tmax_c,tmin_c", "A,2026-05-08,25,10", "B,2026-05-08,26,11"];
        Assert.Equal(WeatherFileProblems.SeveralStations, Assert.Single(Good2(two).Problems, p => p.Kind.Weight == ProblemWeight.Refuse).Kind);
        Assert.Equal(26, Read(new WeatherOptions { Station = "b" }, two).Value.Days[0].High!.Value.Celsius, 1e-9);

        static Outcome<WeatherRead> Good2(params string[] lines) => Read(new WeatherOptions(), lines);
    }

    // Layout after the GHCN-Daily readme, section III: id 1-11, year 12-15, month 16-17, element 18-21, then value, three flags, 31 times.
    [Fact]
    public void The_fixed_form_of_GHCN_Daily_is_read_by_its_columns()
    {
        static string Line(string element, params (int Day, int Value, char Quality)[] values) =>
            "USW00099999202605" + element + string.Concat(Enumerable.Range(1, 31).Select(d => values.FirstOrDefault(v => v.Day == d) is { Day: > 0 } v
                ? v.Value.ToString(CultureInfo.InvariantCulture).PadLeft(5) + " " + v.Quality + "W" : "-9999   "));
        var read = Good(Line("TMAX", (1, 250, ' '), (2, 261, 'I'), (31, 311, ' ')), Line("TMIN", (1, -15, ' '), (2, 90, ' '), (31, 120, ' ')), Line("PRCP", (1, 127, ' ')), Line("SNOW", (1, 5, ' ')));
        Assert.Equal((WeatherForm.GhcnFixed, 1, "days.csv, GHCN-Daily station USW00099999"), (read.Form, read.Failed, read.Source));
        Assert.Equal([1, 2, 31], read.Days.Select(d => d.Day.Day));
        Assert.Equal((25, -1.5), (read.Days[0].High!.Value.Celsius, read.Days[0].Low!.Value.Celsius), Near);
        Assert.Null(read.Days[1].High);
        Assert.Equal([new DayRun(new DateOnly(2026, 5, 2), new DateOnly(2026, 5, 30))], read.Missing);
    }

    [Fact]
    public void Lines_of_station_day_and_element_are_read_too()
    {
        var read = Good("USW00099999,20260508,TMAX,250,,,W,", "USW00099999,20260508,TMIN,100,,,W,2400", "USW00099999,20260508,PRCP,127,T,,W,", "USW00099999,20260509,TMAX,999,,G,W,");
        Assert.Equal((WeatherForm.GhcnLines, 1), (read.Form, read.Failed));
        Assert.Equal(12.7, Assert.Single(read.Days).Rain!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void Hours_of_an_energy_file_become_days_and_months_of_different_years_are_what_is_usual()
    {
        string[] head = ["LOCATION,Upper Basin,-,XXX,TMY3,999999,39.1,-121.9,-8.0,20.0", "DESIGN CONDITIONS,0", "TYPICAL/EXTREME PERIODS,0", "GROUND TEMPERATURES,0", "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0", "COMMENTS 1,", "COMMENTS 2,", "DATA PERIODS,1,1,Data,Sunday,1/1,12/31"];
        static IEnumerable<string> Hours(int year, int month, int day) => Enumerable.Range(1, 24).Select(h => string.Create(CultureInfo.InvariantCulture, $"{year},{month},{day},{h},0,?9,{(h == 15 ? 31.4 : h == 5 ? 9.5 : h == 7 ? 99.9 : 20)},5,50,101300"));
        var one = Good([.. head, .. Hours(2026, 5, 8), .. Hours(2026, 5, 9).Take(12)]);
        Assert.Equal((WeatherForm.Epw, false), (one.Form, one.TypicalYear));
        var day = Assert.Single(one.Days);
        Assert.Equal((31.4, 9.5), (day.High!.Value.Celsius, day.Low!.Value.Celsius), Near);
        Assert.True(Good([.. head, .. Hours(1998, 5, 8), .. Hours(2003, 6, 8)]).TypicalYear);
    }

    private static readonly IEqualityComparer<(double, double)> Near = EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9, _ => 0);
}
