using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>Distances by hand on squares and triangles of whole sides (derived).</summary>
public sealed class MapGeometryTests
{
    private static readonly ImmutableArray<PlanePart> Square = [new([new(-100, -100), new(100, -100), new(100, 100), new(-100, 100)], [[new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)]])];

    [Theory]
    [InlineData(400, 0, 300)]
    [InlineData(130, 140, 50)] // corner: 3-4-5
    [InlineData(50, 50, 0)]
    [InlineData(0, 0, 10)] // in the hole: its edge is the nearest
    public void A_point_is_told_from_the_nearest_edge(double east, double north, double meters) =>
        Assert.Equal(meters, MapGeometry.ToEdge(Square, [new(east, north)]).Meters, 1e-9);

    [Fact]
    public void A_wire_that_crosses_the_field_without_a_corner_in_it_is_no_distance_away() =>
        Assert.Equal(0, MapGeometry.ToEdge(Square, [new(-300, 50), new(300, 50)]).Meters, 1e-9);

    [Fact]
    public void A_wire_is_told_from_where_it_comes_nearest() =>
        Assert.Equal(50, MapGeometry.ToEdge(Square, [new(-1000, 150), new(1000, 150)]).Meters, 1e-9);

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(1, 0, 90)]
    [InlineData(-1, -1, 225)]
    public void Directions_turn_clockwise_from_north(double east, double north, double degrees) =>
        Assert.Equal(degrees, MapGeometry.Direction(new(east, north)).Degrees, 1e-9);

    [Fact]
    public void A_rectangle_laid_along_a_direction_has_its_length_along_it()
    {
        var rectangle = MapGeometry.Rectangle(Length.FromMeters(800), Length.FromMeters(300), Bearing.FromDegrees(37));
        var (along, across) = MapGeometry.Extent([rectangle], Bearing.FromDegrees(37));
        Assert.Equal(800, along.Meters, 1e-9);
        Assert.Equal(300, across.Meters, 1e-9);
    }

    [Fact]
    public void Fields_that_touch_are_no_distance_apart()
    {
        ImmutableArray<PlanePart> next = [new([new(100, -50), new(300, -50), new(300, 50), new(100, 50)], [])];
        ImmutableArray<PlanePart> off = [new([new(150, -50), new(300, -50), new(300, 50), new(150, 50)], [])];
        Assert.Equal(0, MapGeometry.Between(Square, next).Meters, 1e-9);
        Assert.Equal(50, MapGeometry.Between(Square, off).Meters, 1e-9);
    }
}
