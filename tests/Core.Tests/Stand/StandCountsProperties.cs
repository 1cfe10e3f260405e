using CsCheck;

namespace Watersown.Stand;

public sealed class StandCountsProperties
{
    private static readonly Area Ring = Area.FromSquareFeet(1);

    private static readonly Gen<ImmutableArray<StandZone>> Zones =
        Gen.Select(Gen.Double[1, 100], Gen.Int[0, 60].Array[2, 12]).Select((acres, counts) => new StandZone("z", Area.FromAcres(acres), [.. counts.Select(c => (double)c)]))
            .Array[1, 5].Select(z => z.ToImmutableArray());

    [Fact]
    public void The_order_of_zones_and_rings_changes_nothing() => Zones.Sample(zones =>
    {
        var turned = zones.Reverse().Select(z => z with { Counts = [.. z.Counts.Reverse()] }).ToImmutableArray();
        Near(StandCounts.Assess(zones, Ring).Whole, StandCounts.Assess(turned, Ring).Whole);
    });

    [Fact]
    public void The_field_lies_between_its_thinnest_and_its_thickest_zone() => Zones.Sample(zones =>
    {
        var report = StandCounts.Assess(zones, Ring);
        Assert.InRange(report.Whole.Mean.PerSquareMeter, report.Zones.Min(z => z.Mean.PerSquareMeter) - 1e-9, report.Zones.Max(z => z.Mean.PerSquareMeter) + 1e-9);
        Assert.True(report.Whole.Low <= report.Whole.Mean && report.Whole.Mean <= report.Whole.High);
        var least = zones.Min(z => z.Counts.Length - 1);
        Assert.InRange(report.Whole.Freedom!.Value, least - 1e-9, zones.Sum(z => z.Counts.Length - 1) + 1e-9);
    });

    [Fact]
    public void Twice_the_ring_and_twice_the_plants_are_the_same_stand() => Zones.Sample(zones =>
        Near(StandCounts.Assess(zones, Ring).Whole, StandCounts.Assess([.. zones.Select(z => z with { Counts = [.. z.Counts.Select(c => c * 2)] })], Ring * 2).Whole));

    [Fact]
    public void Measuring_the_land_in_another_unit_changes_nothing() => Zones.Sample(zones =>
        Near(StandCounts.Assess(zones, Ring).Whole, StandCounts.Assess([.. zones.Select(z => z with { Land = z.Land * 2.471 })], Ring).Whole));

    // What a 95 % range promises, tried on fields whose truth is known: three zones of different spread and few rings.
    [Fact]
    public void The_truth_lies_in_the_range_nineteen_times_in_twenty()
    {
        var random = new Random(20260508);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var truth = ((30 * 200) + (50 * 260) + (32 * 340)) / 112.0;
        const int Fields = 4000;
        var hits = 0;
        for (var i = 0; i < Fields; i++)
        {
            ImmutableArray<double> Rings(double mean, double spread, int n) => [.. Enumerable.Range(0, n).Select(_ => mean + (spread * Normal()))];
            var whole = StandCounts.Assess(
                [
                    new StandZone("a", Area.FromAcres(30), Rings(200, 10, 6)),
                    new StandZone("b", Area.FromAcres(50), Rings(260, 40, 6)),
                    new StandZone("c", Area.FromAcres(32), Rings(340, 15, 6)),
                ], Ring).Whole;
            if (whole.Low!.Value.PerSquareFoot <= truth && truth <= whole.High!.Value.PerSquareFoot) hits++;
        }

        Assert.InRange(hits / (double)Fields, 0.94, 0.965);
    }

    private static void Near(StandEstimate expected, StandEstimate actual)
    {
        var within = 1e-9 * (1 + expected.High!.Value.PerSquareMeter);
        Assert.Equal(expected.Mean.PerSquareMeter, actual.Mean.PerSquareMeter, within);
        Assert.Equal(expected.Low!.Value.PerSquareMeter, actual.Low!.Value.PerSquareMeter, within);
        Assert.Equal(expected.High!.Value.PerSquareMeter, actual.High!.Value.PerSquareMeter, within);
    }
}
