namespace Watersown.Land;

public sealed class TypedCornersTests
{
    [Theory]
    [InlineData("39.0152, -122.0050")]
    [InlineData("39.0152 -122.0050")]
    [InlineData("39.0152\t-122.005")]
    [InlineData("39.0152N, 122.005W")]
    [InlineData("39.0152° N 122.005° W")]
    [InlineData("39.0152, 122.005 O")]
    [InlineData("39.0152, −122.005")]
    public void A_corner_may_be_written_in_the_usual_ways(string typed) =>
        Assert.Equal(new GeoPoint(39.0152, -122.005), Assert.Single(TypedCorners.Read(typed).Value));

    [Fact]
    public void Several_corners_stand_one_a_line_and_a_corner_written_is_read_again()
    {
        var corners = TypedCorners.Read("39.01,-122.00\r\n39.02,-122.00\n\n39.02,-121.99;39.01,-121.99").Value;
        Assert.Equal(4, corners.Length);
        Assert.All(corners, c => Assert.Equal(c, Assert.Single(TypedCorners.Read(TypedCorners.Write(c)).Value)));
    }

    [Theory]
    [InlineData("here")]
    [InlineData("39.0152")]
    [InlineData("39.0152, -122.005, 12")]
    [InlineData("39.0152E, -122.005")]
    [InlineData("39,0152 -122,005")]
    [InlineData("39.0152, 1e9999x")]
    public void What_is_no_place_is_said_with_its_line(string typed)
    {
        var read = TypedCorners.Read("39.01, -122.00\n" + typed);
        Assert.Equal(BoundaryProblems.NotAPlace, Assert.Single(read.Refusals).Kind);
        Assert.Equal("line 2", Assert.Single(read.Refusals).Where);
    }

    [Fact]
    public void A_flood_of_lines_is_answered_with_a_few_problems() =>
        Assert.Equal(5, TypedCorners.Read(string.Concat(Enumerable.Repeat("no place\n", 100_000))).Refusals.Count());

    [Fact]
    public void An_edge_typed_is_judged_as_every_edge_is()
    {
        var field = new Field { Code = "N4", Name = "Two Gates", Net = Area.FromAcres(118), Gross = Area.FromAcres(124.5) };
        Assert.Contains(DrawnEdge.Of(TypedCorners.Read("39.01,-122.00;39.02,-121.99").Value, field).Refusals, p => p.Kind == BoundaryProblems.TooFewCorners);
        Assert.Contains(DrawnEdge.Of(TypedCorners.Read("39.01,-122.00;39.02,-121.99;39.02,-122.00;39.01,-121.99").Value, field).Refusals, p => p.Kind == BoundaryProblems.CrossesItself);
        Assert.Contains(DrawnEdge.Of(TypedCorners.Read("39.01,-122.00;39.01,-121.99;39.02,-121.99;39.02,-122.00").Value, field).Warnings, p => p.Kind == LandProblems.BoundaryDiffers);
    }

    [Fact]
    public void Every_step_of_drawing_can_be_undone_one_by_one()
    {
        GeoPoint a = new(39, -122), b = new(39, -121.99), c = new(39.01, -121.99);
        var draft = EdgeDraft.Empty.Add(a).Add(b).Add(c).Move(1, new GeoPoint(39, -121.98)).Split(0).Remove(2).Clear();
        Assert.Empty(draft.Corners);
        Assert.Equal(3, draft.Missing);
        draft = draft.Undo();
        Assert.Equal(3, draft.Corners.Length);
        draft = draft.Undo();
        Assert.Equal(4, draft.Corners.Length);
        // Half way from the last corner to the first, which follows it around.
        Assert.Equal(39.005, draft.Corners[0].Latitude, 9);
        Assert.Equal(-121.995, draft.Corners[0].Longitude, 9);
        draft = draft.Undo();
        Assert.Equal([a, new GeoPoint(39, -121.98), c], draft.Corners);
        draft = draft.Undo();
        Assert.Equal([a, b, c], draft.Corners);
        Assert.Equal([a], draft.Undo().Undo().Corners);
        Assert.Equal(EdgeDraft.Empty, draft.Undo().Undo().Undo().Undo());
    }

    [Fact]
    public void A_step_that_changes_nothing_is_no_step()
    {
        var draft = EdgeDraft.Empty.Add(new GeoPoint(39, -122));
        Assert.Same(draft, draft.Move(0, new GeoPoint(39, -122)));
        Assert.Same(draft, draft.Move(5, new GeoPoint(1, 1)));
        Assert.Same(draft, draft.Remove(-1));
        Assert.Same(draft, draft.Split(0));
        Assert.Same(EdgeDraft.Empty, EdgeDraft.Empty.Undo());
    }
}
