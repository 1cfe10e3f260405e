namespace Watersown.Flight;

/// <summary>Turn geometry against printed examples.</summary>
public sealed class TurnsReference
{
    // Web page of turn formulas (read): 120 kt, 30°, 2,208 ft.
    // Aviation Formulary (second-hand): 100 kt, 45°, printed 891 ft with the rounded constant 11.23; exact 885.4.
    [Theory]
    [InlineData(120, 30, 2208, 1.0)]
    [InlineData(100, 45, 891, 8.91)]
    [InlineData(100, 45, 885.4, 0.05)]
    public void Radius_of_a_level_turn(double knots, double bank, double feet, double tolerance) =>
        Assert.Equal(feet, Ask.For("turn", ("speed_mph", Speed.FromKnots(knots).MilesPerHour), ("bank_deg", bank)).Number("radius_ft"), tolerance);

    // ATPL question bank (read): 120 kt, 60°, with g taken as 10, 220 m.
    [Fact]
    public void The_question_bank_takes_gravity_as_ten() =>
        Assert.Equal(220, Turns.Radius(Speed.FromKnots(120), 60).Meters * 9.80665 / 10, 0.1);

    // Derived: radius m and ft, load factor, half circle s, bulb at an 18 m swath m and s, passes to skip where worked.
    [Theory]
    [InlineData(100, 45, 203.8, 669, 1.414, 14.3, 1473, 32.9)]
    [InlineData(120, 30, 508.3, 1668, 1.155, 29.8, 3705, 69.1)]
    [InlineData(120, 45, 293.5, 963, 1.414, 17.2, 2130, 39.7)]
    [InlineData(120, 60, 169.4, 556, 2.000, 9.9, 1221, 22.8)]
    [InlineData(140, 45, 399.4, 1310, 1.414, 20.0, 2907, 46.4)]
    [InlineData(150, 60, 264.7, 869, 2.000, 12.4, 1920, 28.6)]
    public void A_turn_by_its_bank(double mph, double bank, double meters, double feet, double factor, double half, double bulb, double bulbSeconds)
    {
        var answer = Ask.For("turn", ("speed_mph", mph), ("bank_deg", bank), ("swath_ft", 18 / 0.3048));
        Assert.Equal(meters, answer.Number("radius_m"), 0.1);
        Assert.Equal(feet, answer.Number("radius_ft"), 1.0);
        Assert.Equal(factor, answer.Number("load_factor"), 0.0005);
        Assert.Equal(half, answer.Number("half_circle_s"), 0.06);
        Assert.Equal(bulb, answer.Number("next_pass_m"), 1.0);
        Assert.Equal(bulbSeconds, answer.Number("next_pass_s"), 0.1);
    }

    // Derived: next whole number of 2 R / S.
    [Theory]
    [InlineData(45, 33)]
    [InlineData(60, 19)]
    public void Passes_skipped_by_a_racetrack(double bank, int passes) =>
        Assert.Equal(passes, Ask.For("turn", ("speed_mph", 120), ("bank_deg", bank), ("swath_ft", 18 / 0.3048)).Number("racetrack_offset_passes"));

    // Derived limits of the bulb: 7 π R / 3 where the next line is the same, π R where it is two radii away.
    [Fact]
    public void A_bulb_goes_from_seven_thirds_to_one_half_circle()
    {
        var radius = Length.FromMeters(300);
        Assert.Equal(7 * Math.PI * 300 / 3, Turns.ToNextPass(radius, Length.Zero).Meters, 1e-9);
        Assert.Equal(Math.PI * 300, Turns.ToNextPass(radius, Length.FromMeters(600)).Meters, 1e-9);
        Assert.Equal((Math.PI * 300) + 100, Turns.ToNextPass(radius, Length.FromMeters(700)).Meters, 1e-9);
    }

    // Derived: out 45°, back 225° and home, to a pass 18 m off; meters and seconds at 120 mph.
    [Theory]
    [InlineData(45, 2756, 51.4)]
    [InlineData(60, 1573, 29.3)]
    public void A_turn_out_and_back_round(double bank, double meters, double seconds)
    {
        var answer = Ask.For("turn", ("speed_mph", 120), ("bank_deg", bank), ("swath_ft", 18 / 0.3048), ("turn_out_deg", 45));
        Assert.Equal(meters, answer.Number("out_and_back_m"), 1.0);
        Assert.Equal(seconds, answer.Number("out_and_back_s"), 0.1);
    }
}
