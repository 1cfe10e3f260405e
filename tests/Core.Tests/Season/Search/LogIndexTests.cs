using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Search;

public sealed class LogIndexTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(7, 6);

    private static readonly ImmutableArray<Mark> marks =
    [
        Marks.At(1, Six, new CheckWater("N4", 5, WaterSeen.Wet)) with { Note = "compuerta atorada, tiré dos tablas", By = "Lucero Quintabar", Device = "phone-b" },
        Marks.At(2, Six.AddHours(1), new DepthRead("N4", 2, WaterDepth.FromInches(2))),
        Marks.At(3, Six.AddHours(1), new DepthRead("N4", 2, WaterDepth.FromInches(3))).Entered(Six.AddHours(9)).Replacing(2) with { Sure = Sureness.Told },
        Marks.At(4, Six.AddHours(-20), new FaultFound(FaultKind.Gate) { Source = "NT-1" }).Entered(Six.AddHours(2)),
        Marks.At(5, Six.AddHours(3), new Noted("geese", null)),
        Marks.At(6, Six.AddHours(4), new Withdrawn()).Replacing(5),
        Marks.At(7, Six.AddHours(5), new UnknownFact("drone-photo", "{}")),
    ];

    private static readonly HashSet<MarkId> nothing = [];

    private static readonly LogIndex index = In(Language.English);

    [Fact]
    public void The_newest_comes_first_by_the_farms_days()
    {
        var page = index.Find(new LogFilter(), 100, nothing);
        Assert.Equal([7, 6, 5, 3, 2, 1, 4], page.Days.SelectMany(d => d.Entries).Select(Number));
        Assert.Equal([new DateOnly(2026, 5, 7), new DateOnly(2026, 5, 6)], page.Days.Select(d => d.Day));
        Assert.Equal((7, 7), (page.Found, page.Shown));
    }

    [Fact]
    public void Only_so_many_are_shown_and_all_are_counted()
    {
        var page = index.Find(new LogFilter(), 2, nothing);
        Assert.Equal((7, 2), (page.Found, page.Shown));
        Assert.Equal([7, 6], page.Days.SelectMany(d => d.Entries).Select(Number));
    }

    [Fact]
    public void In_order_of_being_put_down_a_late_mark_stands_where_it_came_in() =>
        Assert.Equal([3, 7, 6, 5, 4, 2, 1], index.Find(new LogFilter { ByEntered = true }, 100, nothing).Days.SelectMany(d => d.Entries).Select(Number));

    [Theory]
    [InlineData("tire", "1")] // the accent may be left out
    [InlineData("TIRÉ dos", "1")]
    [InlineData("lucero wet", "1")]
    [InlineData("mojado", "1")] // the other language finds it, too
    [InlineData("Two Gates", "3 2 1")] // the field's name
    [InlineData("compuerta", "1 4")] // a note, and a gate told in English
    [InlineData("wet geese", "")]
    [InlineData("  ", "7 6 5 3 2 1 4")]
    public void Every_word_must_be_found_whatever_its_accents_and_capitals(string typed, string found) => Assert.Equal(found, Found(new LogFilter { Words = typed }));

    [Fact]
    public void A_choice_narrows_the_marks_down()
    {
        Assert.Equal("3 2 1", Found(new LogFilter { Field = "n4" }));
        Assert.Equal("3 2", Found(new LogFilter { Field = "N4", Check = 2 }));
        Assert.Equal("4", Found(new LogFilter { Kind = LogKind.Faults }));
        Assert.Equal("7", Found(new LogFilter { Kind = LogKind.Newer }));
        Assert.Equal("1", Found(new LogFilter { By = "Lucero Quintabar" }));
        Assert.Equal("1", Found(new LogFilter { Device = "phone-b" }));
        Assert.Equal("3", Found(new LogFilter { Sure = Sureness.Told }));
        Assert.Equal("5", string.Join(' ', index.Find(new LogFilter { UnsentOnly = true }, 100, new HashSet<MarkId> { AnyMark.Id(5) }).Days.SelectMany(d => d.Entries).Select(Number)));
        Assert.Equal(2, new LogFilter { Field = "N4", Check = 2, Words = "x", ByEntered = true }.Choices);
    }

    [Fact]
    public void An_entry_says_what_it_replaces_what_replaced_it_and_how_late_it_is()
    {
        var old = index.Find(AnyMark.Id(2))!;
        Assert.Equal((Standing.Replaced, AnyMark.Id(3)), (old.Line.Standing, old.Line.By!.Value));
        var correction = index.Find(AnyMark.Id(3))!;
        Assert.Equal("Depth 2 in, check 2", correction.Replaces!.Said);
        Assert.Equal(TimeSpan.FromHours(8), correction.LateBy);
        Assert.Null(old.LateBy);
        Assert.Equal((Standing.Withdrawn, Standing.Withdraws), (index.Find(AnyMark.Id(5))!.Line.Standing, index.Find(AnyMark.Id(6))!.Line.Standing));
    }

    [Fact]
    public void Marks_that_do_not_agree_both_say_so()
    {
        var book = Fold([.. marks, Marks.At(8, Six.AddHours(1.2), new DepthRead("N4", 2, WaterDepth.FromInches(6))).By("Lucero Quintabar")]);
        var told = LogIndex.Of(book, new Telling(book.State, Language.English));
        Assert.Equal([8, 3], told.Find(new LogFilter { DoubtsOnly = true }, 100, nothing).Days.SelectMany(d => d.Entries).Select(Number));
    }

    [Fact]
    public void What_was_told_before_is_taken_over_and_gives_the_same()
    {
        var book = Fold([.. marks, Marks.At(9, Six.AddHours(6), new Withdrawn()).Replacing(3)]);
        var tell = new Telling(book.State, Language.English);
        var (anew, after) = (LogIndex.Of(book, tell), LogIndex.Of(book, tell, index));
        Assert.Equal(anew.ByHappened.Select(Shown), after.ByHappened.Select(Shown));
        Assert.Equal(anew.ByEntered.Select(Shown), after.ByEntered.Select(Shown));
        Assert.Equal(In(Language.Spanish).ByHappened.Select(Shown), LogIndex.Of(Fold(marks), new Telling(book.State, Language.Spanish), index).ByHappened.Select(Shown));
    }

    [Fact]
    public void Every_fact_has_a_kind_and_every_kind_a_word() => CsCheck.Check.Sample(AnyMark.Fact, fact =>
    {
        foreach (var words in new[] { SeasonScreenWords.English, SeasonScreenWords.Spanish }) Assert.NotEqual(string.Empty, LogKindWords.Of(LogKinds.Of(fact), words));
    });

    private static string Found(LogFilter filter) => string.Join(' ', index.Find(filter, 100, nothing).Days.SelectMany(d => d.Entries).Select(Number));

    private static int Number(LogEntry entry) => Convert.ToInt32(entry.Mark.Id.Text, 16);

    private static string Shown(LogEntry entry) => string.Join('|', entry.Mark.Id, entry.Line.Standing, entry.Line.By, entry.Said, entry.About, entry.Replaces?.Said, entry.LateBy);

    private static LogIndex In(Language language)
    {
        var book = Fold(marks);
        return LogIndex.Of(book, new Telling(book.State, language));
    }

    private static SeasonBook Fold(ImmutableArray<Mark> marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), PlannedMorning.At(8, 5));
}
