using CsCheck;
using MathNet.Numerics.Statistics;

namespace Watersown.Stand;

/// <summary>The stand's statistics against a general library of numbers.</summary>
public sealed class StandAgainstLibraryTests
{
    private static readonly Area Ring = Area.FromSquareFeet(1);

    private static readonly Gen<StandZone> Zone = Gen.Select(Gen.Int[1, 200], Gen.Int[0, 60].Array[2, 24]).Select((acres, counts) => new StandZone("z", Area.FromAcres(acres), [.. counts.Select(c => (double)c)]));

    // Quantiles of the library are found by search to about nine figures.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(7.3)]
    [InlineData(48.2)]
    [InlineData(1000)]
    public void Students_t_is_the_librarys(double freedom)
    {
        foreach (var chance in new[] { 0.6, 0.9, 0.95, 0.975, 0.995 }) Assert.Equal(MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, freedom, chance), StudentT.Quantile(chance, freedom), 1e-6 * Math.Abs(StudentT.Quantile(chance, freedom)));
    }

    [Fact]
    public void One_zones_range_is_the_librarys_mean_and_deviation() => Zone.Sample(zone =>
    {
        var stand = StandCounts.Assess([zone], Ring).Whole;
        var (mean, deviation) = zone.Counts.AsEnumerable().MeanStandardDeviation();
        var half = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, zone.Counts.Length - 1, 0.975) * deviation / Math.Sqrt(zone.Counts.Length);
        Assert.Equal(mean, stand.Mean.PerSquareFoot, 1e-9 * Math.Max(1, mean));
        Assert.Equal(mean + half, stand.High!.Value.PerSquareFoot, 1e-6 * Math.Max(1, mean + half));
    });

    // Weighted by land; error √Σ(w² s² / n); Satterthwaite (Σ v)² / Σ (v² / (n − 1)) with v = w² s² / n.
    [Fact]
    public void A_fields_range_is_put_together_from_the_librarys_zones() => Zone.Array[1, 4].Sample(zones =>
    {
        var land = zones.Sum(z => z.Land.Acres);
        var parts = zones.Select(z => (Weight: z.Land.Acres / land, Mean: z.Counts.AsEnumerable().Mean(), Share: Math.Pow(z.Land.Acres / land, 2) * z.Counts.AsEnumerable().Variance() / z.Counts.Length, Free: z.Counts.Length - 1.0)).ToList();
        var stand = StandCounts.Assess([.. zones], Ring).Whole;
        var mean = parts.Sum(p => p.Weight * p.Mean);
        Assert.Equal(mean, stand.Mean.PerSquareFoot, 1e-9 * Math.Max(1, mean));
        var squares = parts.Sum(p => p.Share * p.Share / p.Free);
        if (squares < 1e-12) return;
        var (error, freedom) = (Math.Sqrt(parts.Sum(p => p.Share)), Math.Pow(parts.Sum(p => p.Share), 2) / squares);
        var half = MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, freedom, 0.975) * error;
        Assert.Equal(mean + half, stand.High!.Value.PerSquareFoot, 1e-5 * Math.Max(1, mean + half));
    });
}
