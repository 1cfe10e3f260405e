namespace Watersown.Flight;

/// <summary>
/// Evenness against closed forms (derived, each checked by numerical integration) and against two tray rows made up for
/// testing, whose sums were worked by hand.
/// </summary>
public sealed class SpreadPatternReference
{
    private static readonly double[] P1 = [0, 0.3, 0.8, 1.6, 2.7, 3.9, 4.8, 5.3, 5.6, 5.7, 5.8, 5.7, 5.6, 5.3, 4.8, 3.9, 2.7, 1.6, 0.8, 0.3, 0];
    private static readonly double[] P2 = [0, 0.2, 0.6, 1.3, 2.4, 3.8, 5.2, 6.3, 6.9, 6.6, 5.9, 5.3, 4.9, 4.6, 4.2, 3.6, 2.8, 1.9, 1.1, 0.5, 0.1];

    [Theory]
    [InlineData(8, 8.4000, 9.43, 9.43)]
    [InlineData(9, 7.4667, 11.61, 11.61)]
    [InlineData(10, 6.7200, 10.02, 10.02)]
    [InlineData(11, 6.1091, 5.34, 5.34)]
    [InlineData(12, 5.6000, 1.79, 1.79)]
    [InlineData(13, 5.1692, 9.79, 9.79)]
    [InlineData(14, 4.8000, 18.52, 18.52)]
    [InlineData(15, 4.4800, 27.33, 27.33)]
    public void The_first_row_of_trays(double swath, double mean, double oneWay, double backForth) => Trays(P1, swath, mean, oneWay, backForth);

    [Theory]
    [InlineData(8, 8.5250, 11.90, 11.68)]
    [InlineData(9, 7.5778, 14.71, 11.45)]
    [InlineData(10, 6.8200, 14.78, 9.92)]
    [InlineData(11, 6.2000, 13.53, 8.73)]
    [InlineData(12, 5.6833, 13.83, 11.26)]
    [InlineData(13, 5.2462, 17.70, 17.17)]
    [InlineData(14, 4.8714, 24.17, 24.44)]
    [InlineData(15, 4.5467, 31.68, 32.08)]
    public void The_second_row_of_trays_leans_left(double swath, double mean, double oneWay, double backForth) => Trays(P2, swath, mean, oneWay, backForth);

    [Fact]
    public void Trays_of_a_quarter_square_meter_tell_the_rate()
    {
        Assert.Equal(224.0, Row(Pattern(P1, [12]), 0).Number("rate_kg_ha"), 0.05);
        Assert.Equal(227.3, Row(Pattern(P2, [12]), 0).Number("rate_kg_ha"), 0.05);
    }

    // 268.8 g/m at 120 mph is 14.42 kg/s or 1,907 lb/min.
    [Fact]
    public void What_the_trays_caught_should_match_the_gate()
    {
        var answer = Ask.For("pattern", ("tray_g", Ask.List(P1)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(12)), ("speed_mph", 120));
        Assert.Equal(268.8, answer.Number("laid_g_per_m"), 0.05);
        Assert.Equal(1907, answer.Number("flow_lb_per_min"), 0.6);
    }

    [Theory]
    [InlineData(12, 1.68)]
    [InlineData(12.5, 5.47)]
    [InlineData(13, 9.55)]
    [InlineData(13.5, 13.81)]
    [InlineData(14, 18.15)]
    public void The_first_row_joined_by_straight_lines(double swath, double percent)
    {
        Assert.Equal(percent, Joined(P1, 1, swath, FlyingMode.OneWay), 0.005);
        Assert.Equal(percent, Joined(P1, 1, swath, FlyingMode.BackAndForth), 0.005);
    }

    [Theory]
    [InlineData(12, 13.49, 10.80)]
    [InlineData(12.5, 14.97, 13.46)]
    [InlineData(13, 17.30, 16.65)]
    [InlineData(13.5, 20.27, 20.17)]
    [InlineData(14, 23.67, 23.87)]
    public void The_second_row_joined_by_straight_lines(double swath, double oneWay, double backForth)
    {
        Assert.Equal(oneWay, Joined(P2, 1, swath, FlyingMode.OneWay), 0.005);
        Assert.Equal(backForth, Joined(P2, 1, swath, FlyingMode.BackAndForth), 0.005);
    }

    [Theory]
    [InlineData(1, 15, 13.60, 13.60)]
    [InlineData(2, 15, 12.50, 12.70)]
    [InlineData(1, 20, 14.20, 14.20)]
    [InlineData(2, 20, 13.45, 13.45)]
    public void The_widest_swath_within_a_limit(int row, double limit, double oneWay, double backForth)
    {
        var answer = Ask.For("pattern", ("tray_g", Ask.List(row == 1 ? P1 : P2)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(12)), ("cv_limit_pct", limit));
        var widest = (Datum.Table)answer.Answer("widest_swath_m_at_cv");
        Assert.Equal(oneWay, widest.Number("one_way"), 1e-9);
        Assert.Equal(backForth, widest.Number("back_forth"), 1e-9);
    }

    // Closed form: B / S = n + f, CV = sqrt(f (1 − f)) / (n + f).
    [Theory]
    [InlineData(20, 0)]
    [InlineData(24, 28.28427)]
    [InlineData(30, 35.35534)]
    [InlineData(32, 34.64102)]
    [InlineData(36, 28.28427)]
    [InlineData(40, 0)]
    [InlineData(44, 31.62278)]
    [InlineData(50, 50.00000)]
    [InlineData(60, 70.71068)]
    [InlineData(80, 100.00000)]
    public void A_uniform_strip_of_forty_trays(double swath, double percent)
    {
        var row = Row(Pattern([.. Enumerable.Repeat(10.0, 40)], [swath]), 0);
        Assert.Equal(percent, row.Number("cv_one_way_pct"), 0.001);
        Assert.Equal(percent, row.Number("cv_back_forth_pct"), 0.001);
    }

    // Closed form: CV² = s (2/3 + (2 − s)³/3) − 1 from s = 1 to 2; below 1, CV² = 2 Σ sinc⁴(k / s).
    [Theory]
    [InlineData(0.6, 4.00, 0.006)]
    [InlineData(0.75, 6.25, 0.006)]
    [InlineData(0.8, 5.16, 0.006)]
    [InlineData(0.9, 2.24, 0.006)]
    [InlineData(1.0, 0, 0.001)]
    [InlineData(1.1, 2.52, 0.006)]
    [InlineData(1.2, 6.93, 0.006)]
    [InlineData(1.25, 9.547, 0.001)]
    [InlineData(1.4, 18.48, 0.006)]
    [InlineData(1.5, 25.000, 0.001)]
    [InlineData(1.75, 41.93, 0.006)]
    [InlineData(2.0, 57.735, 0.001)]
    public void A_triangle(double swathOverHalfBase, double percent, double tolerance)
    {
        var triangle = Shape(x => Math.Max(0, 1 - (Math.Abs(x) / 8)), 8, 1);
        Assert.Equal(percent, Joined(triangle, 1, 8 * swathOverHalfBase, FlyingMode.OneWay), tolerance);
        Assert.Equal(percent, Joined(triangle, 1, 8 * swathOverHalfBase, FlyingMode.BackAndForth), tolerance);
    }

    // Closed form, top 12 m and slopes of 6 m.
    [Theory]
    [InlineData(18, 0)]
    [InlineData(19, 7.84)]
    [InlineData(20, 15.567)]
    [InlineData(21, 23.07)]
    [InlineData(22, 30.24)]
    [InlineData(23, 36.94)]
    [InlineData(24, 43.03)]
    public void A_trapezoid(double swath, double percent) =>
        Assert.Equal(percent, Joined(Shape(x => Math.Clamp((12 - Math.Abs(x)) / 6, 0, 1), 12, 1), 1, swath, FlyingMode.OneWay), 0.006);

    // Closed form: CV = sqrt(2 Σ exp(−4 π² k² σ² / S²)).
    [Theory]
    [InlineData(2, 1.02)]
    [InlineData(2.5, 6.01)]
    [InlineData(3, 15.776)]
    [InlineData(3.5, 28.23)]
    [InlineData(4, 41.20)]
    public void A_bell(double swathOverSigma, double percent) =>
        Assert.Equal(percent, Joined(Shape(x => Math.Exp(-x * x / 2), 7, 0.01), 0.01, swathOverSigma, FlyingMode.BackAndForth), 0.006);

    // Apex on the flight line, 6 m to the left and 12 m to the right.
    [Theory]
    [InlineData(6, 0, 0)]
    [InlineData(7, 4.04, 11.50)]
    [InlineData(8, 9.80, 22.33)]
    [InlineData(9, 14.434, 30.619)]
    [InlineData(10, 16.29, 36.13)]
    [InlineData(11, 17.18, 39.98)]
    [InlineData(12, 19.25, 43.03)]
    [InlineData(13, 23.63, 45.85)]
    [InlineData(14, 29.71, 48.69)]
    [InlineData(15, 36.64, 51.71)]
    public void A_skewed_triangle(double swath, double oneWay, double backForth)
    {
        var skew = Shape(x => Math.Max(0, x < 0 ? 1 + (x / 6) : 1 - (x / 12)), 12, 1);
        Assert.Equal(oneWay, Joined(skew, 1, swath, FlyingMode.OneWay), 0.006);
        Assert.Equal(backForth, Joined(skew, 1, swath, FlyingMode.BackAndForth), 0.006);
    }

    // Half-base 9 m, carried 2 m sideways.
    [Theory]
    [InlineData(8, 2.57, 30.95)]
    [InlineData(9, 0, 37.283)]
    [InlineData(10, 2.94, 41.05)]
    [InlineData(11, 8.06, 43.05)]
    [InlineData(12, 14.34, 44.15)]
    public void A_pattern_off_its_line_is_even_one_way_and_uneven_back_and_forth(double swath, double oneWay, double backForth)
    {
        var shifted = Shape(x => Math.Max(0, 1 - (Math.Abs(x - 2) / 9)), 12, 1);
        Assert.Equal(oneWay, Joined(shifted, 1, swath, FlyingMode.OneWay), 0.006);
        Assert.Equal(backForth, Joined(shifted, 1, swath, FlyingMode.BackAndForth), 0.006);
    }

    // Derived: 57.85 seeds/ft² on a 0.25 m² tray are 155.7 seeds, 8.0 %; on a square foot 13.1 %; on 0.1 m² 12.7 %.
    [Theory]
    [InlineData(155.7, 8.01, 0.01)]
    [InlineData(57.85, 13.1, 0.06)]
    [InlineData(62.27, 12.7, 0.06)]
    public void Chance_alone_shows_this_much(double seeds, double percent, double tolerance) =>
        Assert.Equal(percent, SpreadPattern.CountingFloor(seeds).Percent, tolerance);

    private static void Trays(double[] trays, double swath, double mean, double oneWay, double backForth)
    {
        var row = Row(Pattern(trays, [swath]), 0);
        Assert.Equal(swath, row.Number("swath_m"));
        Assert.Equal(mean, row.Number("mean_g"), 0.00005);
        Assert.Equal(oneWay, row.Number("cv_one_way_pct"), 0.005);
        Assert.Equal(backForth, row.Number("cv_back_forth_pct"), 0.005);
    }

    private static Outcome<Reckon.Reckoned> Pattern(double[] trays, double[] swaths) =>
        Ask.For("pattern", ("tray_g", Ask.List(trays)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(swaths)));

    private static Datum.Table Row(Outcome<Reckon.Reckoned> answer, int index) => answer.Rows("swaths")[index];

    private static double Joined(double[] trays, double spacing, double swath, FlyingMode mode) => SpreadPattern
        .Of([.. trays.Select(SoakedSeed.FromKilograms)], Length.FromMeters(spacing), Area.FromSquareMeters(1))
        .Joined(Length.FromMeters(swath), mode).Cv.Percent;

    // Trays inside ±half, so that joining them to nothing one spacing out gives the shape back.
    private static double[] Shape(Func<double, double> at, double half, double spacing)
    {
        var side = (int)Math.Round(half / spacing) - 1;
        return [.. Enumerable.Range(-side, (2 * side) + 1).Select(i => at(i * spacing))];
    }
}
