namespace Watersown.Flight.Flown;

/// <summary>Figures of seed left over: 137 ac at 150 lb/ac dry, wet factor 1.25, 25,687 lb wet in, 1,900 left: 1,900 / 1.25 / 150 = 10.13 ac.</summary>
public sealed class FlownAccountTests
{
    private static readonly Area net = Area.FromAcres(137);

    private static SownAnswer Seed(double left) => SeedLeftOver.Of(new SownSeed(SoakedSeed.FromPounds(137 * 150 * 1.25), SoakedSeed.FromPounds(left), net, SeedRate.FromPoundsPerAcre(150)) { WetFactor = 1.25, FactorWeighed = true });

    private static FlownMatches Of(double skipped, double left, double? billed = null) => FlownAccounts.Of(new FlownAccount(net, net - Area.FromAcres(skipped), Area.FromAcres(0.3))
    {
        Seed = Seed(left),
        BilledLand = billed is { } acres ? Area.FromAcres(acres) : null,
        BilledSeed = SoakedSeed.FromPounds((137 * 150 * 1.25) - left),
    });

    [Fact]
    public void A_skip_explains_the_seed_that_was_left()
    {
        var missing = Of(10.13, 1900).Missing!;
        Assert.Equal(10.13, missing.Told.Acres, 0.005);
        Assert.True(missing.Agree);
    }

    [Fact]
    public void Seed_left_with_nothing_skipped_is_no_skip() => Assert.False(Of(0, 1900).Missing!.Agree);

    [Fact]
    public void Land_skipped_with_all_the_seed_gone_is_no_light_gate() => Assert.False(Of(10, 0).Missing!.Agree);

    [Fact]
    public void A_job_that_follows_the_sheet_comes_out_at_nothing()
    {
        var matches = Of(0, 0, 137);
        Assert.Equal(0, matches.Missing!.Told.Acres, 1e-9);
        Assert.Equal(0, matches.Billed!.Gap.Acres, 1e-9);
        Assert.True(matches.Missing.Agree && matches.Billed.Agree && matches.Seed!.Agree);
        Assert.Equal(150, matches.Dry!.Value.PoundsPerAcre, 1e-9);
        Assert.Equal(187.5, matches.Soaked!.Value.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void Rates_are_of_the_land_flown()
    {
        // 23,787.5 lb wet / 1.25 / 126.87 ac
        var matches = Of(10.13, 1900);
        Assert.Equal(150, matches.Dry!.Value.PoundsPerAcre, 0.01);
        Assert.Equal(187.5, matches.Soaked!.Value.PoundsPerAcre, 0.01);
    }

    [Theory]
    [InlineData(137, true)]
    [InlineData(137.7, true)]
    [InlineData(138, false)]
    [InlineData(136, false)]
    public void Acres_billed_agree_within_the_invoice_and_the_track(double billed, bool agree) => Assert.Equal(agree, Of(0, 0, billed).Billed!.Agree);

    [Fact]
    public void Without_a_trailer_only_land_is_held_together()
    {
        var matches = FlownAccounts.Of(new FlownAccount(net, net, Area.Zero) { BilledLand = net });
        Assert.True(matches.Billed!.Agree);
        Assert.True(matches is { Dry: null, Missing: null, Seed: null });
    }
}
