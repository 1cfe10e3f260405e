using CsCheck;
using Watersown.Reckon;

namespace Watersown.Flight;

public sealed class ThrowProperties
{
    private static readonly Gen<SeedRelease> Releases = Gen.Select(Gen.Double[1, 60], Gen.Double[20, 80], Gen.Double[2, 15], Gen.Double[-15, 15], Gen.Double[-15, 15])
        .Select((height, airspeed, terminal, along, across) => new SeedRelease(Length.FromMeters(height), Speed.FromMetersPerSecond(airspeed), Speed.FromMetersPerSecond(terminal))
        {
            WindAlong = Speed.FromMetersPerSecond(along),
            WindAcross = Speed.FromMetersPerSecond(across),
        });

    // Aeroplane and seed share the moving air.
    [Fact]
    public void Wind_along_adds_its_own_way_and_nothing_else() => Releases.Sample(
        release =>
        {
            var (windy, calm) = (Throw.Of(release), Throw.Of(release with { WindAlong = Speed.Zero }));
            Assert.Equal(calm.Along.Meters + (release.WindAlong.MetersPerSecond * calm.Fall.TotalSeconds), windy.Along.Meters, 1e-5);
            Assert.Equal(calm.Fall.TotalSeconds, windy.Fall.TotalSeconds, 1e-6);
        },
        iter: 200);

    [Fact]
    public void Wind_from_the_other_side_mirrors_the_drift() => Releases.Sample(
        release => Assert.Equal(Throw.Of(release).Drift.Meters, -Throw.Of(release with { WindAcross = release.WindAcross * -1 }).Drift.Meters, 1e-9),
        iter: 200);

    // Bounds from elementary mechanics: never sooner than in a vacuum, never farther than without coupling or with the whole wind.
    [Fact]
    public void The_fall_lies_within_its_closed_bounds() => Releases.Sample(
        release =>
        {
            const double G = 9.80665;
            var landing = Throw.Of(release);
            double h = release.Height.Meters, vt = release.Terminal.MetersPerSecond, k = G / (vt * vt), va = release.Airspeed.MetersPerSecond;
            var t = landing.Fall.TotalSeconds;
            Assert.True(t > Math.Sqrt(2 * h / G));
            Assert.True(t > vt / G * Math.Acosh(Math.Exp(G * h / (vt * vt))) - 1e-6);
            Assert.True(landing.Along.Meters - (release.WindAlong.MetersPerSecond * t) <= (Math.Log(1 + (k * va * t)) / k) + 1e-6);
            Assert.True(Math.Abs(landing.Drift.Meters) <= (Math.Abs(release.WindAcross.MetersPerSecond) * t) + 1e-9);
        },
        iter: 200);

    // Straight down (hardly any airspeed): the closed form of a fall with drag, t = vt/g acosh(e^(g h / vt²)).
    [Fact]
    public void A_seed_dropped_without_speed_falls_by_the_closed_form() => Gen.Select(Gen.Double[1, 60], Gen.Double[2, 15]).Sample(
        (height, terminal) =>
        {
            const double G = 9.80665;
            var landing = Throw.Of(new SeedRelease(Length.FromMeters(height), Speed.FromMetersPerSecond(1e-6), Speed.FromMetersPerSecond(terminal)));
            Assert.Equal(terminal / G * Math.Acosh(Math.Exp(G * height / (terminal * terminal))), landing.Fall.TotalSeconds, 1e-5);
        },
        iter: 200);

    [Fact]
    public void Wind_as_strong_as_the_airspeed_is_refused() =>
        Ask.For("throw", ("height_m", 12), ("airspeed_mps", 30), ("terminal_mps", 6.5), ("wind_along_mps", -30), ("wind_across_mps", 0)).Refuses((ReckonProblems.Impossible, "wind_along_mps"));

    [Fact]
    public void It_tells_people_to_test_that_aeroplane()
    {
        var answer = Ask.For("throw", ("height_m", 12), ("airspeed_mps", 53), ("terminal_mps", 6.5), ("wind_along_mps", 0), ("wind_across_mps", 0));
        Assert.Contains(answer.Value.Cautions, c => c.StartsWith("Test that aeroplane", StringComparison.Ordinal));
        Assert.Contains(answer.Value.Cautions, c => c.Contains("the pilot decides", StringComparison.Ordinal));
        Assert.Equal(Datum.None, answer.Answer("gate_lead_m"));
    }
}
