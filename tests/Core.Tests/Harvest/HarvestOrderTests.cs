using CsCheck;

namespace Watersown.Harvest;

public sealed class HarvestOrderTests
{
    private static readonly DateTimeOffset Start = new(2026, 9, 25, 7, 0, 0, TimeSpan.FromHours(-7));

    private static readonly HarvestMeans Means = new() { Combines = 2, EachDay = Area.FromAcres(45), Sets = 15, Expected = GrainYield.FromHundredweightsPerAcre(95) };

    private static readonly Gen<HarvestAsk> Asks = Gen.Select(Gen.Int[1, 6], Gen.Int[20, 180].Array[6], Gen.Int[150, 260].Array[6], Gen.Int[0, 2].Array[6], Gen.Bool.Array[6], Gen.Int[4, 20], Gen.Int[0, 3])
        .Select((count, acres, moisture, variety, lodged, sets, other) => new HarvestAsk(
            [
                .. Enumerable.Range(0, count).Select(i => new StandingGrain("F" + i, Area.FromAcres(acres[i]), GrainYield.FromHundredweightsPerAcre(80 + (i * 4)))
                {
                    Variety = "V-" + variety[i],
                    Trend = MoistureTrend.Of([new MoistureSample(Start, Fraction.FromPercent(moisture[i] / 10.0))]),
                    Lodged = lodged[i],
                }),
            ],
            Means with { Sets = sets },
            Start)
        { Rooms = other == 0 ? [] : [new DryerRoom(new(2026, 9, 27), new(2026, 10, 4), other) { Dryer = "cooperative", Variety = other == 2 ? "V-1" : null }] });

    [Fact]
    public void All_that_can_be_cut_is_cut_once_and_no_day_takes_more_than_there_is_room_for() => Asks.Sample(ask =>
    {
        var plan = HarvestOrder.Plan(ask);
        foreach (var field in ask.Fields) Assert.Equal(field.Left.Acres, plan.Of(field.Code).Sum(c => c.Cut.Land.Acres), 0.001);
        foreach (var day in plan.Days)
        {
            Assert.True(day.Cuts.Sum(c => c.Land.Acres) <= 90 + 1e-6);
            Assert.True(day.Sets.Sum(s => s.Count) <= day.Room);
            foreach (var (variety, count) in day.Sets)
            {
                var green = day.Cuts.Where(c => c.Variety == variety).Sum(c => c.Green.Pounds);
                Assert.True(green <= (count * 50_000) + 1e-3);
                Assert.True(green > ((count - 1) * 50_000) - 1e-3);
            }

            foreach (var cut in day.Cuts)
            {
                Assert.True(cut.Moisture <= ask.Means.CutFrom);
                var field = ask.Fields.Single(f => f.Code == cut.Field);
                // Dry matter in what is cut is that of the grain expected on the land.
                Assert.Equal((field.Yield * cut.Land).Pounds, GrainMoisture.WeightAt(cut.Green, cut.Moisture, HarvestMeans.PaidAt).Pounds, 0.01);
            }
        }

        Assert.True(plan.NotBefore <= plan.Finish);
    }, iter: 150);

    [Fact]
    public void The_order_chosen_waits_no_longer_than_any_other_that_was_a_beginning() => Asks.Sample(ask =>
    {
        var plan = HarvestOrder.Plan(ask);
        Assert.True(plan.Waiting <= HarvestOrder.InOrder(ask, [.. ask.Fields.Select(f => f.Code)]).Waiting + 1);
        Assert.Equal(plan.Waiting, HarvestOrder.InOrder(ask, plan.Order).Waiting, 1);
    }, iter: 100);

    [Fact]
    public void Four_fields_are_cut_in_the_best_of_all_their_orders()
    {
        foreach (var (a, b, c, d) in new[] { (24.0, 19.0, 21.0, 18.4), (19.5, 19.4, 19.3, 19.2), (23.0, 22.5, 18.2, 18.1), (20.0, 26.0, 18.9, 21.5) })
        {
            var ask = new HarvestAsk(
                [.. new[] { a, b, c, d }.Select((m, i) => new StandingGrain("F" + i, Area.FromAcres(60 + (i * 37)), GrainYield.FromHundredweightsPerAcre(90)) { Variety = i % 2 == 0 ? "E-1" : "I-1", Trend = MoistureTrend.Of([new(Start, Fraction.FromPercent(m))]) })],
                Means, Start);
            var best = Orders(["F0", "F1", "F2", "F3"]).Min(o => HarvestOrder.InOrder(ask, o).Waiting);
            Assert.Equal(best, HarvestOrder.Plan(ask).Waiting, 1);
        }
    }

    // Worked by hand: 1,095 ac at 102.1 cwt green and 15 sets of 500 cwt a day are 14.91 days.
    [Fact]
    public void A_constant_field_ends_when_the_room_of_the_dryer_says_so()
    {
        var ask = new HarvestAsk([new StandingGrain("F0", Area.FromAcres(1095), GrainYield.FromHundredweightsPerAcre(95))], Means, Start);
        var plan = HarvestOrder.Plan(ask);
        Assert.True(plan.DryerBinds);
        Assert.Equal(new DateOnly(2026, 10, 9), plan.Finish);
        Assert.Equal(plan.Finish, plan.NotBefore);
        var helped = HarvestOrder.Plan(ask with { Rooms = [new DryerRoom(new(2026, 9, 25), new(2026, 12, 1), 5) { Dryer = "cooperative" }] });
        Assert.False(helped.DryerBinds);
        Assert.Equal(new DateOnly(2026, 10, 7), helped.Finish);
    }

    [Fact]
    public void A_room_for_one_variety_takes_no_other()
    {
        var ask = new HarvestAsk([new StandingGrain("F0", Area.FromAcres(100), GrainYield.FromHundredweightsPerAcre(95)) { Variety = "S-1" }], Means with { Sets = 0 }, Start)
        { Rooms = [new DryerRoom(new(2026, 9, 25), new(2026, 12, 1), 5) { Dryer = "mill", Variety = "E-1" }] };
        var plan = HarvestOrder.Plan(ask);
        Assert.Null(plan.Finish);
        Assert.Empty(plan.Days);
    }

    private static IEnumerable<ImmutableArray<string>> Orders(ImmutableArray<string> codes) =>
        codes.Length <= 1 ? [codes] : codes.SelectMany(c => Orders(codes.Remove(c)).Select(rest => rest.Insert(0, c)));
}
