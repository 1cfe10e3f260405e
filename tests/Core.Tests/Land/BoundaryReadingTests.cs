using Watersown.Wording;

namespace Watersown.Land;

public sealed class BoundaryReadingTests
{
    private const string Square = "-122,39 -121.99,39 -121.99,39.01 -122,39.01 -122,39";
    private const string Hole = "-121.997,39.002 -121.997,39.004 -121.994,39.004 -121.994,39.002 -121.997,39.002";

    private static ImmutableArray<string> Codes(Datum value) =>
        [.. BoundaryReading.Read(value, "edge").Problems.Select(p => p.Kind.Code)];

    private static string Only(Datum value)
    {
        var outcome = BoundaryReading.Read(value, "edge");
        Assert.True(outcome.IsRefused);
        return Say.Problem(Assert.Single(outcome.Problems), Language.English);
    }

    [Fact]
    public void A_square_with_a_hole_is_read_and_put_in_order()
    {
        // Drawn clockwise outside and counter-clockwise inside: the other way from RFC 7946.
        var drawn = Geo.Polygon(string.Join(' ', Square.Split(' ').Reverse()), string.Join(' ', Hole.Split(' ').Reverse()));
        var outcome = BoundaryReading.Read(drawn, "edge");
        Assert.Empty(outcome.Problems);
        var part = Assert.Single(outcome.Value.Parts);
        Assert.Equal(4, part.Outer.Length);
        Assert.Equal(new GeoPoint(39, -122), part.Outer[0]);
        Assert.True(GeodesicArea.Measure(part.Outer).SignedArea > Area.Zero);
        Assert.True(GeodesicArea.Measure(Assert.Single(part.Holes)).SignedArea < Area.Zero);
    }

    [Fact]
    public void Either_way_round_gives_the_same_acres()
    {
        var forward = BoundaryReading.Read(Geo.Polygon(Square, Hole), "edge").Value;
        var backward = BoundaryReading.Read(Geo.Polygon(string.Join(' ', Square.Split(' ').Reverse()), string.Join(' ', Hole.Split(' ').Reverse())), "edge").Value;
        Assert.Equal(GeodesicArea.Of(forward).SquareMeters, GeodesicArea.Of(backward).SquareMeters, 1e-4);
    }

    [Fact]
    public void A_feature_and_a_collection_of_one_are_the_boundary_in_them()
    {
        var plain = BoundaryReading.Read(Geo.Polygon(Square), "edge").Value;
        foreach (var wrapped in new[] { Geo.Feature(Geo.Polygon(Square)), Geo.Collection(Geo.Feature(Geo.Polygon(Square))) })
            Assert.Equal(plain.Parts[0].Outer, BoundaryReading.Read(wrapped, "edge").Value.Parts[0].Outer);
    }

    [Fact]
    public void Two_pieces_cut_by_a_road_are_one_boundary_even_where_they_share_a_line()
    {
        var apart = BoundaryReading.Read(Geo.MultiPolygon([Square], ["-121.9899,39 -121.98,39 -121.98,39.01 -121.9899,39.01 -121.9899,39"]), "edge");
        var touching = BoundaryReading.Read(Geo.MultiPolygon([Square], ["-121.99,39 -121.98,39 -121.98,39.01 -121.99,39.01 -121.99,39"]), "edge");
        Assert.Equal(2, apart.Value.Parts.Length);
        Assert.Equal(2, touching.Value.Parts.Length);
        Assert.True(GeodesicArea.Of(touching.Value) > GeodesicArea.Of(apart.Value));
    }

    [Fact]
    public void A_ring_left_open_is_closed_and_said() =>
        Assert.Equal(["LAND-115"], Codes(Geo.Polygon("-122,39 -121.99,39 -121.99,39.01 -122,39.01")));

    [Fact]
    public void A_crossing_is_named_with_its_place()
    {
        // The diagonals of this bow tie meet in its middle.
        var said = Only(Geo.Polygon("-122,39 -121.99,39.01 -121.99,39 -122,39.01 -122,39"));
        Assert.StartsWith("LAND-108 · edge: the edge crosses itself at 39.00500 N, 121.99500 W.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_of_eight_is_named_with_its_place()
    {
        var said = Only(Geo.Polygon("-122,39 -121.99,39 -121.995,39.005 -121.99,39.01 -122,39.01 -121.995,39.005 -122,39"));
        Assert.StartsWith("LAND-109 · edge: the edge comes back to itself at 39.00500 N, 121.99500 W", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Swapped_latitude_and_longitude_are_recognized()
    {
        var said = Only(Geo.Polygon("39,-122 39,-121.99 39.01,-121.99 39,-122"));
        Assert.StartsWith("LAND-105 · edge, corner 1: a latitude of -122° is beyond the pole", said, StringComparison.Ordinal);
        Assert.Contains("swapped", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Grid_meters_are_recognized() =>
        Assert.StartsWith("LAND-106 · edge, corner 1: 4317000", Only(Geo.Polygon("586000,4317000 587000,4317000 587000,4318000 586000,4317000")), StringComparison.Ordinal);

    [Fact]
    public void A_hole_that_sticks_out_is_named_with_the_corner_outside()
    {
        var said = Only(Geo.Polygon(Square, "-121.995,39.002 -121.995,39.004 -121.98,39.004 -121.98,39.002 -121.995,39.002"));
        Assert.StartsWith("LAND-110 · edge, hole 1: the hole reaches outside the edge at 39.00400 N, 121.98000 W", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_every_ring_are_told_at_once() =>
        Assert.Equal(["LAND-107", "LAND-103"], Codes(Geo.Polygon("-122,39 -121.99,39 -122,39", "-121.99,39 NaN,39.001 -121.99,39.002 -121.99,39")));

    public static TheoryData<string, Datum> Refused => new()
    {
        { "LAND-100", Datum.Row(("type", "Point"), ("coordinates", Datum.ListOf([-122.0, 39]))) },
        { "LAND-100", Datum.Row(("kind", "Polygon")) },
        { "LAND-100", "a field" },
        { "LAND-101", Geo.Collection(Geo.Feature(Geo.Polygon(Square)), Geo.Feature(Geo.Polygon(Square))) },
        { "LAND-102", Datum.Row(("type", "Polygon"), ("coordinates", 7)) },
        { "LAND-102", Datum.Row(("type", "MultiPolygon"), ("coordinates", Datum.ListOf([1.0, 2]))) },
        { "LAND-102", Datum.Row(("type", "Polygon"), ("coordinates", Datum.ListOf([1.0, 2]))) },
        { "LAND-102", Datum.Row(("type", "Polygon"), ("coordinates", Datum.ListOf([Datum.ListOf([1.0, 2])]))) },
        { "LAND-103", Datum.Row(("type", "Polygon"), ("coordinates", Datum.ListOf([Datum.ListOf([Datum.ListOf(["-122", 39])])]))) },
        { "LAND-103", Geo.Polygon("-122,39 -121.99,Infinity -121.99,39.01 -122,39") },
        { "LAND-104", Geo.Polygon("-122,39 -400,39 -121.99,39.01 -122,39") },
        { "LAND-104", Geo.Polygon("-122,39 -121.99,91 -121.99,39.01 -122,39") },
        { "LAND-107", Geo.Polygon("-122,39 -122,39 -122,39 -122,39") },
        { "LAND-111", Geo.Polygon(Square, Hole, "-121.996,39.003 -121.996,39.005 -121.993,39.005 -121.993,39.003 -121.996,39.003") },
        { "LAND-112", Geo.MultiPolygon([Square], ["-121.995,39.001 -121.98,39.001 -121.98,39.009 -121.995,39.009 -121.995,39.001"]) },
        { "LAND-117", Datum.Row(("type", "MultiPolygon"), ("coordinates", Datum.ListOf(Array.Empty<Datum>()))) },
        { "LAND-118", Geo.Polygon("0,0 1,0 1,1 179.99,0.5 0,0") },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_no_boundary_is_refused_with_its_reason(string code, Datum value)
    {
        var outcome = BoundaryReading.Read(value, "edge");
        Assert.True(outcome.IsRefused);
        Assert.Contains(outcome.Problems, p => p.Kind.Code == code);
        Assert.All(outcome.Problems, p => Assert.DoesNotContain('{', Say.Problem(p, Language.English) + Say.Problem(p, Language.Spanish)));
    }

    [Fact]
    public void Corners_on_one_line_enclose_nothing()
    {
        var outcome = BoundaryReading.Read(Geo.Polygon("-122,39 -122,39.01 -122,39.02 -122,39"), "edge");
        Assert.True(outcome.IsRefused);
        Assert.True(outcome.Problems[0].Kind == BoundaryProblems.CrossesItself || outcome.Problems[0].Kind == BoundaryProblems.NoLand);
    }

    [Fact]
    public void More_corners_or_rings_than_a_field_has_are_refused_before_any_work()
    {
        var ring = string.Join(' ', Enumerable.Range(0, BoundaryLimits.MaxCorners + 1).Select(i => FormattableString.Invariant($"{-122 + (i * 1e-7)},39")));
        Assert.Equal(["LAND-113"], Codes(Geo.Polygon(ring)));
        Assert.Equal(["LAND-114"], Codes(Geo.Polygon([.. Enumerable.Repeat(Square, BoundaryLimits.MaxRings + 1)])));
    }

    [Fact]
    public void A_boundary_larger_than_any_field_is_read_with_a_warning() =>
        Assert.Equal(["LAND-116"], Codes(Geo.Polygon("-122,39 -121,39 -121,40 -122,40 -122,39")));

    [Fact]
    public void A_field_across_the_antimeridian_has_its_own_acres()
    {
        var across = BoundaryReading.Read(Geo.Polygon("179.995,-17 -179.995,-17 -179.995,-16.99 179.995,-16.99 179.995,-17"), "edge").Value;
        var elsewhere = BoundaryReading.Read(Geo.Polygon("177.995,-17 178.005,-17 178.005,-16.99 177.995,-16.99 177.995,-17"), "edge").Value;
        Assert.Equal(GeodesicArea.Of(elsewhere).SquareMeters, GeodesicArea.Of(across).SquareMeters, 0.01);
    }

    [Fact]
    public void Longitudes_counted_to_360_are_the_same_places() =>
        Assert.Equal(-122, BoundaryReading.Read(Geo.Polygon("238,39 238.01,39 238.01,39.01 238,39.01 238,39"), "edge").Value.Parts[0].Outer[0].Longitude, 1e-12);
}
