using NetTopologySuite.Geometries;
using MinimumDiameter = NetTopologySuite.Algorithm.MinimumDiameter;

namespace Watersown.Flight.Laying;

/// <summary>
/// Five hundred real field polygons (tests/Reference/fields/SOURCE.md), slivers among them: nothing fails, and widths agree with
/// the rotating calipers of the geometry package.
/// </summary>
public sealed class RealFieldsTests
{
    private static readonly PassPace Pace = new(Length.FromFeet(50), Speed.FromMilesPerHour(120), TimeSpan.FromSeconds(32));

    public static TheoryData<string> Files => [.. RealFields.Files];

    [Theory]
    [MemberData(nameof(Files))]
    public void The_narrowest_width_is_that_of_rotating_calipers(string file) => Assert.All(RealFields.Of(file), field =>
    {
        var shape = new GeometryFactory().CreateMultiPointFromCoords([.. field.Land.SelectMany(p => p.Outer).Select(c => new Coordinate(c.East, c.North))]);
        Assert.Equal(new MinimumDiameter(shape).Length, Passes.Narrowest(field.Land).Width.Meters, 1e-6);
    });

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_field_is_laid_out_and_none_beats_its_bound(string file) => Assert.All(RealFields.Of(file), field =>
    {
        var layout = Fields.Lay(field.Land, new LayingAsk(Pace));
        Assert.NotEmpty(layout.Lines);
        Assert.True(layout.Passes >= layout.Bound.Passes, field.Name);
        Assert.True(layout.Passing >= layout.Bound.Time * (1 - 1e-9), field.Name);
        Assert.True(layout.OneHeading.Time <= HeadingSearch.On(field.Land, Pace, Bearing.FromDegrees(90)).Time + TimeSpan.FromMilliseconds(1), field.Name);

        // Cells are cut where that pays; the way between far cells may cost a little of it.
        Assert.True(layout.Passing <= layout.OneHeading.Time + TimeSpan.FromSeconds(2 * layout.Cells.Length), field.Name);
        Assert.Equal(FieldRings.Of(field.Land).Area, layout.Cells.Sum(c => c.Area.SquareMeters), Math.Max(2.0, 1e-6 * FieldRings.Of(field.Land).Area));
        Assert.Equal(Enumerable.Range(1, layout.Passes), layout.Lines.Select(l => l.Number).Order());
    });

    // The sweep never lays a pass; laying does nothing else. Corners of open length may differ by what one line over a corner picks up.
    [Theory]
    [MemberData(nameof(Files))]
    public void The_sweep_says_what_laying_gives(string file) => Assert.All(RealFields.Of(file), field =>
    {
        var sweep = HeadingSweep.Of(field.Land, Pace);
        for (var k = 0; k < HeadingSweep.Headings; k += 37)
        {
            var plan = Passes.Lay(field.Land, Pace.Swath, sweep[k].Heading);
            Assert.Equal(plan.All.Length, sweep[k].Passes);
            Assert.Equal(plan.OpenLength.Meters, sweep[k].Open.Meters, 1e-6);
            Assert.True(plan.OpenLength.Meters <= HeadingSearch.On(field.Land, Pace, sweep[k].Heading).Flown.Meters + 1e-6);
        }
    });
}
