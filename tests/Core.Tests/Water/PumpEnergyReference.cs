using Watersown.Reckon;

namespace Watersown.Water;

public sealed class PumpEnergyReference
{
    // University of California Cooperative Extension, Tulare County, Pub. IG6-96, read: an acre-foot is 325,851 gal and weighs
    // 2,719,226 lb, so it takes as many foot-pounds a foot; 2,655,224 ft·lb are one kWh (derived).
    [Fact]
    public void An_acre_foot_lifted_a_foot_takes_a_little_over_a_kilowatt_hour()
    {
        Assert.Equal(325_851, Volume.FromAcreFeet(1).Gallons, 1.0);
        Assert.Equal(2_719_226, Volume.FromAcreFeet(1).Gallons * 8.345, 60.0);
        Assert.Equal(2_719_226 / 2_655_224.0, PumpEnergy.PerAcreFootFoot, 0.0005);
    }

    // Derived, a second way: water of 1,000 kg/m³ lifted against standard gravity, from the definitions of the SI.
    [Fact]
    public void The_constant_agrees_with_mass_and_gravity()
    {
        var joules = Volume.FromAcreFeet(1).CubicMeters * 1000 * 9.80665 * 0.3048;
        Assert.Equal(joules / 3.6e6, PumpEnergy.PerAcreFootFoot, 0.0002);
    }

    // kWh per acre-foot = 1.024 H / efficiency, derived from Pub. IG6-96.
    [Theory]
    [InlineData(20, 55, 37.2)]
    [InlineData(50, 60, 85.3)]
    [InlineData(100, 65, 157.5)]
    [InlineData(150, 60, 256.0)]
    [InlineData(200, 60, 341.3)]
    public void Lift_and_efficiency_set_the_electricity(double lift, double efficiency, double kilowattHours) =>
        Assert.Equal(kilowattHours, Pump(1, lift, efficiency).Number("kwh_per_ac_ft"), 0.05);

    // Derived by another road: 2,000 gpm against 60 ft at 60 % take 37.66 kW by Q H / 3960 and bring 0.3683 ac-ft an hour.
    [Fact]
    public void It_agrees_with_water_horsepower()
    {
        var kilowatts = 2000 * 60 / 3960.0 * 0.7457 / 0.60;
        Assert.Equal(37.66, kilowatts, 0.01);
        var hours = Volume.FromAcreFeet(1) / FlowRate.FromGallonsPerMinute(2000);
        Assert.Equal(kilowatts * hours.TotalHours, Pump(1, 60, 60).Number("kwh_per_ac_ft"), 0.15);
    }

    // Derived by hand: 70.8 ac-ft at 102.4 kWh each and 20 cents.
    [Fact]
    public void With_a_price_it_costs()
    {
        var answer = Ask.For("pump-energy", ("volume_ac_ft", 70.8), ("lift_ft", 60), ("efficiency_pct", 60), ("price_kwh", 0.20));
        Assert.Equal(7249.92, answer.Number("kwh"), 0.01);
        Assert.Equal(1449.98, answer.Number("cost"), 0.01);
        Assert.Equal("Demand and standing charges come on top.", Assert.Single(answer.Value.Cautions));
    }

    [Fact]
    public void Without_a_price_the_cost_is_not_known()
    {
        Assert.Equal(Datum.None, Pump(10, 60, 60).Answer("cost"));
        Assert.Empty(Pump(10, 60, 60).Value.Cautions);
    }

    [Fact]
    public void A_poor_pump_is_worth_a_test() =>
        Assert.Contains("Under 50 % from wire to water the pump is worth a test.", Pump(10, 60, 45).Value.Cautions, StringComparer.Ordinal);

    [Fact]
    public void Efficiency_is_above_nothing_and_no_more_than_all()
    {
        Pump(1, 60, 0).Refuses((ReckonProblems.NotAbove, "efficiency_pct"));
        Pump(1, 60, 101).Refuses((ReckonProblems.TooLarge, "efficiency_pct"));
        Assert.Throws<ArgumentOutOfRangeException>(() => PumpEnergy.KilowattHours(Volume.FromAcreFeet(1), Length.FromFeet(1), Fraction.Zero));
    }

    private static Outcome<Reckoned> Pump(double volume, double lift, double efficiency) =>
        Ask.For("pump-energy", ("volume_ac_ft", volume), ("lift_ft", lift), ("efficiency_pct", efficiency));
}
