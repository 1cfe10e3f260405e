namespace Watersown.Flight.AtStrip;

/// <summary>
/// A morning at the strip. Loads an hour of three aeroplanes against the derived figures of a finite source (3.5 min flight, 1.5 min
/// loading); acres an hour against press figures of 3 to 4 min a load, 90 s of reloading and about 10 ac a load.
/// </summary>
public sealed class StripSumsTests
{
    // Four passes of 15 s and turns of 30 s are 3 min, ground and air half a minute more: 3.5 min; reload 1.5 min.
    private static readonly Aeroplane plane = new("hired")
    {
        WorkingLoad = SoakedSeed.FromPounds(2000),
        Swath = Length.FromFeet(50),
        Working = Speed.FromMilesPerHour(120),
        Turn = TimeSpan.FromSeconds(30),
        GroundAndAir = TimeSpan.FromSeconds(30),
        Reload = TimeSpan.FromSeconds(90),
        Ferry = Speed.FromMilesPerHour(120),
    };

    [Theory]
    [InlineData(1, 12.00, 12.00)]
    [InlineData(2, 22.02, 24.00)]
    [InlineData(3, 29.64, 36.00)]
    [InlineData(5, 37.69, 40.00)]
    public void Loads_an_hour_lie_between_random_and_clockwork(int aeroplanes, double random, double clockwork)
    {
        var sum = StripSums.Of([Job("N4", 40)], plane, new StripCrew(aeroplanes, 1));
        Assert.Equal(3.5, sum.Flight.TotalMinutes, 1e-6);
        Assert.Equal(4, sum.Loads);
        Assert.Equal(random, sum.LoadsPerHour.Random, 0.01);
        Assert.Equal(clockwork, sum.LoadsPerHour.Clockwork, 0.005);
        Assert.Equal(4 / random, sum.Hours.Most.TotalHours, 0.001);
        Assert.Equal(4 / clockwork, sum.Hours.Least.TotalHours, 0.001);
    }

    // Press figures: 5 min a load of 10 ac is 120 ac an hour.
    [Fact]
    public void One_aeroplane_sows_a_hundred_and_twenty_acres_an_hour()
    {
        var (least, most) = StripSums.Of([Job("N4", 40)], plane, new StripCrew(1, 1)).LandPerHour;
        Assert.Equal((120, 120), (Math.Round(least.AcresPerHour, 6), Math.Round(most.AcresPerHour, 6)));
    }

    // By hand: 40 ac at $11 and 8,000 lb at $0.05; four loads of five minutes at $900 an hour.
    [Fact]
    public void It_is_billed_by_the_hour_or_by_acre_and_pound()
    {
        var sum = StripSums.Of([Job("N4", 40)], plane, new StripCrew(1, 1));
        Assert.Equal(840m, sum.ByLandAndWeight(new StripBill { Acre = Money.FromDollars(11m), WetPound = Money.FromDollars(0.05m) })!.Value.Amount);
        Assert.Equal((300m, 300m), (sum.ByHour(new StripBill { Hour = Money.FromDollars(900m) })!.Value.Least.Amount, sum.ByHour(new StripBill { Hour = Money.FromDollars(900m) })!.Value.Most.Amount));
        Assert.Null(sum.ByLandAndWeight(new StripBill()));
        Assert.Null(sum.ByHour(new StripBill()));
    }

    // 40.5 ac are 8,100 lb: five loads at 2,000 lb, four at 2,100 lb.
    [Fact]
    public void A_hundred_pounds_more_save_a_load_where_a_remainder_is_small()
    {
        var changes = StripSums.Changes([Job("N4", 40.5)], plane, new StripCrew(1, 1)).ToDictionary(c => c.Kind, c => c.Sum);
        var now = StripSums.Of([Job("N4", 40.5)], plane, new StripCrew(1, 1));
        Assert.Equal((5, 4), (now.Loads, changes[StripChangeKind.HundredPoundsMore].Loads));
        Assert.True(changes[StripChangeKind.OneMoreAeroplane].Hours.Most < now.Hours.Most);
        Assert.Equal(now.Hours, changes[StripChangeKind.OneMoreLoader].Hours);
    }

    // By hand: 10 ac are 165 ft of passes half a mile long: five of 41 ft begun, four of 42 ft; a pass with its turn takes 45 s.
    [Fact]
    public void A_foot_more_of_swath_can_save_a_pass_on_every_load()
    {
        var narrow = plane with { Swath = Length.FromFeet(41) };
        var changes = StripSums.Changes([Job("N4", 40)], narrow, new StripCrew(1, 1));
        Assert.Equal(45, (StripSums.Of([Job("N4", 40)], narrow, new StripCrew(1, 1)).Flight - changes.Single(c => c.Kind == StripChangeKind.OneFootMore).Sum.Flight).TotalSeconds, 1e-6);
    }

    // By hand: 15 ac and 15 ac at 200 lb are 3,000 lb each, two loads apart and three together; half of the shared one for each.
    // Saved: reload 90 s, ground and air 30 s, two ferries of a mile at 120 mph 60 s.
    [Fact]
    public void Two_remainders_of_the_same_seed_share_a_load()
    {
        var pair = Assert.Single(StripSums.Shared([Job("N4", 15, beside: "N3"), Job("N3", 15, beside: "N4")], plane));
        Assert.Equal((4, 3), (pair.Apart, pair.Together));
        Assert.Equal(2000, pair.Each.Pounds, 1e-6);
        Assert.Equal((1000, 1000), (Math.Round(pair.OnFirst.Pounds, 6), Math.Round(pair.OnSecond.Pounds, 6)));
        Assert.Equal(180, pair.Saved.TotalSeconds, 1e-6);
    }

    [Theory]
    [InlineData("E-2", "E-1 lot 2", "B-08", 200, "N4")]
    [InlineData("E-1", "E-1 lot 1", "B-08", 200, "N4")]
    [InlineData("E-1", "E-1 lot 2", "B-09", 200, "N4")]
    [InlineData("E-1", "E-1 lot 2", "B-08", 210, "N4")]
    [InlineData("E-1", "E-1 lot 2", "B-08", 200, "S1")]
    [InlineData(null, "E-1 lot 2", "B-08", 200, "N4")]
    [InlineData("E-1", null, "B-08", 200, "N4")]
    public void Nothing_is_shared_across_varieties_lots_batches_rates_or_other_fields(string? variety, string? lot, string? batch, double rate, string beside)
    {
        var other = Job("N3", 15, rate) with { Seed = new StripSeed(variety, lot, batch), Beside = [beside] };
        var first = Job("N4", 15, beside: beside == "N4" ? "N3" : "S1");
        Assert.Empty(StripSums.Shared([first, other], plane));
    }

    [Fact]
    public void Unknown_seed_is_not_the_same_as_unknown_seed() => Assert.False(new StripSeed(null, null, null).IsSame(new StripSeed(null, null, null)));

    [Fact]
    public void A_field_stands_in_one_pair_at_most() =>
        Assert.Single(StripSums.Shared([Job("N4", 15) with { Beside = ["N3", "N2"] }, Job("N3", 15) with { Beside = ["N4", "N2"] }, Job("N2", 15) with { Beside = ["N3", "N4"] }], plane));

    private static StripJob Job(string field, double acres, double rate = 200, string beside = "none") =>
        new(field, Area.FromAcres(acres), SoakedRate.FromPoundsPerAcre(rate), new StripSeed("E-1", "E-1 lot 2", "B-08"))
        {
            PassLength = Length.FromFeet(2640),
            Ferry = field == "N4" && beside == "none" ? Length.Zero : Length.FromMiles(beside == "none" ? 0 : 1),
            Beside = beside == "none" ? [] : [beside],
        };
}
