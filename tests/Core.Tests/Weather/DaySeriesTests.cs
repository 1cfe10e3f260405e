namespace Watersown.Weather;

public sealed class DaySeriesTests
{
    private static readonly DateOnly First = new(2026, 5, 1);

    private static readonly FarmNormals May = new([new MonthNormal(5, Temperature.FromFahrenheit(80), Temperature.FromFahrenheit(52))], "typed");

    private static KnownDay Day(int day, double high, double low) =>
        new(new DayWarmth(new DateOnly(2026, 5, day), Temperature.FromFahrenheit(high), Temperature.FromFahrenheit(low)), DayBasis.File, "station", At: null);

    [Fact]
    public void A_short_gap_takes_the_mean_of_its_neighbors_and_a_long_one_the_normal()
    {
        var series = DaySeries.Of([Day(1, 70, 50), Day(3, 80, 54), Day(7, 90, 60), Day(12, 70, 50)], May, First, new DateOnly(2026, 5, 13));
        Assert.Equal(
            "FNFNNNFOOOOFO",
            string.Concat(series.Select(d => d.Basis switch { DayBasis.File => 'F', DayBasis.Neighbors => 'N', DayBasis.Normal => 'O', _ => '?' })));
        Assert.Equal((75, 52), (series[1].Warmth.High.Fahrenheit, series[1].Warmth.Low.Fahrenheit), Near);
        Assert.Equal((85, 57), (series[4].Warmth.High.Fahrenheit, series[4].Warmth.Low.Fahrenheit), Near);
        Assert.Equal(66, series[8].Warmth.Mean.Fahrenheit, 1e-9);
    }

    [Fact]
    public void Where_nothing_fills_a_day_the_series_ends()
    {
        Assert.Equal(2, DaySeries.Of([Day(1, 70, 50), Day(2, 71, 51), Day(9, 80, 54)], FarmNormals.None, First, new DateOnly(2026, 5, 9)).Length);
        Assert.Equal(31, DaySeries.Of([], May, First, new DateOnly(2026, 6, 5)).Length);
    }

    [Fact]
    public void Normals_of_a_file_leave_out_months_of_few_days_and_later_ones_stand_in_for_earlier()
    {
        var days = Enumerable.Range(0, 40).Select(i => new WeatherDay(First.AddDays(i)) { High = Temperature.FromCelsius(20 + (i % 2)), Low = Temperature.FromCelsius(10) });
        var of = FarmNormals.Of(days, "file");
        Assert.Equal((5, 20 + (15 / 31.0)), (Assert.Single(of.Months).Month, of.Months[0].High.Celsius));
        var both = May.With(new FarmNormals([new MonthNormal(6, Temperature.FromFahrenheit(90), Temperature.FromFahrenheit(60))], "file"));
        Assert.Equal(([5, 6], "file; typed"), (both.Months.Select(m => m.Month), both.Source), EqualityComparer<(IEnumerable<int>, string)>.Create((a, b) => a.Item1.SequenceEqual(b.Item1) && a.Item2 == b.Item2, _ => 0));
    }

    [Fact]
    public void Runs_are_days_on_end() => Assert.Equal(
        [new DayRun(First, First.AddDays(2)), new DayRun(First.AddDays(4), First.AddDays(4))],
        DayRun.Of([First.AddDays(4), First, First.AddDays(2), First.AddDays(1), First]));

    private static readonly IEqualityComparer<(double, double)> Near = EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9, _ => 0);
}
