using Watersown.Flight.Patterns;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class PatternPageTests
{
    private static readonly double[] leaning = [0, 0.2, 0.6, 1.3, 2.4, 3.8, 5.2, 6.3, 6.9, 6.6, 5.9, 5.3, 4.9, 4.6, 4.2, 3.6, 2.8, 1.9, 1.1, 0.5, 0.1];

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void A_pattern_test_reads_as_approved(Language language)
    {
        var plan = PlannedMorning.Plan();
        Golden.Matches($"Sheets/pattern-{Words.In(language).Common.Tag}.golden.txt", PageText.Of(PatternPage.Of(plan, plan.State.Aeroplanes[0], Test(), language)));
    }

    // The widest swath back and forth is 13.45 m at 20 % (worked by hand): 44.1 ft, said as 44.0 and never as more.
    [Fact]
    public void A_swath_is_said_rounded_down() => Assert.Equal("44.0 ft", PatternSaid.Swath(Length.FromMeters(13.45), new Telling(PlannedMorning.State(), Language.English)));

    [Fact]
    public void A_test_in_the_logbook_is_the_aeroplanes_from_then_on_and_prints_with_the_sheets()
    {
        var state = PlannedMorning.State();
        var older = Test() with { Day = new DateOnly(2026, 4, 1), Seed = "older" };
        var book = SeasonFold.Fold(state, Logbook.Empty.With([Marks.At(1, PlannedMorning.At(8, 5), PatternTested.Of(Test())), Marks.At(2, PlannedMorning.At(8, 6), PatternTested.Of(older))]), PlannedMorning.At(8, 7));
        var tested = book.State.Aeroplanes[0].Tested!;
        Assert.Equal("E-1 soaked", tested.Seed);
        Assert.Equal(leaning, tested.MeanRow.Select(t => Math.Round(t.Kilograms * 1000, 9)));
        var plan = PlannedMorning.Plan();
        var pages = SheetSet.Of(plan with { State = plan.State with { Aeroplanes = book.State.Aeroplanes } }, new SheetChoice { Language = Language.English }).Value.Pages;
        Assert.Contains(pages, p => p.Key.StartsWith("pattern-", StringComparison.Ordinal));
        Assert.DoesNotContain(SheetSet.Of(plan, new SheetChoice()).Value.Pages, p => p.Key.StartsWith("pattern-", StringComparison.Ordinal));
    }

    [Fact]
    public void Rows_that_cannot_be_worked_are_kept_in_the_logbook_and_used_nowhere()
    {
        var fact = new PatternTested(new DateOnly(2026, 5, 8), [[SoakedSeed.Zero]], Length.FromMeters(1), Area.FromSquareMeters(0.25));
        Assert.Null(SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With([Marks.At(1, PlannedMorning.At(8, 5), fact)]), PlannedMorning.At(8, 7)).State.Aeroplanes[0].Tested);
        Assert.Equal("Pattern tested: trays 1, passes 1", new MarkTelling(new Telling(PlannedMorning.State(), Language.English)).Say(fact));
    }

    [Fact]
    public void Every_drawing_says_in_words_what_it_shows()
    {
        var plan = PlannedMorning.Plan();
        var pictures = PatternPage.Of(plan, plan.State.Aeroplanes[0], Test(), Language.Spanish).Arrangements[0].OfType<Block.Picture>().Select(p => p.Draw(300, 140)).ToList();
        Assert.Equal(3, pictures.Count);
        Assert.All(pictures, p => Assert.True(p.Description.Length > 40 && p.Items.Length > 5));
        Assert.All(pictures.SelectMany(p => p.Items).OfType<DrawingItem.Path>().SelectMany(p => p.Rings).SelectMany(r => r), p => Assert.True(p.X is >= 0 and <= 300 && p.Y is >= 0 and <= 140));
    }

    private static TrayTest Test() => new()
    {
        Day = new DateOnly(2026, 5, 7),
        Seed = "E-1 soaked",
        Passes = [[.. leaning.Select(g => SoakedSeed.FromKilograms(g / 1000))]],
        Spacing = Length.FromMeters(1),
        Tray = Area.FromSquareMeters(0.25),
        Speed = Speed.FromMilesPerHour(120),
        Gate = MassFlow.FromPoundsPerMinute(2000),
    };
}
