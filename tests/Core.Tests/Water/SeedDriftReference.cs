namespace Watersown.Water;

public sealed class SeedDriftReference
{
    // Komar and Miller 1974 as in Soulsby 1997, eq. 73b, worked apart for 3.5 mm and 0.7 s: 0.0589, 0.0875, 0.1103, 0.1300 m/s.
    [Theory]
    [InlineData(1.05, 0.0589)]
    [InlineData(1.10, 0.0875)]
    [InlineData(1.15, 0.1103)]
    [InlineData(1.20, 0.1300)]
    public void Heavier_seed_holds_longer(double heaviness, double metersPerSecond) =>
        Assert.Equal(metersPerSecond, SeedDrift.Threshold(Length.FromMeters(0.0035), heaviness, TimeSpan.FromSeconds(0.7)).MetersPerSecond, 2e-4);

    // The pull at 2, 3, 4, 5 and 8 in of water, worked apart from the same laws and printed to 0.01.
    [Theory]
    [InlineData(5, 330, 0.39, 0.25, 0.16, 0.10, 0.02)]
    [InlineData(5, 1320, 0.64, 0.56, 0.47, 0.39, 0.21)]
    [InlineData(8, 660, 0.88, 0.75, 0.62, 0.51, 0.28)]
    [InlineData(10, 330, 0.90, 0.71, 0.56, 0.44, 0.20)]
    [InlineData(10, 1320, 1.19, 1.13, 1.05, 0.96, 0.71)]
    [InlineData(12, 660, 1.28, 1.15, 1.01, 0.89, 0.59)]
    [InlineData(15, 330, 1.35, 1.14, 0.96, 0.80, 0.48)]
    [InlineData(15, 1320, 1.61, 1.62, 1.55, 1.46, 1.19)]
    [InlineData(20, 660, 1.64, 1.87, 1.72, 1.58, 1.20)]
    [InlineData(20, 1320, 1.64, 1.93, 2.00, 1.91, 1.63)]
    [InlineData(25, 330, 1.65, 1.92, 1.70, 1.50, 1.06)]
    [InlineData(25, 1320, 1.66, 1.96, 2.19, 2.34, 2.05)]
    public void The_pull_of_waves_by_wind_fetch_and_depth(double mph, double feet, double two, double three, double four, double five, double eight)
    {
        foreach (var (inches, pull) in new[] { (2, two), (3, three), (4, four), (5, five), (8, eight) })
            Assert.Equal(pull, SeedDrift.Pull(Waves.Of(Speed.FromMilesPerHour(mph), Length.FromFeet(feet), WaterDepth.FromInches(inches))), 0.0051);
    }

    [Theory]
    [InlineData(0, DriftBand.Calm)]
    [InlineData(0.69, DriftBand.Calm)]
    [InlineData(0.7, DriftBand.Watch)]
    [InlineData(1.0, DriftBand.Likely)]
    [InlineData(1.3, DriftBand.Severe)]
    public void A_word_for_it(double pull, DriftBand band) => Assert.Equal(band, SeedDrift.BandOf(pull));

    [Fact]
    public void No_waves_pull_at_nothing() => Assert.Equal(0, SeedDrift.Pull(Waves.Of(Speed.Zero, Length.FromFeet(1320), WaterDepth.FromInches(4))));
}
