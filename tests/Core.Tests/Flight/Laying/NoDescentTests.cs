using Watersown.Land;
using Watersown.Reckon;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

public sealed class NoDescentTests
{
    private static readonly PassPace Pace = new(Length.FromMeters(18), Speed.FromMilesPerHour(120), TimeSpan.FromSeconds(30));

    // Derived: 15.24 m at 53.64 m/s over the ground and 3.56 m/s up take 230 m.
    [Fact]
    public void A_climb_takes_a_run() =>
        Assert.Equal(230, NoDescents.ClimbRun(Length.FromMeters(15.24), Speed.FromMetersPerSecond(53.64), Speed.FromMetersPerSecond(3.56)).Meters, 0.5);

    // Common practice: 100 ft each side of a wire; the height and 100 ft round a tower; 300 ft from a house; a quarter mile from a school.
    [Theory]
    [InlineData(HazardKind.Wire, 100)]
    [InlineData(HazardKind.Tower, 250)]
    [InlineData(HazardKind.House, 300)]
    [InlineData(HazardKind.School, 1320)]
    [InlineData(HazardKind.Pond, 25)]
    public void Each_kind_has_its_reach(HazardKind kind, double feet) =>
        Assert.Equal(feet, NoDescents.Of(new Hazard(kind, "it") { Height = Length.FromFeet(150) }, [new(0, 0)], Length.FromFeet(50))!.Reach.Feet, 1e-9);

    [Fact]
    public void Nothing_is_taken_beside_a_road() => Assert.Null(NoDescents.Of(new Hazard(HazardKind.Road, "road"), [new(0, 0), new(1, 0)], Length.FromFeet(50)));

    // By hand: a wire across the middle of 800 × 400 m takes 60.96 × 400 m; every pass along is shut over it and flown through.
    [Fact]
    public void A_wire_across_shuts_the_gate_of_every_pass()
    {
        var wire = new NoDescent("wire", [new(400, -50), new(400, 450)], NoDescents.BesideWire) { Height = Length.FromFeet(50) };
        var layout = Fields.Lay(Fields.Rectangle(800, 400), new LayingAsk(Pace) { Round = [wire], Run = Bearing.FromDegrees(90) });
        Assert.Equal(60.96 * 400, layout.Unsown.SquareMeters, 60.0);
        Assert.Equal(23, layout.Passes);
        Assert.All(layout.Lines, line =>
        {
            Assert.Equal(2, line.Spans.Length);
            Assert.Equal(800, line.Flown.Meters, 1e-6);
            Assert.Equal(800 - 60.96, line.Open.Meters, 0.15);
        });
    }

    // By hand: climbing 50 ft at 700 ft/min takes 230 m to either side of the wire; what is left of it beyond the corridor is sown along the wire.
    [Fact]
    public void Where_the_climb_is_told_the_ground_before_a_wire_is_sown_along_it()
    {
        var wire = new NoDescent("wire", [new(400, -50), new(400, 450)], NoDescents.BesideWire) { Height = Length.FromMeters(15.24) };
        var ask = new LayingAsk(Pace) { Round = [wire], Climb = Speed.FromMetersPerSecond(3.56), Run = Bearing.FromDegrees(90) };
        var across = Fields.Lay(Fields.Rectangle(800, 400), ask);
        var run = 15.24 * 53.6448 / 3.56;
        Assert.Equal(2 * (int)Math.Ceiling((run - 30.48) / 18), across.AlongWires);
        Assert.All(across.Lines.Take(23), line => Assert.Equal(800 - (2 * run), line.Open.Meters, 0.15));

        // Flown along the wire instead, nothing climbs.
        var along = Fields.Lay(Fields.Rectangle(800, 400), ask with { Run = null });
        Assert.Equal(0, along.AlongWires);
        Assert.True(along.Passing < across.Passing);
        Assert.All(along.Cells, cell => Assert.Equal(0, cell.Plan.Heading.Degrees, 1e-6));
    }

    [Fact]
    public void A_tower_is_not_flown_over_and_its_pass_is_two()
    {
        var tower = NoDescents.Of(new Hazard(HazardKind.Tower, "tower") { Height = Length.FromFeet(200) }, [new(400, 200)], Pace.Swath)!;
        var layout = Fields.Lay(Fields.Rectangle(800, 400), new LayingAsk(Pace) { Round = [tower], Run = Bearing.FromDegrees(90) });
        var broken = 23 - layout.Lines.Count(line => line.Flown.Meters > 799);
        Assert.InRange(broken, 9, 12); // two reaches of 91.44 m over 17.4 m a pass
        Assert.Equal(23 + broken, layout.Passes);
        Assert.All(layout.Lines, line => Assert.Single(line.Spans));
        Assert.All(layout.Lines.SelectMany(line => line.Spans), span => Assert.True(MapGeometry.ToEdge([new PlanePart([new(400, 200)], [])], [span.From, span.To]) >= tower.Reach - Length.FromMeters(0.1)));
    }

    [Fact]
    public void A_wire_is_told_by_its_corners_and_nonsense_is_refused()
    {
        const string section = "-122,39.4 -121.9906,39.4 -121.9906,39.4072 -122,39.4072 -122,39.4";
        var answer = Asked("wire", -121.9953, 39.39, -121.9953, 39.41);
        Assert.True(answer.Number("unsown_ac") > 11);
        Asked("wire", -121.9953, 39.39, -121.9953).Refuses((ReckonProblems.Impossible, "round"));
        Asked("tower", 39.4, -122).Refuses((ReckonProblems.Impossible, "round"));
        Ask.For("pass-layout", ("boundary", Geo.Polygon(section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32),
            ("round", Datum.ListOf([Datum.Row(("kind", "school"), ("lon_lat", Ask.List(-121.995, 39.403)), ("reach_ft", 9000))]))).Refuses((ReckonProblems.Impossible, "round"));

        Outcome<Reckoned> Asked(string kind, params double[] corners) => Ask.For("pass-layout", ("boundary", Geo.Polygon(section)), ("swath_ft", 50), ("speed_mph", 120), ("turn_s", 32),
            ("round", Datum.ListOf([Datum.Row(("kind", kind), ("lon_lat", Ask.List(corners)), ("height_ft", 40))])), ("climb_ft_min", 700));
    }
}
