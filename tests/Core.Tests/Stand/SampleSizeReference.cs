using Watersown.Reckon;

namespace Watersown.Stand;

public sealed class SampleSizeReference
{
    // Mississippi Administrative Code, Title 11 Part 8 Chapter 2, addenda J and K: sums of ten samples, one-tailed t 1.383, 10 %.
    [Theory]
    [InlineData(724.8, 60_632.94, 32.8, 33)]
    [InlineData(77, 669, 27.3, 28)]
    public void The_adequacy_rules_examples_come_out(double sum, double squares, double exact, int whole)
    {
        var mean = sum / 10;
        var deviation = Math.Sqrt((squares - (sum * sum / 10)) / 9);
        var rings = SampleSize.Exact(mean, deviation, Fraction.FromPercent(10), 1.383);
        Assert.Equal(exact, rings, 0.05);
        Assert.Equal(whole, SampleSize.Whole(rings));
    }

    // Colorado mining-reclamation vegetation report, sample-adequacy table: one-tailed t at 90 %, 71 and 19 degrees of freedom.
    [Theory]
    [InlineData(48.83, 188.06, 72, 13.20)]
    [InlineData(64.40, 134.67, 20, 5.72)]
    [InlineData(51.95, 204.58, 20, 13.36)]
    public void The_reclamation_tables_minimum_comes_out(double mean, double variance, int count, double expected) =>
        Assert.Equal(expected, SampleSize.Exact(mean, Math.Sqrt(variance), Fraction.FromPercent(10), StudentT.Quantile(0.90, count - 1)), 0.05);

    // Ten counts that add to the sums of addendum K, asked for with one tail as there; with both tails t is 1.833 (printed table):
    // 27.28 × (1.833 / 1.383)² = 47.9.
    [Theory]
    [InlineData(1, 28)]
    [InlineData(2, 48)]
    public void One_tail_or_two_is_the_askers_choice(int tails, int expected) =>
        Assert.Equal(expected, Ask.For("sample-size", ("counts", Ask.List(3, 4, 6, 7, 7, 8, 9, 10, 11, 12)), ("precision_pct", 10), ("confidence_pct", 90), ("tails", tails)).Number("samples"));

    [Fact]
    public void Two_tails_are_usual()
    {
        var counts = Ask.List(3, 4, 6, 7, 7, 8, 9, 10, 11, 12);
        Assert.Equal(48, Ask.For("sample-size", ("counts", counts), ("precision_pct", 10), ("confidence_pct", 90)).Number("samples"));
    }

    [Theory]
    [InlineData(0.2, 2)]
    [InlineData(2.0, 2)]
    [InlineData(2.000000000001, 2)]
    [InlineData(2.001, 3)]
    [InlineData(5e12, 5_000_000_000_000)]
    public void Rings_come_whole_and_never_fewer_than_two(double exact, long whole) => Assert.Equal(whole, SampleSize.Whole(exact));

    [Fact]
    public void One_ring_or_nothing_but_empty_rings_cannot_say()
    {
        Ask.For("sample-size", ("counts", Ask.List(12)), ("precision_pct", 10), ("confidence_pct", 90)).Refuses((StandProblems.TooFewCounts, "counts"));
        Ask.For("sample-size", ("counts", Ask.List(0, 0, 0)), ("precision_pct", 10), ("confidence_pct", 90)).Refuses((StandProblems.NothingCounted, "counts"));
    }

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("sample-size", ("counts", Ask.List(3, -4)), ("precision_pct", 0), ("confidence_pct", 100), ("tails", 3)).Refuses(
            (ReckonProblems.TooSmall, "counts"), (ReckonProblems.TooSmall, "precision_pct"), (ReckonProblems.TooLarge, "confidence_pct"), (ReckonProblems.TooLarge, "tails"));

    [Fact]
    public void Patchy_counts_are_called_patchy() =>
        Assert.Contains(Ask.For("sample-size", ("counts", Ask.List(0, 40, 2, 35)), ("precision_pct", 10), ("confidence_pct", 90)).Value.Cautions, c => c.Contains("patchy", StringComparison.Ordinal));
}
