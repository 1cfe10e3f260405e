using CsCheck;

namespace Watersown.Flight;

public sealed class WorkRateTests
{
    private static readonly Gen<SowingRound> Rounds = Gen.Select(Gen.Double[60, 400], Gen.Double[400, 3000], Gen.Double[30, 400], Gen.Double[0, 20_000], Gen.Double[10, 90], Gen.Double[8, 40], Gen.Double[100, 3000])
        .Select((rate, load, turnaround, ferry, turn, swath, pass) => new SowingRound
        {
            Rate = SoakedRate.FromKilogramsPerHectare(rate),
            Load = SoakedSeed.FromKilograms(load),
            Turnaround = TimeSpan.FromSeconds(turnaround),
            Ferry = Length.FromMeters(ferry),
            FerrySpeed = Speed.FromMilesPerHour(130),
            Field = Area.FromHectares(40),
            Turn = TimeSpan.FromSeconds(turn),
            Swath = Length.FromMeters(swath),
            Pass = Length.FromMeters(pass),
            Sowing = Speed.FromMilesPerHour(120),
        });

    [Fact]
    public void A_bigger_load_or_a_nearer_strip_never_slows_the_work() => Rounds.Sample(round =>
    {
        var here = WorkRate.Of(round).Total;
        Assert.True(WorkRate.Of(round with { Load = round.Load * 1.2 }).Total <= here);
        Assert.True(WorkRate.Of(round with { Ferry = round.Ferry / 2 }).Total <= here);
        Assert.True(WorkRate.Of(round with { Turn = round.Turn * 2 }).Total > here);
    });

    [Fact]
    public void Whole_passes_lay_all_the_seed_and_no_load_is_overfilled() => Rounds.Sample(round =>
    {
        if (WorkRate.ByWholePasses(round) is not { } whole)
        {
            Assert.True(round.Rate * (round.Pass * round.Swath) > round.Load);
            return;
        }

        Assert.True(whole.Loads * whole.PassesPerLoad >= whole.Passes);
        Assert.True((whole.Loads - 1) * whole.PassesPerLoad < whole.Passes);
        Assert.True(whole.PerPass * whole.PassesPerLoad <= round.Load * (1 + 1e-9));
        Assert.True(whole.PassesPerLoad == whole.Passes || whole.NextLoad > round.Load);
        Assert.True(whole.Passes * (round.Pass * round.Swath) >= round.Field * (1 - 1e-9));
    });

    [Fact]
    public void A_load_that_does_not_reach_over_one_pass_says_so()
    {
        var answer = Ask.For("work-rate", ("rate_wet_kg_ha", 210), ("load_kg", 200), ("turnaround_s", 120), ("ferry_m", 3000), ("ferry_mps", 53.6), ("between_fields_m", 0),
            ("field_ha", 40), ("turn_s", 30), ("swath_m", 18), ("pass_m", 800), ("sowing_mps", 53.6));
        Assert.Equal(Datum.None, answer.Answer("whole_pass_loads"));
        Assert.Contains(answer.Value.Cautions, c => c.Contains("does not reach over one pass", StringComparison.Ordinal));
    }
}
