using Watersown.Reckon;
using Watersown.Schedule.Sheets;

namespace Watersown.Flight.Laying;

public sealed class PassWindTests
{
    private static readonly Speed Air = Speed.FromMilesPerHour(120);

    // Derived: up and down the wind the mean is (V² − w²) / V, square to it √(V² − w²): 118.13 and 119.06 mph in 15 mph.
    [Theory]
    [InlineData(0, 118.125, 105)]
    [InlineData(180, 118.125, 135)]
    [InlineData(90, 119.0588, 119.0588)]
    public void A_line_in_wind_is_flown_at_its_mean(double heading, double mean, double ground)
    {
        var wind = new PassWind(Bearing.FromDegrees(0), Speed.FromMilesPerHour(15));
        Assert.Equal(mean, wind.Mean(Air, Bearing.FromDegrees(heading)).MilesPerHour, 1e-4);
        Assert.Equal(ground, wind.Ground(Air, Bearing.FromDegrees(heading)).MilesPerHour, 1e-4);
    }

    // Derived: from 12.192 m at 120 mph, seed falling at 6.5 m/s: 7.00 m of drift in 3 m/s across; thrown 26.12 m in 5 m/s from behind, 0.32 m from ahead.
    [Fact]
    public void Seed_falls_where_the_wind_takes_it()
    {
        var across = PassAim.Of(Bearing.FromDegrees(0), Air, new PassWind(Bearing.FromDegrees(270), Speed.FromMetersPerSecond(3)));
        Assert.Equal(7.00, across.Drift.Meters, 0.02);
        Assert.True(across.Across > Speed.Zero);
        var along = PassAim.Of(Bearing.FromDegrees(0), Air, new PassWind(Bearing.FromDegrees(180), Speed.FromMetersPerSecond(5)));
        Assert.Equal(26.12, along.Out.Throw.Meters, 0.02);
        Assert.Equal(0.32, along.Back.Throw.Meters, 0.02);
    }

    [Fact]
    public void A_square_is_flown_across_the_wind_unless_somebody_wants_little_of_it_there()
    {
        var pace = new PassPace(Length.FromMeters(20), Air, TimeSpan.FromSeconds(30)) { Wind = new PassWind(Bearing.FromDegrees(0), Speed.FromMilesPerHour(15)) };
        var square = Fields.Rectangle(800, 800);
        var free = Fields.Lay(square, new LayingAsk(pace));
        Assert.Equal(90, free.Cells[0].Plan.Heading.Degrees, 1e-9);

        // By hand: 40 passes of 800 m at 119.06 mph and 39 turns.
        Assert.Equal((40 * 800 / (119.0588 * 0.44704)) + (39 * 30), free.Passing.TotalSeconds, 0.01);
        Assert.Equal(0, free.Gap, 1e-6);
        var calm = Fields.Lay(square, new LayingAsk(pace with { Wind = pace.Wind with { MostAcross = Speed.FromMilesPerHour(2) } }));
        Assert.Equal(0, calm.Cells[0].Plan.Heading.Degrees, 1e-9);
        Assert.True(calm.Passing > free.Passing);
    }

    [Fact]
    public void Wind_is_told_to_the_reckoning_and_a_gale_refused()
    {
        const string section = "-122,39.4 -121.9906,39.4 -121.9906,39.4072 -122,39.4072 -122,39.4";
        var (still, windy) = (Asked(0), Asked(15));
        Assert.True(windy.Number("flight_min") > still.Number("flight_min"));
        Asked(60).Refuses((ReckonProblems.Impossible, "wind mph"));
        Outcome<Reckoned> Asked(double wind) => Ask.For("pass-layout", ("boundary", Geo.Polygon(section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32), ("wind", Datum.Row(("from_deg", 90), ("mph", wind))));
    }
}
