using CsCheck;
using Watersown.Shapes;

namespace Watersown.Flight.Cover;

public sealed class CoverageProperties
{
    private static readonly ImmutableArray<PlanePart> Land =
        [new PlanePart([new(0, 0), new(310, 20), new(380, 260), new(120, 330), new(-40, 180)], [[new(100, 100), new(150, 110), new(140, 160), new(90, 150)]])];

    public static TheoryData<double> Headings => [0, 17, 33, 45, 61, 90, 128, 171];

    [Theory]
    [MemberData(nameof(Headings))]
    public void Skipped_single_and_overlapped_land_make_up_the_field(double heading)
    {
        var shares = SomeFlight.Cover(Land, SomeFlight.Logged(Land, 17, heading, 0.8), 17).Shares;
        Assert.Equal(shares.Field.SquareMeters, (shares.Skipped.Area + shares.Single.Area + shares.Overlapped.Area).SquareMeters, 1e-6);
        Assert.True(shares.Excess >= shares.Overlapped.Area);
        Assert.InRange(shares.Overlapped.Area.SquareMeters, 1, shares.Field.SquareMeters);
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void Vectors_and_plain_numbers_count_alike(double heading)
    {
        var runs = SomeFlight.Logged(Land, 13, heading, 0.5);
        FieldCover Counted(bool wide) => Coverage.Of(Land, runs, Length.FromMeters(13), new CoverOptions(), wide).Value;
        var (wide, plain) = (Counted(true), Counted(false));
        Assert.Equal(plain.Shares, wide.Shares);
        for (var row = 0; row < wide.Grid.Rows; row++)
        {
            for (var column = 0; column < wide.Grid.Columns; column++) Assert.Equal(plain.CountAt(column, row), wide.CountAt(column, row));
        }
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void Turning_field_and_flight_together_changes_no_area_beyond_its_error(double degrees)
    {
        var runs = SomeFlight.Logged(Land, 17, 0, 0.8);
        var before = SomeFlight.Cover(Land, runs, 17).Shares;
        var after = SomeFlight.Cover(SomeFlight.Turned(Land, degrees), [.. runs.Select(r => SomeFlight.Turned(r, degrees))], 17).Shares;
        static void Near(CountedArea a, CountedArea b) => Assert.Equal(a.Area.SquareMeters, b.Area.SquareMeters, (a.Error + b.Error).SquareMeters / 8);
        Near(before.Skipped, after.Skipped);
        Near(before.Single, after.Single);
        Near(before.Overlapped, after.Overlapped);
        Assert.Equal(before.Swept.SquareMeters, after.Swept.SquareMeters, 1e-6 * before.Swept.SquareMeters);
    }

    [Theory]
    [MemberData(nameof(Headings))]
    public void A_log_that_keeps_to_the_plan_skips_nothing(double heading)
    {
        // Each pass runs on well past the edge: where the edge lies nearly along the heading, the swath leaves the field far beyond its line.
        var plan = Passes.Lay(Land, Length.FromMeters(17), Bearing.FromDegrees(heading));
        var (sin, cos) = Math.SinCos(heading * Math.PI / 180);
        PlanePoint Off(PlanePoint p, double ahead) => new(p.East + (ahead * sin), p.North + (ahead * cos));
        var runs = plan.All.Select(p => (ImmutableArray<PlanePoint>)[Off(p.Open[0].From, -400), Off(p.Open[^1].To, 400)]).ToImmutableArray();
        var cover = Coverage.Of(Land, runs, plan.Spacing + Length.FromMeters(1e-6)).Value;
        Assert.Equal(0, cover.Shares.Skipped.Area.SquareMeters, 1e-9);
        Assert.Empty(cover.ThinPlaces);
    }

    [Fact]
    public void A_pass_moved_sideways_skips_what_it_was_moved_by_along_its_length() =>
        Gen.Double[0.5, 8].Sample(off =>
        {
            var skipped = SomeFlight.Cover(SomeFlight.Rectangle(100, 200), SomeFlight.North(200, 10, 30, 50 + off, 70, 90), 20).Shares.Skipped;
            Assert.Equal(off * 200, skipped.Area.SquareMeters, skipped.Error.SquareMeters);
        }, iter: 30);

    [Fact]
    public void The_way_a_pass_is_flown_changes_no_cell()
    {
        var runs = SomeFlight.Logged(Land, 17, 20, 0.6);
        var (there, back) = (SomeFlight.Cover(Land, runs, 17), SomeFlight.Cover(Land, [.. runs.Select(r => (ImmutableArray<PlanePoint>)[.. r.Reverse()])], 17));
        Assert.Equal(there.Shares.Skipped, back.Shares.Skipped);
        Assert.Equal(there.Shares.Overlapped, back.Shares.Overlapped);
    }
}
