using CsCheck;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

public sealed class HeadingProperties
{
    private static readonly PassPace Pace = new(Length.FromMeters(18), Speed.FromMilesPerHour(120), TimeSpan.FromSeconds(30));

    [Fact]
    public void No_heading_of_a_hundred_others_is_quicker() => Gen.Select(Fields.Stars, Gen.Double[0, 1.8]).Sample(
        (field, shift) =>
        {
            var best = HeadingSearch.Quickest(field, Pace);
            for (var k = 0; k < 100; k++)
            {
                var other = HeadingSearch.On(field, Pace, Bearing.FromDegrees(shift + (1.8 * k)));
                // Between two headings of the sweep the length may still fall a little; a whole turn is never saved.
                Assert.True(best.Time < other.Time + Pace.Turn, $"{other.Heading} {other.Time} {best.Time}");
            }
        },
        iter: 200);

    // By any angle: headings are looked at from the narrowest on, cuts by corners and edges of the field, and of all that is looked
    // at the best is taken. What differs is the rounding of corners turned: parts in 10¹³ of some hundred meters at 54 m/s.
    [Fact]
    public void Turning_the_field_turns_the_plan() => Gen.Select(Fields.Stars, Gen.Double[0, 180]).Sample(
        (field, clockwise) =>
        {
            var (here, turned) = (Fields.Lay(field, new LayingAsk(Pace)), Fields.Lay(Fields.Turned(field, clockwise), new LayingAsk(Pace)));
            Assert.Equal(here.OneHeading.Time.TotalSeconds, turned.OneHeading.Time.TotalSeconds, 1e-3);
            Assert.Equal(here.Passing.TotalSeconds, turned.Passing.TotalSeconds, 1e-3);
            Assert.Equal(here.Cells.Length, turned.Cells.Length);
            Assert.All([here, turned], laid => Assert.InRange(laid.Passing.TotalSeconds, laid.Bound.Time.TotalSeconds - 1e-3, laid.OneHeading.Time.TotalSeconds + 1e-3));
        },
        iter: 100);

    [Fact]
    public void No_heading_takes_fewer_passes_than_the_bound() => Gen.Select(Fields.Stars, Gen.Double[0, 180], Gen.Double[6, 60]).Sample((field, degrees, swath) =>
    {
        var pace = Pace with { Swath = Length.FromMeters(swath) };
        Assert.True(HeadingSearch.On(field, pace, Bearing.FromDegrees(degrees)).Passes >= LayingBound.Of(field, pace).Passes);
    });

    // By hand, at 18 m: a ditch 2 m wide that bends by a right angle costs two strips of 2 m, of 400 m; a hole of 30 m one of 30 m,
    // and none where the land beside it is as wide as the whole; a bay in the short end costs nothing, what is left beyond it being as wide.
    [Theory]
    [InlineData("0 0 199 0 199 200 100 200 100 202 201 202 201 0 400 0 400 400 0 400", "", 22)] // (400 − 4) / 18 = 22.0
    [InlineData("0 0 400 0 400 400 0 400", "185 185 215 185 215 215 185 215", 21)] // 370 / 18 = 20.6
    [InlineData("0 0 800 0 800 400 0 400", "300 200 330 200 330 230 300 230", 23)] // 400 / 18 = 22.2
    [InlineData("0 0 800 0 800 100 700 100 700 300 800 300 800 400 0 400", "", 23)]
    public void Bays_and_holes_cost_the_bound_no_more_than_strips_over_them(string edge, string hole, int passes)
    {
        ImmutableArray<PlanePoint> Ring(string corners) => [.. corners.Split(' ').Select(c => double.Parse(c, System.Globalization.CultureInfo.InvariantCulture)).Chunk(2).Select(c => new PlanePoint(c[0], c[1]))];
        ImmutableArray<PlanePart> field = [new(Ring(edge), hole.Length > 0 ? [Ring(hole)] : [])];
        Assert.Equal(passes, LayingBound.Of(field, Pace).Passes);
        Assert.True(Fields.Lay(field, new LayingAsk(Pace)).Passes >= passes);
    }

    [Fact]
    public void A_field_twice_the_size_with_twice_the_swath_takes_the_same_passes() => Fields.Stars.Sample(
        field =>
        {
            ImmutableArray<PlanePart> larger = [.. field.Select(p => new PlanePart([.. p.Outer.Select(c => new PlanePoint(2 * c.East, 2 * c.North))], [.. p.Holes.Select(h => h.Select(c => new PlanePoint(2 * c.East, 2 * c.North)).ToImmutableArray())]))];
            var (small, large) = (Fields.Lay(field, new LayingAsk(Pace)), Fields.Lay(larger, new LayingAsk(Pace with { Swath = Pace.Swath * 2, Speed = Pace.Speed * 2 })));
            Assert.Equal(small.Passing.TotalSeconds, large.Passing.TotalSeconds, 1e-3);
        },
        iter: 100);

    // Every point of the field lies beside a pass, within half a spacing of it and not beyond its ends.
    [Fact]
    public void Every_point_lies_within_half_a_swath_of_a_line() => Gen.Select(Fields.Stars, Gen.Double[-600, 600], Gen.Double[-600, 600]).Sample((field, east, north) =>
    {
        var point = new PlanePoint(east, north);
        if (!MapGeometry.Contains(field, point)) return;
        var layout = Fields.Lay(field, new LayingAsk(Pace));
        Assert.All(layout.Cells, cell => Assert.True(cell.Plan.Spacing.Meters <= Pace.Swath.Meters + 1e-4));
        Assert.Contains(layout.Lines, p =>
        {
            var way = Bearing.FromDegrees(Math.Atan2(p.To.East - p.From.East, p.To.North - p.From.North) * 180 / Math.PI);
            return Math.Abs(p.From.RightOf(way) - point.RightOf(way)) <= (Pace.Swath.Meters / 2) + 1e-3
                && point.AheadOf(way) >= p.From.AheadOf(way) - 0.01 && point.AheadOf(way) <= p.To.AheadOf(way) + 0.01;
        });
    });

    [Fact]
    public void A_run_wished_for_is_flown_and_its_price_told()
    {
        ImmutableArray<PlanePart> land = [new([new(0, 0), new(800, 0), new(800, 400), new(0, 400)], [])];
        var wished = Fields.Lay(land, new LayingAsk(Pace) { Run = Bearing.FromDegrees(0) });
        Assert.Equal(0, wished.Cells[0].Plan.Heading.Degrees);

        // By hand: 45 passes of 400 m and 44 turns of 30 s against 23 of 800 m and 22 turns, at 53.6448 m/s.
        Assert.Equal((((45 * 400) - (23 * 800)) / 53.6448) + (22 * 30), wished.RunCosts.TotalSeconds, 0.01);
        Assert.Equal(23, wished.Bound.Passes);
        Assert.True(wished.Bound.Convex);
        var free = Fields.Lay(land, new LayingAsk(Pace));
        Assert.Equal(90, free.Cells[0].Plan.Heading.Degrees, 1e-9);
        Assert.Equal(TimeSpan.Zero, free.RunCosts);
        Assert.Equal(23, free.Passes);
    }

    // By hand: an L of two arms 900 m long and 180 m wide. In one heading either arm is crossed or the other is; in two cells each
    // arm is flown along. Fifty passes of 180 m and ten of 900 m against ten and eight long ones.
    [Fact]
    public void An_ell_is_flown_in_two_headings()
    {
        ImmutableArray<PlanePart> ell = [new([new(0, 0), new(900, 0), new(900, 180), new(180, 180), new(180, 900), new(0, 900)], [])];
        var layout = Fields.Lay(ell, new LayingAsk(Pace));
        Assert.Equal(2, layout.Cells.Length);
        Assert.Equal([0, 90], layout.Cells.Select(c => Math.Round(c.Plan.Heading.Degrees, 6)).Order());
        Assert.Equal(20, layout.Passes);
        Assert.True(layout.Passing < layout.OneHeading.Time);
        Assert.Equal(291_600, layout.Cells.Sum(c => c.Area.SquareMeters), 1e-3);
    }

    [Fact]
    public void A_square_with_a_dent_is_flown_as_one()
    {
        ImmutableArray<PlanePart> dent = [new([new(0, 0), new(800, 0), new(800, 400), new(420, 400), new(400, 360), new(380, 400), new(0, 400)], [])];
        Assert.Single(Fields.Lay(dent, new LayingAsk(Pace)).Cells);
    }
}
