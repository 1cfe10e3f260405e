using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>
/// Least widths of figures whose sides can be checked by hand: derived from the width theorem (McGill University,
/// computational-geometry notes, read). East and north in meters.
/// </summary>
public sealed class PassesReference
{
    private const string Triangle = "0,0 4,0 0,3";
    private const string Rectangle = "0,0 800,0 800,400 0,400";
    private const string Trapezium = "0,0 1000,0 800,400 0,400";
    private const string Quadrilateral = "0,0 800,100 750,600 50,450";

    [Fact]
    public void A_three_four_five_triangle_is_narrowest_along_its_long_side()
    {
        var narrowest = Passes.Narrowest(Plane(Triangle));
        Assert.Equal(2.4, narrowest.Width.Meters, 1e-9);
        Assert.Equal(180 - (Math.Atan2(4, 3) * 180 / Math.PI), narrowest.Heading.Degrees, 1e-9);
    }

    [Theory]
    [InlineData(Triangle, 90, 3)]
    [InlineData(Triangle, 0, 4)]
    [InlineData(Rectangle, 90, 400)]
    [InlineData(Rectangle, 0, 800)]
    [InlineData(Trapezium, 90, 400)]
    [InlineData(Trapezium, 153.435, 894.43)]
    [InlineData(Trapezium, 0, 1000)]
    [InlineData(Quadrilateral, 82.875, 502.341)]
    [InlineData(Quadrilateral, 174.289, 805.980)]
    [InlineData(Quadrilateral, 77.905, 499.378)]
    [InlineData(Quadrilateral, 6.340, 784.064)]
    public void Width_across_the_heading_of_each_side(string ring, double heading, double width) =>
        Assert.Equal(width, Passes.OutlineOf(Plane(ring)).Across(Bearing.FromDegrees(heading)).Meters, 0.006);

    [Fact]
    public void The_quadrilateral_is_flown_on_78_degrees_in_28_passes()
    {
        var plan = Passes.Lay(Plane(Quadrilateral), Length.FromMeters(18), null);
        Assert.Equal(77.905, plan.Heading.Degrees, 0.001);
        Assert.Equal(499.378, plan.Width.Meters, 0.001);
        Assert.Equal(28, plan.All.Length);
        Assert.Equal(35.625, Passes.OutlineOf(Plane(Quadrilateral)).Area.Hectares, 1e-9);
    }

    [Fact]
    public void The_rectangle_takes_23_passes_a_little_under_the_swath()
    {
        var plan = Passes.Lay(Plane(Rectangle), Length.FromMeters(18), null);
        Assert.Equal(90, plan.Heading.Degrees, 1e-9);
        Assert.Equal(23, plan.All.Length);
        Assert.Equal(17.391, plan.Spacing.Meters, 0.001);
        Assert.All(plan.All, p => Assert.Equal(800, p.OpenLength.Meters, 1e-9));
        Assert.Equal(800, plan.MeanLength.Meters, 1e-9);
    }

    [Theory]
    [InlineData(90, 23)]
    [InlineData(0, 56)]
    public void The_trapezium_takes_more_than_twice_the_passes_the_wrong_way(double heading, int passes) =>
        Assert.Equal(passes, Passes.Lay(Plane(Trapezium), Length.FromMeters(18), Bearing.FromDegrees(heading)).All.Length);

    [Fact]
    public void A_regular_hexagon_is_root_three_wide_along_every_side()
    {
        PlanePart[] hexagon = [new([.. Enumerable.Range(0, 6).Select(i => new PlanePoint(Math.Cos(i * Math.PI / 3), Math.Sin(i * Math.PI / 3)))], [])];
        foreach (var heading in new[] { 30, 90, 150 })
            Assert.Equal(Math.Sqrt(3), Passes.OutlineOf([.. hexagon]).Across(Bearing.FromDegrees(heading)).Meters, 1e-9);
        Assert.Equal(30, Passes.Narrowest([.. hexagon]).Heading.Degrees, 1e-6);
    }

    // A square with a square hole: every line through the hole is shut over it.
    [Fact]
    public void A_hole_is_left_out_of_the_pass()
    {
        PlanePart land = new(Ring("0,0 100,0 100,100 0,100"), [Ring("40,40 40,60 60,60 60,40")]);
        var plan = Passes.Lay([land], Length.FromMeters(10), Bearing.FromDegrees(90));
        Assert.Equal(10, plan.All.Length);
        Assert.Equal([100, 100, 100, 100, 80, 80, 100, 100, 100, 100], plan.All.Select(p => Math.Round(p.OpenLength.Meters, 9)));
        Assert.Equal(2, plan.All[4].Open.Length);
        Assert.Equal(96, plan.MeanLength.Meters, 1e-9);
    }

    // Two pieces with a road between them are one job.
    [Fact]
    public void Pieces_are_flown_as_one_field_and_the_road_between_them_is_not_sown()
    {
        var plan = Passes.Lay([new(Ring("0,0 100,0 100,30 0,30"), []), new(Ring("120,0 200,0 200,30 120,30"), [])], Length.FromMeters(10), null);
        Assert.Equal(90, plan.Heading.Degrees, 1e-9);
        Assert.All(plan.All, p => Assert.Equal(180, p.OpenLength.Meters, 1e-9));
        Assert.Equal(3, plan.All.Length);
    }

    private static ImmutableArray<PlanePart> Plane(string ring) => [new(Ring(ring), [])];

    private static ImmutableArray<PlanePoint> Ring(string corners) =>
        [.. corners.Split(' ').Select(c => c.Split(',')).Select(c => new PlanePoint(double.Parse(c[0]), double.Parse(c[1])))];
}
