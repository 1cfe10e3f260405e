using CsCheck;

namespace Watersown.Water;

/// <summary>Waves and their motion, against published worked figures and a working apart from this program.</summary>
public sealed class WavesReference
{
    // Young and Verhagen 1996, eqs 25 to 27, by a published code example: 21.9444 m/s over 53,890 m, 7 m deep: 1.6371 m.
    [Fact]
    public void A_lake_comes_out_as_published() =>
        Assert.Equal(1.6371, Waves.Of(Speed.FromMetersPerSecond(21.9444), Length.FromMeters(53890), WaterDepth.FromMeters(7)).Height.Meters, 1e-4);

    // Derived apart from the same laws and linear waves: 15 mph over a quarter mile, 4 in deep.
    [Fact]
    public void A_check_of_a_quarter_mile_comes_out_as_worked_apart()
    {
        var waves = Waves.Of(Speed.FromMetersPerSecond(6.7056), Length.FromMeters(402.336), WaterDepth.FromMeters(0.1016));
        Assert.Equal(0.04493, waves.Height.Meters, 1e-5);
        Assert.Equal(0.80974, waves.Period.TotalSeconds, 1e-5);
        Assert.Equal(0.7240, waves.Length.Meters, 1e-3);
        Assert.Equal(0.17425, waves.AtBed.MetersPerSecond, 1e-4);
    }

    // The Shore Protection Manual's law, eq. 3-39, worked apart: 0.03931 m; and four checks of 400 m rounded to the millimeter.
    [Theory]
    [InlineData(15, 402.336, 0.1016, 0.03931, 1e-4)]
    [InlineData(10, 400, 0.05, 0.019, 6e-4)]
    [InlineData(20, 400, 0.05, 0.029, 6e-4)]
    [InlineData(25, 400, 0.05, 0.033, 6e-4)]
    [InlineData(25, 400, 0.025, 0.020, 6e-4)]
    public void The_other_law_comes_out_as_worked_apart(double mph, double fetch, double depth, double height, double within) =>
        Assert.Equal(height, Waves.HeightByShoreManual(Speed.FromMilesPerHour(mph), Length.FromMeters(fetch), WaterDepth.FromMeters(depth)).Meters, within);

    // Soulsby 1997, Example 4.2: waves of 0.05 m and 1.0 s on 0.20 m move 0.128 m/s at the bed, read from a curve.
    [Fact]
    public void Motion_at_the_bed_comes_out_as_published() =>
        Assert.Equal(0.128, Waves.Moving(Length.FromMeters(0.05), TimeSpan.FromSeconds(1), WaterDepth.FromMeters(0.20)).AtBed.MetersPerSecond, 0.001);

    // Soulsby 1997, Example 4.1: 8 s on 10 m are 70.4 m long by his approximation, good to 0.75 %.
    [Fact]
    public void Length_comes_out_as_published() =>
        Assert.Equal(70.4, Waves.Moving(Length.FromMeters(1), TimeSpan.FromSeconds(8), WaterDepth.FromMeters(10)).Length.Meters, 0.6);

    [Fact]
    public void Waves_obey_their_dispersion_never_top_the_water_and_grow_with_fetch() =>
        Gen.Select(Gen.Double[0.2, 40], Gen.Double[1, 5000], Gen.Double[0.01, 1]).Sample((wind, fetch, depth) =>
        {
            var waves = Waves.Of(Speed.FromMetersPerSecond(wind), Length.FromMeters(fetch), WaterDepth.FromMeters(depth));
            double k = 2 * Math.PI / waves.Length.Meters, t = waves.Period.TotalSeconds;
            Assert.Equal(4 * Math.PI * Math.PI / (t * t), 9.81 * k * Math.Tanh(k * depth), 1e-6 * (1 + (40 / (t * t))));
            Assert.True(waves.Height.Meters <= (0.6 * depth) + 1e-12);
            Assert.True(Waves.Of(Speed.FromMetersPerSecond(wind), Length.FromMeters(fetch * 2), WaterDepth.FromMeters(depth)).Height >= waves.Height);
        });

    [Fact]
    public void A_calm_raises_none() => Assert.Equal(new WaterWaves(Length.Zero, TimeSpan.Zero, Length.Zero, Speed.Zero), Waves.Of(Speed.Zero, Length.FromMeters(400), WaterDepth.FromInches(4)));
}
