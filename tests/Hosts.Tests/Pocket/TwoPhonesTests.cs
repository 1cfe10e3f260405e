using Watersown.Documents.Farms;
using Watersown.Documents.Logbooks;
using Watersown.Pocket;
using Watersown.Pocket.Keeping;
using Watersown.Season;
using Watersown.Web;

namespace Watersown.Phones;

/// <summary>
/// Two people in one field without a signal, and their phones the next day: nothing is overwritten, and host and phones
/// tell the same season whoever comes back first.
/// </summary>
public sealed class TwoPhonesTests
{
    private static readonly DateTimeOffset Evening = PlannedMorning.At(7, 20);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Marks_that_conflict_are_both_kept_and_asked_about_whoever_comes_back_first(bool irrigatorFirst)
    {
        await using var host = await RunningDesk.HereAsync();
        await using var grower = await SomePhone.AsNewAsync(host, "Odalie Marrowfen");
        await using var irrigator = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        var deep = await grower.MarkAsync(new DepthRead("N4", 5, WaterDepth.FromInches(4)), new MarkOptions { Happened = Evening });
        var shallow = await irrigator.MarkAsync(new DepthRead("N4", 5, WaterDepth.FromInches(1)), new MarkOptions { Happened = Evening.AddMinutes(10) });
        var dry = await irrigator.MarkAsync(new CheckWater("N4", 5, WaterSeen.Dry), new MarkOptions { Happened = Evening.AddMinutes(12) });
        var wet = await grower.MarkAsync(new CheckWater("N4", 5, WaterSeen.Wet), new MarkOptions { Happened = Evening.AddMinutes(2) });
        Assert.Equal(2, grower.Desk.Unsent);
        Assert.Equal(2, irrigator.Desk.Unsent);
        host.Time.Move(TimeSpan.FromHours(14));

        await (irrigatorFirst ? irrigator : grower).JoinAsync();
        await (irrigatorFirst ? grower : irrigator).JoinAsync();
        await (irrigatorFirst ? irrigator : grower).JoinAsync();

        var book = await SameAsync(host, grower, irrigator);
        foreach (var mark in new[] { deep, shallow, dry, wet }) Assert.Equal(Standing.Stands, Assert.Single(book.Story, l => l.Mark.Id == mark.Id).Standing);
        Assert.Contains(book.Doubts, d => d.Problem.Kind == SeasonProblems.DepthsDiffer && d.Marks.ToHashSet().SetEquals([deep.Id, shallow.Id]));
        Assert.False(Assert.Single(book.Field("N4").Checks, c => c.Number == 5).IsWet);
    }

    [Fact]
    public async Task Two_corrections_of_one_mark_both_stay_and_the_later_word_counts_on_every_device()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var grower = await SomePhone.AsNewAsync(host, "Odalie Marrowfen");
        await using var irrigator = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        var first = await irrigator.MarkAsync(new DepthRead("N3", 1, WaterDepth.FromInches(2)), new MarkOptions { Happened = Evening });
        await irrigator.JoinAsync();
        await grower.JoinAsync();
        (irrigator.Wire.Cut, grower.Wire.Cut) = (true, true);
        host.Time.Move(TimeSpan.FromMinutes(5));
        var early = await grower.MarkAsync(new DepthRead("N3", 1, WaterDepth.FromInches(3)), new MarkOptions { Happened = Evening, Replaces = first.Id });
        host.Time.Move(TimeSpan.FromMinutes(5));
        var late = await irrigator.MarkAsync(new DepthRead("N3", 1, WaterDepth.FromInches(5)), new MarkOptions { Happened = Evening, Replaces = first.Id });
        await irrigator.JoinAsync();
        await grower.JoinAsync();
        await irrigator.JoinAsync();
        var book = await SameAsync(host, grower, irrigator);
        Assert.Contains(book.Doubts, d => d.Problem.Kind == SeasonProblems.TwoCorrections && d.Marks.SequenceEqual([late.Id, early.Id]));
        Assert.Equal((Standing.Stands, Standing.Replaced, Standing.Replaced), (StandingOf(book, late), StandingOf(book, early), StandingOf(book, first)));
    }

    [Fact]
    public async Task A_send_whose_answer_was_lost_stands_once()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        var mark = await phone.MarkAsync(new CheckWater("N4", 5, WaterSeen.Wet));
        (phone.Wire.Cut, phone.Wire.AnswersLost) = (false, 2);
        await phone.Desk.SendAsync();
        Assert.Equal(1, phone.Desk.Unsent);
        Assert.Equal(1, await host.Book.UptoAsync());
        await phone.JoinAsync();
        Assert.True(phone.Wire.Sends >= 3);
        Assert.Equal(1, await host.Book.UptoAsync());
        Assert.Equal(mark.Id.Text, Assert.Single(await host.Book.MarksAfterAsync(0, 10)).Mark.Id);
        await SameAsync(host, phone);
    }

    [Fact]
    public async Task The_same_marks_from_two_devices_are_one()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        await phone.MarkAsync(new CheckWater("N4", 5, WaterSeen.Wet));
        await phone.JoinAsync();
        var kept = Assert.Single(await host.Book.MarksAfterAsync(0, 10)).Mark;
        using var other = host.Page();
        for (var i = 0; i < 2; i++) await other.PostAsync("/api/marks", RunningDesk.Send(kept.Body));
        Assert.Equal(1, await host.Book.UptoAsync());
        await phone.JoinAsync();
        Assert.Equal(1, phone.Desk.Book!.Log.Count);
    }

    [Fact]
    public async Task A_mark_that_the_host_refuses_stays_on_the_phone_with_the_reason_and_counts_nowhere()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        var good = await phone.MarkAsync(new CheckWater("N4", 5, WaterSeen.Wet));
        // A name longer than the book takes: the phone has no such limit.
        await phone.Desk.ChooseAsync(phone.Desk.Settings with { Name = new string('q', 150) });
        var refused = await phone.MarkAsync(new Noted("x", "N4"), new MarkOptions { Note = "y" });
        await phone.JoinAsync();
        var shown = Assert.Single(phone.Desk.Refused);
        Assert.Equal((refused.Id.Text, SendState.Refused), (shown.Id, shown.State));
        Assert.Contains("at most 100 letters", shown.Why, StringComparison.Ordinal);
        Assert.Equal(refused, phone.Desk.AsRead(shown));
        Assert.NotNull(phone.Desk.Book!.Log.Find(good.Id));
        Assert.Null(phone.Desk.Book.Log.Find(refused.Id));
        Assert.Equal(1, await host.Book.UptoAsync());
        await phone.OpenAgainAsync();
        Assert.Equal(refused.Id.Text, Assert.Single(phone.Desk.Refused).Id);
    }

    [Fact]
    public async Task What_was_marked_without_a_signal_outlives_the_page_and_is_sent_from_the_next()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        for (var check = 1; check <= 6; check++) await phone.MarkAsync(new CheckWater("N4", check, WaterSeen.Wet));
        await phone.OpenAgainAsync();
        Assert.Equal(6, phone.Desk.Unsent);
        Assert.Equal(6, phone.Desk.Book!.Log.Count);
        await phone.JoinAsync();
        await SameAsync(host, phone);
        Assert.Equal(6, await host.Book.UptoAsync());
    }

    [Fact]
    public async Task What_one_page_of_a_phone_marks_another_page_of_it_sends()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        await phone.MarkAsync(new CheckWater("N4", 5, WaterSeen.Wet));
        using var other = phone.AnotherPage();
        await other.OpenAsync();
        Assert.True((await other.MarkAsync(new CheckWater("N4", 6, WaterSeen.Wet))).HasValue);
        await phone.JoinAsync();
        Assert.Equal(2, await host.Book.UptoAsync());
        Assert.Equal(2, phone.Desk.Book!.Log.Count);
    }

    [Fact]
    public async Task A_mark_with_a_newer_devices_word_is_kept_by_all_and_read_by_none_that_does_not_know_it()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var phone = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        var id = RunningDesk.NewId();
        using var newer = host.Page();
        await newer.PostAsync("/api/marks", RunningDesk.Send(RunningDesk.Mark(id, kind: "check-water", fact: """{"field":"N4","check":5,"water":"seeping"}""")));
        await phone.JoinAsync();
        var mark = phone.Desk.Book!.Log.Find(new MarkId(id))!;
        Assert.Equal(("check-water", "N4"), mark.Fact is UnknownFact fact ? (fact.Kind, fact.Field) : default);
        Assert.Contains(phone.Desk.Book.Field("N4").Story, l => l.Mark.Id == mark.Id);
        Assert.Equal(4, phone.Desk.Book.State.Season("N4").ChecksWet);
    }

    /// <summary>The relief irrigator's morning: four taps in Spanish without a signal, while the grower marks the same field.</summary>
    [Fact]
    public async Task A_relief_irrigators_taps_merge_the_next_day_and_overwrite_nothing()
    {
        await using var host = await RunningDesk.HereAsync();
        await using var grower = await SomePhone.AsNewAsync(host, "Odalie Marrowfen");
        await using var relief = await SomePhone.AsNewAsync(host, "Lucero Quintabar");
        await relief.Desk.ChooseAsync(relief.Desk.Settings with { Language = Wording.Language.Spanish });
        Assert.Equal("Cuadro 5 mojado", new MarkTelling(relief.Desk.Telling).Say(new CheckWater("N4", 5, WaterSeen.Wet)));
        ImmutableArray<MarkFact> taps =
        [
            new CheckWater("N4", 5, WaterSeen.Wet), new DepthRead("N4", 5, WaterDepth.FromInches(2)),
            new FaultFound(FaultKind.Box) { Field = "N4", Check = 3 }, new Noted("compuerta con candado, faltan tablas", "N4"),
        ];
        var logged = new List<Mark>();
        foreach (var tap in taps)
        {
            logged.Add(await relief.MarkAsync(tap));
            host.Time.Move(TimeSpan.FromMinutes(7));
        }

        var other = await grower.MarkAsync(new CheckWater("N4", 6, WaterSeen.Wet));
        Assert.Equal(4, relief.Desk.Unsent);
        host.Time.Move(TimeSpan.FromDays(1));
        await grower.JoinAsync();
        await relief.JoinAsync();
        await grower.JoinAsync();
        var book = await SameAsync(host, grower, relief);
        Assert.Equal(logged.Append(other).Select(m => m.Id).Order(), book.Log.Marks.Select(m => m.Id).Order());
        Assert.All(book.Story, l => Assert.Equal(Standing.Stands, l.Standing));
        Assert.All(book.Story, l => Assert.True(l.Mark.Entered == l.Mark.Happened));
        Assert.Equal(6, book.State.Season("N4").ChecksWet);
        Assert.Single(book.Faults);
    }

    private static Standing StandingOf(SeasonBook book, Mark mark) => book.Story.Single(l => l.Mark.Id == mark.Id).Standing;

    /// <summary>Host and phones tell one season of one moment, to the letter.</summary>
    private static async Task<SeasonBook> SameAsync(RunningDesk host, params ImmutableArray<SomePhone> phones)
    {
        var now = phones[0].Desk.Now;
        var farm = (await host.Book.LatestFarmAsync())!;
        var ground = FarmReading.Read(farm.Document, new FarmContext(farm.Saved)).Value;
        var marks = (await host.Book.MarksAfterAsync(0, int.MaxValue)).Select(m => MarkReading.Read(System.Text.Encoding.UTF8.GetBytes(m.Mark.Body)).Value);
        var book = SeasonFold.Fold(ground, Logbook.Empty.With(marks), now);
        foreach (var phone in phones)
        {
            Assert.Equal(0, phone.Desk.Unsent);
            Assert.Equal(Marks.All(book), Marks.All(SeasonFold.Fold(phone.Desk.Book!.Ground, phone.Desk.Book.Log, now)));
        }

        return book;
    }
}
