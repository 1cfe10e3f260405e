using Watersown.Reckon;

namespace Watersown.Flight.Patterns;

/// <summary>
/// What tray tests say, against two rows made up for testing whose answers were worked by hand, closed forms of a triangle, a trapezoid
/// and a uniform strip, and a drop of seeds counted out by chance.
/// </summary>
public sealed class TrayReadingTests
{
    private static readonly double[] P1 = [0, 0.3, 0.8, 1.6, 2.7, 3.9, 4.8, 5.3, 5.6, 5.7, 5.8, 5.7, 5.6, 5.3, 4.8, 3.9, 2.7, 1.6, 0.8, 0.3, 0];
    private static readonly double[] P2 = [0, 0.2, 0.6, 1.3, 2.4, 3.8, 5.2, 6.3, 6.9, 6.6, 5.9, 5.3, 4.9, 4.6, 4.2, 3.6, 2.8, 1.9, 1.1, 0.5, 0.1];

    // Made up for testing, worked by hand in steps of 0.05 m: 13.60 both; 12.50 and 12.70; 14.20; 13.45 both.
    [Theory]
    [InlineData(1, 15, 13.60, 13.60)]
    [InlineData(2, 15, 12.50, 12.70)]
    [InlineData(1, 20, 14.20, 14.20)]
    [InlineData(2, 20, 13.45, 13.45)]
    public void The_widest_swath_in_both_ways_of_flying(int row, double limit, double oneWay, double backForth)
    {
        var answer = Read(Test(row == 1 ? P1 : P2), limit, steering: 0);
        Assert.Equal(oneWay, answer.OneWay.Widest!.Value.Meters, 1e-9);
        Assert.Equal(backForth, answer.BackAndForth.Widest!.Value.Meters, 1e-9);
        Assert.Equal(answer.OneWay.Widest, answer.OneWay.Steady);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_steady_swath_keeps_the_limit_wherever_the_steering_puts_it(int row)
    {
        var test = Test(row == 1 ? P1 : P2);
        var steady = Read(test, 20, steering: 0.8).OneWay.Steady!.Value.Meters;
        for (var off = -16; off <= 16; off++) Assert.True(test.Pattern.Joined(Length.FromMeters(steady + (off * 0.05)), FlyingMode.OneWay).Cv.Percent <= 20 + 1e-9);
        Assert.True(test.Pattern.Joined(Length.FromMeters(steady + 0.85), FlyingMode.OneWay).Cv.Percent > 20);
    }

    // Ohio State B-817 (read): twice the distance to half the middle. Half of 5.8 g lies 5.833 m out; a triangle and a trapezoid are exact.
    [Fact]
    public void The_quick_rule_of_half_the_middle()
    {
        Assert.Equal(11.667, Read(Test(P1)).HalfMean!.Value.Meters, 0.001);
        Assert.Equal(8, Test(Shape(x => Math.Max(0, 1 - (Math.Abs(x) / 8)), 8)).Pattern.HalfMeanSwath!.Value.Meters, 1e-9);
        Assert.Equal(18, Test(Shape(x => Math.Clamp((12 - Math.Abs(x)) / 6, 0, 1), 12)).Pattern.HalfMeanSwath!.Value.Meters, 1e-9);
        Assert.Null(Test([1, 0, 0, 0, 1]).Pattern.HalfMeanSwath);
    }

    // Closed form: a triangle of half-base 9 m carried 2 m to the right. Back and forth at 9 m shows 37.283 %, one way 0.
    [Fact]
    public void A_pattern_beside_its_line_is_found_and_moving_the_lines_makes_back_and_forth_as_even_as_one_way()
    {
        var answer = Read(Test(Shape(x => Math.Max(0, 1 - (Math.Abs(x - 2) / 9)), 12)), 20);
        Assert.Equal(2, answer.Middle.Meters, 1e-9);
        Assert.Equal(2, answer.Offset!.ToLeft.Meters, 1e-9);
        Assert.Equal(answer.Pattern.Joined(answer.Offset.Swath, FlyingMode.OneWay).Cv.Percent, answer.Offset.After.Percent, 1e-6);
        Assert.True(answer.Offset.Before.Percent > 35);
        Assert.Null(Read(Test(P1)).Offset);
    }

    // The same trays told with their row two meters to the left lie on the line.
    [Fact]
    public void A_row_that_lay_beside_the_line_is_moved_back_onto_it()
    {
        var trays = Shape(x => Math.Max(0, 1 - (Math.Abs(x - 2) / 9)), 12);
        var test = Test(trays) with { Offset = Length.FromMeters(-2) };
        Assert.Equal(0, test.Pattern.Middle.Meters, 1e-9);
        Assert.Equal(0, test.Pattern.Joined(Length.FromMeters(9), FlyingMode.BackAndForth).Cv.Percent, 1e-6);
        Assert.Equal(0, test.Pattern.Over(Length.FromMeters(9), FlyingMode.BackAndForth).Cv.Percent, 1e-6);
        Assert.Equal(37.283, Test(trays).Pattern.Joined(Length.FromMeters(9), FlyingMode.BackAndForth).Cv.Percent, 0.001);
    }

    // Worked by hand: joined trays of the second row.
    [Theory]
    [InlineData(12, 13.49, 10.80)]
    [InlineData(13, 17.30, 16.65)]
    [InlineData(14, 23.67, 23.87)]
    public void The_Fourier_form_gives_the_same_in_both_ways_of_flying(double swath, double oneWay, double backForth)
    {
        var pattern = Test(P2).Pattern;
        Assert.Equal(oneWay, pattern.ByFourier(Length.FromMeters(swath), FlyingMode.OneWay).Percent, 0.006);
        Assert.Equal(backForth, pattern.ByFourier(Length.FromMeters(swath), FlyingMode.BackAndForth).Percent, 0.006);
        Assert.True(Read(Test(P2)).FourierDifference.Percent < 0.01);
    }

    // 268.8 g/m at 120 mph are 1,907 lb/min.
    [Fact]
    public void The_trays_are_held_against_the_gate()
    {
        var answer = Read(Test(P1) with { Speed = Speed.FromMilesPerHour(120), Gate = MassFlow.FromPoundsPerMinute(2000) });
        Assert.Equal(1907, answer.Laid!.Value.PoundsPerMinute, 0.6);
        Assert.Equal(0.9535, answer.Closure!.Value.Share, 0.0005);
        Assert.Null(Read(Test(P1)).Closure);
    }

    [Fact]
    public void Passes_are_averaged_tray_by_tray_and_what_each_alone_would_say_is_told()
    {
        var answer = Read(Test(P1, P2), 20);
        Assert.Equal((P1[8] + P2[8]) / 2, answer.Trays[8].Mean.Kilograms * 1000, 1e-9);
        Assert.Equal((5.6, 6.9), (Math.Round(answer.Trays[8].Least.Kilograms * 1000, 9), Math.Round(answer.Trays[8].Most.Kilograms * 1000, 9)));
        Assert.Equal(-2, answer.Trays[8].Across.Meters, 1e-9);
        Assert.Equal((13.45, 14.20), (Math.Round(answer.OneWay.OfPasses!.Value.Least.Meters, 9), Math.Round(answer.OneWay.OfPasses.Value.Most.Meters, 9)));
    }

    // 40 trays of a perfectly even drop, 40 seeds a tray by chance; at 10 m four passes lie on each place: all of what shows is chance.
    // Back and forth two of twenty cells lie across a mirror line and hold the same trays twice: (18 × 2/3 + 2) / 20 − 2/3 of 1/160 is
    // left, 1.44 % (derived).
    [Theory]
    [InlineData(FlyingMode.OneWay, 0)]
    [InlineData(FlyingMode.BackAndForth, 1.44)]
    public void An_even_drop_counted_out_by_chance_is_even_once_chance_is_taken_out(FlyingMode mode, double left)
    {
        const int Drops = 1500;
        var dice = new Random(20_260_508);
        var swath = Length.FromMeters(10);
        double square = 0;
        for (var i = 0; i < Drops; i++)
        {
            double[] row = [.. Enumerable.Range(0, 40).Select(_ => Poisson(dice, 40) * 0.027)];
            var cv = Test(row).Pattern.Joined(swath, mode).Cv.Share;
            square += cv * cv / Drops;
        }

        Assert.True(Math.Sqrt(square) > 0.05);
        Assert.Equal(left, TrayReading.WithoutChance(Fraction.FromShare(Math.Sqrt(square)), 160, 0.1).Percent, 0.9);
    }

    // A true 15 % seen with 160 seeds a tray: variances add.
    [Fact]
    public void Chance_is_taken_out_as_a_variance() =>
        Assert.Equal(15, TrayReading.WithoutChance(Fraction.FromShare(Math.Sqrt((0.15 * 0.15) + (2.0 / 3 / 160))), 160, 0).Percent, 1e-9);

    [Fact]
    public void Knowing_the_weight_of_a_grain_never_narrows_the_swath()
    {
        var plain = Read(Test(P2), 15).OneWay.Widest!.Value;
        var fair = Read(Test(P2) with { ThousandGrains = SoakedSeed.FromKilograms(0.030) }, 15).OneWay.Widest!.Value;
        Assert.True(fair > plain);
    }

    [Fact]
    public void Rows_that_differ_or_hold_nothing_are_no_test()
    {
        Assert.False(Test(P1, [1, 2, 3]).IsWhole);
        Assert.False(Test([0, 0, 0]).IsWhole);
        Assert.False(Test(P1, [.. P1.Select(_ => 0.0)]).IsWhole);
        Assert.Throws<ArgumentException>(() => Read(Test([1, 2])));
    }

    [Fact]
    public void The_reckoning_takes_rows_one_after_another_and_refuses_ragged_ones()
    {
        var answer = Ask.For("pattern", ("tray_g", Ask.List([.. P1, .. P2])), ("passes", 2), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(12)), ("cv_limit_pct", 20), ("speed_mph", 120), ("gate_lb_per_min", 2000));
        Assert.Equal(5.6417, answer.Rows("swaths")[0].Number("mean_g"), 0.0001);
        Assert.Equal(1907.0 / 2000 * (67.2 + 68.2) / 2 / 67.2, answer.Number("trays_over_gate"), 0.001);
        Ask.For("pattern", ("tray_g", Ask.List(P1)), ("passes", 2), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(12))).Refuses((ReckonProblems.Impossible, "tray_g"));
    }

    private static TrayAnswer Read(TrayTest test, double limit = 20, double steering = 1) => TrayReading.Of(test, new TrayAsk { Limit = Fraction.FromPercent(limit), Steering = Length.FromMeters(steering) });

    private static TrayTest Test(params double[][] passes) => new()
    {
        Day = new DateOnly(2026, 5, 8),
        Passes = [.. passes.Select(p => p.Select(g => SoakedSeed.FromKilograms(g / 1000)).ToImmutableArray())],
        Spacing = Length.FromMeters(1),
        Tray = Area.FromSquareMeters(0.25),
    };

    private static double[] Shape(Func<double, double> deposit, int reach) => [.. Enumerable.Range(-reach, (2 * reach) + 1).Select(x => deposit(x))];

    // Knuth's product of uniform numbers.
    private static int Poisson(Random dice, double mean)
    {
        var (count, product, end) = (0, dice.NextDouble(), Math.Exp(-mean));
        for (; product > end; count++) product *= dice.NextDouble();
        return count;
    }
}
