using CsCheck;
using Watersown.Reckon;

namespace Watersown.Flight;

public sealed class LoadsProperties
{
    private static readonly Gen<(double Acres, double Rate, double Factor, double Limit)> Jobs =
        Gen.Select(Gen.Double[5, 600], Gen.Double[60, 250], Gen.Double[1, 1.5], Gen.Double[500, 6000]);

    [Fact]
    public void No_load_is_above_the_limit_and_all_the_seed_is_flown() => Jobs.Sample(job =>
    {
        var answer = Run(job);
        Assert.True(answer.Number("wet_lb_per_load") <= job.Limit * (1 + 1e-9));
        Assert.Equal(answer.Number("wet_lb"), answer.Number("wet_lb_per_load") * answer.Number("loads"), answer.Number("wet_lb") * 1e-12);
        Assert.Equal(answer.Number("dry_lb"), answer.Number("dry_lb_per_load") * answer.Number("loads"), answer.Number("dry_lb") * 1e-12);
        Assert.InRange(answer.Number("last_load_fraction"), 0, 1);
    });

    [Fact]
    public void More_rate_more_acres_wetter_seed_or_a_smaller_hopper_never_means_fewer_loads() => Gen.Select(Jobs, Gen.Double[1, 1.4]).Sample((job, more) =>
    {
        var here = Run(job).Number("loads");
        Assert.True(Run(job with { Rate = job.Rate * more }).Number("loads") >= here);
        Assert.True(Run(job with { Acres = job.Acres * more }).Number("loads") >= here);
        Assert.True(Run(job with { Factor = job.Factor * more }).Number("loads") >= here);
        Assert.True(Run(job with { Limit = job.Limit / more }).Number("loads") >= here);
    });

    // Whole numbers of hoppers, made from decimal acres and rates as people type them.
    [Fact]
    public void A_job_of_whole_hoppers_never_costs_one_more_for_floating_dust() => Gen.Select(Gen.Int[1, 60], Gen.Int[10, 3000], Gen.Int[10, 250]).Sample((loads, tenths, rate) =>
    {
        var acres = tenths / 10.0;
        var answer = Run((acres, rate, 1.25, (double)tenths * rate * 125 / 1000 / loads));
        if (answer.IsRefused) return; // hoppers too small to be asked for
        Assert.Equal(loads, answer.Number("loads"));
        Assert.Equal(1, answer.Number("last_load_fraction"), 1e-6);
    });

    [Fact]
    public void Seed_lighter_soaked_than_dry_and_no_hopper_at_all_are_refused() =>
        Ask.For("loads", ("net_ac", 0), ("rate_dry_lb_ac", 150), ("wet_factor", 0.8), ("load_limit_wet_lb", 0))
            .Refuses((ReckonProblems.NotAbove, "net_ac"), (ReckonProblems.TooSmall, "wet_factor"), (ReckonProblems.TooSmall, "load_limit_wet_lb"));

    private static Outcome<Reckoned> Run((double Acres, double Rate, double Factor, double Limit) job) =>
        Ask.For("loads", ("net_ac", job.Acres), ("rate_dry_lb_ac", job.Rate), ("wet_factor", Math.Min(2, job.Factor)), ("load_limit_wet_lb", job.Limit));
}
