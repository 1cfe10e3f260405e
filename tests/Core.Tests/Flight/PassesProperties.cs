using CsCheck;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight;

public sealed class PassesProperties
{
    // A star round its middle: never crosses itself, convex or not.
    private static readonly Gen<ImmutableArray<PlanePoint>> Fields = Gen.Double[150, 600].Array[4, 14].Select(radii =>
        ImmutableArray.CreateRange(radii.Select((r, i) => new PlanePoint(r * Math.Cos(2 * Math.PI * i / radii.Length), r * Math.Sin(2 * Math.PI * i / radii.Length)))));

    [Fact]
    public void Turning_the_field_turns_the_heading_with_it() => Gen.Select(Fields, Gen.Double[0, 360]).Sample((ring, turn) =>
    {
        var (here, turned) = (Passes.Narrowest(One(ring)), Passes.Narrowest(One(Turned(ring, turn))));
        Assert.Equal(here.Width.Meters, turned.Width.Meters, 1e-6);

        // Two directions may tie; the heading turned along must be as narrow in any case.
        var along = Bearing.FromDegrees(here.Heading.Degrees + turn);
        Assert.Equal(here.Width.Meters, Passes.OutlineOf(One(Turned(ring, turn))).Across(along).Meters, 1e-6);
    });

    [Fact]
    public void No_heading_is_narrower() => Gen.Select(Fields, Gen.Double[0, 180]).Sample((ring, heading) =>
        Assert.True(Passes.OutlineOf(One(ring)).Across(Bearing.FromDegrees(heading)) >= Passes.Narrowest(One(ring)).Width * (1 - 1e-12)));

    // Second way to the area: length of lines × spacing; lines 1 m apart come within half a percent of the corners' own sum.
    [Fact]
    public void Passes_close_together_add_up_to_the_land() => Gen.Select(Fields, Gen.Double[0, 360]).Sample(
        (ring, heading) =>
        {
            var plan = Passes.Lay(One(ring), Length.FromMeters(1), Bearing.FromDegrees(heading));
            var land = Math.Abs(ring.Select((p, i) => (p.East * ring[(i + 1) % ring.Length].North) - (p.North * ring[(i + 1) % ring.Length].East)).Sum()) / 2;
            Assert.Equal(land, (plan.OpenLength * plan.Spacing).SquareMeters, land * 0.005);
        },
        iter: 50);

    [Fact]
    public void A_wider_swath_never_takes_more_passes_and_lines_lie_a_swath_apart_at_most() => Gen.Select(Fields, Gen.Double[8, 40], Gen.Double[0, 20]).Sample((ring, swath, wider) =>
    {
        var (plan, fewer) = (Passes.Lay(One(ring), Length.FromMeters(swath), null), Passes.Lay(One(ring), Length.FromMeters(swath + wider), null));
        Assert.True(fewer.All.Length <= plan.All.Length);
        Assert.True(plan.Spacing.Meters <= swath + 1e-4);
        Assert.All(plan.All.SelectMany(p => p.Open), span => Assert.True(span.Length > Length.Zero));
    });

    // On the earth: a rectangle drawn on the plane and taken out to places keeps width, heading and acres.
    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(61)]
    [InlineData(90)]
    [InlineData(133)]
    public void A_field_on_the_earth_is_flown_along_its_long_side(double turn)
    {
        var answer = Ask.For("passes", ("boundary", OnEarth([[new(-400, -200), new(400, -200), new(400, 200), new(-400, 200)]], turn)), ("swath_ft", 18 / 0.3048));
        Assert.Equal((90 + turn) % 180, answer.Number("heading_deg"), 0.001);
        Assert.Equal(400, answer.Number("width_m"), 0.001);
        Assert.Equal(23, answer.Number("passes"));
        Assert.Equal(800, answer.Number("pass_length_m"), 0.001);
        Assert.Equal(23 * 800, answer.Number("total_length_m"), 0.01);
        Assert.Equal(32 / 0.40468564224, answer.Number("area_ac"), 0.001);
    }

    [Fact]
    public void The_heading_asked_for_is_flown()
    {
        var answer = Ask.For("passes", ("boundary", OnEarth([[new(-400, -200), new(400, -200), new(400, 200), new(-400, 200)]], 0)), ("swath_ft", 18 / 0.3048), ("heading_deg", 180));
        Assert.Equal(180, answer.Number("heading_deg"), 1e-12);
        Assert.Equal(800, answer.Number("width_m"), 0.001);
        Assert.Equal(45, answer.Number("passes"));
        Assert.Equal(400, answer.Number("pass_length_m"), 0.001);
    }

    [Fact]
    public void A_hole_is_told_and_so_is_a_field_that_bends()
    {
        var hole = Ask.For("passes", ("boundary", OnEarth([[new(-400, -200), new(400, -200), new(400, 200), new(-400, 200)], [new(-50, -50), new(-50, 50), new(50, 50), new(50, -50)]], 0)), ("swath_ft", 60));
        Assert.Contains(hole.Value.Cautions, c => c.Contains("shut over each hole", StringComparison.Ordinal));
        var bend = Ask.For("passes", ("boundary", OnEarth([[new(0, 0), new(600, 0), new(600, 150), new(150, 150), new(150, 600), new(0, 600)]], 0)), ("swath_ft", 60));
        Assert.Contains(bend.Value.Cautions, c => c.Contains("two headings", StringComparison.Ordinal));
        Assert.DoesNotContain(hole.Value.Cautions, c => c.Contains("two headings", StringComparison.Ordinal));
    }

    [Fact]
    public void A_boundary_through_itself_and_a_swath_far_too_small_are_refused()
    {
        Ask.For("passes", ("boundary", Geo.Polygon("-122,39 -121.99,39.01 -121.99,39 -122,39.01 -122,39")), ("swath_ft", 50))
            .Refuses((BoundaryProblems.CrossesItself, "boundary"));
        Ask.For("passes", ("boundary", OnEarth([[new(-850, -100), new(850, -100), new(850, 100), new(-850, 100)]], 0)), ("swath_ft", 1), ("heading_deg", 0))
            .Refuses((Reckon.ReckonProblems.Impossible, "swath_ft"));
    }

    private static ImmutableArray<PlanePart> One(ImmutableArray<PlanePoint> ring) => [new(ring, [])];

    private static ImmutableArray<PlanePoint> Turned(ImmutableArray<PlanePoint> ring, double clockwise)
    {
        var (sin, cos) = Math.SinCos(clockwise * Math.PI / 180);
        return [.. ring.Select(p => new PlanePoint((p.East * cos) + (p.North * sin), (p.North * cos) - (p.East * sin)))];
    }

    private static Datum.Table OnEarth(ImmutableArray<PlanePoint>[] rings, double turn)
    {
        var plane = LocalPlane.At(39, -122);
        Datum Position(PlanePoint p)
        {
            var (latitude, longitude) = plane.ToEarth(p);
            return Datum.ListOf([longitude, latitude]);
        }

        return (Datum.Table)Datum.Row(("type", "Polygon"), ("coordinates", Datum.ListOf(rings.Select(r => Datum.ListOf(Turned([.. r, r[0]], turn).Select(Position))))));
    }
}
