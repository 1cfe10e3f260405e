using CsCheck;

namespace Watersown.Growth;

public sealed class WarmthProperties
{
    private static readonly Gen<(double Low, double High, double Next, double Lower, double Span)> Days =
        Gen.Select(Gen.Double[-10, 25], Gen.Double[0.5, 25], Gen.Double[-10, 25], Gen.Double[0, 20], Gen.Double[1, 25])
            .Select((low, rise, next, lower, span) => (Hundredth(low), Hundredth(low) + Hundredth(rise), Hundredth(next), Hundredth(lower) + 0.0037, Hundredth(span) + 0.0011));

    // Readings to a hundredth and thresholds between them: a reading just on a threshold may be counted either way.
    private static double Hundredth(double value) => Math.Round(value, 2);

    // An independent way to the same number: step through the day and add up what each moment is worth.
    [Theory]
    [InlineData(WarmthMethod.SingleTriangle)]
    [InlineData(WarmthMethod.DoubleTriangle)]
    [InlineData(WarmthMethod.SingleSine)]
    [InlineData(WarmthMethod.DoubleSine)]
    [InlineData(WarmthMethod.Simple)]
    [InlineData(WarmthMethod.SimpleFloored)]
    public void Stepping_through_the_day_gives_the_same_warmth(WarmthMethod method) => Days.Sample(
        day =>
        {
            foreach (var cutoff in Enum.GetValues<Cutoff>())
            {
                var rule = new WarmthRule(method, C(day.Lower)) { Upper = C(day.Lower + day.Span), Cutoff = cutoff };
                var counted = Warmth.OfDay(C(day.Low), C(day.High), C(day.Next), rule).Celsius;
                var first = Stepped(method, cutoff, day.Low, day.High, day.Lower, day.Lower + day.Span);
                var second = Stepped(method, cutoff, day.Next, day.High, day.Lower, day.Lower + day.Span);
                var expected = rule.NeedsNextMorning ? (first + second) / 2 : first;
                Assert.Equal(expected, counted, 0.02);
            }
        },
        iter: 60);

    [Fact]
    public void More_warmth_never_counts_less_without_an_upper_threshold() => Days.Sample(day =>
    {
        foreach (var method in Enum.GetValues<WarmthMethod>())
        {
            var rule = new WarmthRule(method, C(day.Lower));
            Assert.True(Warmth.OfDay(C(day.Low + 1), C(day.High + 1), C(day.Next), rule) >= Warmth.OfDay(C(day.Low), C(day.High), C(day.Next), rule));
            Assert.True(Warmth.OfDay(C(day.Low), C(day.High), C(day.Next), rule) >= DegreeDays.Zero);
        }
    });

    [Fact]
    public void A_stricter_cutoff_never_counts_more() => Days.Sample(day =>
    {
        foreach (var method in Enum.GetValues<WarmthMethod>())
        {
            DegreeDays With(Cutoff cutoff) => Warmth.OfDay(C(day.Low), C(day.High), C(day.Next), new WarmthRule(method, C(day.Lower)) { Upper = C(day.Lower + day.Span), Cutoff = cutoff });
            Assert.True(With(Cutoff.Intermediate).Celsius <= With(Cutoff.Horizontal).Celsius + 1e-12);
            Assert.True(With(Cutoff.Vertical).Celsius <= With(Cutoff.Horizontal).Celsius + 1e-12);
        }
    });

    private static double Stepped(WarmthMethod method, Cutoff cutoff, double from, double to, double lower, double upper)
    {
        const int Steps = 20_000;
        double mn = Math.Min(from, to), mx = Math.Max(from, to), sum = 0;
        for (var i = 0; i < Steps; i++)
        {
            var way = (i + 0.5) / Steps;
            var t = method switch
            {
                WarmthMethod.Simple => (mn + mx) / 2,
                WarmthMethod.SimpleFloored => way < 0.5 ? mn : mx,
                WarmthMethod.SingleTriangle or WarmthMethod.DoubleTriangle => mn + ((mx - mn) * way),
                _ => ((mn + mx) / 2) - ((mx - mn) / 2 * Math.Cos(Math.PI * way)),
            };
            sum += t <= lower ? 0 : t <= upper ? t - lower : cutoff switch
            {
                Cutoff.Horizontal => upper - lower,
                Cutoff.Intermediate => upper - lower - (t - upper),
                _ => 0,
            };
        }

        return cutoff == Cutoff.Intermediate ? Math.Max(0, sum / Steps) : sum / Steps;
    }

    private static Temperature C(double value) => Temperature.FromCelsius(value);
}
