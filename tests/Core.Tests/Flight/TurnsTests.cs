using CsCheck;
using Watersown.Reckon;

namespace Watersown.Flight;

public sealed class TurnsTests
{
    [Fact]
    public void It_describes_a_turn_and_never_advises_one()
    {
        var answer = Ask.For("turn", ("speed_mph", 120), ("bank_deg", 45));
        Assert.Contains(answer.Value.Cautions, c => c.Contains("never advice", StringComparison.Ordinal) && c.Contains("no bank", StringComparison.Ordinal));
        Assert.Contains(answer.Value.Cautions, c => c.Contains("the pilot decides", StringComparison.Ordinal));
        Assert.Equal(Datum.None, answer.Answer("next_pass_m"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-10)]
    public void No_bank_is_no_turn(double bank) => Ask.For("turn", ("speed_mph", 120), ("bank_deg", bank)).Refuses((ReckonProblems.NotAbove, "bank_deg"));

    // The bulb drawn as three arcs: out, round, back, of one radius and tangent; lengths summed from the arcs' own angles.
    [Fact]
    public void The_bulb_is_as_long_as_its_three_arcs() => Gen.Select(Gen.Double[50, 600], Gen.Double[0, 1]).Sample((radius, share) =>
    {
        var spacing = share * 2 * radius;
        var lean = Math.Acos((radius + (spacing / 2)) / (2 * radius));
        var arcs = (2 * lean * radius) + (((Math.PI) + (2 * lean)) * radius);
        Assert.Equal(arcs, Turns.ToNextPass(Length.FromMeters(radius), Length.FromMeters(spacing)).Meters, radius * 1e-9);
    });

    [Fact]
    public void Faster_is_wider_and_a_skipped_racetrack_clears_two_radii() => Gen.Select(Gen.Double[60, 160], Gen.Double[5, 75], Gen.Double[10, 30]).Sample((mph, bank, swath) =>
    {
        var radius = Turns.Radius(Speed.FromMilesPerHour(mph), bank);
        Assert.True(Turns.Radius(Speed.FromMilesPerHour(mph + 1), bank) > radius);
        Assert.True(Turns.Radius(Speed.FromMilesPerHour(mph), bank + 1) < radius);
        var skipped = Turns.RacetrackOffset(radius, Length.FromMeters(swath));
        Assert.True(skipped * swath >= (2 * radius.Meters) - 1e-6);
        Assert.True(skipped == 1 || (skipped - 1) * swath < 2 * radius.Meters);
    });
}
