namespace Watersown.Growth;

public sealed class WarmthReference
{
    // F. G. Zalom and others, Degree-Days, University of California leaflet 21373, 1983, table 7: thresholds 55 and 90 °F,
    // horizontal cutoff; columns single triangle, double triangle, single sine, double sine, to the printed rounding.
    // The double triangle of (60, 100, next 75) is printed 24.88; the method gives 27.125 (derived), taken as a misprint.
    [Theory]
    [InlineData(96, 110, 91, 35, 35, 35, 35)]
    [InlineData(91, 105, 96, 35, 35, 35, 35)]
    [InlineData(45, 54, 38, 0, 0, 0, 0)]
    [InlineData(38, 50, 45, 0, 0, 0, 0)]
    [InlineData(60, 80, 75, 15, 18.75, 15, 18.75)]
    [InlineData(75, 88, 60, 26.5, 22.75, 26.5, 22.75)]
    [InlineData(50, 82, 45, 11.39, 10.62, 11.85, 11.31)]
    [InlineData(45, 70, 50, 4.50, 5.06, 5.31, 5.70)]
    [InlineData(60, 100, 75, 23.75, 27.125, 22.82, 26.26)]
    [InlineData(75, 95, 60, 29.38, 25.76, 28.91, 25.30)]
    [InlineData(50, 101, 48, 19.56, 19.19, 18.95, 18.69)]
    [InlineData(48, 95, 50, 16.76, 17.13, 16.96, 17.23)]
    public void The_leaflets_table_comes_out(double low, double high, double next, double singleTriangle, double doubleTriangle, double singleSine, double doubleSine)
    {
        Assert.Equal(singleTriangle, Fahrenheit(WarmthMethod.SingleTriangle), 0.0051);
        Assert.Equal(doubleTriangle, Fahrenheit(WarmthMethod.DoubleTriangle), 0.0051);
        Assert.Equal(singleSine, Fahrenheit(WarmthMethod.SingleSine), 0.0051);
        Assert.Equal(doubleSine, Fahrenheit(WarmthMethod.DoubleSine), 0.0051);

        double Fahrenheit(WarmthMethod method) => Warmth.OfDay(F(low), F(high), F(next), new WarmthRule(method, F(55)) { Upper = F(90) }).Fahrenheit;
    }

    // G. S. McMaster, W. W. Wilhelm, Agricultural and Forest Meteorology 87:291-300, 1997, table 1: base 0 °C, methods 1 and 2.
    [Theory]
    [InlineData(20, 10, 15, 15)]
    [InlineData(10, 1, 5.5, 5.5)]
    [InlineData(8, -2, 3, 4)]
    [InlineData(6, 0, 3, 3)]
    [InlineData(10, 5, 7.5, 7.5)]
    [InlineData(5, -5, 0, 2.5)]
    [InlineData(-2, -7, 0, 0)]
    [InlineData(-5, -10, 0, 0)]
    [InlineData(10, -2, 4, 5)]
    [InlineData(15, 2, 8.5, 8.5)]
    public void One_equation_has_two_readings(double high, double low, double mean, double floored)
    {
        Assert.Equal(mean, Ask.For("degree-days", ("method", "simple"), ("low", 0), ("high", Datum.None), ("cutoff", "horizontal"), ("tmin", low), ("tmax", high)).Number("degree_days"), 0.001);
        Assert.Equal(floored, Ask.For("degree-days", ("method", "simple-floored"), ("low", 0), ("high", Datum.None), ("cutoff", "horizontal"), ("tmin", low), ("tmax", high)).Number("degree_days"), 0.001);
    }

    // Derived: the integral of the sine course worked by hand for each cutoff, °F.
    [Theory]
    [InlineData(45, 80, 50, null, "horizontal", 13.314)]
    [InlineData(52, 91, 50, null, "horizontal", 21.500)]
    [InlineData(52, 91, 50, 90.0, "horizontal", 21.432)]
    [InlineData(52, 91, 50, 90.0, "intermediate", 21.364)]
    [InlineData(60, 98, 50, 90.0, "horizontal", 27.407)]
    [InlineData(60, 98, 50, 90.0, "intermediate", 25.814)]
    [InlineData(48, 72, 50, null, "horizontal", 10.247)]
    public void A_sine_day_is_worth_its_area(double low, double high, double lower, double? upper, string cutoff, double expected) =>
        Assert.Equal(expected, Ask.For("degree-days", ("method", "single-sine"), ("low", lower), ("high", Datum.Of(upper)), ("cutoff", cutoff), ("tmin", low), ("tmax", high)).Number("degree_days"), 0.002);

    // Derived: straight lines, by the areas of triangles. 60 to 100 °F spends (100 - 90)/40 of the day above 90.
    [Theory]
    [InlineData("horizontal", 23.75)]
    [InlineData("intermediate", 22.5)]
    [InlineData("vertical", 15.0)]
    public void A_triangle_day_is_cut_off_in_three_ways(string cutoff, double expected) =>
        Assert.Equal(expected, Ask.For("degree-days", ("method", "single-triangle"), ("low", 55), ("high", 90), ("cutoff", cutoff), ("tmin", 60), ("tmax", 100)).Number("degree_days"), 1e-9);

    // Derived: the mean of the day is 80 °F, below the upper threshold, though its highest is above it.
    [Theory]
    [InlineData("simple", "horizontal", 25)]
    [InlineData("simple", "vertical", 25)]
    [InlineData("simple-floored", "horizontal", 20)]
    [InlineData("simple-floored", "intermediate", 15)]
    [InlineData("simple-floored", "vertical", 2.5)]
    public void The_simple_methods_meet_the_upper_threshold_each_in_its_way(string method, string cutoff, double expected) =>
        Assert.Equal(expected, Ask.For("degree-days", ("method", method), ("low", 55), ("high", 90), ("cutoff", cutoff), ("tmin", 60), ("tmax", 100)).Number("degree_days"), 1e-9);

    private static Temperature F(double value) => Temperature.FromFahrenheit(value);
}
