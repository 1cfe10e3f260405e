using CsCheck;
using Watersown.Growth;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season.Crop;
using Watersown.Weather;

namespace Watersown.Season;

public sealed class ScoutRoundTests
{
    private static SeasonState Ground() => PlannedMorning.State() with
    {
        Normals = new FarmNormals([.. new[] { (4, 60), (5, 66), (6, 73), (7, 77), (8, 75), (9, 72), (10, 64) }.Select(n => new MonthNormal(n.Item1, Temperature.FromFahrenheit(n.Item2), Temperature.FromFahrenheit(n.Item2)))], "typed"),
    };

    private static SeasonBook Book(DateTimeOffset now, params (DateTimeOffset At, MarkFact Fact)[] facts) =>
        SeasonFold.Fold(Ground(), Logbook.Empty.With([.. facts.Select((f, i) => Marks.At(i + 1, f.At, f.Fact))]), now);

    private static PestWindow Window(SeasonBook book, string code, Pest pest) => Assert.Single(PestRules.Of(book, book.State.Farm.Field(code)), w => w.Pest == pest);

    private static Pest[] Due(SeasonBook book, string code, DateOnly day) => [.. PestDues.Of(book, book.State.Farm.Field(code), day).Select(d => d.Window.Pest)];

    // Hatch from 2 days after first water; rice is safe once its first true leaf is out (University of California).
    [Fact]
    public void Shrimp_come_on_the_list_two_days_after_first_water_and_go_off_at_the_first_leaf()
    {
        var now = PlannedMorning.At(15, 7, 0);
        var water = FarmTime.Day(Ground(), Book(now).State.Season("S1").FirstWater ?? Book(now).State.Season("S1").SownAt!.Value);
        Assert.Equal(water.AddDays(2), Window(Book(now), "S1", Pest.Shrimp).From);
        var leaf = Book(now, (PlannedMorning.At(14, 7, 0), new StageSeen("S1", StagePoint.OfLeaf(1))));
        Assert.Equal((new DateOnly(2026, 5, 13), true), (Window(leaf, "S1", Pest.Shrimp).Until, Window(leaf, "S1", Pest.Shrimp).EndSeen));
        Assert.Contains(Pest.Shrimp, Due(Book(now), "S1", new DateOnly(2026, 5, 13)));
        Assert.DoesNotContain(Pest.Shrimp, Due(leaf, "S1", new DateOnly(2026, 5, 15)));
    }

    [Fact]
    public void A_look_takes_it_off_the_list_until_the_next_is_due_and_a_message_counts_as_one()
    {
        var now = PlannedMorning.At(10, 20, 0);
        foreach (MarkFact look in new MarkFact[] { new PestLooked("S1", Pest.Shrimp, Seen: false), new Scouted("S1", "shrimp", "none") })
        {
            var book = Book(now, (PlannedMorning.At(10, 7, 0), look));
            Assert.DoesNotContain(Pest.Shrimp, Due(book, "S1", new DateOnly(2026, 5, 10)));
            Assert.Contains(Pest.Shrimp, Due(book, "S1", new DateOnly(2026, 5, 12)));
        }
    }

    // Look 5 to 7 days after seeding, then every 5 to 7 days (Louisiana).
    [Fact]
    public void Midge_is_looked_for_from_the_fifth_day_after_seeding()
    {
        var book = Book(PlannedMorning.At(20, 7, 0));
        Assert.Equal(new DateOnly(2026, 5, 11), Window(book, "S1", Pest.Midge).From);
        Assert.DoesNotContain(Pest.Midge, Due(book, "S1", new DateOnly(2026, 5, 10)));
    }

    [Fact]
    public void A_leaf_of_a_text_message_sets_the_clock_of_the_crop()
    {
        var book = Book(PlannedMorning.At(20, 7, 0), (PlannedMorning.At(19, 7, 0), new Scouted("S1", "leaf", "2.5")));
        Assert.Equal((new DateOnly(2026, 5, 19), true), (SeasonStages.Of(book, "S1")!.Calendar.Of(StagePoint.OfLeaf(2))!.Day, SeasonStages.Of(book, "S1")!.Calendar.Of(StagePoint.OfLeaf(2))!.Seen));
    }

    [Fact]
    public void Weevil_and_armyworm_have_their_leaves_and_months()
    {
        var book = Book(PlannedMorning.At(20, 7, 0));
        var stages = SeasonStages.Of(book, "S1")!.Calendar;
        Assert.Equal(stages.Of(StagePoint.OfLeaf(2))!.Day, Window(book, "S1", Pest.Weevil).From);
        Assert.Equal(new DateOnly(2026, 6, 1), Window(book, "S1", Pest.ArmywormLeaf).From);
        Assert.Equal(stages.Of(CropStage.Heading)!.Earliest, Window(book, "S1", Pest.ArmywormPanicle).From);
    }

    // Published conditions, one case on either side of each.
    [Theory]
    [InlineData(55, true, LevelAnswer.Reached)]
    [InlineData(30, true, LevelAnswer.NotReached)]
    [InlineData(55, false, LevelAnswer.NotReached)]
    public void Armyworm_on_leaves_asks_for_half_of_the_plants_and_worms(double percent, bool worms, LevelAnswer expected) =>
        Assert.Equal(expected, ActionLevels.Armyworm(Fraction.FromPercent(percent), worms, ActionLevels.ArmywormPlants));

    [Theory]
    [InlineData(12, true, LevelAnswer.Reached)]
    [InlineData(12, false, LevelAnswer.NotReached)]
    [InlineData(9, true, LevelAnswer.NotReached)]
    public void Armyworm_on_panicles_asks_for_a_tenth_and_worms(double percent, bool worms, LevelAnswer expected) =>
        Assert.Equal(expected, ActionLevels.Armyworm(Fraction.FromPercent(percent), worms, ActionLevels.ArmywormPanicles));

    [Theory]
    [InlineData(14, LevelAnswer.Reached)]
    [InlineData(18, LevelAnswer.NotReached)]
    public void Midge_asks_for_injury_and_a_stand_under_fifteen(double stand, LevelAnswer expected)
    {
        Assert.Equal(expected, ActionLevels.Midge(injury: true, PlantDensity.FromPerSquareFoot(stand)));
        Assert.Equal(LevelAnswer.NotReached, ActionLevels.Midge(injury: false, PlantDensity.FromPerSquareFoot(stand)));
    }

    [Fact]
    public void What_was_not_counted_is_unknown_and_what_has_no_published_level_has_no_answer()
    {
        Assert.Equal(LevelAnswer.Unknown, ActionLevels.Of(new PestLooked("S1", Pest.ArmywormLeaf, Seen: true), stand: null));
        Assert.Equal(LevelAnswer.Unknown, ActionLevels.Of(new PestLooked("S1", Pest.Midge, Seen: true), stand: null));
        Assert.Null(ActionLevels.Of(new PestLooked("S1", Pest.Shrimp, Seen: true), stand: null));
        Assert.Equal(LevelAnswer.Reached, ActionLevels.Of(new PestLooked("S1", Pest.Weevil, Seen: true) { Damaged = Fraction.FromPercent(15) }, stand: null));
    }

    [Fact]
    public void The_round_of_a_day_shrinks_with_every_look_and_says_each_field_once()
    {
        var now = PlannedMorning.At(12, 7, 0);
        var before = PestDues.Round(Book(now), new DateOnly(2026, 5, 12));
        Assert.Equal(before.Length, before.Select(s => s.Field.Code).Distinct().Count());
        var first = before[0];
        var after = PestDues.Round(Book(now, [.. first.Dues.Select((d, i) => (PlannedMorning.At(12, 6, i), (MarkFact)new PestLooked(first.Field.Code, d.Window.Pest, Seen: false)))]), new DateOnly(2026, 5, 12));
        Assert.DoesNotContain(after, s => s.Field.Code == first.Field.Code);
        Assert.Equal(before.Length - 1, after.Length);
    }

    // No stretch turned round makes the way shorter than the hundredth of a meter at which the search stops; the sums add rounding of their own.
    [Fact]
    public void No_stretch_of_the_way_can_be_turned_round_to_shorten_it() => Gen.Select(Gen.Double[-0.05, 0.05], Gen.Double[-0.05, 0.05]).Array[2, 9].Sample(places =>
    {
        var state = Ground();
        ImmutableArray<Field> fields = [.. places.Select((p, i) => state.Farm.Fields[i] with { Center = new GeoPoint(39 + p.Item1, -122 + p.Item2) })];
        var route = ScoutRoute.Of(state.Farm, fields);
        Assert.Equal(fields.Select(f => f.Code).Order(StringComparer.Ordinal), route.Select(f => f.Code).Order(StringComparer.Ordinal));
        var way = ScoutRoute.Way(state.Farm, route).Meters;
        for (var i = 0; i < route.Length; i++)
        {
            for (var j = i + 1; j < route.Length; j++)
                Assert.True(way <= ScoutRoute.Way(state.Farm, [.. route[..i], .. route[i..(j + 1)].Reverse(), .. route[(j + 1)..]]).Meters + 0.02);
        }
    }, iter: 100);
}
