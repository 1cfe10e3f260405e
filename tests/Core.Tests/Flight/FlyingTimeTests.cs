namespace Watersown.Flight;

public sealed class FlyingTimeTests
{
    private static readonly Aeroplane Hired = new("hired");

    // Hours worked by hand: reload 90 s, 100 s ground and air, 130 mph ferry, 120 mph work, 32 s turn, 2,640 ft passes of 50 ft.
    [Theory]
    [InlineData(83, 6, -1.04, -1.61, 0.88)]
    [InlineData(103, 7, 2.61, -0.24, 1.11)]
    [InlineData(96, 7, -0.63, 1.05, 0.96)]
    [InlineData(118, 8, -0.27, 1.05, 1.08)]
    [InlineData(137, 10, -0.66, -1.61, 1.45)]
    [InlineData(97, 7, 1.14, -0.76, 0.97)]
    public void A_field_keeps_the_aeroplane_for_its_loads(double acres, int loads, double eastMiles, double northMiles, double hours)
    {
        var job = new FlyingJob(Area.FromAcres(acres), loads, Length.FromFeet(2640), Length.FromMiles(double.Hypot(eastMiles, northMiles)));
        Assert.Equal(hours, FlyingTime.Of(job, Hired).TotalHours, 0.006); // offsets are printed to 0.01 mi, worth up to 0.005 h
    }
}
