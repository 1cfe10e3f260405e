namespace Watersown.Schedule.Replan;

/// <summary>
/// The second windy morning at Marrowfen, against what a grower works out by hand: soak and drain times, pound sums, water
/// ages and the break-even k = (786 + 13 × delay) ÷ 319.
/// </summary>
public sealed class BlownOutMorningTests
{
    private static readonly MorningReplan Replan = MorningReplan.Of(ReplanCase.WithoutToday(PlannedMorning.State()), PlannedMorning.Plan());

    private static readonly ReplanPrices AsTheFarmHasThem = ReplanPrices.Of(new PlanPrices());

    [Fact]
    public void Three_full_fields_and_the_one_that_a_batch_is_meant_for_are_weighed()
    {
        Assert.Equal(["S2", "N3", "R4", "N4"], Replan.Case.Fields.Select(f => f.Code));
        Assert.Equal([(9, At(9, 6, 30), At(9, 10)), (10, At(10, 5, 45), At(10, 10, 30)), (11, At(11, 7, 30), At(11, 9)), (12, At(12, 5, 45), At(12, 10, 30))],
            Replan.Case.Mornings.Select(m => (m.Day.Day, m.From, m.Until)));
    }

    [Theory]
    [InlineData("B-07a", 6025.50)]
    [InlineData("B-07b", 5017.35)]
    public void A_batch_past_its_window_is_not_planned_on_and_its_cost_is_told(string code, double dollars)
    {
        var batch = Batch(code);
        Assert.Equal((BatchUse.Past, new TimeSpan(46, 50, 0), new TimeSpan(72, 30, 0)), (batch.Use, batch.DrainedFor, batch.DrainedAtFirstLoad));
        Assert.Equal((decimal)dollars, batch.IfDumped.Amount);
        Assert.DoesNotContain(Replan.Plans, p => p.Sowings.Any(s => s.Batch?.Code == code));
    }

    [Fact]
    public void The_two_together_cost_eleven_thousand_and_forty_three_dollars() =>
        Assert.Equal(11043m, Math.Round(Batch("B-07a").IfDumped.Amount + Batch("B-07b").IfDumped.Amount));

    [Fact]
    public void Draining_at_half_past_six_is_the_top_of_the_usual_and_later_is_possible_with_a_warning()
    {
        var batch = Batch("B-08");
        Assert.Equal((BatchUse.Live, new TimeSpan(46, 50, 0)), (batch.Use, batch.UnderWaterFor));
        var choices = StandingBatches.Drains(Replan.Case.State, batch.Batch, Replan.Case.Next!);
        Assert.Equal([(At(8, 6, 30), 48.5, 24.0), (At(8, 12, 30), 54.5, 18.0), (At(8, 18, 30), 60.5, 12.0)], choices.Select(c => (c.At, c.UnderWater.TotalHours, c.DrainedAtFirstLoad.TotalHours)));
        Assert.Equal([(true, false, false), (true, false, true), (true, true, true)], choices.Select(c => (c.OverUsual, c.OverLost, c.ShortDrain)));
    }

    [Fact]
    public void A_grower_finds_the_same_two_plans()
    {
        var (a, b) = Two(AsTheFarmHasThem);
        Assert.Equal("S2 Sat 9 B-08, N3 Sun 10, R4 Sun 10, N4 Sun 10 B-09", Told(a));
        Assert.Equal("N3 Sat 9 B-08, S2 Sun 10, R4 Sun 10, N4 Sun 10 B-09", Told(b));
        Assert.Equal([("N3", 14880.0), ("R4", 15450.0)], Called(a));
        Assert.Equal([("S2", 12865.0), ("R4", 15450.0)], Called(b));
        Assert.All([a, b], p => Assert.Equal((At(8, 6, 30), At(8, 6)), (p.Calls.Single().By, p.Calls.Single().Soak)));
    }

    [Fact]
    public void Seed_lost_delay_and_water_age_are_as_worked_by_hand()
    {
        var (a, b) = Two(AsTheFarmHasThem);
        Assert.Equal(2015, a.SeedLost.Pounds, 6);
        Assert.Equal((785.85m, 717m, 428m), (a.SeedCost.Amount, a.AcreDays, a.WaterAge));
        Assert.Equal((0m, 704m, 747m), (b.SeedCost.Amount, b.AcreDays, b.WaterAge));
        Assert.Equal([("S2", 10), ("N3", 9), ("R4", 8), ("N4", 5)], a.Sowings.Select(s => (s.Field.Code, s.Field.WaterAge(s.Day)!.Value)));
        Assert.Equal([("N3", 8), ("S2", 11), ("R4", 8), ("N4", 5)], b.Sowings.Select(s => (s.Field.Code, s.Field.WaterAge(s.Day)!.Value)));
    }

    [Fact]
    public void Sunday_takes_three_fields_in_three_hours_and_nine_minutes()
    {
        var sunday = Two(AsTheFarmHasThem).Best.Sowings.Where(s => s.Day.Day == 10).ToList();
        Assert.InRange(sunday.Sum(s => s.InAir.TotalHours), 3.10, 3.20);
        Assert.Equal([At(10, 6), At(10, 7), At(10, 8, 10)], sunday.Select(s => s.Start!.Value));
        Assert.True(sunday.TrueForAll(s => s.Start >= At(10, 6) && s.End <= At(10, 10, 30)));
        Assert.True(sunday[2].Start >= sunday[1].End && sunday[1].Start >= sunday[0].End);
    }

    [Theory]
    [InlineData(3.6, 2.61)]
    [InlineData(18, 3.20)]
    [InlineData(0, 2.46)]
    public void The_choice_flips_exactly_at_the_break_even(double delay, double dollars)
    {
        var exact = (785.85m + (13 * (decimal)delay)) / 319;
        Assert.Equal((decimal)dollars, Math.Round(exact, 2));
        Assert.Equal("S2", First(exact + 0.0001m, delay));
        Assert.Equal("N3", First(exact - 0.0001m, delay));
        var told = Flips.Of(Replan, Prices(4, delay)).Single(f => f.Price == FlipPrice.HeadAge);
        Assert.Equal((exact, false, "N3"), (told.Exact, told.Above, told.To.Sowings[0].Field.Code));
        Assert.Equal((decimal)dollars, told.At.Amount);
        Assert.Equal((double)exact, told.Working.Lines[^1].Value is Datum.Number n ? n.Value : 0, 9);
    }

    [Fact]
    public void A_dearer_day_flips_it_too()
    {
        var flip = Flips.Of(Replan, AsTheFarmHasThem).Single(f => f.Price == FlipPrice.Delay);
        Assert.Equal(((319 * 4m) - 785.85m) / 13, flip.Exact);
        Assert.Equal((true, 37.70m), (flip.Above, flip.At.Amount));
        Assert.Equal("N3", First(4, (double)flip.Exact + 0.001));
        Assert.Equal("S2", First(4, (double)flip.Exact - 0.001));
    }

    [Fact]
    public void The_cost_shows_its_sum()
    {
        var best = Replan.Ranked(AsTheFarmHasThem)[0];
        Assert.Equal(785.85m + (717 * 3.6m) + (428 * 4m), best.Cost.Amount);
        Assert.Equal((double)best.Cost.Amount, best.Working.Lines[^1].Value is Datum.Number n ? n.Value : 0, 9);
        Assert.Contains(best.Working.Lines, l => l is { Symbol: "a S2", At: not null });
    }

    [Fact]
    public void Seed_still_to_go_in_is_called_off_at_no_loss_where_nothing_takes_it()
    {
        var state = ReplanCase.WithoutToday(PlannedMorning.State());
        var without = MorningReplan.Of(state, null);
        Assert.DoesNotContain(without.Case.Fields, f => f.Code == "N4");
        var due = without.Case.Batches.Single(b => b.Batch.Code == "B-09");
        Assert.Equal((BatchUse.NoField, true), (due.Use, due.Due));
        Assert.Equal(785.85m, without.Ranked(AsTheFarmHasThem)[0].Plan.SeedCost.Amount);
    }

    [Fact]
    public void After_the_last_hour_of_calls_no_fresh_seed_is_there_on_Sunday()
    {
        var late = MorningReplan.Of(ReplanCase.WithoutToday(PlannedMorning.State() with { Now = At(8, 6, 31) }), PlannedMorning.Plan());
        Assert.Equal(9, late.Case.FirstSoakDay.Day);
        Assert.All(late.Plans, p => Assert.All(p.Sowings.Where(s => s.Batch is null), s => Assert.True(s.Day.Day >= 11)));
        Assert.NotEmpty(late.Ranked(AsTheFarmHasThem));
    }

    [Fact]
    public void A_farm_that_knows_nothing_of_seed_wind_or_price_still_gets_an_answer()
    {
        var bare = PlannedMorning.State() with { Batches = [], SoakPlace = null, Aeroplanes = [], Wind = [], Slots = [], Lots = [], Warmth = [] };
        var replan = MorningReplan.Of(ReplanCase.WithoutToday(bare), null);
        Assert.Equal(["S2", "N3", "R4"], replan.Case.Fields.Select(f => f.Code));
        Assert.Single(replan.Ranked(AsTheFarmHasThem));
        Assert.Empty(MorningReplan.Of(bare with { Fields = [.. bare.Fields.Select(f => f with { Stage = FieldStage.Rolled })] }, null).Ranked(AsTheFarmHasThem));
    }

    private static (ReplanPlan Best, ReplanPlan Other) Two(ReplanPrices prices)
    {
        var ranked = Replan.Ranked(prices);
        Assert.Equal(2, ranked.Length);
        return (ranked[0].Plan, ranked[1].Plan);
    }

    private static string First(decimal headAge, double delay) => Replan.Ranked(Prices(headAge, delay))[0].Plan.Sowings[0].Field.Code;

    private static ReplanPrices Prices(decimal headAge, double delay) => new(Money.FromDollars(headAge), Money.FromDollars((decimal)delay));

    private static StandingBatch Batch(string code) => Replan.Case.Batches.Single(b => b.Batch.Code == code);

    private static IEnumerable<(string, double)> Called(ReplanPlan plan) => plan.Calls.SelectMany(c => c.Fields).Select(f => (f.Field.Code, Math.Round(f.Dry.Pounds, 6)));

    private static string Told(ReplanPlan plan) => string.Join(", ", plan.Sowings.Select(s => $"{s.Field.Code} {s.Day.DayOfWeek.ToString()[..3]} {s.Day.Day} {s.Batch?.Code}".TrimEnd()));

    private static DateTimeOffset At(int day, int hour, int minute = 0) => PlannedMorning.At(day, hour, minute);
}
