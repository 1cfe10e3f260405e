namespace Watersown.Season;

public sealed class ResolutionTests
{
    private static readonly DateTimeOffset Dawn = PlannedMorning.At(8, 5);

    [Fact]
    public void The_last_of_a_chain_of_corrections_counts()
    {
        var book = Fold(Depth(1, 2), Depth(2, 3).Replacing(1), Depth(3, 4).Replacing(2));
        Assert.Equal([Standing.Replaced, Standing.Replaced, Standing.Stands], book.Story.Select(l => l.Standing));
        Assert.Equal(4, book.State.Season("R4").Depth!.Value.Inches, 9);
        Assert.Empty(book.Doubts);
    }

    [Fact]
    public void A_correction_taken_back_lets_the_first_word_stand_again()
    {
        var book = Fold(Depth(1, 2), Depth(2, 3).Replacing(1), Marks.At(3, Dawn.AddMinutes(3), new Withdrawn()).Replacing(2));
        Assert.Equal([Standing.Stands, Standing.Withdrawn, Standing.Withdraws], book.Story.Select(l => l.Standing));
    }

    [Fact]
    public void A_withdrawal_taken_back_lets_the_mark_stand_again()
    {
        var book = Fold(Depth(1, 2), Marks.At(2, Dawn.AddMinutes(2), new Withdrawn()).Replacing(1), Marks.At(3, Dawn.AddMinutes(3), new Withdrawn()).Replacing(2));
        Assert.Equal([Standing.Stands, Standing.Withdrawn, Standing.Withdraws], book.Story.Select(l => l.Standing));
    }

    [Fact]
    public void Of_two_corrections_of_one_mark_the_one_put_down_later_counts_and_it_is_said()
    {
        var book = Fold(Depth(1, 2), Depth(2, 5).Replacing(1).Entered(Dawn.AddHours(2)), Depth(3, 4).Replacing(1).By("Lucero Quintabar"));
        Assert.Equal(5, book.State.Season("R4").Depth!.Value.Inches, 9);
        var doubt = Assert.Single(book.Doubts);
        Assert.Same(SeasonProblems.TwoCorrections, doubt.Problem.Kind);
        Assert.Equal("R4", doubt.Field);
    }

    [Fact]
    public void Corrections_in_a_circle_are_cut_at_the_oldest_and_it_is_said()
    {
        var book = Fold(Depth(1, 2).Replacing(3), Depth(2, 3).Replacing(1), Depth(3, 4).Replacing(2));
        Assert.Equal(4, book.State.Season("R4").Depth!.Value.Inches, 9);
        Assert.Equal([SeasonProblems.CorrectionCircle], book.Doubts.Select(d => d.Problem.Kind));
        Assert.Equal(Standing.Stands, Fold(Depth(1, 2).Replacing(1)).Story[0].Standing);
    }

    [Fact]
    public void A_correction_of_a_mark_that_has_not_come_yet_stands_and_keeps_standing()
    {
        Assert.Equal(3, Fold(Depth(2, 3).Replacing(1)).State.Season("R4").Depth!.Value.Inches, 9);
        Assert.Equal(3, Fold(Depth(1, 2), Depth(2, 3).Replacing(1)).State.Season("R4").Depth!.Value.Inches, 9);
    }

    [Fact]
    public void A_chain_of_a_hundred_thousand_is_followed()
    {
        var marks = Enumerable.Range(1, 100_000).Select(i => Depth(i, i % 9).Replacing(i - 1) with { Happened = Dawn, Entered = Dawn.AddSeconds(i) });
        var book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Dawn.AddDays(3));
        Assert.Equal(1, book.Story.Count(l => l.Standing == Standing.Stands));
    }

    private static Mark Depth(int id, double inches) => Marks.At(id, Dawn.AddMinutes(id), new DepthRead("R4", null, WaterDepth.FromInches(inches)));

    private static SeasonBook Fold(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Dawn.AddDays(1));
}
