using CsCheck;
using MathNet.Numerics;

namespace Watersown.Harvest;

public sealed class MoistureTrendTests
{
    private static readonly DateTimeOffset Start = new(2026, 9, 20, 10, 0, 0, TimeSpan.FromHours(-7));

    [Fact]
    public void One_sample_dries_as_published()
    {
        var trend = MoistureTrend.Of([new(Start, Fraction.FromPercent(24))])!;
        Assert.True(trend.IsPublished);
        // University of California, 2014: 0.4 to 0.8 points a day.
        Assert.Equal((0.004, 0.008), trend.Band);
        Assert.Equal(18, trend.On(Start.AddDays(10)).Percent, 1e-9);
        var (wet, dry) = trend.Between(Start.AddDays(10));
        Assert.Equal(20, wet.Percent, 1e-9);
        Assert.Equal(16, dry.Percent, 1e-9);
        Assert.Equal(Start.AddDays(5), trend.Reaches(Fraction.FromPercent(21)));
    }

    [Fact]
    public void Nothing_is_said_where_nothing_was_sampled() => Assert.Null(MoistureTrend.Of([]));

    [Fact]
    public void Grain_that_grows_wetter_reaches_no_drier_mark()
    {
        var trend = MoistureTrend.Of([new(Start, Fraction.FromPercent(17)), new(Start.AddDays(2), Fraction.FromPercent(19))])!;
        Assert.Null(trend.Reaches(Fraction.FromPercent(16)));
        Assert.True(trend.PerDay < 0);
    }

    [Fact]
    public void Old_samples_are_forgotten()
    {
        var trend = MoistureTrend.Of([new(Start.AddDays(-30), Fraction.FromPercent(40)), new(Start, Fraction.FromPercent(21)), new(Start.AddDays(2), Fraction.FromPercent(20))])!;
        Assert.Equal(2, trend.Samples);
        Assert.Equal(0.005, trend.PerDay, 1e-9);
    }

    // Against MathNet.Numerics' straight line by least squares.
    [Fact]
    public void The_line_is_the_one_of_a_general_library() =>
        Gen.Select(Gen.Int[3, 12], Gen.Int[0, 1000].Array[12], Gen.Int[1, 23].Array[12]).Sample((count, wet, hours) =>
        {
            var at = Start;
            var samples = ImmutableArray.CreateBuilder<MoistureSample>();
            for (var i = 0; i < count; i++)
            {
                at = at.AddHours(hours[i] + 3);
                samples.Add(new MoistureSample(at, Fraction.FromPercent(15 + (wet[i] / 100.0))));
            }

            var last = samples[^1].At;
            if (last - samples[0].At < TimeSpan.FromDays(1)) return;
            var trend = MoistureTrend.Of(samples.ToImmutable())!;
            var (level, slope) = Fit.Line([.. samples.Select(s => (s.At - last).TotalDays)], [.. samples.Select(s => s.Moisture.Share)]);
            Assert.Equal(-slope, trend.PerDay, 1e-9);
            Assert.Equal(level, trend.Latest.Moisture.Share, 1e-9);
            Assert.InRange(trend.PerDay, trend.Band.Slow, trend.Band.Fast);
        });
}
