using CsCheck;

namespace Watersown.Shapes;

public sealed class ChordsTests
{
    // A rectangle of 400 m by 100 m, long side north: by trigonometry min(400 / cos a, 100 / sin a).
    [Theory]
    [InlineData(0, 400)]
    [InlineData(90, 100)]
    [InlineData(270, 100)]
    [InlineData(45, 141.4214)]
    [InlineData(10, 406.1706)]
    [InlineData(150, 200)]
    public void Across_a_rectangle(double degrees, double meters) => Assert.Equal(meters, Chords.Longest([Box(100, 400)], Bearing.FromDegrees(degrees)).Meters, 0.002);

    [Fact]
    public void A_hole_and_a_bend_cut_it_short()
    {
        var holed = new PlanePart(Box(100, 400).Outer, [[new(-50.5, 10), new(50.5, 10), new(50.5, 20), new(-50.5, 20)]]);
        Assert.Equal(210, Chords.Longest([holed], Bearing.FromDegrees(0)).Meters, 0.001);
        // An L: 300 m up one arm of 100 m, 250 m along the other of 80 m.
        var bent = new PlanePart([new(0, 0), new(250, 0), new(250, 80), new(100, 80), new(100, 300), new(0, 300)], []);
        Assert.Equal(300, Chords.Longest([bent], Bearing.FromDegrees(180)).Meters, 0.001);
        Assert.Equal(250, Chords.Longest([bent], Bearing.FromDegrees(90)).Meters, 0.001);
    }

    [Fact]
    public void It_is_the_same_either_way_and_turns_with_the_land() =>
        Gen.Select(Gen.Double[0, 360], Gen.Double[0, 360], Gen.Double[20, 900]).Sample((wind, turn, length) =>
        {
            var there = Chords.Longest([Turn(Box(100, length), turn)], Bearing.FromDegrees(wind + turn)).Meters;
            Assert.Equal(Chords.Longest([Box(100, length)], Bearing.FromDegrees(wind)).Meters, there, 0.02 + (0.002 * there));
            Assert.Equal(there, Chords.Longest([Turn(Box(100, length), turn)], Bearing.FromDegrees(wind + turn + 180)).Meters, 0.02 + (0.002 * there));
        });

    [Fact]
    public void Nothing_has_no_way_across() => Assert.Equal(Length.Zero, Chords.Longest([], Bearing.FromDegrees(0)));

    private static PlanePart Box(double east, double north) => new([new(-east / 2, -north / 2), new(east / 2, -north / 2), new(east / 2, north / 2), new(-east / 2, north / 2)], []);

    private static PlanePart Turn(PlanePart part, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new PlanePart([.. part.Outer.Select(p => new PlanePoint((p.East * cos) + (p.North * sin), (p.North * cos) - (p.East * sin)))], []);
    }
}
