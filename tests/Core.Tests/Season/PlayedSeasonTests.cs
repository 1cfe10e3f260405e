using Watersown.Costs;
using Watersown.Growth;
using Watersown.Land;
using Watersown.Season.FieldRecords;

namespace Watersown.Season;

/// <summary>
/// The whole season of the example farm, from the morning of the story to the last ticket, told by marks as people put them down; what must
/// hold between them is looked at after every day of it.
/// </summary>
public sealed class PlayedSeasonTests
{
    private static readonly ImmutableArray<Mark> Marks = [.. Play().OrderBy(m => m.Happened).Select((m, i) => m with { Id = AnyMark.Id(i + 1) })];

    // Worked by hand from acres and rates: 442,930 lb dry in all, 120,085 of them on the six fields sown before the morning of the story.
    [Fact]
    public void At_the_end_every_field_is_sown_cut_and_complete_and_nothing_disagrees()
    {
        var book = At(new DateTimeOffset(2026, 12, 1, 6, 0, 0, TimeSpan.FromHours(-8)));
        var records = FieldRecord.All(book);
        Assert.Equal(28, records.Length);
        // What was sown before the farm was told stands in its document by its day alone.
        var before = Ground().Fields.Where(f => f.SownAt is not null).Select(f => f.Code).ToHashSet();
        Assert.Equal(6, before.Count);
        Assert.All(records, r => Assert.Equal(before.Contains(r.Field.Code) ? [RecordGap.Lot, RecordGap.Full, RecordGap.DrySeed] : [], r.Missing));
        Assert.Empty(book.Doubts.Select(d => d.Field + ": " + d.Problem.Kind.Code));
        Assert.Equal(2900, records.Sum(r => r.Sown.Acres), 0.01);
        Assert.Equal(2900, SownDays.Of(book)[^1].Together.Acres, 0.01);
        Assert.Equal(442_930 - 120_085, records.Sum(r => r.DrySown?.Pounds ?? 0), 1);
        Assert.Equal(Marks.Select(m => m.Fact).OfType<CostPaid>().Sum(b => b.Amount.Amount), records.Sum(r => r.Cost.Spent.Amount));
    }

    [Fact]
    public void Seed_land_and_grain_hold_together_on_every_day()
    {
        for (var day = PlannedMorning.Now; day < new DateTimeOffset(2026, 11, 20, 0, 0, 0, TimeSpan.FromHours(-8)); day = day.AddDays(3))
        {
            var book = At(day);
            Assert.All(SeedChain.All(book), c => Assert.True(c.Holds, day + " " + c));
            // Order of dates: first water, full, sown, boards out, cut.
            foreach (var record in FieldRecord.All(book))
            {
                DateTimeOffset?[] dates = [record.FirstWater, record.FullSince, record.SownAt, record.Harvest.BoardsOut, record.Harvest.CutAt];
                var known = dates.OfType<DateTimeOffset>().ToList();
                Assert.Equal(known.Order(), known);
                Assert.True(record.Sown <= record.Field.Net * 1.000001);
                Assert.True((record.Harvest.Cut ?? Area.Zero) <= record.Field.Net * 1.000001);
            }

            var tally = book.Harvest.Tally();
            Assert.Equal(tally.Green.Pounds, tally.Fields.Sum(f => f.Green.Pounds) + tally.Homeless.Pounds, 0.01);
            foreach (var (_, ticket) in book.Harvest.Tickets)
            {
                foreach (var part in ticket.Parts) Assert.Equal(ticket.Variety, book.State.Fields.Single(f => f.Code == part.Field).Variety);
            }
        }
    }

    [Fact]
    public void Told_in_any_order_the_season_is_the_same()
    {
        var end = new DateTimeOffset(2026, 12, 1, 6, 0, 0, TimeSpan.FromHours(-8));
        var turned = SeasonFold.Fold(Ground(), Logbook.Empty.With(Marks.Reverse()), end);
        Assert.Equal(Watersown.Marks.Seen(At(end)), Watersown.Marks.Seen(turned));
    }

    private static SeasonBook At(DateTimeOffset now) => SeasonFold.Fold(Ground(), Logbook.Empty.With(Marks), now);

    // Three in a hundred more than is needed was bought of every lot.
    private static Schedule.SeasonState Ground()
    {
        var state = PlannedMorning.State();
        var soaked = state.Batches.ToLookup(b => b.Lot);
        return state with
        {
            Lots = [.. state.Lots.Select(l => l with { InHand = Needed(state, l.Variety) * 1.03 - Sum(soaked[l.Code].Select(b => b.Dry)) })],
            Farm = state.Farm with { Fields = [.. state.Farm.Fields.Select(f => f with { Certified = f.Net, Gross = f.Gross ?? (f.Net * 1.06) })] },
        };
    }

    private static DrySeed Needed(Schedule.SeasonState state, string variety) =>
        Sum(state.Fields.Where(f => f.Variety == variety).Select(f => f.Rate * state.Farm.Field(f.Code).Net)) + (variety == "E-1" ? DrySeed.FromPounds(28_315) : DrySeed.Zero);

    private static DrySeed Sum(IEnumerable<DrySeed> seed) => seed.Aggregate(DrySeed.Zero, (a, b) => a + b);

    private static IEnumerable<Mark> Play()
    {
        var state = PlannedMorning.State();
        var lots = state.Lots.ToDictionary(l => l.Variety, l => l.Code);
        var morning = PlannedMorning.At(10, 6);
        var ticket = 40_000;
        // What was soaked for the day that was blown out is thrown away; the others are sown by turns, two days apart, one batch each.
        yield return Put(PlannedMorning.At(8, 7), new BatchDumped("B-07a", null));
        yield return Put(PlannedMorning.At(8, 7), new BatchDumped("B-07b", null));
        yield return Put(PlannedMorning.At(8, 8), new CostPlanned(CostCategory.Seed) { PerAcre = Money.FromDollars(52m) });
        yield return Put(PlannedMorning.At(8, 9), new BatchDrained("B-08"));
        yield return Put(PlannedMorning.At(9, 6), new BatchDrained("B-09"));
        foreach (var (season, i) in state.Fields.Select((s, i) => (s, i)))
        {
            var field = state.Farm.Field(season.Code);
            var dry = season.Rate * field.Net;
            var sown = season.SownAt ?? morning.AddDays(4 + (i * 0.75));
            var batch = season.Code switch { "N3" => "B-08", "N4" => "B-09", _ => "P-" + season.Code };
            foreach (var mark in Sow(state, season, field, batch, lots[season.Variety!], dry, sown)) yield return mark;
            foreach (var mark in Grow(season, field, sown)) yield return mark;
            var cut = new DateTimeOffset(2026, 9, 20, 8, 0, 0, TimeSpan.FromHours(-7)).AddDays(i);
            yield return Put(cut.AddDays(-21), new BoardsOut(season.Code));
            yield return Put(cut.AddDays(-2), new MoistureSampled(season.Code, Fraction.FromPercent(21.4)));
            yield return Put(cut.AddHours(9), new FieldCut(season.Code));
            var left = 85 * field.Net.Acres * 100 * 86 / 80;
            for (var load = 0; left > 0; load++, left -= 50_000)
            {
                yield return Put(cut.AddMinutes(40 * (load + 1)), new GrainTicketed((++ticket).ToString(System.Globalization.CultureInfo.InvariantCulture), Mass.FromPounds(27_000 + Math.Min(50_000, left)), Mass.FromPounds(27_000), Fraction.FromPercent(20))
                { Variety = season.Variety, Dryer = "Pale Ridge", Parts = [new(season.Code, Fraction.One)] });
            }

            yield return Put(cut.AddDays(10), new CostPaid(CostCategory.Seed, Money.FromDollars((decimal)Math.Round(dry.Pounds * 0.33, 2))) { Fields = [season.Code], Invoice = "S-" + season.Code });
            yield return Put(cut.AddDays(11), new CostPaid(CostCategory.Water, Money.FromDollars(777.77m)) { Invoice = "W-" + season.Code });
        }
    }

    private static IEnumerable<Mark> Sow(Schedule.SeasonState state, Schedule.FieldSeason season, Field field, string batch, string lot, DrySeed dry, DateTimeOffset sown)
    {
        var told = state.Batches.Any(b => b.Code == batch);
        if (!told)
        {
            yield return Put(sown.AddDays(-2), new BatchInSoak(batch) { Lot = lot, Variety = season.Variety, Dry = dry, MeantFor = [season.Code] });
            yield return Put(sown.AddDays(-1), new BatchDrained(batch));
        }

        foreach (var basin in field.Basins.Where(b => season.FullSince is null && b.Number > (season.ChecksWet ?? 0)))
        {
            yield return Put(sown.AddDays(season.FirstWater is null ? -5 : -2).AddHours(basin.Number), new CheckWater(season.Code, basin.Number, WaterSeen.Wet));
        }

        if (season.FullSince is null)
        {
            foreach (var basin in field.Basins) yield return Put(sown.AddDays(-1).AddHours(basin.Number / 10.0), new CheckWater(season.Code, basin.Number, WaterSeen.Full));
        }

        yield return Put(sown.AddHours(-1), new TrailerSeen("T-" + season.Code) { Batch = batch, Weighed = SoakedSeed.FromPounds(dry.Pounds * (season.Variety == "VE-1" ? 1.27 : 1.25)), Field = season.Code });
        yield return Put(sown, new FieldSown(season.Code) { Batch = batch, Dry = dry });
    }

    private static IEnumerable<Mark> Grow(Schedule.FieldSeason season, Field field, DateTimeOffset sown)
    {
        yield return Put(sown.AddDays(16), new RingsCounted(season.Code, "all", field.Net, [19, 22, 17, 24, 20, 21]));
        yield return Put(sown.AddDays(84), new StageSeen(season.Code, new StagePoint(CropStage.Heading)));
    }

    private static Mark Put(DateTimeOffset at, MarkFact fact) => Watersown.Marks.At(0, at, fact);
}
