using CsCheck;

namespace Watersown.Season.Harvests;

public sealed class GrainTallyTests
{
    private static readonly Gen<GrainTicketed> Tickets = Gen.Select(Gen.Int[1, 1000], Gen.Int[60_000, 80_000], Gen.Int[20_000, 30_000], Gen.Int[28, 52], Gen.Int[0, 4], Gen.Int[0, 100], Gen.Int[0, 3]).Select((n, gross, tare, wet, foreign, first, named) =>
        new GrainTicketed("T" + n, Mass.FromPounds(gross), Mass.FromPounds(tare), Fraction.FromPercent(wet / 2.0))
        {
            Variety = n % 2 == 0 ? "E-1" : null,
            Foreign = Fraction.FromPercent(foreign),
            Parts = named switch
            {
                0 => [],
                1 => [new("N1", Fraction.One)],
                _ => [new("N1", Fraction.FromPercent(first)), new("N2", Fraction.FromPercent(100 - first))],
            },
        });

    // International Rice Research Institute, Rice Knowledge Bank: 1,000 kg at 25 % weigh 872 kg at 14 %.
    [Fact]
    public void A_ticket_is_paid_at_fourteen_percent()
    {
        var ticket = new GrainTicketed("1", Mass.FromKilograms(1600), Mass.FromKilograms(600), Fraction.FromPercent(25));
        Assert.Equal(872, GrainTally.PaidOf(ticket).Kilograms, 0.5);
        Assert.Equal(872 * 0.98, GrainTally.PaidOf(ticket with { Foreign = Fraction.FromPercent(2) }).Kilograms, 0.5);
    }

    [Fact]
    public void No_grain_is_lost_between_scale_fields_varieties_and_landlords() => Tickets.Array[0, 30].Sample(tickets =>
    {
        var tally = GrainTally.Of([.. tickets], _ => Area.FromAcres(100), [new("N1", "the estate", Fraction.FromPercent(40)), new("N1", "the widow", Fraction.FromPercent(10))]);
        Assert.Equal(tally.Green.Pounds, tally.Fields.Sum(f => f.Green.Pounds) + tally.Homeless.Pounds, 1e-3);
        Assert.Equal(tally.Paid.Pounds, tally.Varieties.Sum(v => v.Paid.Pounds), 1e-3);
        foreach (var field in tally.Fields.Where(f => f.Field == "N1"))
        {
            Assert.Equal(3, field.Shares.Length);
            Assert.Equal(field.Paid.Pounds, field.Shares.Sum(s => s.Paid.Pounds), 1e-3);
            Assert.Equal(field.Paid.Pounds / 2, field.Shares.Single(s => s.Landlord is null).Paid.Pounds, 1e-3);
            Assert.Equal(field.Paid.Hundredweights / 100, field.Yield!.Value.HundredweightsPerAcre, 1e-6);
        }
    });
}
