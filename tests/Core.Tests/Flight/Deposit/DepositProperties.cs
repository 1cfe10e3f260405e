using CsCheck;
using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Flight.Deposit;

public sealed class DepositProperties
{
    private static readonly ImmutableArray<PlanePart> Land =
        [new PlanePart([new(0, 0), new(310, 20), new(380, 260), new(120, 330), new(-40, 180)], [[new(100, 100), new(150, 110), new(140, 160), new(90, 150)]])];

    private static readonly LateralShape Skewed = SomeDeposit.Trays(SomeDeposit.P2, 1.5);

    public static TheoryData<double> Headings => [0, 17, 33, 45, 61, 90, 128, 171];

    [Theory]
    [MemberData(nameof(Headings))]
    public void Every_cell_is_what_the_plainest_sum_gives(double heading)
    {
        // Flown along the lines of cells, and askew to them: pieces are then parted by their borders on almost every line.
        var runs = SomeDeposit.Runs(SomeFlight.Logged(Land, 13, heading, 0.2), 13);
        foreach (var grid in new[] { heading, heading + 25, heading + 90 })
        {
            var map = SomeDeposit.Whole(Land, runs, Skewed, grid, 0.5);
            var plain = SomeDeposit.Plainly(map, runs, Skewed, grid);
            Assert.InRange(SomeDeposit.Apart(map, (line, cell) => plain[line, cell]), 0, 1e-5);
        }
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void Fix_by_fix_gives_the_map_of_the_whole(double heading)
    {
        var runs = SomeDeposit.Runs(SomeFlight.Logged(Land, 13, heading, 0.8), 13);
        var (whole, singly) = (SomeDeposit.Whole(Land, runs, Skewed, heading, 0.5), SomeDeposit.Singly(Land, runs, Skewed, heading, 0.5));
        Assert.InRange(SomeDeposit.Apart(whole, (line, cell) => SomeDeposit.Cell(singly, line, cell)), 0, 1e-5);
        Assert.Equal(whole.Laid.SquareMeters, singly.Laid.SquareMeters, 1e-6);
        Assert.Equal(whole.LeftOut, singly.LeftOut);
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void Plain_numbers_give_the_map_of_vectors(double heading)
    {
        var runs = SomeDeposit.Runs(SomeFlight.Logged(Land, 13, heading, 0.5), 13);
        var (wide, plain) = (SomeDeposit.Whole(Land, runs, Skewed, heading, 0.5), SomeDeposit.Whole(Land, runs, Skewed, heading, 0.5, wide: false));
        Assert.InRange(SomeDeposit.Apart(wide, (line, cell) => SomeDeposit.Cell(plain, line, cell)), 0, 1e-5);
        var (a, b) = (wide.Look(new DepositOptions()), plain.Look(new DepositOptions()));
        Assert.Equal(a.Cv.Share, b.Cv.Share, 1e-6);
        Assert.Equal(a.Mean, b.Mean, 1e-6);
        Assert.Equal(a.Near.Share, b.Near.Share, 1e-4);
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void Turning_field_and_flight_together_changes_nothing_beyond_the_cells_at_the_edge(double degrees)
    {
        var lines = SomeFlight.Logged(Land, 15, 0, 0.8);
        var before = DepositMap.Of(Land, SomeDeposit.Runs(lines, 15), Skewed, new DepositOptions()).Value;
        var after = DepositMap.Of(SomeFlight.Turned(Land, degrees), SomeDeposit.Runs([.. lines.Select(r => SomeFlight.Turned(r, degrees))], 15), Skewed, new DepositOptions()).Value;
        // Cells turn with the flying, so that a turned field falls on the same cells but for rounding and a share of a cell at its edge.
        var edge = 1500 * before.Cell.Meters / before.Land.SquareMeters;
        Assert.Equal(before.Land.SquareMeters, after.Land.SquareMeters, before.Land.SquareMeters * edge);
        Assert.Equal(before.Mean, after.Mean, edge);
        Assert.Equal(before.Cv.Share, after.Cv.Share, edge);
        Assert.Equal(before.Near.Share, after.Near.Share, edge);
    }

    [Fact]
    public void All_the_seed_lies_on_a_field_that_holds_the_whole_flight() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Double[0, 180]).Sample((seed, heading) =>
        {
            // A square far beyond the flight: what the gate gave is on it, but for half a cell at each end of a run, and for what sums of
            // a pattern bent at its knots are off: cell² / 8 × all its bends, 0.07 a meter each way, times 14 m.
            var lines = SomeFlight.Logged(SomeFlight.Rectangle(200, 150), 14, heading, 0.3, seed: seed);
            ImmutableArray<PlanePart> all = [new PlanePart([new(-300, -300), new(500, -300), new(500, 500), new(-300, 500)], [])];
            var deposit = DepositMap.Of(all, SomeDeposit.Runs(lines, 14), SomeDeposit.Trays(SomeDeposit.P1), new DepositOptions { Cell = Length.FromMeters(0.5) }).Value;
            var flown = lines.Sum(l => Enumerable.Range(1, l.Length - 1).Sum(i => double.Hypot(l[i].East - l[i - 1].East, l[i].North - l[i - 1].North)));
            Assert.Equal(14 * flown, deposit.Laid.SquareMeters, 1e-6 * flown);
            Assert.Equal(deposit.Laid.SquareMeters, deposit.Mean * deposit.Land.SquareMeters, (lines.Length * 2 * 14 * 0.25) + (flown * 14 * 0.07 * 0.25 / 8));
        }, iter: 12);

    [Fact]
    public void A_pass_left_out_is_a_thin_place_where_it_would_have_gone()
    {
        var deposit = DepositMap.Of(SomeFlight.Rectangle(160, 300), SomeDeposit.Runs(SomeFlight.North(300, 10, 30, 50, 70, 110, 130, 150), 20), LateralShape.Supposed(Length.FromMeters(20)), new DepositOptions()).Value;
        var place = Assert.Single(deposit.Places);
        // The neighbors reach 13⅓ m: less than 40 % lies from 20 × (2/3 − 0.4/3) = 10⅔ m beside either, between 80⅔ and 99⅓ m.
        Assert.Equal((99 + (1.0 / 3) - 80 - (2.0 / 3)) * 300, place.Area.SquareMeters, 0.5 * 600);
        Assert.Equal(90, place.Middle.East, 0.5);
        Assert.Equal(300, place.Long.Meters, 1);
        Assert.Equal(deposit.Thin.Share, place.Area / deposit.Land, 0.01);
    }

    [Fact]
    public void What_lies_at_a_place_is_told_on_the_field_alone()
    {
        var deposit = DepositMap.Of(SomeFlight.Rectangle(100, 200), SomeDeposit.Runs(SomeFlight.North(200, 10, 30, 50, 70, 90), 20), LateralShape.Supposed(Length.FromMeters(20)), new DepositOptions()).Value;
        Assert.Equal(1, deposit.At(new PlanePoint(50, 100))!.Value, 1e-5);
        Assert.Equal(0.5, deposit.At(new PlanePoint(0.25, 100))!.Value, 0.05);
        Assert.Null(deposit.At(new PlanePoint(-1, 100)));
        Assert.Null(deposit.At(new PlanePoint(50, 201)));
    }

    [Fact]
    public void A_track_that_stands_still_jumps_or_turns_round_breaks_nothing()
    {
        ImmutableArray<PlanePoint> mad =
        [
            new(50, 10), new(50, 10), new(50, 10.001), new(double.NaN, 3), new(50, 60), new(52, 58), new(50, 120), new(50, 119), new(50, 20), new(51, 20),
            new(double.PositiveInfinity, 0), new(90, 25), new(88, 25.5), new(91, 24.5), new(90, 150), new(1e9, 1e9), new(60, 150),
        ];
        var land = SomeFlight.Rectangle(150, 200);
        var runs = SomeDeposit.Runs([mad, [new(1, 1), new(1, 1)], [new(5, 5)]], 20);
        var (whole, singly) = (SomeDeposit.Whole(land, runs, Skewed, 0, 0.5), SomeDeposit.Singly(land, runs, Skewed, 0, 0.5));
        Assert.Equal(0, SomeDeposit.Apart(whole, (line, cell) => SomeDeposit.Cell(singly, line, cell)));
        Assert.InRange(whole.LeftOut, 3, mad.Length);
        Assert.InRange(whole.Look(new DepositOptions()).Mean, 0, 2);
        Assert.Equal([CoverProblems.NothingFlown], DepositMap.Of(land, SomeDeposit.Runs([[new(5, 5)]], 20), Skewed, new DepositOptions()).Problems.Select(p => p.Kind));
    }

    [Fact]
    public void A_row_of_more_trays_than_vectors_hold_is_laid_all_the_same()
    {
        var many = LateralShape.Of([.. Enumerable.Range(0, 45).Select(i => SoakedSeed.FromKilograms(1 + Math.Sin(i / 7.0)))], Length.FromMeters(0.5), Length.Zero);
        var runs = SomeDeposit.Runs(SomeFlight.Logged(Land, 13, 33, 0.5), 13);
        var map = SomeDeposit.Whole(Land, runs, many, 33, 0.5);
        var plain = SomeDeposit.Plainly(map, runs, many, 33);
        Assert.InRange(SomeDeposit.Apart(map, (line, cell) => plain[line, cell]), 0, 1e-5);
    }
}
