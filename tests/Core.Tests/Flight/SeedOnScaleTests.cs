using CsCheck;
using Watersown.Land;

namespace Watersown.Flight;

public sealed class SeedOnScaleTests
{
    [Fact]
    public void A_short_ticket_gives_the_hand_sums()
    {
        // 18,100 ÷ 1.25 = 14,480; 15,450 − 14,480 = 970; 14,480 ÷ 103 = 140.58; 14,480 ÷ 150 = 96.53; 18,100 ÷ 7 = 2,585.7.
        var answer = Lower(18100);
        Assert.Equal((18100, 14480, 970), (answer.Whole.Wet, answer.Whole.Dry, answer.Whole.Short));
        Assert.Equal(19312.5, answer.Expected.Pounds, 6);
        Assert.Equal(140.58, answer.Spread.PoundsPerAcre, 2);
        Assert.Equal(-0.0628, answer.Change, 4);
        Assert.Equal(96.53, answer.AtRate.Acres, 2);
        Assert.Equal((7, 2586), (answer.Loads.Length, (int)Math.Round(answer.Loads[^1].Pounds)));
        Assert.False(answer.WithinError);
        Assert.Equal(18100 / 15450.0, answer.FactorIfAllThere, 9);
    }

    [Fact]
    public void A_gap_within_scale_and_factor_says_so_and_a_weighed_factor_narrows_it()
    {
        // 18,900 ÷ 1.25 = 15,120, 330 short; 15,120 × (0.005 + 0.03 / 1.25) = 438 usual, 15,120 × (0.005 + 0.01 / 1.25) = 197 weighed.
        Assert.Equal(438.5, Lower(18900).Error.Pounds, 0.1);
        Assert.True(Lower(18900).WithinError);
        Assert.Equal(196.6, Lower(18900, weighed: true).Error.Pounds, 0.1);
        Assert.False(Lower(18900, weighed: true).WithinError);
    }

    [Fact]
    public void More_than_asked_covers_no_more_than_the_land()
    {
        var answer = Lower(20000);
        Assert.Equal(103, answer.AtRate.Acres, 9);
        Assert.Equal(-550, answer.Whole.Short);
    }

    [Fact]
    public void Mass_is_kept_to_the_pound() =>
        Gen.Select(Gen.Double[500, 60000], Gen.Double[500, 50000], Gen.Double[5, 400], Gen.Double[1.05, 1.45], Gen.Double[800, 4000], Gen.Enum<UnitSystem>()).Sample((ticket, wanted, acres, factor, limit, units) =>
        {
            var seed = new WeighedSeed(SoakedSeed.FromPounds(ticket), DrySeed.FromPounds(wanted), Area.FromAcres(acres)) { WetFactor = factor, Limit = SoakedSeed.FromPounds(limit), Units = units };
            var answer = SeedOnScale.Of(seed);
            // On paper: dry and short are the seed asked for, the loads are the ticket, both to the pound or kilogram.
            Assert.Equal(answer.Whole.Wanted, answer.Whole.Dry + answer.Whole.Short);
            var unit = units == UnitSystem.Metric ? 0.45359237 : 1;
            Assert.InRange(answer.Whole.Dry - (ticket / factor * unit), -0.5001, 0.5001);
            Assert.InRange(answer.Whole.Wanted - (wanted * unit), -0.5001, 0.5001);
            Assert.Equal(answer.Whole.Wet, answer.Loads.Sum(l => units == UnitSystem.Metric ? l.Kilograms : l.Pounds), 6);
            Assert.InRange(answer.Loads.Max(l => l.Pounds) - answer.Loads.Min(l => l.Pounds), -1e-9, 1 / unit + 1e-9);
            // Spread thin or stopped early, the same seed goes out.
            Assert.Equal(ticket / factor, answer.Spread.PoundsPerAcre * acres, 1e-4);
            if (ticket / factor < wanted) Assert.Equal(ticket / factor, answer.AtRate.Acres * answer.Asked.PoundsPerAcre, 1e-4);
            Assert.Equal(Math.Abs(wanted - (ticket / factor)) <= answer.Error.Pounds, answer.WithinError);
        });

    [Fact]
    public void Seed_left_over_is_a_light_gate_or_land_missed()
    {
        // Willow Run: 25,687 − 1,900 = 23,787; ÷ 1.25 ÷ 137 = 138.9; 1,900 ÷ 1.25 ÷ 150 = 10.13.
        var answer = Left(25687, 1900);
        Assert.Equal(23787, answer.Out.Pounds, 6);
        Assert.Equal(138.9, answer.Rate.PoundsPerAcre, 1);
        Assert.Equal(10.13, answer.Missed.Acres, 2);
        Assert.Equal(SownVerdict.Light, answer.Verdict);
    }

    [Fact]
    public void A_little_left_is_as_meant_and_seed_brought_over_the_need_is_not_missed_land()
    {
        Assert.Equal(SownVerdict.AsMeant, Left(25687, 300).Verdict);
        var spare = Left(27587, 1900);
        Assert.Equal(SownVerdict.AsMeant, spare.Verdict);
        Assert.Equal(0.0, spare.Missed.Acres, 2);
        Assert.Equal(SownVerdict.Heavy, Left(27587, 0).Verdict);
    }

    private static SownAnswer Left(double brought, double left) =>
        SeedLeftOver.Of(new SownSeed(SoakedSeed.FromPounds(brought), SoakedSeed.FromPounds(left), Area.FromAcres(137), SeedRate.FromPoundsPerAcre(150)) { WetFactor = 1.25 });

    private static ScaleAnswer Lower(double ticket, bool weighed = false) => SeedOnScale.Of(new WeighedSeed(SoakedSeed.FromPounds(ticket), DrySeed.FromPounds(15450), Area.FromAcres(103))
    {
        WetFactor = 1.25,
        FactorWeighed = weighed,
        Limit = SoakedSeed.FromPounds(2800),
    });
}
