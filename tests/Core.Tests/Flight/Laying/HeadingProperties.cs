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
                // Between two headings of the sweep the length may still fall by a hair; a turn never.
                Assert.True(best.Time.TotalSeconds <= other.Time.TotalSeconds + 2, $"{other.Heading} {other.Time} {best.Time}");
            }
        },
        iter: 200);

    [Fact]
    public void Turning_the_field_turns_the_plan() => Gen.Select(Fields.Stars, Gen.Int[0, 719]).Sample(
        (field, quarters) =>
        {
            // By a step of the sweep, so that the same headings are looked at.
            var (here, turned) = (Fields.Lay(field, new LayingAsk(Pace)), Fields.Lay(Fields.Turned(field, quarters * 0.25), new LayingAsk(Pace)));
            Assert.Equal(here.OneHeading.Time.TotalSeconds, turned.OneHeading.Time.TotalSeconds, 2.0); // as above: a hair of length, never a turn

            // Cuts are guessed at and few are worked out, so that another may stand when all is turned: none may ever cost, and a field in one
            // piece is the same whichever way it lies.
            if (here.Cells.Length == 1 && turned.Cells.Length == 1) Assert.Equal(here.Passing.TotalSeconds, turned.Passing.TotalSeconds, 2.0);
            Assert.All([here, turned], laid => Assert.InRange(laid.Passing.TotalSeconds, laid.Bound.Time.TotalSeconds - 1e-3, laid.OneHeading.Time.TotalSeconds + 1e-3));
            Assert.Equal(here.Bound.Time.TotalSeconds, turned.Bound.Time.TotalSeconds, 31.0); // a circle a hair larger may take one more pass
        },
        iter: 100);

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
