using CsCheck;
using Watersown.Reckon;

namespace Watersown.Flight;

public sealed class SpreadPatternProperties
{
    private static readonly Gen<double[]> Rows = Gen.Double[0, 20].Array[3, 40].Where(t => t.Sum() > 1);

    // Second implementation: the joined pattern sampled at 4,000 places of two swaths.
    [Fact]
    public void The_joined_form_agrees_with_adding_passes_up_place_by_place() => Gen.Select(Rows, Gen.Double[2, 40], Gen.Bool).Sample(
        (trays, swath, oneWay) =>
        {
            const int Places = 4_000;
            var mode = oneWay ? FlyingMode.OneWay : FlyingMode.BackAndForth;
            var deposit = Enumerable.Range(0, Places).Select(i => Pile(trays, (i + 0.5) * 2 * swath / Places, swath, oneWay)).ToArray();
            var mean = deposit.Average();
            var cv = Math.Sqrt(deposit.Sum(d => (d - mean) * (d - mean)) / Places) / mean;
            Assert.Equal(cv, Pattern(trays).Joined(Length.FromMeters(swath), mode).Cv.Share, 0.003);
        },
        iter: 60);

    [Fact]
    public void Turning_the_row_round_or_doubling_the_catch_changes_no_evenness() => Gen.Select(Rows, Gen.Int[4, 80]).Sample((trays, halfMeters) =>
    {
        var swath = Length.FromMeters(halfMeters / 2.0);
        double[] turned = [.. trays.Reverse()], doubled = [.. trays.Select(t => 2 * t)];
        foreach (var mode in new[] { FlyingMode.OneWay, FlyingMode.BackAndForth })
        {
            var here = Pattern(trays).Over(swath, mode);
            Assert.Equal(here.Cv.Share, Pattern(turned).Over(swath, mode).Cv.Share, 1e-9);
            Assert.Equal(here.Cv.Share, Pattern(doubled).Over(swath, mode).Cv.Share, 1e-9);
            Assert.Equal(2 * here.Mean.Kilograms, Pattern(doubled).Over(swath, mode).Mean.Kilograms, 1e-9);
        }
    });

    [Fact]
    public void A_pattern_even_on_both_sides_flies_alike_both_ways() => Gen.Select(Rows, Gen.Double[2, 40]).Sample((half, swath) =>
    {
        double[] trays = [.. half, .. half.Reverse()];
        var pattern = Pattern(trays);
        Assert.Equal(pattern.Joined(Length.FromMeters(swath), FlyingMode.OneWay).Cv.Share, pattern.Joined(Length.FromMeters(swath), FlyingMode.BackAndForth).Cv.Share, 1e-9);
    });

    [Fact]
    public void The_widest_swath_keeps_the_limit_and_no_wider_step_does() => Gen.Select(Rows, Gen.Double[0.05, 0.9], Gen.Bool).Sample(
        (trays, limit, oneWay) =>
        {
            var (pattern, mode) = (Pattern(trays), oneWay ? FlyingMode.OneWay : FlyingMode.BackAndForth);
            if (pattern.WidestWithin(Fraction.FromShare(limit), mode) is not { } widest) return;
            Assert.True(pattern.Joined(widest, mode).Cv.Share <= limit + 1e-9);
            for (var step = 1; step < 200; step++) Assert.True(pattern.Joined(Length.FromMeters(widest.Meters + (step * 0.05)), mode).Cv.Share > limit);
        },
        iter: 40);

    [Fact]
    public void A_swath_wider_than_the_pattern_says_that_strips_stay_bare()
    {
        double[] trays = [0, 2, 4, 4, 2, 0];
        static Outcome<Reckoned> At(double[] t, double swath) => Ask.For("pattern", ("tray_g", Ask.List(t)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(swath)));
        Assert.Contains(At(trays, 5).Value.Cautions, c => c.Contains("bare strips", StringComparison.Ordinal));
        Assert.DoesNotContain(At(trays, 4).Value.Cautions, c => c.Contains("bare strips", StringComparison.Ordinal));
        Assert.Contains(At(trays, 4).Value.Cautions, c => c.Contains("that aeroplane", StringComparison.Ordinal));
    }

    [Fact]
    public void The_counting_floor_stands_beside_the_pattern_when_a_grain_weight_is_given()
    {
        double[] trays = [2, 4, 6, 4, 2];
        var answer = Ask.For("pattern", ("tray_g", Ask.List(trays)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(3)), ("grams_per_1000", 30));
        Assert.Equal(100 / Math.Sqrt(6 / 0.030), answer.Rows("swaths")[0].Number("counting_floor_cv_pct"), 1e-9);
    }

    [Fact]
    public void Too_few_trays_or_empty_ones_are_refused()
    {
        Ask.For("pattern", ("tray_g", Ask.List(1, 2)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(3))).Refuses((ReckonProblems.Impossible, "tray_g"));
        Ask.For("pattern", ("tray_g", Ask.List(0, 0, 0)), ("tray_spacing_m", 1), ("tray_area_m2", 0.25), ("swaths_m", Ask.List(3))).Refuses((ReckonProblems.Impossible, "tray_g"));
        Assert.Throws<ArgumentException>(() => Pattern([0, 0, 0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pattern([1, 1]));
    }

    private static SpreadPattern Pattern(double[] trays) =>
        SpreadPattern.Of([.. trays.Select(SoakedSeed.FromKilograms)], Length.FromMeters(1), Area.FromSquareMeters(0.25));

    private static double Pile(double[] trays, double x, double swath, bool oneWay)
    {
        var (sum, half) = (0.0, (trays.Length + 1) / 2.0);
        for (var k = (int)Math.Floor((x - half) / swath); k <= Math.Ceiling((x + half) / swath); k++)
        {
            var away = x - (k * swath);
            if (!oneWay && k % 2 != 0) away = -away;
            var at = away + ((trays.Length - 1) / 2.0);
            for (var i = 0; i < trays.Length; i++) sum += trays[i] * Math.Max(0, 1 - Math.Abs(at - i));
        }

        return sum;
    }
}
