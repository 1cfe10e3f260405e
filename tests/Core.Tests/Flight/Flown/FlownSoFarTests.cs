using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

public sealed class FlownSoFarTests
{
    // 100 m by 200 m about 39 N, 122 W, flown north and south 20 m apart.
    private static readonly LocalPlane Ground = FarmPlane.Over(Edge());

    private static Boundary Edge()
    {
        var (north, east) = (200 / 111_017.0, 100 / 86_610.0);
        return BoundaryReading.Read((Datum.Table)Datum.Row(("type", "Polygon"), ("coordinates", Datum.ListOf([Datum.ListOf(new[] { (0.0, 0.0), (east, 0.0), (east, north), (0.0, north), (0.0, 0.0) }.Select(p => (Datum)Datum.ListOf([-122 + p.Item1, 39 + p.Item2])))]))), "edge").Value;
    }

    [Theory]
    [InlineData(GateSign.Open)]
    [InlineData(GateSign.NotTold)]
    public void What_was_read_sows_a_swath_for_every_pass_and_no_more(GateSign gate)
    {
        var land = Ground.ToPlane(Edge());
        var (west, south) = (land[0].Outer.Min(c => c.East), land[0].Outer.Min(c => c.North));
        var soFar = new FlownSoFar(Edge(), Length.FromMeters(20));
        Assert.Equal(0, soFar.Sown.SquareMeters);
        for (var pass = 0; pass < 5; pass++)
        {
            for (var i = 0; i <= 20; i++)
            {
                var ahead = 1 + (9.9 * (pass % 2 == 0 ? i : 20 - i));
                soFar.Add(new FlownFix(new PlanePoint(west + 10 + (20 * pass), south + ahead), i) { Gate = gate, Break = i == 0 ? TrackBreak.Piece : TrackBreak.None });
            }

            soFar.Add(new FlownFix(new PlanePoint(west + 10 + (20 * pass), south + (pass % 2 == 0 ? 260 : -60)), 30) { Gate = gate == GateSign.Open ? GateSign.Shut : gate });
            // A meter short of either end of the field; within a cell along both sides and at both ends.
            Assert.Equal((pass + 1) * 20 * 198, soFar.Sown.SquareMeters, 0.5 * (400 + (40 * (pass + 1))));
        }
    }
}
